import { describe, expect, it } from 'vitest';
import {
  freeThrowM,
  jetFlowM3PerS,
  jetMomentumN,
  jetSpeedMPerS,
  throwInSpace,
} from '../../src/distribution/jet.ts';
import { bernoulli } from '../../src/distribution/lane-operator.ts';
import {
  backgroundMixing,
  buoyantMixingM2PerS,
  jetMixingM2PerS,
  openingExchangeM2PerS,
} from '../../src/distribution/mixing.ts';
import { meanShare, reachLengthM, shareAtFarWall } from '../../src/distribution/reach.ts';

describe('jets (ASHRAE Handbook - Fundamentals, space air diffusion; worked out to the digits shown)', () => {
  const outlet = { flowM3PerS: 0.085, outletM2: 0.03, throwConstant: 4 };

  it.each([
    { ...outlet, throwConstant: 5.7, throwM: 7.8, entrained: 6.1 },
    { ...outlet, throwM: 5.5, entrained: 8.7 },
    { flowM3PerS: 0.085, outletM2: 0.06, throwConstant: 3, throwM: 2.9, entrained: 8.2 },
    { flowM3PerS: 0.05, outletM2: 0.03, throwConstant: 4, throwM: 3.2, entrained: 8.7 },
  ])(
    '$flowM3PerS m³/s from $outletM2 m², K_c $throwConstant: throw $throwM m, $entrained times its air at 3 m',
    (row) => {
      // Half of the last digit, and a hundredth for 2.9, which is 2.914.
      expect(Math.abs(freeThrowM(row) - row.throwM)).toBeLessThanOrEqual(0.05);
      expect(Math.abs(jetFlowM3PerS(row, 3) / row.flowM3PerS - row.entrained)).toBeLessThanOrEqual(0.05);
    },
  );

  it('speed falls as one over the distance, from no more than that at the outlet', () => {
    expect(jetSpeedMPerS(outlet, 1e-9)).toBeCloseTo(2.8333, 4);
    expect(jetSpeedMPerS(outlet, 4) / jetSpeedMPerS(outlet, 8)).toBeCloseTo(2, 12);
    // At the throw without the cut of zone 4 it is the terminal speed.
    expect(jetSpeedMPerS(outlet, freeThrowM(outlet) / 0.7)).toBeCloseTo(0.25, 12);
    expect(jetMomentumN(outlet, 1.2)).toBeCloseTo(0.289, 3);
  });

  it('a low space, an obstacle, or the outlet too near to one ends it', () => {
    expect(throwInSpace(outlet, 0.8, 20)).toEqual({ throwM: 3.2, endedBy: 'low-space' });
    expect(throwInSpace(outlet, 2, 20)).toEqual({ throwM: freeThrowM(outlet), endedBy: 'speed' });
    expect(throwInSpace(outlet, 0.8, 1.1)).toEqual({ throwM: 1.1, endedBy: 'obstacle' });
    expect(throwInSpace(outlet, 0.8, 0.5)).toEqual({ throwM: 0.5, endedBy: 'obstacle' });
    expect(throwInSpace(outlet, 0.8, 0.499)).toEqual({ throwM: 0, endedBy: 'outlet-blocked' });
  });
});

describe('mixing', () => {
  // Printed in m²/s to three decimals at differences of 0.2, 0.5 and 1 K.
  it.each([
    // The third is printed as 0.007; the formula gives 0.00646.
    [0.5, 0.003, 0.005, 0.006],
    [0.8, 0.006, 0.009, 0.013],
    [1.2, 0.011, 0.017, 0.024],
    [2.4, 0.03, 0.048, 0.068],
  ])('by warmth in a space %d m high', (height, ...printed) => {
    [0.2, 0.5, 1].forEach((spread, k) => {
      expect(Math.abs(buoyantMixingM2PerS(height, spread) - printed[k]!)).toBeLessThanOrEqual(0.00051);
    });
  });

  it('regression of rooms: 40 to 60 m³ at 0.2 to 5 air changes give 0.0013 to 0.0124 m²/s', () => {
    // Without warmth: the regression alone.
    expect(backgroundMixing(40, 2.5, 0.2, 0).value).toBeCloseTo(0.0013, 3);
    expect(backgroundMixing(60, 2.5, 5, 0).value).toBeCloseTo(0.0124, 3);
  });

  it('band of the default space: 0.003, 0.009, 0.02', () => {
    const band = backgroundMixing(96, 0.8, 0.15);
    expect(band.low).toBeCloseTo(0.003, 3);
    expect(band.value).toBeCloseTo(0.009, 3);
    expect(band.high).toBeCloseTo(0.02, 2);
  });

  it('a jet of 0.085 m³/s from 0.03 m² in 96 m³: 0.011 m²/s', () => {
    expect(Math.abs(jetMixingM2PerS(0.085, 0.03, 96, 0.8) - 0.011)).toBeLessThan(0.0005);
  });

  it.each([
    [0.15, 0.0015],
    [0.3, 0.0042],
    [0.64, 0.0132],
    [0.8, 0.0185],
  ])('opening %d m high at 0.5 K: %d m³/s each way and meter', (height, printed) => {
    expect(Math.abs(openingExchangeM2PerS(height, 0.5) - printed)).toBeLessThanOrEqual(0.00006);
  });
});

describe('reach', () => {
  // Height 0.8 m; printed with one digit below 10 m and none above.
  it.each([
    [0.003, 1.1, 1.9, 4.9, 7.6, 12, 17],
    [0.009, 1.9, 3.3, 8.5, 13, 21, 29],
    [0.02, 2.8, 4.9, 13, 20, 31, 44],
  ])('K %d m²/s', (mixing, ...printed) => {
    [2.4e-3, 8e-4, 1.2e-4, 5e-5, 2e-5, 1e-5].forEach((source, k) => {
      const reach = reachLengthM(1.2, 0.8, mixing, source);
      // "31" for 30.98 and "13" for 12.65 round as they should.
      expect(Math.abs(reach - printed[k]!)).toBeLessThanOrEqual(printed[k]! < 10 ? 0.06 : 0.55);
    });
  });

  it.each([
    [0.25, 0.97, 0.98],
    [0.5, 0.89, 0.92],
    [1, 0.65, 0.76],
    [1.5, 0.43, 0.6],
    [2, 0.27, 0.48],
    [3, 0.1, 0.33],
  ])('length over reach %d: %d of the drying at the far wall, %d in the mean', (ratio, far, mean) => {
    expect(Math.abs(shareAtFarWall(ratio) - far)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(meanShare(ratio) - mean)).toBeLessThanOrEqual(0.0051);
  });
});

describe('exponential weighting', () => {
  it.each([-700, -30, -2, -0.2500001, -0.25, -0.01, 0.01, 0.25, 0.2500001, 2, 30, 700])(
    'Péclet number %d: what goes up less what comes down is the flow',
    (peclet) => {
      expect(bernoulli(-peclet) - bernoulli(peclet)).toBeCloseTo(peclet, 12);
      const exact = peclet / Math.expm1(peclet);
      expect(Math.abs(bernoulli(peclet) / exact - 1)).toBeLessThan(2e-15);
    },
  );

  it('still air: 1', () => {
    expect(bernoulli(0)).toBe(1);
  });
});
