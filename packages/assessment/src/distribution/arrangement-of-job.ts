import { dehumidifier, distribution, geometry as shapes } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';
import { Assumptions } from '../assumptions.ts';
import { ofSurvey } from '../budget/origins.ts';
import { ratedAt80F } from '../season/machines.ts';
import { type Equipment, runningDehumidifiers } from '../season/space-state.ts';
import { heldHumidity } from '../season/target.ts';
import type { DistributionInputs } from './distribution-inputs.ts';

/** From intake to outlet of a machine that stands, m; as a machine of usual size has it (common practice, no source). */
export const BODY_M = distribution.USUAL_PLACING.body.lengthM;
/** Speed of the air at the outlet of a dehumidifier, m/s: 180 cfm through 0.03 m² (common practice, no source). */
const MACHINE_OUTLET_M_PER_S = { value: 2.8, low: 1.4, high: 4 } as const;
/** A circulating fan that nobody read the label of, and its speed (common practice, no source). */
const USUAL_FAN = { airflowM3PerS: 0.1, powerW: 25, outletMPerS: 2 } as const;

/** The arrangement of a job, with the pieces of equipment that it stands for. */
export interface ArrangementOfJob {
  readonly arrangement: distribution.Arrangement & { readonly machine: distribution.FieldMachine };
  readonly machine: Equipment;
  /** In the order of the arrangement's fans. */
  readonly fans: readonly Equipment[];
  /** Dehumidifiers that run and that the field leaves out. */
  readonly others: readonly Equipment[];
}

/** A fan as one adds it to stir the air. */
export const FAN_TO_ADD: Omit<distribution.FieldFan, 'at' | 'bearingDeg'> = {
  flowM3PerS: USUAL_FAN.airflowM3PerS,
  outletM2: USUAL_FAN.airflowM3PerS / USUAL_FAN.outletMPerS,
  throwConstant: distribution.THROW_CONSTANTS['floor-grille'],
  powerW: USUAL_FAN.powerW,
};

function moved({ xM, yM }: Point, bearingDeg: number, byM: number): Point {
  return { xM: xM + byM * shapes.sinDeg(bearingDeg), yM: yM + byM * shapes.cosDeg(bearingDeg) };
}

/** Where a piece of equipment blows: as recorded, else toward the middle of the floor. */
function directionOf(item: Equipment, middle: Point, what: string, inputs: DistributionInputs): number {
  const key = `direction-${item.id}`;
  const title = `Direction in which the ${what} blows`;
  if (item.facingDeg !== undefined) {
    const origin = { kind: 'plan', id: item.id, note: 'as drawn' } as const;
    inputs.known(key, title, item.facingDeg, '°', origin);
    return item.facingDeg;
  }
  const toward = shapes.directionDeg(middle.xM - item.at.xM, middle.yM - item.at.yM) ?? 0;
  const why =
    'Nobody drew it; toward the middle of the floor is taken. One look at the machine replaces this.';
  inputs.assumed(key, title, toward, '°', why, { low: 0, high: 360 });
  return toward;
}

/** Capacity that a label stands for at 80 °F and 60 %, to tell the largest machine. */
function ratedOf(item: Equipment): number {
  return ratedAt80F(item, new Assumptions()).kgPerDay;
}

function machineOf(
  job: SurveyedJob,
  item: Equipment,
  middle: Point,
  inputs: DistributionInputs,
): distribution.FieldMachine {
  const noted = new Assumptions();
  const rated = ratedAt80F(item, noted);
  const drawn = ofSurvey(job, 'plan', 'from the plan', item.id);
  for (const { key, title, value, unit, low, high, why } of noted.list()) {
    inputs.assumed(key, title, value as number, unit, why, { low: low as number, high: high as number });
  }
  const usual = dehumidifier.usualAirFlowM3PerS(rated.kgPerDay);
  const flowM3PerS = item.airflowM3PerS || usual;
  const airflow = ['airflow', 'Air that the machine moves', flowM3PerS, 'm³/s'] as const;
  if (item.airflowM3PerS) inputs.known(...airflow, drawn);
  else {
    const why = 'Label not read; usual for its capacity.';
    inputs.assumed(...airflow, why, { low: 0.6 * usual, high: 1.5 * usual });
  }
  const { value, low, high } = MACHINE_OUTLET_M_PER_S;
  const outlet = 'Not measured; it makes the jet. Outlet area and air flow replace it.';
  inputs.assumed('outletSpeed', 'Speed of the air at the outlet', value, 'm/s', outlet, { low, high });
  inputs.assumed(
    'humidistat',
    'Where the humidistat reads the air',
    'at the intake',
    '',
    'The record does not say; a remote one is set up by hand.',
  );
  inputs.assumed(
    'machineFan',
    'Fan of the machine',
    'rests with the compressor',
    '',
    'The record does not say; one that runs on stirs the air all the time.',
  );
  const setPoint = heldHumidity(item.setRelativeHumidity ?? job.design.targetRelativeHumidity);
  const setting = ['setPoint', 'Humidity that the machine is set to', setPoint, 'fraction'] as const;
  if (item.setRelativeHumidity === undefined) {
    inputs.assumed(...setting, 'Its setting was not read; the target of the design is taken.');
  } else inputs.known(...setting, drawn);
  const bearingDeg = directionOf(item, middle, 'dehumidifier', inputs);
  return {
    intake: moved(item.at, bearingDeg, -BODY_M / 2),
    outlet: moved(item.at, bearingDeg, BODY_M / 2),
    bearingDeg,
    flowM3PerS,
    outletM2: flowM3PerS / value,
    throwConstant: distribution.THROW_CONSTANTS['grille-wide'],
    ratedKgPerDay: rated.kgPerDay,
    ratedLPerKWh: rated.litersPerKWh,
    setPoint,
    cold: 'low-temperature',
  };
}

function fanOf(item: Equipment, middle: Point, inputs: DistributionInputs): distribution.FieldFan {
  const flowM3PerS = item.airflowM3PerS || USUAL_FAN.airflowM3PerS;
  if (!item.airflowM3PerS) {
    const title = 'Air that the circulating fan moves';
    inputs.assumed(`airflow-${item.id}`, title, flowM3PerS, 'm³/s', 'Label not read.', {
      low: flowM3PerS / 2,
      high: 2 * flowM3PerS,
    });
  }
  return {
    ...FAN_TO_ADD,
    at: item.at,
    bearingDeg: directionOf(item, middle, 'fan', inputs),
    flowM3PerS,
    outletM2: flowM3PerS / USUAL_FAN.outletMPerS,
    powerW: item.inputW ?? USUAL_FAN.powerW,
    ...(item.runShare === undefined ? {} : { runShare: item.runShare }),
  };
}

/**
 * The dehumidifier and the circulating fans that run in a space, as drawn; undefined where no dehumidifier runs. Of
 * several the largest is taken.
 * @param middle of the floor
 */
export function arrangementOfJob(
  job: SurveyedJob,
  middle: Point,
  inputs: DistributionInputs,
): ArrangementOfJob | undefined {
  const [machine, ...others] = [...runningDehumidifiers(job)].sort((a, b) => ratedOf(b) - ratedOf(a));
  if (machine === undefined) return undefined;
  const fans = job.plan.equipment.filter((e) => e.kind === 'circulating-fan' && e.running !== false);
  return {
    arrangement: {
      machine: machineOf(job, machine, middle, inputs),
      fans: fans.map((fan) => fanOf(fan, middle, inputs)),
    },
    machine,
    fans,
    others,
  };
}
