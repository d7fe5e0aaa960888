import { describe, expect, it } from 'vitest';
import type { NetworkFan, NetworkInput, NetworkOpening } from '../../src/airflow/network.ts';
import { createNetwork } from '../../src/airflow/network.ts';
import type { NetworkConditions } from '../../src/airflow/network-state.ts';
import { createNetworkState } from '../../src/airflow/network-state.ts';
import { exponentKind, raise } from '../../src/airflow/pressure-power.ts';
import { solveNetwork, solveNetworkByBrackets } from '../../src/airflow/solve-network.ts';
import { winter, workedHouse } from './worked-house.ts';

const still: NetworkConditions = {
  outdoorTemperatureC: 14,
  crawlTemperatureC: 14,
  houseTemperatureC: 14,
  windMPerS: 0,
};

function path(
  from: NetworkOpening['from'],
  to: NetworkOpening['to'],
  coefficient: number,
  exponent = 0.65,
): NetworkOpening {
  return { from, to, heightM: 0.5, coefficient, exponent, windCoefficient: 0.3 };
}

function network(openings: readonly NetworkOpening[], fans: readonly NetworkFan[] = []) {
  return createNetwork({
    openings,
    fans,
    crawlVolumeM3: 70,
    houseVolumeM3: 280,
    floorHeightM: 0.7,
    windFactor: 0.4,
  });
}

function solve(openings: readonly NetworkOpening[], fans: readonly NetworkFan[], given: NetworkConditions) {
  const made = network(openings, fans);
  return solveNetwork(made, given, createNetworkState(made));
}

describe('one zone by hand', () => {
  it('has the suction that a fan needs to draw its flow through one opening', () => {
    const state = solve(
      [path('outside', 'crawl', 0.02, 0.5), path('outside', 'house', 0.03), path('crawl', 'house', 0)],
      [{ from: 'crawl', to: 'outside', flowM3PerS: 0.05 }],
      still,
    );
    expect(state.pressuresPa[1]!).toBeCloseTo(-((0.05 / 0.02) ** 2), 9);
    expect(state.pressuresPa[2]!).toBe(0);
    // 0.05 m3/s at 14 C, counted as standard air
    const density = 353.2 / (14 + 273.15);
    expect(state.crawlOutdoorInflowKgPerS).toBeCloseTo(0.05 * density, 12);
    expect(state.crawlOutdoorAirChangesPerHour).toBeCloseTo((0.05 * density * 3600) / (1.2 * 70), 9);
  });

  it('has the stack and wind pressure of two openings at two heights', () => {
    const given = { outdoorTemperatureC: -5, crawlTemperatureC: 6, houseTemperatureC: 20, windMPerS: 5 };
    const low = { ...path('outside', 'house', 0.01, 0.5), heightM: 1, windCoefficient: 0.6 };
    const high = { ...path('house', 'outside', 0.01, 0.5), heightM: 4, windCoefficient: -0.4 };
    const state = solve([low, high, path('outside', 'crawl', 0.01)], [], given);
    const outdoor = 353.2 / 268.15;
    const indoor = 353.2 / 293.15;
    const stack = (outdoor - indoor) * 9.80665 * 3;
    const wind = 0.5 * outdoor * (0.4 * 5) ** 2;
    const total = stack + (0.6 + 0.4) * wind;
    // same mass in and out of equal openings: rho_o^2 dp_low = rho_i^2 dp_high
    expect(state.openingPressurePa[0]! + state.openingPressurePa[1]!).toBeCloseTo(total, 9);
    expect((state.openingPressurePa[0]! * outdoor) / (state.openingPressurePa[1]! * indoor)).toBeCloseTo(
      indoor / outdoor,
      7,
    );
    expect(state.openingM3PerS[0]!).toBeCloseTo(0.01 * Math.sqrt(state.openingPressurePa[0]!), 9);
    expect(state.openingKgPerS[1]!).toBeCloseTo(state.openingM3PerS[1]! * indoor, 12);
  });
});

