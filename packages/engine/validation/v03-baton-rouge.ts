import { change, fixed, percent, summerHumidity } from './figures.ts';
import { houseHeat, yearlyHeat } from './house-heat.ts';
import {
  closed,
  floorInsulated,
  lined,
  space,
  vented,
  wallsInsulated,
  withDucts,
  withSupplyAir,
} from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Finding, Outcomes, Study } from './study.ts';

const PLACE = 'houston_tx';
const VENTED = 'vented, ducts in the attic';
const FLOOR = 'closed, insulated floor, ducts in the attic';
const WALLS_ATTIC = 'closed, insulated walls, ducts in the attic';
const WALLS_CRAWL = 'closed, insulated walls, ducts in the crawl space';

/** Fifteen modular houses in a hot, humid climate. */
export const batonRouge: Study = {
  id: 'V3',
  study:
    'Fifteen modular houses in Baton Rouge, Louisiana, hot and humid, watched for more than a year: vented and three kinds of closed crawl space.',
  published: [
    {
      level: 'A',
      says: 'Every closed space stayed drier than the vented ones, wherever insulation and ducts were.',
      source: s.threeClimates,
    },
    {
      level: 'A',
      says: 'Energy of the closed houses went from 6 % less to 29 % more than that of the vented ones, depending on where the ducts ran.',
      source: s.threeClimates,
    },
  ],
  given: [
    'Four vented houses with ducts in the attic; closed: four with R-19 floors and ducts in the attic, four with R-8 walls and ducts in the attic, three with R-8 walls and ducts in the crawl space (news note of a building trade journal, excerpt read).',
    'Every closed space had a small supply duct.',
  ],
  assumed: [
    'Weather of Houston, the nearest built-in station of the same climate zone; not the place of the study.',
    'Vented houses: vents of 1/150, sheet laid and lapped, R-19 batts; default plan.',
    'Supply duct of 1 cfm for 30 ft², as in the other study of the same people.',
    'Which designs saved and which lost was cut off in the part that was read; that ducts in the attic are the losing side is our reading.',
    'The model has no attic: ducts in the attic lie in air as warm as outdoors, which leaves out the sun on the roof.',
  ],
  cases: [
    {
      place: PLACE,
      name: VENTED,
      space: (weather) => vented(lined(floorInsulated(space(weather)), 'laid-and-lapped')),
    },
    {
      place: PLACE,
      name: FLOOR,
      space: (weather) => withSupplyAir(closed(floorInsulated(space(weather)))),
    },
    {
      place: PLACE,
      name: WALLS_ATTIC,
      space: (weather) => withSupplyAir(closed(wallsInsulated(space(weather), 8))),
    },
    {
      place: PLACE,
      name: WALLS_CRAWL,
      space: (weather) => withDucts(withSupplyAir(closed(wallsInsulated(space(weather), 8)))),
    },
  ],
  evaluate: (outcomes) => [...humidity(outcomes), ...energy(outcomes)],
};

function humidity(outcomes: Outcomes): Finding[] {
  const open = summerHumidity(outcomes(VENTED));
  return [FLOOR, WALLS_ATTIC, WALLS_CRAWL].map((name) => {
    const shut = summerHumidity(outcomes(name));
    return {
      quantity: `${name}: relative humidity June to August`,
      level: 'A' as const,
      published: 'below the vented space',
      ours: `${percent(shut)} against ${percent(open)}`,
      pass: shut < open,
      ...(shut < open ? {} : { why: 'Not explained.' }),
    };
  });
}

function energy(outcomes: Outcomes): Finding[] {
  const before = yearlyHeat(outcomes(VENTED), true);
  const floor = yearlyHeat(outcomes(FLOOR), true);
  const attic = yearlyHeat(outcomes(WALLS_ATTIC), true);
  const crawl = yearlyHeat(outcomes(WALLS_CRAWL));
  const summerFloor = (name: string) => fixed(houseHeat(outcomes(name), 'cooled').floor, 0);
  const kWh = (now: { total: number }) => `${change(now.total - before.total, 0)} kWh a year`;
  const lower = crawl.total < attic.total;
  const flips = attic.total > before.total && crawl.total < before.total;
  return [
    {
      quantity:
        'insulated walls: heat and cold paid for, ducts in the crawl space against ducts in the attic',
      level: 'A',
      published: 'less',
      ours: `${kWh(crawl)} against ${kWh(attic)}, both from the vented house`,
      pass: lower,
      ...(lower ? {} : { why: 'Not explained.' }),
    },
    {
      quantity: 'insulated walls: sign of the change from the vented house turns with the place of the ducts',
      level: 'A',
      published: 'more with ducts in the attic, less with ducts in the crawl space',
      ours: `${kWh(attic)} and ${kWh(crawl)}`,
      pass: flips,
      ...(flips
        ? {}
        : {
            why:
              'A limit of what the model counts. The cool ground under a floor without insulation takes heat out of the ' +
              `house all summer (floor in the cooled months ${summerFloor(WALLS_ATTIC)} kWh against ` +
              `${summerFloor(VENTED)} in the vented house), and here that is counted in full as cold saved. ` +
              'Moisture of the house, the sun on an attic and how a real air conditioner runs are not in the account, ' +
              'so the penalty that was measured with ducts in the attic cannot show.',
          }),
    },
    {
      quantity: 'insulated floor, ducts in the attic: change of heat and cold paid for',
      level: 'A',
      published: 'between 6 % less and 29 % more of all heating and cooling',
      ours: kWh(floor),
      pass: null,
    },
  ];
}
