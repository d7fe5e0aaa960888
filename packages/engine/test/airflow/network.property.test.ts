import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AirNetwork, NetworkFan, NetworkInput, NetworkOpening } from '../../src/airflow/network.ts';
import { createNetwork } from '../../src/airflow/network.ts';
import { balance } from '../../src/airflow/network-balance.ts';
import type { NetworkConditions, NetworkState } from '../../src/airflow/network-state.ts';
import { createNetworkState } from '../../src/airflow/network-state.ts';
import { solveNetwork, solveNetworkByBrackets } from '../../src/airflow/solve-network.ts';
import { winter, workedHouse } from './worked-house.ts';

const pairs = [
  ['outside', 'crawl'],
  ['crawl', 'outside'],
  ['outside', 'house'],
  ['house', 'outside'],
  ['crawl', 'house'],
  ['house', 'crawl'],
] as const;

const finite = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const logarithmic = (low: number, high: number) =>
  finite(Math.log10(low), Math.log10(high)).map((power) => 10 ** power);

function opening(coefficient: fc.Arbitrary<number>): fc.Arbitrary<NetworkOpening> {
  return fc
    .tuple(
      fc.constantFrom(...pairs),
      finite(-1, 12),
      coefficient,
      fc.constantFrom(0.5, 0.6, 0.65, 0.67, 1),
      finite(-1.5, 1),
    )
    .map(([[from, to], heightM, c, exponent, windCoefficient]) => ({
      from,
      to,
      heightM,
      coefficient: c,
      exponent,
      windCoefficient,
    }));
}

function fan(flow: fc.Arbitrary<number>): fc.Arbitrary<NetworkFan> {
  return fc
    .tuple(fc.constantFrom(...pairs), flow, fc.boolean())
    .map(([[from, to], value, byVolume]) =>
      byVolume ? { from, to, flowM3PerS: value } : { from, to, flowKgPerS: value },
    );
}

const conditions: fc.Arbitrary<NetworkConditions> = fc.record({
  outdoorTemperatureC: finite(-40, 50),
  crawlTemperatureC: finite(-40, 50),
  houseTemperatureC: finite(-40, 50),
  windMPerS: finite(0, 40),
});

function withVolumes(openings: readonly NetworkOpening[], fans: readonly NetworkFan[]): NetworkInput {
  return { openings, fans, crawlVolumeM3: 83, houseVolumeM3: 310, floorHeightM: 0.9, windFactor: 0.7 };
}

/** Houses as they are found: the three pairs are joined by openings from a pin hole to an open side. */
const house: fc.Arbitrary<NetworkInput> = fc
  .tuple(
    fc.tuple(logarithmic(1e-4, 2), logarithmic(1e-4, 0.5), logarithmic(1e-4, 0.5)),
    fc.array(opening(logarithmic(1e-5, 1)), { maxLength: 14 }),
    fc.array(fan(finite(-0.1, 0.1)), { maxLength: 3 }),
  )
  .map(([[crawl, envelope, floor], others, fans]) =>
    withVolumes(
      [
        {
          from: 'outside',
          to: 'crawl',
          heightM: 0.4,
          coefficient: crawl,
          exponent: 0.5,
          windCoefficient: 0.2,
        },
        {
          from: 'house',
          to: 'outside',
          heightM: 2.6,
          coefficient: envelope,
          exponent: 0.65,
          windCoefficient: -0.5,
        },
        { from: 'crawl', to: 'house', heightM: 0.9, coefficient: floor, exponent: 0.65, windCoefficient: 0 },
        ...others,
      ],
      fans,
    ),
  );

/** Anything the types admit: nothing at all, shut zones, fans into shut zones, openings 18 powers of ten apart. */
const hostile: fc.Arbitrary<NetworkInput> = fc
  .tuple(
    fc.array(opening(fc.oneof(fc.constant(0), logarithmic(1e-12, 1e6))), { maxLength: 9 }),
    fc.array(fan(fc.oneof(fc.constant(0), finite(-20, 20))), { maxLength: 3 }),
  )
  .map(([openings, fans]) => withVolumes(openings, fans));

function netInflow(input: NetworkInput, state: NetworkState, zone: 'crawl' | 'house'): number {
  let net = 0;
  input.openings.forEach((o, i) => {
    if (o.to === zone) net += state.openingKgPerS[i]!;
    if (o.from === zone) net -= state.openingKgPerS[i]!;
  });
  input.fans?.forEach((f, i) => {
    if (f.to === zone) net += state.fanKgPerS[i]!;
    if (f.from === zone) net -= state.fanKgPerS[i]!;
  });
  return net;
}