describe('fans', () => {
  const openings = [
    path('outside', 'crawl', 0.05),
    path('outside', 'house', 0.02),
    path('crawl', 'house', 0.01),
  ];
  const cold = { ...still, outdoorTemperatureC: -10, crawlTemperatureC: 5, houseTemperatureC: 22 };

  it('move volume at the density of the zone that the air leaves, whichever way they run', () => {
    const along = solve(openings, [{ from: 'crawl', to: 'house', flowM3PerS: 0.03 }], cold);
    expect(along.fanKgPerS[0]!).toBeCloseTo((0.03 * 353.2) / 278.15, 12);
    const back = solve(openings, [{ from: 'crawl', to: 'house', flowM3PerS: -0.03 }], cold);
    expect(back.fanKgPerS[0]!).toBeCloseTo((-0.03 * 353.2) / 295.15, 12);
    const mass = solve(openings, [{ from: 'house', to: 'outside', flowKgPerS: 0.04 }], cold);
    expect(mass.fanKgPerS[0]!).toBe(0.04);
  });

  it('count in the inflows of the zone they blow into', () => {
    const supply = solve(openings, [{ from: 'outside', to: 'crawl', flowKgPerS: 0.2 }], cold);
    expect(supply.crawlOutdoorInflowKgPerS).toBeCloseTo(0.2, 12);
    const up = solve(openings, [{ from: 'crawl', to: 'house', flowKgPerS: 0.2 }], cold);
    expect(up.crawlToHouseKgPerS).toBeCloseTo(0.2, 12);
    expect(up.houseInflowShareThroughFloor).toBeCloseTo(0.2 / (0.2 + up.houseOutdoorInflowKgPerS), 12);
    const down = solve(openings, [{ from: 'house', to: 'crawl', flowKgPerS: 0.2 }], cold);
    expect(down.houseToCrawlKgPerS).toBeCloseTo(0.2, 12);
    const fresh = solve(openings, [{ from: 'outside', to: 'house', flowKgPerS: 0.2 }], cold);
    expect(fresh.houseOutdoorInflowKgPerS).toBeCloseTo(0.2, 12);
  });

  it('run at the share that the conditions give', () => {
    const fan = { from: 'house', to: 'outside', flowKgPerS: 0.08 } as const;
    const quarter = solve(openings, [fan], { ...cold, fanShares: [0.25] });
    const small = solve(openings, [{ ...fan, flowKgPerS: 0.02 }], cold);
    expect(quarter.floorPressurePa).toBeCloseTo(small.floorPressurePa, 12);
    expect(() => solve(openings, [fan], { ...cold, fanShares: [] })).toThrow(
      'fan shares must be from 0 to 100, one for each fan; got undefined',
    );
    expect(() => solve(openings, [fan], { ...cold, fanShares: [-0.1] })).toThrow('got -0.1');
  });
});

describe('zones without an open path', () => {
  it('are held at zero, and end well', () => {
    expect(solve([], [], winter).ending).toMatchObject({ converged: true, residual: 0 });
    const alone = solve([path('outside', 'house', 0.02)], [], winter);
    expect(alone.ending.converged).toBe(true);
    expect(alone.pressuresPa[1]).toBe(0);
    const joined = solve([path('crawl', 'house', 0.02)], [], winter);
    expect(joined.ending.converged).toBe(true);
    expect(joined.crawlToHouseKgPerS).toBeCloseTo(0, 12);
  });

  it('end without an answer when a fan blows into them, and say how much', () => {
    for (const solver of [solveNetwork, solveNetworkByBrackets]) {
      const shut = network(
        [path('outside', 'house', 0.02)],
        [{ from: 'outside', to: 'crawl', flowKgPerS: 0.03 }],
      );
      const state = solver(shut, winter, createNetworkState(shut));
      expect(state.ending).toMatchObject({ converged: false, reason: 'no-bracket', residual: 0.03 });
      const both = network(
        [path('crawl', 'house', 0.02)],
        [{ from: 'house', to: 'outside', flowKgPerS: 0.01 }],
      );
      expect(solver(both, winter, createNetworkState(both)).ending.reason).toBe('no-bracket');
      const pinhole = network(
        [path('outside', 'crawl', 1e-9), path('outside', 'house', 0.02)],
        [{ from: 'outside', to: 'crawl', flowKgPerS: 0.03 }],
      );
      expect(solver(pinhole, winter, createNetworkState(pinhole)).ending.reason).toBe('no-bracket');
    }
  });

  it('pass on what a fan brings in when another takes it out', () => {
    const state = solve(
      [path('outside', 'house', 0.02), path('outside', 'crawl', 0)],
      [
        { from: 'outside', to: 'crawl', flowKgPerS: 0.03 },
        { from: 'crawl', to: 'house', flowKgPerS: 0.03 },
      ],
      winter,
    );
    expect(state.ending.converged).toBe(true);
    expect(state.crawlOutdoorInflowKgPerS).toBeCloseTo(0.03, 12);
  });

  it('do not spoil the next solve of the same state', () => {
    const made = network(
      [path('outside', 'crawl', 1e-9), path('outside', 'house', 0.02), path('crawl', 'house', 1e-9)],
      [{ from: 'outside', to: 'crawl', flowKgPerS: 0.03 }],
    );
    const state = createNetworkState(made);
    expect(solveNetwork(made, winter, state).ending.converged).toBe(false);
    const off = { ...winter, fanShares: [0] };
    const fresh = solveNetwork(made, off, createNetworkState(made));
    expect(solveNetwork(made, off, state).pressuresPa).toEqual(fresh.pressuresPa);
  });
});

