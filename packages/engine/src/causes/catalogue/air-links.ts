import { linksTo } from '../link.ts';
import { causesSources as by } from '../sources.ts';

/** Explanations of humid air, of sweating surfaces and of one end that stays damp. */
export const airLinks = [
  ...linksTo('humid-air', [
    [
      'outdoor-air',
      0.2,
      'Warm outdoor air that is cooled in the space comes near saturation.',
      by.ventedYear,
    ],
    ['bare-ground', 0.2, 'Open ground evaporates into the air above it.', by.evaporationRises],
    ['open-liner', 0.12, 'Ground left open by the liner evaporates like bare ground.', by.evaporationRises],
    ['free-water', 0.12, 'Standing water evaporates faster than any ground.', by.evaporationRises],
    ['damp-masonry', 0.1, 'Damp walls and piers give their water to the air.', by.capillarity],
    ['dryer-exhaust', 0.06, 'A load of clothes sends about two liters of water into the air.', by.trade],
    ['machine-small', 0.05, 'What comes in and is not taken out stays in the air.', by.trade],
    [
      'machine-pocket',
      0.05,
      'A machine that stops early leaves the rest of the space humid.',
      by.circulation,
    ],
    ['drying-down', 0.03, 'Wood and walls give off what they stored before the space was closed.', by.trade],
    ['leaky-ducts', 0.03, 'Return leaks draw outdoor air through the space.', by.floorLeakage],
  ]),
  ...linksTo('sweating', [
    [
      'humid-air',
      0.4,
      'The more humid the air, the warmer the surfaces on which it drops water.',
      by.dewPoint,
    ],
    ['cold-ducts', 0.27, 'A bare duct or pipe is below the dew point even of fairly dry air.', by.dewPoint],
    ['leaky-ducts', 0.13, 'Cold air from a leak chills wood, wrap and liner.', by.dewPoint],
    ['winter-cold-edge', 0.1, 'In frost the rim is the coldest surface of the space.', by.dewPoint],
  ]),
  ...linksTo('damp-far-end', [
    [
      'machine-pocket',
      0.28,
      'A machine that blows at a wall dries its own breath and stops.',
      by.circulation,
    ],
    ['air-blocked', 0.2, 'Dry air does not get past partitions and low ducts.', by.circulation],
    ['open-liner', 0.16, 'Open ground at that end wets it more than the rest.', by.evaporationRises],
    ['free-water', 0.14, 'Water that lies at that end wets it more than the rest.', by.evaporationRises],
    ['outdoor-air', 0.09, 'An open vent or door at that end wets it in summer.', by.trade],
    ['bare-ground', 0.05, 'Bare ground at that end wets it more than the rest.', by.evaporationRises],
  ]),
];
