import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Source } from '../sources/source.ts';
import { moldSources } from './sources.ts';

/** How readily mold grows on a surface. */
export type MoldClass = 'very-sensitive' | 'sensitive' | 'medium-resistant' | 'resistant';

/**
 * Which of two readings of the critical humidity is used. `never-below-floor`: the curve, but nowhere below the floor
 * of the class. `curve-then-floor`: the curve up to `floorAboveC`, the floor above it. They differ by at most 0.2 % RH.
 */
export type CriticalHumidityForm = 'never-below-floor' | 'curve-then-floor';

/** Everything the mold index depends on apart from the air at the surface. */
export interface MoldParameters {
  /** Growth intensity while the index is below 1, relative to pine sapwood (k1). */
  readonly earlyGrowth: number;
  /** Growth intensity once the index is 1 or more (k1). */
  readonly lateGrowth: number;
  /** Largest index = base + linear·X - quadratic·X², X the share of the way from critical to saturated humidity. */
  readonly ceilingBase: number;
  readonly ceilingLinear: number;
  readonly ceilingQuadratic: number;
  /** Lowest humidity at which anything grows on this class [fraction]. */
  readonly humidityFloor: number;
  /** Temperature at which `curve-then-floor` changes over [°C]. */
  readonly floorAboveC: number;
  readonly criticalHumidity: CriticalHumidityForm;
  /** Wood species term W of the growth time: 0 as pine, 1 as spruce. */
  readonly woodFactor: number;
  /** Surface quality term SQ of the growth time: 0 sawn after drying, 1 kiln-dried original surface. */
  readonly surfaceQuality: number;
  /** Decline as a share of that seen on the original wood (k3): 1 original, down to 0.1. */
  readonly declineFactor: number;
}

/** A class with its figures, its examples and where they come from. */
export interface MoldClassData {
  readonly parameters: MoldParameters;
  /** Materials named for the class, from memory of ASHRAE 160. */
  readonly materials: string;
  /** What in a crawl space is taken as this class. Common practice. */
  readonly inCrawlSpace: string;
  readonly sources: readonly Source[];
}

/**
 * What all classes share by default. Decline 0.1 is the default of ASHRAE 160, from memory. `curve-then-floor` is the
 * form of the 1999 paper, from memory, and the more cautious; the published research code has the other.
 */
const SHARED = { criticalHumidity: 'curve-then-floor', surfaceQuality: 0, declineFactor: 0.1 } as const;
const SOURCES = [moldSources.sensitivityClasses, moldSources.standard160, moldSources.commonPractice];

/**
 * The four sensitivity classes. Growth, ceiling and floor figures are those of the published research code; the wood
 * factor (0 for very sensitive, else 1), the decline factor and the changeover temperatures are recalled from ASHRAE
 * 160 and not checked. The research code has wood factor 0 throughout, and that alone can move a result across the
 * limit: override it through `moldParameters` to see how much. That code also quotes field studies that count planed
 * pine as very sensitive and planed spruce as sensitive.
 */
export const moldClasses: Readonly<Record<MoldClass, MoldClassData>> = {
  'very-sensitive': {
    parameters: {
      ...SHARED,
      earlyGrowth: 1,
      lateGrowth: 2,
      ceilingBase: 1,
      ceilingLinear: 7,
      ceilingQuadratic: 2,
      humidityFloor: 0.8,
      floorAboveC: 20,
      woodFactor: 0,
    },
    materials: 'untreated wood rich in nutrients, sapwood, sawn surfaces',
    inCrawlSpace: 'rough-sawn or old framing, sapwood, bark edges',
    sources: SOURCES,
  },
  sensitive: {
    parameters: {
      ...SHARED,
      earlyGrowth: 0.578,
      lateGrowth: 0.386,
      ceilingBase: 0.3,
      ceilingLinear: 6,
      ceilingQuadratic: 1,
      humidityFloor: 0.8,
      floorAboveC: 20,
      woodFactor: 1,
    },
    materials: 'planed wood, wood-based boards, paper-faced products',
    inCrawlSpace: 'planed kiln-dried joists, wood-based subfloor',
    sources: SOURCES,
  },
  'medium-resistant': {
    parameters: {
      ...SHARED,
      earlyGrowth: 0.072,
      lateGrowth: 0.097,
      ceilingBase: 0,
      ceilingLinear: 5,
      ceilingQuadratic: 1.5,
      humidityFloor: 0.85,
      floorAboveC: 7,
      woodFactor: 1,
    },
    materials: 'cement- or plastic-based materials, mineral fiber',
    inCrawlSpace: 'block, foam, glass fiber',
    sources: SOURCES,
  },
  resistant: {
    parameters: {
      ...SHARED,
      earlyGrowth: 0.033,
      lateGrowth: 0.014,
      ceilingBase: 0,
      ceilingLinear: 3,
      ceilingQuadratic: 1,
      humidityFloor: 0.85,
      floorAboveC: 7,
      woodFactor: 1,
    },
    materials: 'glass, metal, surfaces with effective protective treatment',
    inCrawlSpace: 'metal posts and ducts, effectively treated surfaces',
    sources: SOURCES,
  },
};

/**
 * Parameters of a class with some of them replaced.
 * @throws EngineError `not-finite`, `out-of-range` naming the parameter; `bad-input` when the ceiling would fall with
 *   rising humidity
 * @source `moldClasses[moldClass].sources`
 */
export function moldParameters(
  moldClass: MoldClass,
  overrides: Partial<MoldParameters> = {},
): MoldParameters {
  const p: MoldParameters = { ...moldClasses[moldClass].parameters, ...overrides };
  requireRange('mold earlyGrowth', p.earlyGrowth, 0, 10);
  requireRange('mold lateGrowth', p.lateGrowth, 0, 10);
  requireRange('mold ceilingBase', p.ceilingBase, 0, 6);
  requireRange('mold ceilingLinear', p.ceilingLinear, 0, 20);
  requireRange('mold ceilingQuadratic', p.ceilingQuadratic, 0, 10);
  requireRange('mold humidityFloor (fraction)', p.humidityFloor, 0.5, 0.99);
  requireRange('mold floorAboveC (°C)', p.floorAboveC, 0, 50);
  requireRange('mold woodFactor', p.woodFactor, 0, 1);
  requireRange('mold surfaceQuality', p.surfaceQuality, 0, 1);
  requireRange('mold declineFactor', p.declineFactor, 0, 2);
  if (p.ceilingLinear < 2 * p.ceilingQuadratic) {
    throw new EngineError(
      'bad-input',
      `mold ceiling must not fall as humidity rises: ceilingLinear ${p.ceilingLinear} is below twice ceilingQuadratic ${p.ceilingQuadratic}`,
    );
  }
  return p;
}
