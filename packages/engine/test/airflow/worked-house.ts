import type { NetworkFan, NetworkInput } from '../../src/airflow/network.ts';

/** Flow coefficient of a leakage area in cm2 at 4 Pa and 1.2 kg/m3, as the worked house states it. */
function coefficient(leakageCm2: number, exponent: number): number {
  return (leakageCm2 * 1e-4 * Math.sqrt(8 / 1.2)) / 4 ** exponent;
}

/**
 * The worked house: 120 m2, house 300 m3, crawl space 96 m3; per face a quarter of the crawl opening at 0.3 m and two
 * house openings at 1.3 and 2.7 m that share 60 % of 500 cm2; ceiling 40 % at 3.3 m; floor at 0.8 m; shelter 0.5.
 */
export function workedHouse(
  crawlOpeningCm2: number,
  floorLeakageCm2: number,
  fans: readonly NetworkFan[] = [],
): NetworkInput {
  const crawlExponent = crawlOpeningCm2 > 800 ? 0.5 : 0.65;
  const faces = [0.6, -0.3, -0.65, -0.65].flatMap((windCoefficient) => [
    {
      from: 'outside' as const,
      to: 'crawl' as const,
      heightM: 0.3,
      coefficient: coefficient(crawlOpeningCm2 / 4, crawlExponent),
      exponent: crawlExponent,
      windCoefficient,
    },
    ...[1.3, 2.7].map((heightM) => ({
      from: 'outside' as const,
      to: 'house' as const,
      heightM,
      coefficient: coefficient((500 * 0.6) / 8, 0.65),
      exponent: 0.65,
      windCoefficient,
    })),
  ]);
  return {
    openings: [
      ...faces,
      {
        from: 'outside',
        to: 'house',
        heightM: 3.3,
        coefficient: coefficient(500 * 0.4, 0.65),
        exponent: 0.65,
        windCoefficient: -0.4,
      },
      {
        from: 'crawl',
        to: 'house',
        heightM: 0.8,
        coefficient: coefficient(floorLeakageCm2, 0.65),
        exponent: 0.65,
        windCoefficient: 0,
      },
    ],
    fans,
    crawlVolumeM3: 96,
    houseVolumeM3: 300,
    floorHeightM: 0.8,
    windFactor: 0.5,
  };
}

export const winter = {
  outdoorTemperatureC: 2,
  crawlTemperatureC: 10,
  houseTemperatureC: 21,
  windMPerS: 2.5,
};

export const summer = {
  outdoorTemperatureC: 27,
  crawlTemperatureC: 22,
  houseTemperatureC: 24,
  windMPerS: 1.5,
};
