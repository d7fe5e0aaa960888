import { distribution as engine, type Notice } from '@undercroft/engine';
import type { Conditions } from '../budget/conditions.ts';
import type { PlanFigures } from '../season/machines.ts';
import type { DistributionAssessment, DistributionWorkedOut } from './distribution-assessment.ts';
import { farCells } from './far-end.ts';
import { dayOf, USUAL_MIXING } from './field-words.ts';
import { inputsOfDay } from './inputs-of-day.ts';
import { heldNotices, planFiguresOf } from './plan-figures.ts';
import { type DistributionSpace, type PreparedField, prepareField } from './prepare-field.ts';
import { type FitOfReadings, fitOfReadings } from './readings-fit.ts';
import { betterArrangements } from './search-arrangements.ts';
import { shownBand } from './shown-state.ts';
import { type AirToTry, airToTry } from './try-arrangements.ts';

/** How much is worked out: the air as found, or better arrangements too, which takes some seconds. */
export type DistributionDepth = 'present' | 'search';

/** The band of mixing: what the readings make of it, else as assumed. */
function mixingFrom(usual: engine.MixingBand, { mixingBy }: FitOfReadings): DistributionWorkedOut['mixing'] {
  if (mixingBy === undefined) return { ...usual, origin: USUAL_MIXING };
  const { low, value, high } = mixingBy;
  return {
    low: usual.value * low,
    value: usual.value * value,
    high: usual.value * high,
    origin: { kind: 'reading', note: 'fitted to the humidity readings of the survey' },
  };
}

/** Says where surfaces sweat in the dampest air of the map: what they take out of it is not in the field. */
function sweatNotices(
  coldSurfaces: PreparedField['coldSurfaces'],
  { map }: DistributionWorkedOut['found']['value'],
): Notice[] {
  const dampestC = map.dewPointC.reduce((most: number, dew) => Math.max(most, dew ?? most), -100);
  const sweating = coldSurfaces.filter((s) => s.temperatureC.value < dampestC).map((s) => s.title);
  if (sweating.length === 0) return [];
  const message = `${sweating.join(', ')}: in places the air is damp enough for it, and the water that it takes out of the air is not in the field.`;
  return [{ code: 'sweating-left-out', message }];
}

/** The air on the plan, and the plan coefficients that the years of the space take from it. */
export interface DistributionOfJob {
  readonly shown: DistributionAssessment;
  readonly planFigures?: PlanFigures;
  /** To try other arrangements in, where there is a field. */
  readonly toTry?: AirToTry;
}

function workOut(
  where: DistributionSpace,
  depth: DistributionDepth,
  survey: Conditions | undefined,
): DistributionOfJob {
  const made = prepareField(where);
  if ('outcome' in made) return { shown: made };
  const fitted = fitOfReadings(where, made, survey);
  const mixing = mixingFrom(made.mixing, fitted);
  const prepared = { ...made, mixing };
  const { model, arrangement, machine, fans, inputs, day } = prepared;
  const ids = { machine: machine.id, fans: fans.map((f) => f.id) };
  const far = farCells(model.mesh, arrangement.machine.intake);
  const band = engine.fieldBand(model, arrangement, mixing);
  const found = shownBand(model, arrangement, ids, band, far);
  const better: ReturnType<typeof betterArrangements> =
    depth === 'search' ? betterArrangements(where.job, where.space, prepared, ids, far) : { notices: [] };
  inputsOfDay(day, where.job, where.space, inputs);
  const shown: DistributionAssessment = {
    outcome: 'worked-out',
    day: dayOf(prepared),
    mixing,
    found,
    ...(better.search === undefined ? {} : { search: better.search }),
    fit: fitted.fit,
    inputs: inputs.list(),
    limits: band.limits,
    notices: [
      ...prepared.notices,
      ...sweatNotices(prepared.coldSurfaces, found.value),
      ...heldNotices(found.ranges.planCoefficient),
      ...better.notices,
    ],
  };
  const toTry = airToTry(prepared, ids, far);
  const { planCoefficient } = found.ranges;
  if (planCoefficient === undefined) return { shown, toTry };
  const { setPoint } = arrangement.machine;
  return {
    shown,
    toTry,
    planFigures: planFiguresOf(where, machine.id, planCoefficient, day.conditions, setPoint),
  };
}

/** So many fields are kept for each climate: those of one job and of the change before. Some MB each. */
const KEPT = 3;
const kept = new WeakMap<object, Map<string, DistributionOfJob>>();

/** Everything of a job that its air on the plan hangs on. */
function keyOf({ job, drawn, seed }: DistributionSpace, depth: DistributionDepth): string {
  const { header, house, plan, readings, findings, design } = job;
  const { elevationM, surveyedOn } = header;
  const { targetRelativeHumidity } = design;
  return JSON.stringify([
    depth,
    seed,
    elevationM,
    surveyedOn,
    targetRelativeHumidity,
    house,
    plan,
    drawn,
    readings,
    findings,
  ]);
}

/**
 * Where the dry air of a space goes on its most humid day and where it does not, over the band of what mixing may be, from
 * the same balance of water and the same year as the rest of an assessment. About 0.3 s of processor time for 130 m², and
 * some seconds more for better arrangements. What was just worked out is not worked out again; results are shared: do not
 * change them.
 * @param survey the day of the survey, whose readings tell about mixing; undefined where the air was not read
 * @throws EngineError for sizes or places of the plan that make no sense
 */
export function distributionOf(
  where: DistributionSpace,
  depth: DistributionDepth,
  survey?: Conditions,
): DistributionOfJob {
  const climate = where.chosen.year ?? where.chosen.monthly;
  const fields = kept.get(climate) ?? new Map<string, DistributionOfJob>();
  kept.set(climate, fields);
  const key = keyOf(where, depth);
  const made = fields.get(key) ?? workOut(where, depth, survey);
  // The newest stand at the end.
  fields.delete(key);
  fields.set(key, made);
  for (const oldest of [...fields.keys()].slice(0, Math.max(0, fields.size - KEPT))) fields.delete(oldest);
  return made;
}
