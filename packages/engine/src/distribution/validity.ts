import type { Notice } from '../numerics/notice.ts';
import type { Arrangement } from './arrangement.ts';
import type { FieldModel } from './field-model.ts';
import type { SteadyField } from './steady-state.ts';

/** Within so many heights of the machine a jet is no flat thing. */
const NEAR_HEIGHTS = 2;
/** Above this the air is no flat layer, m. */
const HIGHEST_M = 2;
/** More outdoor air than this is wind through the space, 1/h. */
const MOST_AIR_CHANGES = 2;
/** A step of humidity from ground to joists that counts, kg/kg. */
const STEP_TOLD = 5e-4;
/** A floor so much colder than the air keeps it in layers, K. Common practice, no source. */
const COLD_FLOOR_K = 3;

/**
 * Limits of what a plan field can say, those that always hold first. They belong beside every map.
 *
 * Source: depth averaging needs δW ≈ s h/(2 ρ K) small, computed; jets within two heights are not flat; the rest as in
 * `backgroundMixing`.
 */
export function validityNotices(model: FieldModel, arrangement: Arrangement, state: SteadyField): Notice[] {
  const { mesh, leak, vapor } = model;
  const notices: Notice[] = [
    {
      code: 'mixing-uncertain',
      message:
        'Mixing in low, obstructed spaces is known to a factor of three: read the map as a ranking with a band, not as a reading.',
    },
  ];
  const meanHeight = mesh.volumeM3 / mesh.floorM2;
  if (arrangement.machine !== undefined) {
    notices.push({
      code: 'near-machine',
      message: `Within ${(NEAR_HEIGHTS * meanHeight).toFixed(1)} m of the machine and its outlet the map does not hold: the jet is not flat there.`,
    });
  }
  let highest = 0;
  for (let i = 0; i < mesh.count; i += 1) highest = Math.max(highest, mesh.heightM[i]!);
  if (highest > HIGHEST_M) {
    notices.push({
      code: 'too-high',
      message: `The space is up to ${highest.toFixed(1)} m high; above ${HIGHEST_M} m air is not mixed from floor to joists.`,
    });
  }
  let entering = 0;
  for (let i = 0; i < leak.length; i += 1) entering += Math.max(0, leak[i]!);
  for (const e of vapor) if (e.kind === 'outdoor') for (const c of e.conductance) entering += c;
  const changes = (3600 * entering) / mesh.volumeM3;
  if (changes > MOST_AIR_CHANGES) {
    notices.push({
      code: 'wind-through',
      message: `${changes.toFixed(1)} air changes an hour come in: wind through the space may carry more than mixing does.`,
    });
  }
  notices.push(...stepNotices(model, state), ...layerNotices(model, state));
  return notices;
}

/** Whether the ground gives so much that the air over it is not one layer. */
function stepNotices({ mesh, vapor }: FieldModel, state: SteadyField): Notice[] {
  const flux = new Float64Array(mesh.count);
  for (const e of vapor) {
    if (e.kind !== 'ground') continue;
    for (let k = 0; k < e.cells.length; k += 1) {
      const cell = e.cells[k]!;
      flux[cell] = flux[cell]! + e.conductance[k]! * (e.drawnTo - state.humidityRatio[cell]!);
    }
  }
  let greatest = 0;
  let area = 0;
  for (let i = 0; i < mesh.count; i += 1) {
    // kg/s over density: what cancels in s h/(2 ρ K).
    const step = ((flux[i]! / mesh.areaM2[i]!) * mesh.heightM[i]!) / (2 * state.mixingM2PerS);
    greatest = Math.max(greatest, step);
    if (step > STEP_TOLD) area += mesh.areaM2[i]!;
  }
  if (greatest <= STEP_TOLD) return [];
  return [
    {
      code: 'humidity-steps-with-height',
      message: `Over ${area.toFixed(0)} m² the ground gives so much water that the air near it is up to ${(1000 * greatest).toFixed(1)} g/kg more humid than at the joists; the map shows the mean.`,
    },
  ];
}

function layerNotices({ mesh, heat }: FieldModel, state: SteadyField): Notice[] {
  let sum = 0;
  for (let i = 0; i < mesh.count; i += 1) sum += mesh.areaM2[i]! * state.temperatureC[i]!;
  const airC = sum / mesh.floorM2;
  const coldest = Math.min(...heat.filter((e) => e.cells.length > mesh.count / 2).map((e) => e.drawnTo));
  if (!(airC - coldest > COLD_FLOOR_K)) return [];
  return [
    {
      code: 'cold-floor',
      message: `Ground or floor is ${(airC - coldest).toFixed(0)} K colder than the air: it may lie in layers, and the low end of the mixing band is nearer the truth.`,
    },
  ];
}
