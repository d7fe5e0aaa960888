import { distribution as engine, type Notice } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';
import { doorPlace } from '../coverage/subjects.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { FAN_TO_ADD } from './arrangement-of-job.ts';
import type { ArrangementsShown, ArrangementTried, RuleExcluded } from './distribution-assessment.ts';
import type { PreparedField } from './prepare-field.ts';
import { type EquipmentIds, fansPlaced, machinePlaced, shownBand } from './shown-state.ts';

/** Settings that are tried below that of the machine, and the lowest, fractions (common practice, no source). */
const SETTINGS_BELOW = [0.05, 0.1] as const;
const LOWEST_SETTING = 0.4;
/** Humidity that a humidistat in the dampest place is set to (common practice, no source). */
const REMOTE_SETTING = 0.6;

const NO_DOOR: Notice = {
  code: 'no-door',
  message:
    'No access door is drawn, so nobody can tell where a machine could be reached: no other arrangement was looked for.',
};

const ENOUGH: Notice = {
  code: 'dry-enough',
  message: `As found the dampest twentieth of the floor is no damper than ${100 * engine.DRY_ENOUGH} % on the most humid day: nothing needs to be rearranged.`,
};

/** Middle of the first access door or hatch that lies on the plan; undefined where none does. */
export function doorOf(job: SurveyedJob, { corners, edges }: SpaceGeometry['result']): Point | undefined {
  const edgeOf = new Map(edges.map((edge, index) => [edge.id, index]));
  for (const door of job.plan.doors) {
    const at = doorPlace(door, { scene: { outline: corners }, edgeOf });
    if (at !== undefined) return at;
  }
  return undefined;
}

/** What the space offers to a machine, as far as it was drawn. */
function placingSite(job: SurveyedJob, door: Point, raisedM: number | undefined): engine.PlacingSite {
  const sumps = job.plan.equipment.filter((e) => e.kind === 'sump');
  return {
    door,
    raisedM: Math.max(raisedM ?? 0, engine.USUAL_PLACING.raisedM),
    ...(sumps.length === 0
      ? {}
      : { drains: sumps.map((s) => ({ at: s.at, inletM: Math.max(0, s.rimAboveFloorM ?? 0) })) }),
  };
}

/** An arrangement that was worked out, in the words of the assessment. */
export function tried(one: engine.RankedArrangement, ids: EquipmentIds): ArrangementTried {
  const { what, arrangement, dampestRelativeHumidity, meanRelativeHumidity } = one;
  const { duty, holds, energyKWhPerDay, wayM, pumped, costCents } = one;
  return {
    what,
    machine: machinePlaced(arrangement.machine as engine.FieldMachine, ids.machine),
    fans: fansPlaced(arrangement.fans, ids.fans),
    dampestRelativeHumidity,
    meanRelativeHumidity,
    duty,
    holds,
    energyKWhPerDay,
    ...(Number.isFinite(wayM) ? { wayM } : {}),
    pumped,
    costCents,
  };
}

function byRule(excluded: readonly engine.ExcludedPlace[]): RuleExcluded[] {
  const counts = new Map<RuleExcluded['rule'], number>();
  for (const { rule } of excluded) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  return [...counts]
    .map(([rule, count]) => ({ rule, count }))
    .sort((a, b) => b.count - a.count || (a.rule < b.rule ? -1 : 1));
}

/** Places that rules left out, in the words of the assessment. */
export function excludedShown(
  excluded: readonly engine.ExcludedPlace[],
): Pick<ArrangementsShown, 'excluded' | 'excludedByRule'> {
  return {
    excluded: excluded.map(({ at, bearingDeg, rule, why }) => ({
      at: { xM: at.xM, yM: at.yM },
      bearingDeg,
      rule,
      why,
    })),
    excludedByRule: byRule(excluded),
  };
}

/** What is looked for in the space of a job, from its machine as it stands; `present` is null for a new one. */
export function searchOptions(
  job: SurveyedJob,
  { arrangement, machine, mixing }: PreparedField,
  door: Point,
  present: engine.Arrangement | null,
): engine.ArrangementOptions {
  const { setPoint } = arrangement.machine;
  return {
    mixingM2PerS: mixing.value,
    site: placingSite(job, door, machine.raisedM),
    machine: arrangement.machine,
    present,
    fan: FAN_TO_ADD,
    setPoints: SETTINGS_BELOW.map((below) => Math.round(100 * (setPoint - below)) / 100).filter(
      (s) => s >= LOWEST_SETTING,
    ),
    remoteSetPoint: REMOTE_SETTING,
  };
}

/**
 * Looks for a better arrangement of the machine that stands there: some hundred places, directions, ducts, fans and
 * settings, which takes some seconds. A notice alone where no door is drawn to reach the machine by.
 * @param far cells of the far end
 * @throws EngineError for figures or places that make no sense
 */
export function betterArrangements(
  job: SurveyedJob,
  space: SpaceGeometry,
  prepared: PreparedField,
  ids: EquipmentIds,
  far: readonly number[],
): { readonly search?: ArrangementsShown; readonly notices: readonly Notice[] } {
  const door = doorOf(job, space.result);
  if (door === undefined) return { notices: [NO_DOOR] };
  const { model, mixing } = prepared;
  const found = engine.searchArrangements(model, searchOptions(job, prepared, door, prepared.arrangement));
  const { present, ranked, changes, screened, excluded, notices } = found;
  const [best] = ranked;
  if (present === null || best === undefined)
    throw new Error('a search from a machine has that machine in it');
  const { arrangement } = best;
  const dryEnough = present.holds && present.dampestRelativeHumidity <= engine.DRY_ENOUGH;
  const better = !dryEnough && best.what !== present.what && arrangement.machine !== undefined;
  return {
    search: {
      screened,
      present: { ...tried(present, ids), rank: present.rank },
      ranked: ranked.map((one) => tried(one, ids)),
      changes: changes.map((one) => ({ ...tried(one, ids), kind: one.kind })),
      ...(better
        ? {
            suggested: {
              ...shownBand(
                model,
                { ...arrangement, machine: arrangement.machine as engine.FieldMachine },
                ids,
                engine.fieldBand(model, arrangement, mixing),
                far,
              ),
              what: best.what,
              costCents: best.costCents,
            },
          }
        : {}),
      ...excludedShown(excluded),
      notices: dryEnough ? [...notices, ENOUGH] : notices,
    },
    notices: [],
  };
}
