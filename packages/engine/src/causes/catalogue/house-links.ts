import { linksTo } from '../link.ts';
import { causesSources as by } from '../sources.ts';

/** Explanations of smell and soil gas, and what reaches the house and its machines. */
export const houseLinks = [
  ...linksTo('smell', [
    ['mold', 0.33, 'Growing mold gives off musty gases.', by.trade],
    ['organics', 0.24, 'Wet scraps, roots and droppings rot, more so under a sheet.', by.trade],
    ['old-liner', 0.18, 'Water between two sheets turns foul.', by.trade],
    ['free-water', 0.11, 'Standing water goes stale.', by.trade],
  ]),
  ...linksTo('soil-gas', [
    ['soil-way-in', 0.7, 'Gas of the soil enters by pits, seams and block cores.', by.soilGas],
    ['open-liner', 0.15, 'Open ground lets soil gas into the space.', by.soilGas],
    ['bare-ground', 0.1, 'Bare ground lets soil gas into the space.', by.soilGas],
  ]),
  ...linksTo('air-upstairs', [
    ['floor-leaks', 0.55, 'The rooms draw their air through the floor.', by.floorLeakage],
    ['leaky-ducts', 0.3, 'A leaking return sends air of the space to every room.', by.floorLeakage],
    ['smell', 0.1, 'What is smelled below is carried up with that air.', by.trade],
  ]),
  ...linksTo('batts-fall', [
    ['humid-air', 0.4, 'Batts take up water from humid air.', by.trade],
    ['sweating', 0.35, 'Sweat runs into the batts and makes them heavy.', by.trade],
    ['wet-batts', 0.15, 'A wet batt pulls its hangers out.', by.trade],
  ]),
  ...linksTo('machine-wears', [
    ['humid-air', 0.6, 'The machine runs as long as the air is above its set-point.', by.trade],
    ['damp-far-end', 0.25, 'Turning the set-point down for a damp end costs run hours.', by.circulation],
  ]),
  ...linksTo('lung-dose', [['soil-gas', 0.9, 'Radon in the rooms is breathed day and night.', by.soilGas]]),
];
