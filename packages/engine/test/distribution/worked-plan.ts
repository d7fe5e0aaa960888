import type { Arrangement, FieldFan, FieldMachine } from '../../src/distribution/arrangement.ts';
import type { FieldPlan } from '../../src/distribution/field-plan.ts';
import type { FieldSite } from '../../src/distribution/field-site.ts';
import type { Point } from '../../src/geometry/point.ts';
import { saturationHumidityRatio } from '../../src/psychrometrics/humidity-ratio.ts';

/** A rectangle from the origin. */
export function rectangle(widthM: number, depthM: number): Point[] {
  return [
    { xM: 0, yM: 0 },
    { xM: widthM, yM: 0 },
    { xM: widthM, yM: depthM },
    { xM: 0, yM: depthM },
  ];
}

/** What may differ between the cases of the worked plan. */
export interface WorkedPlan {
  readonly walls?: boolean;
  readonly openFraction?: number;
  readonly cornerFraction?: number;
  readonly airChangesPerHour?: number;
}

/**
 * The worked plan: 12 by 10 by 0.8 m, soil at 20 °C, 1 % of the ground wet and open (10 % in a far corner of 3.5 by 3
 * m), outdoor air of 17 g/kg leaking in along the rim, a house of 24 °C above; with `walls` (default) a cross wall with
 * an opening of 1 m and a low duct.
 */
export function workedSite({
  walls = true,
  openFraction = 0.01,
  cornerFraction = 0.1,
  airChangesPerHour = 0.15,
}: WorkedPlan = {}): FieldSite {
  const heightM = 0.8;
  const plan: FieldPlan = {
    outline: rectangle(12, 10),
    heightM,
    ...(walls
      ? {
          interiorWalls: [
            {
              id: 'cross',
              from: { xM: 6, yM: 0 },
              to: { xM: 6, yM: 10 },
              openings: [{ offsetM: 4.5, widthM: 1, heightM: 0.8 * heightM }],
            },
          ],
          ducts: [
            {
              id: 'low',
              path: [
                { xM: 1, yM: 6.5 },
                { xM: 11, yM: 6.5 },
              ],
              widthM: 0.25,
              clearanceM: 0.2 * heightM,
            },
          ],
        }
      : {}),
  };
  const corner = [
    { xM: 8.5, yM: 7 },
    { xM: 12, yM: 7 },
    { xM: 12, yM: 10 },
    { xM: 8.5, yM: 10 },
  ];
  const wet = saturationHumidityRatio(20, 101_325);
  const perOpenM2 = 1.2 * 0.002;
  return {
    plan,
    vapor: [
      {
        what: 'ground',
        kind: 'ground',
        place: { kind: 'floor', except: [corner] },
        conductanceKgPerS: perOpenM2 * openFraction,
        per: 'each',
        humidityRatio: wet,
      },
      {
        what: 'damp corner',
        kind: 'ground',
        place: { kind: 'floor', within: corner },
        conductanceKgPerS: perOpenM2 * cornerFraction,
        per: 'each',
        humidityRatio: wet,
      },
      {
        what: 'rim',
        kind: 'outdoor',
        place: { kind: 'walls' },
        conductanceKgPerS: (1.2 * 120 * heightM * airChangesPerHour) / 3600,
        per: 'whole',
        humidityRatio: 0.017,
      },
    ],
    heat: [
      { what: 'ground', place: { kind: 'floor' }, conductanceWPerK: 5, per: 'each', temperatureC: 20 },
      { what: 'floor above', place: { kind: 'floor' }, conductanceWPerK: 1.5, per: 'each', temperatureC: 24 },
    ],
  };
}

/** The machine of the worked plan, its jet along +x. */
export function workedMachine(change: Partial<FieldMachine> = {}): FieldMachine {
  return {
    intake: { xM: 1, yM: 1 },
    outlet: { xM: 1.75, yM: 1 },
    bearingDeg: 90,
    throwM: 3.2,
    mixingM2PerS: 0.012,
    flowM3PerS: 0.085,
    outletM2: 0.03,
    throwConstant: 4,
    ratedKgPerDay: 33.1,
    ratedLPerKWh: 2,
    setPoint: 0.55,
    cycling: 'ideal',
    ...change,
  };
}

/** The fan of the worked plan's repairs, through the opening of the cross wall. */
export const workedFan: FieldFan = {
  at: { xM: 5, yM: 5 },
  bearingDeg: 90,
  throwM: 3.2,
  mixingM2PerS: 0.012,
  flowM3PerS: 0.1,
  outletM2: 0.05,
  throwConstant: 5,
  powerW: 0,
};

/** The machine alone. */
export function machineAlone(change: Partial<FieldMachine> = {}): Arrangement {
  return { machine: workedMachine(change) };
}
