import type { CompiledCase } from './compiled-case.ts';
import { WATER_PATHS } from './places.ts';
import type { Recorder } from './recorder.ts';
import type { SpaceState } from './state.ts';
import { stepPlaces } from './step-values.ts';

const { HEAT_GROSS_W, HEAT_NET_W, SUMMED, WATER } = stepPlaces;

/** What is missing in the books of the year, as a share of all that moved. Rounding is some 1e-13. */
export interface Closure {
  readonly water: number;
  readonly energy: number;
}

/** Paths that stay inside air, wood and films. */
const INSIDE = ['wood', 'condensate', 'fog'] as const;

/** (in − out − stored)/moved for the water of air, wood and films. */
export function waterClosure(c: CompiledCase, r: Recorder, start: SpaceState, end: SpaceState): number {
  const stored = waterHeld(c, end) - waterHeld(c, start);
  let net = 0;
  let moved = Math.abs(stored);
  WATER_PATHS.forEach((path, i) => {
    if ((INSIDE as readonly string[]).includes(path)) return;
    net += yearTotal(r, WATER + i);
    moved += yearMoved(r, WATER + i);
  });
  return moved > 0 ? (net - stored) / moved : 0;
}

/** A rate (per second) summed over the year. */
export function yearTotal(r: Recorder, place: number): number {
  let sum = 0;
  for (let month = 0; month < 12; month++) sum += r.months[month * SUMMED + place]!;
  return 3600 * sum;
}

function waterHeld(c: CompiledCase, state: SpaceState): number {
  let held = c.numbers.airMassKg * state.humidityRatio;
  for (let i = 0; i < state.woodSurface.length; i++) {
    held += c.woodSurfaceKg[i]! * state.woodSurface[i]! + c.woodCoreKg[i]! * state.woodCore[i]!;
  }
  for (let j = 0; j < state.filmKg.length; j++) held += state.filmKg[j]!;
  return held;
}

/** The same, each month by its size whichever way it went. */
function yearMoved(r: Recorder, place: number): number {
  let sum = 0;
  for (let month = 0; month < 12; month++) sum += Math.abs(r.months[month * SUMMED + place]!);
  return 3600 * sum;
}

/** (in − out − stored)/moved for the heat of air and soil; heat under way to the next step counts as stored. */
export function energyClosure(c: CompiledCase, r: Recorder, start: SpaceState, end: SpaceState): number {
  const net = yearTotal(r, HEAT_NET_W);
  const moved = yearTotal(r, HEAT_GROSS_W);
  const underWay = (state: SpaceState) => (state.airHeatW + state.soilHeatW) * r.seconds;
  const stored = heatHeld(c, end) + underWay(end) - heatHeld(c, start) - underWay(start);
  return moved > 0 ? (net - stored) / (moved + Math.abs(stored)) : 0;
}

function heatHeld(c: CompiledCase, state: SpaceState): number {
  let held = c.numbers.airHeatJPerK * state.airC;
  for (let i = 0; i < c.layers; i++) held += c.numbers.planM2 * c.soilHeat[i]! * state.soilC[i]!;
  return held;
}
