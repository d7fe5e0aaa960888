import type { dehumidifier } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { ratedAt80F } from './machines.ts';
import type { SizingResult } from './season-assessment.ts';
import type { Equipment } from './space-state.ts';

/** Efficiency of a machine that is not on the list yet (common practice, no source) [L/kWh at 80 °F, 60 %]. */
const UNLISTED_L_PER_KWH = 2;
/** Nothing smaller is made [kg/day]. */
const SMALLEST_KG_PER_DAY = 5;

/** The machine that the years are run with, and why. */
export interface ChosenMachine {
  readonly machine: Equipment;
  readonly chosen: NonNullable<SizingResult['chosen']>;
}

/** The smallest machine of the list that holds the steady load; one just large enough where the list has none. */
export function chooseMachine(
  job: SurveyedJob,
  space: SpaceGeometry,
  load: dehumidifier.DesignLoad,
  sizing: dehumidifier.Sizing,
  assumptions: Assumptions,
): ChosenMachine {
  const { centroid } = space.engine;
  const place = {
    kind: 'dehumidifier' as const,
    at: { xM: centroid.xM, yM: centroid.yM },
    setRelativeHumidity: job.design.targetRelativeHumidity,
    running: true,
  };
  const own =
    sizing.forSteady === undefined
      ? undefined
      : job.design.machines.find((m) => m.id === sizing.forSteady?.machine.id);
  if (own !== undefined) {
    const { priceCents: _, name, ...label } = own;
    const rated = ratedAt80F(label, assumptions);
    return {
      machine: { ...place, ...label },
      chosen: {
        id: own.id,
        name,
        ratedKgPerDay: rated.kgPerDay,
        litersPerKWh: rated.litersPerKWh,
        why: 'The smallest of the list that holds the steady load within the share of time allowed.',
      },
    };
  }
  const need = load.labels.find((l) => l.ratingPoint === '80F-60');
  const largest = [...job.design.machines].sort((a, b) => b.ratedKgPerDay - a.ratedKgPerDay)[0];
  const ratedKgPerDay = Math.max(SMALLEST_KG_PER_DAY, Math.ceil(need?.steadyKgPerDay ?? 30));
  assumptions.note(
    'unlistedMachine',
    'Dehumidifier of the years',
    ratedKgPerDay,
    largest === undefined
      ? 'The list of machines is empty; one just large enough is taken.'
      : 'No machine of the list holds the load; one just large enough is taken.',
    'kg/day',
  );
  const id = 'just-large-enough';
  const label = { ratedKgPerDay, ratingPoint: '80F-60' as const, litersPerKWh: UNLISTED_L_PER_KWH };
  return {
    machine: { ...place, id, ...label },
    chosen: {
      id,
      name: 'A machine just large enough',
      ratedKgPerDay,
      litersPerKWh: UNLISTED_L_PER_KWH,
      why: 'No machine of the list holds the steady load; add the ones you install.',
    },
  };
}
