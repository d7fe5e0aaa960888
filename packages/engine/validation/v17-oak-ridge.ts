import { fixed, percent, summerHumidity } from './figures.ts';
import { closed, floorInsulated, lined, space, vented } from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Study } from './study.ts';

const PLACE = 'baltimore_md';

/** A sealed and a vented house side by side. */
export const oakRidge: Study = {
  id: 'V17',
  study: 'A pair of houses in a mixed-humid climate, one crawl space sealed, one vented.',
  published: [
    {
      level: 'C',
      says: 'The sealed space was 10 to 20 points of relative humidity lower in summer.',
      source: s.oakRidge,
    },
  ],
  given: ['One sealed, one vented.'],
  assumed: [
    'R-19 batts in both floors, sheet on both grounds, no dehumidifier and no supply air; default plan.',
    'Weather of Baltimore, a built-in station of the same climate zone; not the place of the study.',
  ],
  cases: [
    {
      place: PLACE,
      name: 'vented',
      space: (weather) => vented(lined(floorInsulated(space(weather)), 'laid-and-lapped')),
    },
    { place: PLACE, name: 'sealed', space: (weather) => closed(floorInsulated(space(weather))) },
  ],
  evaluate: (outcomes) => {
    const open = summerHumidity(outcomes('vented'));
    const shut = summerHumidity(outcomes('sealed'));
    return [
      {
        quantity: 'relative humidity June to August, vented less sealed',
        level: 'C',
        published: '10 to 20 points',
        ours: `${fixed(100 * (open - shut), 1)} points (${percent(open)} less ${percent(shut)})`,
        pass: null,
      },
    ];
  },
};
