import type { CompiledCase } from './compiled-case.ts';
import { WATER_PATHS } from './places.ts';
import type { Recorder } from './recorder.ts';
import type { SpaceState } from './state.ts';

/** What is missing in the books of the year, as a share of all that moved. Rounding is some 1e-13. */
export interface Closure {
  readonly water: number;
  readonly energy: number;
}

/** Heat on its way to the next step, J. */
function leftOver(state: SpaceState, seconds: number): number {
  return (state.airHeatW + state.soilHeatW) * seconds;
}

/** Paths that stay inside air, wood and films. */
const INSIDE = ['wood', 'condensate', 'fog'] as const;

/** (in − out − stored)/moved for the water of air, wood and films. */
export function waterClosure(c: CompiledCase, r: Recorder, start: SpaceState, end: SpaceState): number {
  let net = 0;
  let gross = 0;
  WATER_PATHS.forEach((path, i) => {
    gross += r.waterGrossKg[i]!;
    if (!(INSIDE as readonly string[]).includes(path)) net += r.waterKg[i]!;
  });
  const stored = waterHeld(c, end) - waterHeld(c, start);
  return gross > 0 ? (net - stored) / gross : 0;
}

function waterHeld(c: CompiledCase, state: SpaceState): number {
  let held = c.airMassKg * state.humidityRatio;
  for (let i = 0; i < state.woodSurface.length; i++) {
    held += c.woodSurfaceKg[i]! * state.woodSurface[i]! + c.woodCoreKg[i]! * state.woodCore[i]!;
  }
  for (let j = 0; j < state.filmKg.length; j++) held += state.filmKg[j]!;
  return held;
}

/** (in − out − stored)/moved for the heat of air and soil; heat under way to the next step counts as stored. */
export function energyClosure(
  c: CompiledCase,
  r: Recorder,
  start: SpaceState,
  end: SpaceState,
  seconds: number,
): number {
  const net = r.heatJ.reduce((sum, joules) => sum + joules, 0);
  const gross = r.heatGrossJ.reduce((sum, joules) => sum + joules, 0);
  const stored = heatHeld(c, end) + leftOver(end, seconds) - heatHeld(c, start) - leftOver(start, seconds);
  return gross > 0 ? (net - stored) / gross : 0;
}

function heatHeld(c: CompiledCase, state: SpaceState): number {
  let held = c.airHeatJPerK * state.airC;
  for (let i = 0; i < c.layers; i++) held += c.planM2 * c.soilHeat[i]! * state.soilC[i]!;
  return held;
}
