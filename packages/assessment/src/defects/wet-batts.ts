import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import { BARE_FLOOR_W_PER_M2K, withInsulation } from '../budget/heat-paths.ts';

/** Share of the floor whose batts are wet or down, where nobody counted the bays; an estimate of the trade, no source. */
const WET_SHARE = { value: 0.3, low: 0.05, high: 1, unit: 'fraction' } as const;
/** Water that a wet batt of usual depth holds; an estimate of the trade, no source [kg/m²]. */
const BATT_WATER = { value: 2, low: 0.5, high: 5, unit: 'kg/m²' } as const;

/** Share of the floor with wet or fallen batts. */
export function wetBattShare(assumptions: Assumptions): number {
  return assumptions.band(
    'wetBattShare',
    'Share of the floor with wet or fallen batts',
    WET_SHARE,
    'Seen and not counted by bay.',
  ).value;
}

/**
 * The house with the resistance that its floor insulation has while a share of it is wet or down: that share insulates
 * nothing, and the heat goes side by side through both.
 */
export function withWetBatts(job: SurveyedJob, share: number): SurveyedJob {
  const rsi = job.house.floorInsulationRsi;
  if (rsi === undefined || rsi === 0) return job;
  const u =
    (1 - share) * withInsulation(BARE_FLOOR_W_PER_M2K, rsi) + share * withInsulation(BARE_FLOOR_W_PER_M2K, 0);
  return { ...job, house: { ...job.house, floorInsulationRsi: 1 / u - 1 / BARE_FLOOR_W_PER_M2K } };
}

/** True where wet batts were seen or found, and no repair of the job takes the floor insulation out. */
export function holdsWetBatts({ readings, findings, design }: SurveyedJob): boolean {
  const seen = readings.observations.some((o) => o.quantity === 'wetBattsPresent' && o.value === true);
  const found = findings.some((f) => f.defect === 'wet-floor-batts');
  const removed = design.repairs.some((r) => r.chosen && r.repair === 'remove-insulation');
  return (seen || found) && !removed;
}

/** Water in wet batts that stay in place, given off once when the space is dried [kg]. */
export function waterInBattsKg(job: SurveyedJob, floorAreaM2: number, assumptions: Assumptions): number {
  if (!holdsWetBatts(job)) return 0;
  const perM2 = assumptions.band(
    'wetBattWater',
    'Water in wet floor batts',
    BATT_WATER,
    'Nobody weighed one; take them out, or weigh a piece wet and dry.',
  ).value;
  const measured = job.findings.flatMap(({ defect, measured: m }) =>
    defect === 'wet-floor-batts' && m?.quantity === 'share' && typeof m.value === 'number' ? [m.value] : [],
  );
  const share = measured.length === 0 ? wetBattShare(assumptions) : Math.min(1, Math.max(...measured));
  return perM2 * share * floorAreaM2;
}
