import { type season, geometry as shapes, units } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';

/** Duct insulation where nobody looked: R-4 (common practice) [m²·K/W]. */
const USUAL_RSI = { value: 0.7, low: 0.3, high: 1.4, unit: 'm²·K/W' } as const;
/**
 * Leakage of unsealed rectangular ducts: class 48, which is 48 cfm through 100 ft² at 1 in of water with exponent 0.65
 * (SMACNA duct leakage test manual, from memory), at the 25 Pa of a usual supply duct.
 */
const LEAK_M3_PER_S_M2 =
  (units.convert(48, 'cfm', 'm3/s') / units.convert(100, 'ft2', 'm2')) * (25 / 249.089) ** 0.65;

type Duct = SurveyedJob['plan']['ducts'][number];

function surfaceM2({ path, widthM, heightM }: Duct): number {
  const around = heightM === undefined ? Math.PI * widthM : 2 * (widthM + heightM);
  return around * shapes.pathLengthM(path);
}

function meanRsi(ducts: readonly Duct[], areaM2: number, assumptions: Assumptions): number {
  const unknown = ducts.some((d) => d.insulationRsi === undefined);
  const usual = unknown
    ? assumptions.band('ductInsulation', 'Insulation of ducts', USUAL_RSI, 'Not seen on every duct.').value
    : 0;
  // Heat goes by the conductance, so that is averaged.
  const perK = ducts.reduce((sum, d) => sum + surfaceM2(d) / (0.125 + (d.insulationRsi ?? usual)), 0);
  return Math.max(0, areaM2 / perK - 0.125);
}

function supplyLeak(ducts: readonly Duct[], assumptions: Assumptions): number {
  const leaking = ducts.filter((d) => d.carries === 'supply' && d.leaks === true);
  if (leaking.length === 0) return 0;
  const value = LEAK_M3_PER_S_M2 * leaking.reduce((sum, d) => sum + surfaceM2(d), 0);
  return assumptions.band(
    'supplyLeak',
    'Supply air that leaks from ducts while the fan runs',
    { value, low: value / 4, high: value * 4, unit: 'm³/s' },
    'Leaks were seen and not measured; that of unsealed ducts of their size is taken. A duct test replaces it.',
  ).value;
}

/** Supply and return ducts in the space as the year takes them. */
export function seasonDucts(
  job: SurveyedJob,
  base: season.SeasonDucts,
  assumptions: Assumptions,
): season.SeasonDucts {
  const ducts = job.plan.ducts.filter((d) => d.carries === 'supply' || d.carries === 'return');
  const areaM2 = ducts.filter((d) => d.carries === 'supply').reduce((sum, d) => sum + surfaceM2(d), 0);
  if (areaM2 === 0) return base;
  const supply = ducts.filter((d) => d.carries === 'supply');
  // No cooling: the air handler never starts on a warm day.
  const never = job.house.cooled === false ? { coolingStartC: 60, coolingFullC: 60 } : {};
  return {
    ...base,
    ...never,
    areaM2,
    resistanceM2KPerW: meanRsi(supply, areaM2, assumptions),
    supplyFlowM3PerS: supplyLeak(supply, assumptions),
  };
}
