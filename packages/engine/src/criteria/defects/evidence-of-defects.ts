import { compareInterval } from '../compare.ts';
import type { ItemsToCover } from '../coverage.ts';
import type { Criterion } from '../criterion.ts';
import type { Evidence } from '../evidence.ts';
import type { JobFacts } from '../facts.ts';
import type { Judgement } from '../judgement.ts';
import { findQuantity } from '../quantities.ts';
import type { BillExtents } from './bill-rule.ts';
import type { Defect } from './defect.ts';

/**
 * What a finding measured: a quantity of the engine, or the extent of the fault itself by the name `lengthM`, `areaM2`,
 * `volumeM3`, `count` or `share`.
 */
export interface ClaimedExtent {
  readonly quantity: string;
  readonly value: number | boolean;
}

/** What a surveyor claimed to have found, as far as the catalogue needs it. */
export interface ClaimedDefect {
  readonly id: string;
  /** Key of the defect. */
  readonly defect: string;
  readonly measured?: ClaimedExtent;
  /** True where a picture, a clip or a reading goes with it. */
  readonly hasProof: boolean;
}

/** How far a fault goes by the drawing itself: loose meters of edge, seams without tape, bare ground under ducts. */
export interface DrawnExtent {
  /** Key of the defect. */
  readonly defect: string;
  /** In the unit of the defect's bill: m, m² or a count. */
  readonly amount: number;
  /** What it is a part of, same unit, where the drawing says. */
  readonly whole?: number;
}

/** Everything that is known of a space when its defects are looked for. */
export interface DefectEvidence {
  readonly criteria: readonly Criterion[];
  readonly judgements: readonly Judgement[];
  readonly samples: readonly Evidence[];
  readonly facts: JobFacts;
  /** Items that each need a look before a defect of them is refuted. */
  readonly items?: ItemsToCover;
  readonly claims: readonly ClaimedDefect[];
  readonly extents: BillExtents;
  readonly drawn?: readonly DrawnExtent[];
}

/** Items of the plan that have a fault, and those that were looked at and have not. */
export interface ItemsSeen {
  readonly failing: readonly string[];
  readonly passing: readonly string[];
}

/** Whether one sample alone meets a criterion; undefined where its doubt leaves that open. */
function meets(criterion: Criterion, { value, uncertainty = 0 }: Evidence): boolean | undefined {
  if (typeof value === 'boolean') return value === (criterion.comparison === 'yes');
  const outcome = compareInterval(criterion, value - uncertainty, value + uncertainty);
  return outcome === 'straddle' ? undefined : outcome === 'pass';
}

/** Items, each judged alone by one criterion. */
export function itemsJudged(criterion: Criterion, measured: readonly Evidence[]): ItemsSeen {
  const failing: string[] = [];
  const passing: string[] = [];
  for (const sample of measured) {
    if (sample.item === undefined) continue;
    const met = meets(criterion, sample);
    if (met !== undefined) (met ? passing : failing).push(sample.item);
  }
  return { failing, passing };
}

const EXTENT_NAMES = {
  m: 'lengthM',
  'm²': 'areaM2',
  'm³': 'volumeM3',
  count: 'count',
  fraction: 'share',
} as const;
/** Quantities of the engine that are the extent of a fault themselves; others of the same unit are widths and heights. */
const EXTENTS: ReadonlySet<string> = new Set(['moldAreaM2', 'exposedEarthFraction', 'rimAndFloorHolesM2']);

/** Extents that claims measured, in one unit. */
export function claimedExtents(
  claims: readonly ClaimedDefect[],
  unit: keyof typeof EXTENT_NAMES,
): readonly number[] {
  return claims.flatMap(({ measured }) => {
    if (measured === undefined || typeof measured.value !== 'number' || !(measured.value >= 0)) return [];
    const { quantity, value } = measured;
    if (unit === 'fraction' && value > 1) return [];
    const isExtent = quantity === EXTENT_NAMES[unit];
    return isExtent || (EXTENTS.has(quantity) && findQuantity(quantity)?.unit === unit) ? [value] : [];
  });
}

/** Extents of a defect in one unit: those that claims measured, else the samples of its own quantity. */
export function measuredExtents(
  { quantity }: Pick<Defect, 'quantity'>,
  { samples }: Pick<DefectEvidence, 'samples'>,
  claims: readonly ClaimedDefect[],
  unit: keyof typeof EXTENT_NAMES,
): readonly number[] {
  const claimed = claimedExtents(claims, unit);
  if (claimed.length > 0 || quantity === undefined || !EXTENTS.has(quantity)) return claimed;
  if (findQuantity(quantity)?.unit !== unit) return claimed;
  const values = samples.flatMap((s) =>
    s.quantity === quantity && s.assumed !== true && typeof s.value === 'number' ? [s.value] : [],
  );
  // Two readings of one share are of the same whole.
  return unit === 'fraction' && values.length > 0 ? [Math.max(...values)] : values;
}
