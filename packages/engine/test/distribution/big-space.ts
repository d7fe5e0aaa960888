import type { Arrangement, FieldFan, FieldMachine } from '../../src/distribution/arrangement.ts';
import type { ArrangementOptions } from '../../src/distribution/arrangement-options.ts';
import type { FieldSite } from '../../src/distribution/field-site.ts';
import type { PlacingSite } from '../../src/distribution/placing-rules.ts';
import { saturationHumidityRatio } from '../../src/psychrometrics/humidity-ratio.ts';
import { rectangle } from './worked-plan.ts';

/** A crawl space of 280 m², 20 by 14 by 0.9 m: 24 piers, a cross wall with two openings, a low duct, a wet corner. */
export function bigSpace(): FieldSite {
  const heightM = 0.9;
  const wet = saturationHumidityRatio(19, 101_325);
  const corner = [
    { xM: 14.5, yM: 9.8 },
    { xM: 20, yM: 9.8 },
    { xM: 20, yM: 14 },
    { xM: 14.5, yM: 14 },
  ];
  return {
    plan: {
      outline: rectangle(20, 14),
      heightM,
      interiorWalls: [
        {
          id: 'cross',
          from: { xM: 10, yM: 0 },
          to: { xM: 10, yM: 14 },
          thicknessM: 0.2,
          openings: [
            { offsetM: 2, widthM: 1.2, heightM: 0.7 },
            { offsetM: 10, widthM: 0.9, heightM: 0.7 },
          ],
        },
      ],
      ducts: [
        {
          id: 'trunk',
          path: [
            { xM: 1.5, yM: 8.2 },
            { xM: 18.5, yM: 8.2 },
          ],
          widthM: 0.4,
          clearanceM: 0.41,
        },
      ],
      piers: [2.4, 4.9, 7.4, 12.5, 15, 17.5].flatMap((xM) =>
        [2.8, 5.6, 9.6, 11.9].map((yM) => ({
          id: `${xM} ${yM}`,
          at: { xM, yM },
          widthM: 0.4,
          depthM: 0.4,
        })),
      ),
    },
    vapor: [
      {
        what: 'ground',
        kind: 'ground',
        place: { kind: 'floor', except: [corner] },
        conductanceKgPerS: 1.2 * 0.002 * 0.012,
        per: 'each',
        humidityRatio: wet,
      },
      {
        what: 'wet corner',
        kind: 'ground',
        place: { kind: 'floor', within: corner },
        conductanceKgPerS: 1.2 * 0.002 * 0.12,
        per: 'each',
        humidityRatio: wet,
      },
      {
        what: 'rim',
        kind: 'outdoor',
        place: { kind: 'walls' },
        conductanceKgPerS: (1.2 * 280 * heightM * 0.12) / 3600,
        per: 'whole',
        humidityRatio: 0.0165,
      },
    ],
    heat: [
      { what: 'ground', place: { kind: 'floor' }, conductanceWPerK: 4.5, per: 'each', temperatureC: 19 },
      { what: 'floor above', place: { kind: 'floor' }, conductanceWPerK: 1.3, per: 'each', temperatureC: 24 },
    ],
  };
}

/** Its machine, as found near the door. */
export const bigMachine: FieldMachine = {
  intake: { xM: 1.2, yM: 1.1 },
  outlet: { xM: 1.95, yM: 1.1 },
  bearingDeg: 90,
  flowM3PerS: 0.16,
  outletM2: 0.05,
  throwConstant: 4,
  ratedKgPerDay: 60,
  ratedLPerKWh: 2.1,
  setPoint: 0.55,
};

export const bigArrangement: Arrangement = { machine: bigMachine };

/** The machine dragged on by a quarter meter. */
export const bigDragged: Arrangement = {
  machine: { ...bigMachine, intake: { xM: 1.45, yM: 1.1 }, outlet: { xM: 2.2, yM: 1.1 } },
};

const placing: PlacingSite = {
  door: { xM: 0.4, yM: 3.2 },
  serviceReachM: 25,
  drains: [{ at: { xM: 5, yM: 0.3 }, inletM: 0.4 }],
  pump: { liftM: 4, reachM: 14 },
};

const fan: Omit<FieldFan, 'at' | 'bearingDeg'> = {
  flowM3PerS: 0.12,
  outletM2: 0.05,
  throwConstant: 5,
  powerW: 30,
};

/** A search over it with everything that may be tried. */
export const bigSearch: ArrangementOptions = {
  mixingM2PerS: 0.01,
  site: placing,
  machine: bigMachine,
  present: bigArrangement,
  fan,
  setPoints: [0.5, 0.45],
  remoteSetPoint: 0.6,
  spacingM: 1.75,
};