function largestFlow(state: NetworkState): number {
  return Math.max(...Array.from(state.openingKgPerS, Math.abs), ...Array.from(state.fanKgPerS, Math.abs));
}

/** Below this many kg/s a flow counts as nil whatever the others are. */
const NIL_KG_PER_S = 1e-14;

function everyNumber(state: NetworkState): number[] {
  return [
    ...state.pressuresPa,
    ...state.openingPressurePa,
    ...state.openingKgPerS,
    ...state.openingM3PerS,
    ...state.fanKgPerS,
    state.crawlOutdoorInflowKgPerS,
    state.crawlOutdoorAirChangesPerHour,
    state.crawlToHouseKgPerS,
    state.houseToCrawlKgPerS,
    state.houseOutdoorInflowKgPerS,
    state.houseOutdoorAirChangesPerHour,
    state.houseInflowShareThroughFloor,
    state.floorPressurePa,
    state.ending.residual,
    state.ending.iterations,
  ];
}

function solved(input: NetworkInput, given: NetworkConditions): { network: AirNetwork; state: NetworkState } {
  const network = createNetwork(input);
  return { network, state: solveNetwork(network, given, createNetworkState(network)) };
}

describe('pressure network', () => {
  it('lets no air accumulate: net mass into each zone below 1e-9 of the largest flow', () => {
    fc.assert(
      fc.property(house, conditions, (input, given) => {
        const { state } = solved(input, given);
        expect(state.ending).toMatchObject({ converged: true, reason: 'tolerance-met' });
        const allowed = Math.max(1e-9 * largestFlow(state), NIL_KG_PER_S);
        expect(Math.abs(netInflow(input, state, 'crawl'))).toBeLessThanOrEqual(allowed);
        expect(Math.abs(netInflow(input, state, 'house'))).toBeLessThanOrEqual(allowed);
      }),
      { numRuns: 1000 },
    );
  });

  it('gives the flow of every opening as its own power law has it', () => {
    fc.assert(
      fc.property(house, conditions, (input, given) => {
        const { state } = solved(input, given);
        input.openings.forEach((o, i) => {
          const pressure = state.openingPressurePa[i]!;
          const size = Math.abs(pressure);
          const law =
            size < 1e-4
              ? (o.coefficient * 1e-4 ** o.exponent * pressure) / 1e-4
              : o.coefficient * size ** o.exponent * Math.sign(pressure);
          // tangents may replace the law by up to 2e-9
          expect(Math.abs(state.openingM3PerS[i]! - law)).toBeLessThanOrEqual(4e-9 * Math.abs(law) + 1e-15);
        });
      }),
    );
  });

  it('turns the sign of a flow, and nothing else, when an opening or fan is counted the other way', () => {
    const turn = <T extends { from: string; to: string }>(path: T) => ({
      ...path,
      from: path.to,
      to: path.from,
    });
    fc.assert(
      fc.property(house, conditions, (input, given) => {
        const turned = {
          ...input,
          openings: input.openings.map(turn),
          fans: input.fans!.map((f) =>
            'flowM3PerS' in f
              ? { ...turn(f), flowM3PerS: -f.flowM3PerS }
              : { ...turn(f), flowKgPerS: -f.flowKgPerS },
          ),
        } as NetworkInput;
        const one = solved(input, given).state;
        const other = solved(turned, given).state;
        expect(other.pressuresPa).toEqual(one.pressuresPa);
        one.openingKgPerS.forEach((flow, i) => {
          expect(other.openingKgPerS[i]).toBe(flow === 0 ? other.openingKgPerS[i] : -flow);
        });
        expect(other.crawlToHouseKgPerS).toBe(one.crawlToHouseKgPerS);
        expect(other.crawlOutdoorInflowKgPerS).toBe(one.crawlOutdoorInflowKgPerS);
      }),
    );
  });

  it('has net mass into a zone that never rises with the pressure of that zone', () => {
    fc.assert(
      fc.property(
        house,
        conditions,
        fc.constantFrom(1, 2),
        finite(-30, 30),
        logarithmic(1e-6, 20),
        (input, given, zone, pressure, rise) => {
          const { network, state } = solved(input, given);
          state.pressuresPa[zone] = pressure;
          balance(network, state);
          const before = state.work.inflow[zone]!;
          const largest = state.work.largest[0]!;
          state.pressuresPa[zone] = pressure + rise;
          balance(network, state);
          expect(state.work.inflow[zone]!).toBeLessThanOrEqual(before + 1e-13 * largest);
        },
      ),
    );
  });

  it('gives no flow without wind, temperature differences and fans, from whatever start', () => {
    fc.assert(
      fc.property(house, conditions, finite(-40, 50), (input, before, t) => {
        const network = createNetwork({ ...input, fans: [] });
        const state = createNetworkState(network);
        solveNetwork(network, before, state);
        const still = { outdoorTemperatureC: t, crawlTemperatureC: t, houseTemperatureC: t, windMPerS: 0 };
        solveNetwork(network, still, state);
        expect(state.ending.converged).toBe(true);
        expect(largestFlow(state)).toBeLessThan(NIL_KG_PER_S);
        expect(largestFlow(solveNetwork(network, still, createNetworkState(network)))).toBe(0);
      }),
    );
  });

  it('gives the same answer from a warm start as from a cold one', () => {
    fc.assert(
      fc.property(house, conditions, conditions, (input, before, given) => {
        const { network, state: cold } = solved(input, given);
        const warm = createNetworkState(network);
        solveNetwork(network, before, warm);
        solveNetwork(network, given, warm);
        const allowed = Math.max(1e-7 * largestFlow(cold), NIL_KG_PER_S);
        cold.openingKgPerS.forEach((flow, i) => {
          expect(Math.abs(warm.openingKgPerS[i]! - flow)).toBeLessThanOrEqual(allowed);
        });
      }),
    );
  });

  it('agrees with the search in brackets', () => {
    fc.assert(
      fc.property(house, conditions, (input, given) => {
        const { network, state } = solved(input, given);
        const referee = solveNetworkByBrackets(network, given, createNetworkState(network));
        expect(referee.ending.converged).toBe(true);
        const allowed = Math.max(1e-7 * largestFlow(referee), NIL_KG_PER_S);
        referee.openingKgPerS.forEach((flow, i) => {
          expect(Math.abs(state.openingKgPerS[i]! - flow)).toBeLessThanOrEqual(allowed);
        });
      }),
      { numRuns: 150 },
    );
  });

  it('always ends, with a reason and finite figures, whatever it is given', () => {
    fc.assert(
      fc.property(hostile, conditions, conditions, (input, first, second) => {
        const network = createNetwork(input);
        const state = createNetworkState(network);
        for (const given of [first, second]) {
          for (const solve of [solveNetwork, solveNetworkByBrackets]) {
            solve(network, given, state);
            expect(everyNumber(state).every(Number.isFinite)).toBe(true);
            const { converged, reason, iterations } = state.ending;
            expect(['tolerance-met', 'no-bracket', 'stagnated']).toContain(reason);
            expect(converged).toBe(reason === 'tolerance-met');
            expect(iterations).toBeLessThan(200_000);
            if (converged && !network.crawlHeld) {
              const allowed = Math.max(1e-9 * largestFlow(state), NIL_KG_PER_S);
              expect(Math.abs(netInflow(input, state, 'crawl'))).toBeLessThanOrEqual(allowed);
            }
          }
        }
      }),
      { numRuns: 400 },
    );
  });

  it('drives the floor by the pressure difference across it', () => {
    const network = createNetwork(workedHouse(250, 150));
    const state = createNetworkState(network);
    const flows = [0, 0.01, 0.03, 0.08].map((exhaust) => {
      const fanned = createNetwork(
        workedHouse(250, 150, [{ from: 'crawl', to: 'outside', flowM3PerS: exhaust }]),
      );
      const s = solveNetwork(fanned, winter, createNetworkState(fanned));
      return { pressure: s.floorPressurePa, net: s.crawlToHouseKgPerS - s.houseToCrawlKgPerS };
    });
    solveNetwork(network, winter, state);
    expect(flows[0]!.pressure).toBeCloseTo(state.floorPressurePa, 9);
    for (let i = 1; i < flows.length; i += 1) {
      expect(flows[i]!.pressure).toBeLessThan(flows[i - 1]!.pressure);
      expect(flows[i]!.net).toBeLessThan(flows[i - 1]!.net);
    }
    for (const { pressure, net } of flows) expect(Math.sign(net)).toBe(Math.sign(pressure));
  });
});
