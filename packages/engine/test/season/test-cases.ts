import { defaultSeasonCase } from '../../src/season/default-case.ts';
import type { SeasonCase } from '../../src/season/season-case.ts';
import { prototypeCases, prototypeDryer, prototypeWeather } from './prototype-year.ts';

/** A space with everything in it: ducts, rising damp, a film on the walls, supply leak, two machines, fans, failures. */
export function fullCase(): SeasonCase {
  const base = defaultSeasonCase(prototypeWeather());
  return {
    ...base,
    name: 'everything',
    cover: {
      ...base.cover,
      zones: [
        { areaM2: 90, openFraction: 0.02, sheetPermeanceKgPerM2SPa: 3.4e-12, dryLayerResistanceSPerM: 500 },
        { areaM2: 30, openFraction: 0.15, sheetPermeanceKgPerM2SPa: 1e-12, dryLayerResistanceSPerM: 900 },
      ],
      seams: { lengthM: 60, gapM: 0.004, lapM: 0.15, pumpingFactor: 3 },
      standingWaterAreaM2: 1.5,
    },
    walls: { ...base.walls, capillary: { ...base.walls.capillary, lengthM: 12 } },
    ducts: { ...base.ducts, areaM2: 18, supplyFlowM3PerS: 0.012, coolingSupplyC: 12.5 },
    airExchange: {
      kind: 'fixed',
      airChangesPerHour: 0.4,
      perKelvin: 0.01,
      referenceC: 21,
      houseAirChangesPerHour: 0.05,
    },
    machines: [
      { ...prototypeDryer, setPoint: 0.6 },
      { ...prototypeDryer, ratedKgPerDay: 12, setPoint: 0.52 },
    ],
    fans: [{ powerW: 25, runShare: 0.5, exhaustM3PerS: 0 }],
    otherWaterKgPerDay: 0.4,
    failures: [{ what: 'dehumidifier', fromHour: 4344, toHour: 4344 + 336 }],
  };
}

/** A network of four walls of vents, a leaky floor and a house: the reference example of the pressure network. */
export function networkCase(ventAreaCm2: number): SeasonCase {
  const base = defaultSeasonCase(prototypeWeather());
  const coefficient = (areaCm2: number, n: number) => (areaCm2 * 1e-4 * Math.sqrt(8 / 1.2)) / 4 ** n;
  const faces = [0.6, -0.3, -0.65, -0.65].map((c) => 0.25 * c);
  const ventExponent = ventAreaCm2 > 800 ? 0.5 : 0.65;
  return {
    ...base,
    name: `network ${ventAreaCm2}`,
    airExchange: {
      kind: 'network',
      network: {
        crawlVolumeM3: 96,
        houseVolumeM3: 300,
        floorHeightM: 0.8,
        windFactor: 1,
        openings: [
          ...faces.flatMap((windCoefficient) => [
            {
              from: 'outside' as const,
              to: 'crawl' as const,
              heightM: 0.3,
              coefficient: coefficient(ventAreaCm2 / 4, ventExponent),
              exponent: ventExponent,
              windCoefficient,
            },
            ...[1.3, 2.7].map((heightM) => ({
              from: 'outside' as const,
              to: 'house' as const,
              heightM,
              coefficient: coefficient((0.6 * 500) / 8, 0.65),
              exponent: 0.65,
              windCoefficient,
            })),
          ]),
          {
            from: 'outside',
            to: 'house',
            heightM: 3.3,
            coefficient: coefficient(0.4 * 500, 0.65),
            exponent: 0.65,
            windCoefficient: -0.1,
          },
          {
            from: 'crawl',
            to: 'house',
            heightM: 0.8,
            coefficient: coefficient(150, 0.65),
            exponent: 0.65,
            windCoefficient: 0,
          },
        ],
      },
    },
  };
}

export { prototypeCases, prototypeDryer, prototypeWeather };
