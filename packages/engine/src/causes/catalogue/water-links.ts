import { linksTo } from '../link.ts';
import { causesSources as by } from '../sources.ts';

/** Explanations of water that lies in the space and of damp masonry. */
export const waterLinks = [
  ...linksTo('free-water', [
    [
      'surface-water',
      0.33,
      'Rain and roof water beside the wall run through it and along the footing.',
      by.trade,
    ],
    [
      'drain-fails',
      0.22,
      'Water that the drain does not reach or the pump does not lift stays on the floor.',
      by.trade,
    ],
    ['ground-water', 0.15, 'Ground water stands as high inside as in the soil outside.', by.trade],
    ['plumbing-leak', 0.13, 'A leak feeds one spot in any weather.', by.trade],
    ['condensate', 0.06, 'A cooling coil or dehumidifier makes liters a day; spilled, they pond.', by.trade],
    [
      'cold-ducts',
      0.05,
      'Sweat drips from cold ducts and pipes and gathers in folds of the liner.',
      by.dewPoint,
    ],
  ]),
  ...linksTo('damp-masonry', [
    ['masonry-draws', 0.4, 'Pores of masonry in damp soil lift water half a meter and more.', by.capillarity],
    ['surface-water', 0.3, 'Rain beside the wall wets it from outside.', by.trade],
    ['free-water', 0.15, 'A wall or pier that stands in water soaks it up.', by.capillarity],
    [
      'outdoor-air',
      0.08,
      'Humid outdoor air drops water on a wall that is colder than its dew point.',
      by.dewPoint,
    ],
  ]),
];
