import { linksTo } from '../link.ts';
import { causesSources as by } from '../sources.ts';

/** Explanations of wet wood and what comes of it. */
export const woodLinks = [
  ...linksTo('wet-wood', [
    [
      'humid-air',
      0.42,
      'Wood takes up water until it fits the humidity of the air at it.',
      by.woodEquilibrium,
    ],
    ['sweating', 0.16, 'Water that forms on ducts and wood drips and soaks in.', by.dewPoint],
    ['wet-batts', 0.12, 'A damp batt keeps the wood behind it from drying.', by.trade],
    ['damp-masonry', 0.1, 'Wood that sits on damp masonry draws water from it.', by.capillarity],
    ['plumbing-leak', 0.08, 'A leak above or beside it wets the wood.', by.trade],
    ['wood-touches', 0.06, 'Wood at the earth takes water straight from it.', by.trade],
  ]),
  ...linksTo('wet-bearing', [
    ['damp-masonry', 0.48, 'Damp masonry hands its water to the wood that bears on it.', by.capillarity],
    ['wood-touches', 0.2, 'A girder end tight in its pocket or a sill near earth cannot dry.', by.trade],
    ['humid-air', 0.14, 'Masonry is cold, so the air at a bearing is the most humid.', by.woodEquilibrium],
    ['surface-water', 0.08, 'Rain splashes and runs over a low sill.', by.trade],
  ]),
  ...linksTo('mold', [
    ['humid-air', 0.45, 'Mold grows in time where the air at a surface is above 80 %.', by.moldThreshold],
    ['wet-wood', 0.35, 'Wood above about 16 % keeps the air in its pores above 80 %.', by.moldThreshold],
    ['sweating', 0.12, 'A film of water starts mold within days.', by.moldThreshold],
  ]),
  ...linksTo('decay', [
    ['wet-wood', 0.45, 'Decay fungi need wood above 20 %, and take hold near 28 %.', by.woodThresholds],
    ['wet-bearing', 0.4, 'Wood that stays wet on masonry decays first.', by.rot],
  ]),
  ...linksTo('insects', [
    ['wood-touches', 0.4, 'Termites come from the earth by the shortest way.', by.trade],
    ['wet-wood', 0.3, 'Damp wood draws beetles and termites.', by.trade],
    ['wet-bearing', 0.15, 'Damp wood draws beetles and termites.', by.trade],
  ]),
  ...linksTo('floor-moves', [
    ['wet-wood', 0.5, 'Boards that are wetter below than above cup.', by.woodEquilibrium],
    ['decay', 0.2, 'Decayed joists and girders bend.', by.trade],
    ['bearing-fails', 0.2, 'A floor goes down where its bearing does.', by.trade],
  ]),
  ...linksTo('bearing-fails', [
    ['decay', 0.6, 'A decayed girder end or sill crushes under its load.', by.trade],
    ['insects', 0.2, 'Galleries take the section away.', by.trade],
  ]),
];
