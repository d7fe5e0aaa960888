import { dehumidifier, type season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import { type Equipment, runningDehumidifiers, type SpaceFan, type SpaceState } from './space-state.ts';
import { heldHumidity } from './target.ts';

interface Figures {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/** Capacity and efficiency of a machine that nobody read the label of (common practice, no source). */
const USUAL_RATED = { value: 30, low: 20, high: 45, unit: 'kg/day' } as const;
const USUAL_EFFICIENCY = { value: 2, low: 1.5, high: 2.8, unit: 'L/kWh' } as const;
/**
 * How well the air of the whole plan reaches a machine, where nothing was read: 0.5 with walls across and 0.7 in an open
 * plan (computed for one example plan).
 */
const USUAL_PLAN: Figures = { value: 0.7, low: 0.5, high: 1, unit: 'fraction' };
/** Humidity that the space is taken to have with the machine off, to read the plan coefficient from two readings. */
const MACHINE_OFF = { value: 0.85, low: 0.75, high: 0.95 } as const;
/** A reading nearer than this to the machine is taken for its intake [m]. */
const INTAKE_M = 3;
/**
 * The plan coefficient of a machine in a state of the space, from the air on the plan; undefined where that does not tell,
 * as of a machine that does not stand there yet.
 */
export type PlanFigures = (
  state: SpaceState,
  machineId: string,
) => { readonly value: number; readonly low: number; readonly high: number } | undefined;

/** Share of what a machine lacks of well-mixed air that a circulating fan makes up. */
const FAN_EFFECT = { value: 0.5, low: 0, high: 0.8, unit: 'fraction' } as const;
/** Power of fans where it was not read (common practice) [W]. */
const FAN_W = { 'circulating-fan': 25, 'exhaust-fan': 20, 'soil-gas-fan': 60 } as const;

function distanceM(a: Equipment['at'], b: Equipment['at']): number {
  return Math.hypot(a.xM - b.xM, a.yM - b.yM);
}

/** (off − mean)/(off − intake) from readings of one visit with a machine running; undefined where too few were taken. */
function planFromReadings(job: SurveyedJob, machine: Equipment): Figures | undefined {
  const crawl = job.readings.air.filter((r) => r.where === 'crawl');
  const near = crawl.filter((r) => r.place.at !== undefined && distanceM(r.place.at, machine.at) <= INTAKE_M);
  if (near.length === 0 || near.length === crawl.length) return undefined;
  const mean = (readings: typeof crawl) =>
    readings.reduce((sum, r) => sum + r.relativeHumidity, 0) / readings.length;
  const intake = mean(near);
  const all = mean(crawl);
  if (intake >= all || all >= MACHINE_OFF.low) return undefined;
  const at = (off: number) => Math.max(0.2, (off - all) / (off - intake));
  return {
    value: at(MACHINE_OFF.value),
    low: at(MACHINE_OFF.low),
    high: at(MACHINE_OFF.high),
    unit: 'fraction',
  };
}

/** Circulating fans that run in a state beyond those that its drawing has. */
function addedFans({ fans, job }: SpaceState): number {
  const drawn = job.plan.equipment.filter((e) => e.kind === 'circulating-fan' && e.running !== false);
  return fans.filter((fan) => fan.kind === 'circulating-fan').length - drawn.length;
}

function planCoefficient(
  state: SpaceState,
  machine: Equipment,
  assumptions: Assumptions,
  planFigures: PlanFigures | undefined,
): number {
  const field = planFigures?.(state, machine.id);
  const read = field === undefined && !state.machineIsNew ? planFromReadings(state.job, machine) : undefined;
  const plan = assumptions.band(
    'planCoefficient',
    'How well the air of the whole plan reaches the machine',
    field === undefined ? (read ?? USUAL_PLAN) : { ...field, unit: 'fraction' },
    field !== undefined
      ? 'From the air on the plan on the most humid day, over the band of mixing; it is taken for the whole year.'
      : read === undefined
        ? 'Not read: take the humidity at the intake and in every corner while it runs.'
        : 'From readings at the intake and elsewhere; the humidity without the machine was taken as 85 %.',
  ).value;
  // Fans that were found are in the air on the plan already.
  const fans =
    field === undefined ? state.fans.some((fan) => fan.kind === 'circulating-fan') : addedFans(state) > 0;
  if (!fans) return plan;
  const effect = assumptions.band(
    'fanMixing',
    'Share of the lacking mixing that a circulating fan makes up',
    FAN_EFFECT,
    'An assumption; the air on the plan tells it for a fan at its place.',
  ).value;
  return plan >= 1 ? plan : 1 - (1 - plan) * (1 - effect);
}

/** Capacity and efficiency at 80 °F and 60 %, from the label or as assumed. */
export function ratedAt80F(
  machine: Pick<Equipment, 'ratedKgPerDay' | 'ratingPoint' | 'litersPerKWh'>,
  assumptions: Assumptions,
): { readonly kgPerDay: number; readonly litersPerKWh: number } {
  const point = machine.ratingPoint ?? '80F-60';
  const kgPerDay =
    machine.ratedKgPerDay === undefined || machine.ratedKgPerDay === 0
      ? assumptions.band('machineCapacity', 'Capacity of the dehumidifier', USUAL_RATED, 'Label not read.')
          .value
      : dehumidifier.convertCapacity(machine.ratedKgPerDay, point, '80F-60');
  const litersPerKWh =
    machine.litersPerKWh === undefined
      ? assumptions.band('machineEfficiency', 'Water per energy', USUAL_EFFICIENCY, 'Label not read.').value
      : dehumidifier.convertEfficiency(machine.litersPerKWh, point, '80F-60');
  return { kgPerDay, litersPerKWh: Math.min(10, litersPerKWh) };
}

/**
 * Dehumidifiers that run in a space.
 * @param planFigures plan coefficients from the air on the plan, where that was worked out
 */
export function seasonMachines(
  state: SpaceState,
  assumptions: Assumptions,
  planFigures?: PlanFigures,
): season.SeasonMachine[] {
  const { job } = state;
  return runningDehumidifiers(job).map((machine) => {
    const rated = ratedAt80F(machine, assumptions);
    assumptions.note(
      'machineCold',
      'Dehumidifier in cold air',
      'defrosts by itself',
      'The list does not say; a household machine stops near 18 °C (64 °F).',
    );
    return {
      ratedKgPerDay: rated.kgPerDay,
      ratedLPerKWh: rated.litersPerKWh,
      setPoint: heldHumidity(machine.setRelativeHumidity ?? job.design.targetRelativeHumidity),
      cold: 'low-temperature',
      planCoefficient: planCoefficient(state, machine, assumptions, planFigures),
    };
  });
}

/** Fans as heat in the space; what they blow out is part of the pressure network. */
export function seasonFans(fans: readonly SpaceFan[]): season.SeasonFan[] {
  return fans.map((fan) => ({ powerW: fan.inputW ?? FAN_W[fan.kind], runShare: 1, exhaustM3PerS: 0 }));
}
