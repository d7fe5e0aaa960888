import { distribution as engine } from '@undercroft/engine';
import type { SpaceGeometry } from '../geometry.ts';
import { chosenRepairs, repaired } from '../season/repairs.ts';
import type { MachineChosen } from '../season/season-assessment.ts';
import { asFound, type Equipment } from '../season/space-state.ts';
import type { MachinePlacing } from './distribution-assessment.ts';
import { farCells } from './far-end.ts';
import { dayOf, USUAL_MIXING } from './field-words.ts';
import { inputsOfDay } from './inputs-of-day.ts';
import { type DistributionSpace, type PreparedField, prepareField } from './prepare-field.ts';
import { doorOf, excludedShown, searchOptions, tried } from './search-arrangements.ts';
import { shownBand } from './shown-state.ts';

/** The machine that the years were run with, as a piece of equipment in the middle of the floor. */
function equipmentOf(chosen: MachineChosen, { engine: plan }: SpaceGeometry, set: number): Equipment {
  const { id, ratedKgPerDay, litersPerKWh } = chosen;
  return {
    id,
    kind: 'dehumidifier',
    at: { xM: plan.centroid.xM, yM: plan.centroid.yM },
    facingDeg: 0,
    ratedKgPerDay,
    ratingPoint: '80F-60',
    litersPerKWh,
    setRelativeHumidity: set,
    running: true,
  };
}

/** The best of a search with its band, and what bounds it. */
function bestOf(
  { model, mixing }: PreparedField,
  best: engine.RankedArrangement | undefined,
  id: string,
): Pick<MachinePlacing, 'suggested' | 'limits'> {
  const machine = best?.arrangement.machine;
  if (best === undefined || machine === undefined) return { limits: [] };
  const arrangement = { ...best.arrangement, machine };
  const band = engine.fieldBand(model, arrangement, mixing);
  const far = farCells(model.mesh, machine.intake);
  const { what, costCents } = best;
  return {
    suggested: { ...shownBand(model, arrangement, { machine: id, fans: [] }, band, far), what, costCents },
    limits: band.limits,
  };
}

/**
 * Places for a dehumidifier that the repairs of a job set, in the space with all of them done: some hundred arrangements,
 * which takes some seconds. Undefined where the repairs set none or no door is drawn.
 * @param chosen the machine that the years were run with
 * @throws EngineError for sizes or places of the plan that make no sense
 */
export function placeForMachine(where: DistributionSpace, chosen: MachineChosen): MachinePlacing | undefined {
  const { job, space } = where;
  const door = doorOf(job, space.result);
  const repairs = chosenRepairs(job);
  if (door === undefined || !repairs.some((r) => r.meaning.repair === 'dehumidifier')) return undefined;
  const machine = equipmentOf(chosen, space, job.design.targetRelativeHumidity);
  const state = repaired(asFound(job), repairs, { machine });
  const prepared = prepareField({ ...where, job: state.job, repaired: state });
  if ('outcome' in prepared) return undefined;
  const { model, mixing, inputs, day } = prepared;
  const found = engine.searchArrangements(model, searchOptions(state.job, prepared, door, null));
  inputsOfDay(day, job, space, inputs);
  const ids = { machine: machine.id, fans: [] };
  return {
    machine: chosen.name,
    day: dayOf(prepared),
    mixing: { ...mixing, origin: USUAL_MIXING },
    screened: found.screened,
    ranked: found.ranked.map((one) => tried(one, ids)),
    ...bestOf(prepared, found.ranked[0], machine.id),
    ...excludedShown(found.excluded),
    // Where it stands and blows is what was looked for.
    inputs: inputs.list().filter((i) => !i.key.startsWith('direction-')),
    notices: [...prepared.notices, ...found.notices],
  };
}
