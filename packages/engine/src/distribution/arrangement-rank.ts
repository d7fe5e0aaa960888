import type { Arrangement } from './arrangement.ts';
import { middleOf } from './field-grid.ts';
import { fieldMaps } from './field-maps.ts';
import type { FieldModel } from './field-model.ts';
import { dampestPart } from './field-result.ts';
import { runShareOf } from './moved-air.ts';
import type { SteadyField } from './steady-state.ts';

/** What an arrangement does in a design state. */
export interface ArrangementFigures {
  /** Mean relative humidity of the dampest twentieth of the floor, and of all of it. */
  readonly dampestRelativeHumidity: number;
  readonly meanRelativeHumidity: number;
  readonly duty: number;
  /** Whether the humidistat is satisfied. */
  readonly holds: boolean;
  /** Of machine and fans, kWh/day. */
  readonly energyKWhPerDay: number;
}

/** An arrangement with everything that it is ranked by. */
export interface RankedArrangement extends ArrangementFigures {
  readonly arrangement: Arrangement;
  /** What it is, in a few words. */
  readonly what: string;
  /** Way from the door to the machine, m; NaN where its place was not judged. */
  readonly wayM: number;
  /** Whether its water needs a pump. */
  readonly pumped: boolean;
  /** Work and material over leaving things as they are, whole cents. */
  readonly costCents: number;
}

/** Part of the floor that counts as its dampest. */
const DAMPEST_SHARE = 0.05;

/** Figures of an arrangement from its state. */
export function figuresOf(
  model: FieldModel,
  arrangement: Arrangement,
  state: SteadyField,
): ArrangementFigures {
  const { mesh } = model;
  const { relativeHumidity } = fieldMaps(model, state);
  let sum = 0;
  for (let i = 0; i < mesh.count; i += 1) sum += mesh.areaM2[i]! * relativeHumidity[i]!;
  const at = (cell: number) => middleOf(mesh.grid, mesh.column[cell]!, mesh.row[cell]!);
  const fans = (arrangement.fans ?? []).reduce((w, fan, k) => w + fan.powerW * runShareOf(fan, k), 0);
  return {
    dampestRelativeHumidity: dampestPart(model, relativeHumidity, DAMPEST_SHARE * mesh.floorM2, at)
      .relativeHumidity,
    meanRelativeHumidity: sum / mesh.floorM2,
    duty: state.machine?.duty ?? 0,
    holds: state.outcome === 'holds' || state.outcome === 'idle',
    energyKWhPerDay: ((state.machine?.electricW ?? 0) + fans) * 0.024,
  };
}

/** Differences that count, in the order in which they do: humidity as a fraction, kWh/day, m. */
const STEPS = { humidity: 0.01, energyKWhPerDay: 0.25, wayM: 1 } as const;
/** A floor whose dampest twentieth is no damper than this is dry enough, fraction. Common practice, no source. */
export const DRY_ENOUGH = 0.65;

/**
 * Order of arrangements: the dampest twentieth of the floor in whole points of humidity, those that are dry enough being
 * alike, then energy in steps of 0.25 kWh/day, then the way for service in meters, then cost. Smaller differences are less
 * than the model knows, and leave the word to the next.
 * @param dryEnough fraction; `DRY_ENOUGH` by default
 * @returns a comparison that is negative when its first arrangement is the better one
 */
export function arrangementOrder(
  dryEnough: number = DRY_ENOUGH,
): (a: RankedArrangement, b: RankedArrangement) => number {
  const steps = (value: number, step: number): number =>
    Number.isNaN(value) ? Number.MAX_SAFE_INTEGER : Math.round(value / step);
  const damp = ({ dampestRelativeHumidity }: RankedArrangement): number =>
    steps(Math.max(dryEnough, dampestRelativeHumidity), STEPS.humidity);
  return (a, b) =>
    damp(a) - damp(b) ||
    steps(a.energyKWhPerDay, STEPS.energyKWhPerDay) - steps(b.energyKWhPerDay, STEPS.energyKWhPerDay) ||
    steps(a.wayM, STEPS.wayM) - steps(b.wayM, STEPS.wayM) ||
    a.costCents - b.costCents ||
    a.dampestRelativeHumidity - b.dampestRelativeHumidity;
}
