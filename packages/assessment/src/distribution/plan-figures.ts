import { distribution as engine, type moisture, type Notice } from '@undercroft/engine';
import { Assumptions, measured } from '../assumptions.ts';
import { budgetInput } from '../budget/budgets.ts';
import type { Conditions } from '../budget/conditions.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { airNetwork, type NetworkCache } from '../season/air.ts';
import type { PlanFigures } from '../season/machines.ts';
import { asFound, type SpaceState } from '../season/space-state.ts';
import type { FieldRange } from './distribution-assessment.ts';
import type { DistributionSpace } from './prepare-field.ts';
import { waterLinks } from './water-links.ts';

/** What the year takes of a plan coefficient; outside it no machine is one that dries the space. */
const LEAST = 0.05;
const MOST = 5;

const held = (value: number): number => Math.min(MOST, Math.max(LEAST, value));

/** Says where the year cannot take a coefficient as it is. */
export function heldNotices(found: FieldRange | undefined): Notice[] {
  if (found === undefined || (found.low >= LEAST && found.high <= MOST)) return [];
  const message = `The plan coefficient lies outside ${LEAST} to ${MOST} at an end of the band; the year takes the nearest it can.`;
  return [{ code: 'coefficient-held', message }];
}

/** The coefficient with the sources of a space some factor stronger: the same machine reaches less far, or farther. */
export function withSources(coefficient: number, factor: number): number {
  if (coefficient >= 1 || coefficient <= 0 || factor === 1) return coefficient;
  // tanh(x)/x falls steadily from 1; far out it is 1/x.
  let low = 0;
  let high = 1 / coefficient;
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (engine.meanShare(middle) > coefficient) low = middle;
    else high = middle;
  }
  return engine.meanShare(((low + high) / 2) * Math.sqrt(factor));
}

/** All sources of a space together, kg/s per unit of humidity ratio, in the air of one day. */
function strengthOf(
  state: SpaceState,
  space: SpaceGeometry,
  conditions: Conditions,
  aroundRelativeHumidity: number,
): number {
  const budget = budgetInput(state.job, space, conditions, new Assumptions());
  return waterLinks(budget, aroundRelativeHumidity).reduce((sum, link) => sum + link.conductanceKgPerS, 0);
}

/** The same day with the air that a space of another leakage lets through. */
function airOf(conditions: Conditions, outdoorsBy: number, houseBy: number): Conditions {
  const { fromOutdoorsM3PerS, houseNetM3PerS } = conditions.air;
  // Its own guesses are not of interest here, only its middle.
  const middle = (by: number, band: moisture.Band) => measured(by * band.value);
  return {
    ...conditions,
    air: {
      ...conditions.air,
      fromOutdoorsM3PerS: middle(outdoorsBy, fromOutdoorsM3PerS),
      houseNetM3PerS: middle(houseBy, houseNetM3PerS),
    },
  };
}

/**
 * The plan coefficient of the machine that was found for the years of a space as found and as it would be after repairs.
 * With other sources the drying reaches farther or less far: the coefficient changes as the mean share tanh(x)/x does when
 * x changes with the root of all sources together; of air, what leaks changes with the leakage area.
 * @param machineId of the machine that the field has
 * @param conditions of the field
 */
export function planFiguresOf(
  { job, space }: DistributionSpace,
  machineId: string,
  found: FieldRange,
  conditions: Conditions,
  aroundRelativeHumidity: number,
): PlanFigures {
  const networks: NetworkCache = new Map();
  const leakageOf = (state: SpaceState) => airNetwork(state, space, new Assumptions(), networks).leakage;
  const strength = (state: SpaceState): number => {
    const was = leakageOf(asFound(job));
    const is = leakageOf(state);
    const by = (now: number, before: number) => (before > 0 ? now / before : 1);
    const air = airOf(conditions, by(is.crawlNowM2, was.crawlNowM2), by(is.floorM2, was.floorM2));
    return strengthOf(state, space, air, aroundRelativeHumidity);
  };
  const asItWas = strength(asFound(job));
  const known = new WeakMap<SpaceState, ReturnType<PlanFigures>>();
  return (state, id) => {
    if (id !== machineId || state.machineIsNew) return undefined;
    const before = known.get(state);
    if (before !== undefined) return before;
    const factor = asItWas > 0 ? strength(state) / asItWas : 1;
    const figures = {
      value: held(withSources(found.value, factor)),
      low: held(withSources(found.low, factor)),
      high: held(withSources(found.high, factor)),
    };
    known.set(state, figures);
    return figures;
  };
}