describe('powers of pressure', () => {
  it('equal the general power within 1e-14 relative over 30 powers of ten', () => {
    for (const exponent of [0.5, 0.6, 0.65, 0.67, 1]) {
      const kind = exponentKind(exponent);
      for (let tenth = -100; tenth <= 200; tenth += 1) {
        const pressure = 1.0371 * 10 ** (tenth / 10);
        expect(Math.abs(raise(pressure, kind, exponent) / pressure ** exponent - 1)).toBeLessThan(1e-14);
      }
    }
  });

  it('have no step where the table begins, ends and changes anchors', () => {
    const kind = exponentKind(0.65);
    for (const edge of [2 ** -14, 2 ** 12, 1, 1 + 1 / 32, 2, 4 - 1 / 16]) {
      const below = raise(edge * (1 - 1e-12), kind, 0.65);
      const above = raise(edge * (1 + 1e-12), kind, 0.65);
      expect(above / below - 1).toBeGreaterThan(0);
      expect(above / below - 1).toBeLessThan(2e-12);
    }
  });
});

describe('limits', () => {
  const input: NetworkInput = workedHouse(250, 150);
  const made = createNetwork(input);

  it('takes conditions at their limits and refuses them just outside', () => {
    const state = createNetworkState(made);
    for (const given of [
      { ...winter, outdoorTemperatureC: -60 },
      { ...winter, houseTemperatureC: 90 },
      { ...winter, windMPerS: 100 },
    ]) {
      expect(solveNetwork(made, given, state).ending.converged).toBe(true);
    }
    expect(() => solveNetwork(made, { ...winter, outdoorTemperatureC: -60.1 }, state)).toThrow(
      'air temperatures must be from -60 to 90 C; got -60.1 to 21',
    );
    expect(() => solveNetwork(made, { ...winter, crawlTemperatureC: Number.NaN }, state)).toThrow('NaN');
    expect(() => solveNetwork(made, { ...winter, windMPerS: -0.1 }, state)).toThrow(
      'wind speed must be from 0 to 100 m/s; got -0.1',
    );
  });

  it('refuses a state of another network', () => {
    const other = createNetworkState(network([path('outside', 'house', 0.02)]));
    expect(() => solveNetwork(made, winter, other)).toThrow('network with other openings or fans');
  });

  it('refuses openings and fans outside their ranges, by number and name', () => {
    const bad: [NetworkOpening, string][] = [
      [{ ...path('outside', 'crawl', -1), name: 'hatch' }, 'opening 1 (hatch): coefficient must be from 0'],
      [path('outside', 'crawl', 0.1, 0.4), 'opening 1: exponent must be from 0.5 to 1; got 0.4'],
      [path('crawl', 'crawl', 0.1), 'opening 1 must join two different zones; got crawl'],
      [
        path('attic' as 'house', 'crawl', 0.1),
        'opening 1 must join outside, crawl or house; got attic and crawl',
      ],
      [{ ...path('outside', 'crawl', 0.1), heightM: 51 }, 'opening 1: height, m, must be from -20 to 50'],
      [{ ...path('outside', 'crawl', 0.1), windCoefficient: 3.1 }, 'wind coefficient must be from -3 to 3'],
    ];
    for (const [opening, message] of bad) expect(() => network([opening])).toThrow(message);
    expect(() =>
      network([], [{ name: 'bath', from: 'house', to: 'outside', flowM3PerS: Number.NaN }]),
    ).toThrow('fan 1 (bath): flow must be a number');
    expect(() => createNetwork({ ...input, crawlVolumeM3: 0 })).toThrow(
      'crawl volume, m3, must be from 0.01',
    );
  });
});
