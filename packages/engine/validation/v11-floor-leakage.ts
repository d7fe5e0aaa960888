import { crawlNetwork } from '../src/airflow/build.ts';
import { createNetwork, type NetworkInput } from '../src/airflow/network.ts';
import { createNetworkState } from '../src/airflow/network-state.ts';
import { solveNetwork } from '../src/airflow/solve-network.ts';
import { defaultSeasonCase } from '../src/season/default-case.ts';
import { change, fixed, rises } from './figures.ts';
import { crawlFacts } from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Study } from './study.ts';

/** Exhaust of the house, m³/s; below zero it is blown in. */
const EXHAUST = [-0.1, -0.05, 0, 0.05, 0.1] as const;

/** Pressure across the floor, Pa, and air up through it, g/s, negative down. */
function floor(network: NetworkInput): { pressurePa: number; gramsPerS: number } {
  const ready = createNetwork(network);
  const state = solveNetwork(
    ready,
    { outdoorTemperatureC: 5, crawlTemperatureC: 12, houseTemperatureC: 21, windMPerS: 0 },
    createNetworkState(ready),
  );
  return {
    pressurePa: state.floorPressurePa,
    gramsPerS: 1000 * (state.crawlToHouseKgPerS - state.houseToCrawlKgPerS),
  };
}

function house(exhaustM3PerS: number): NetworkInput {
  const facts = {
    ...crawlFacts(defaultSeasonCase()),
    fans: [{ from: 'house', to: 'outside', flowM3PerS: exhaustM3PerS }] as const,
  };
  return crawlNetwork(facts).network;
}

/** The same leakage of the floor in ten holes instead of one. */
function tenHoles(network: NetworkInput): NetworkInput {
  return {
    ...network,
    openings: network.openings.flatMap((one) =>
      one.from === 'crawl' && one.to === 'house'
        ? Array.from({ length: 10 }, () => ({ ...one, coefficient: one.coefficient / 10 }))
        : [one],
    ),
  };
}

/** What drives crawl air into the house. */
export const floorLeakage: Study = {
  id: 'V11',
  study: 'Laboratory and field work of a Finnish dissertation on what comes up through a floor.',
  published: [
    {
      level: 'B',
      says: 'How much of the particles came through followed the pressure difference, not the number of holes.',
      source: s.finnishSpores,
    },
    {
      level: 'B',
      says: 'Exhaust ventilation, which pulls the house below the space, is a risk.',
      source: s.finnishSpores,
    },
  ],
  given: ['A floor with holes, pressure differences across it.'],
  assumed: [
    'Default plan and the usual leaks of the network, 5 °C outdoors, 12 °C below, 21 °C above, no wind; fans of the house from 0.1 m³/s in to 0.1 m³/s out.',
    'Particles are taken to come with the air. Network of pressures alone; no year is run.',
  ],
  cases: [],
  evaluate: () => {
    const swept = EXHAUST.map((exhaust) => floor(house(exhaust)));
    const monotone = rises(swept.map((one) => one.pressurePa)) && rises(swept.map((one) => one.gramsPerS));
    const signs = swept.every(({ pressurePa, gramsPerS }) => Math.sign(pressurePa) === Math.sign(gramsPerS));
    const one = floor(house(0.05)).gramsPerS;
    const ten = floor(tenHoles(house(0.05))).gramsPerS;
    const same = Math.abs(ten - one) <= 1e-6 * Math.abs(one);
    const rest = swept[EXHAUST.indexOf(0)]!.gramsPerS;
    const most = swept.at(-1)!.gramsPerS;
    return [
      {
        quantity: 'air up through the floor over the pressure across it',
        level: 'B',
        published: 'rises with pressure, and turns with its sign',
        ours: swept
          .map(({ pressurePa, gramsPerS }) => `${change(pressurePa, 2)} Pa ${change(gramsPerS, 1)} g/s`)
          .join(', '),
        pass: monotone && signs,
        ...(monotone && signs ? {} : { why: 'Not explained.' }),
      },
      {
        quantity: 'the same leakage in ten holes instead of one',
        level: 'B',
        published: 'no change',
        ours: `${fixed(ten, 2)} against ${fixed(one, 2)} g/s`,
        pass: same,
        ...(same ? {} : { why: 'Not explained.' }),
      },
      {
        quantity: 'air up through the floor with an exhaust fan of 0.1 m³/s in the house',
        level: 'B',
        published: 'more',
        ours: `${fixed(most, 1)} against ${fixed(rest, 1)} g/s`,
        pass: most > rest,
        ...(most > rest ? {} : { why: 'Not explained.' }),
      },
    ];
  },
};
