import { permeanceFromPerms } from './permeance.ts';
import { moistureSources } from './sources.ts';

/** A layer that vapor may diffuse through. */
export interface Layer {
  readonly key: string;
  readonly title: string;
  /** Thickness, m, where the row is for one. */
  readonly thicknessM?: number;
  /** Permeance, US perms, as printed. */
  readonly perms: number;
  /** Range of printed and common values, US perms. */
  readonly lowPerms: number;
  readonly highPerms: number;
  readonly sourceId: string;
  /** What a reader must know, or nothing. */
  readonly note?: string;
}

const handbook = moistureSources.ashraeSheets.id;
const practice = moistureSources.linerPractice.id;

/**
 * Permeance of liners and of what walls, slabs and floors are made of: design values, not test results. Methods disagree,
 * and twice the thickness has about half the permeance. A tested value of the product is always better.
 */
export const LAYERS: readonly Layer[] = [
  {
    key: 'polyethylene-4-mil',
    title: 'Polyethylene, 4 mil (0.10 mm)',
    thicknessM: 0.0001016,
    perms: 0.08,
    lowPerms: 0.06,
    highPerms: 0.1,
    sourceId: handbook,
  },
  {
    key: 'polyethylene-6-mil',
    title: 'Polyethylene, 6 mil (0.15 mm)',
    thicknessM: 0.0001524,
    perms: 0.06,
    lowPerms: 0.03,
    highPerms: 0.07,
    sourceId: handbook,
    note: 'Secondary pages print 0.03 to 0.06; ISO 10456 gives 0.070.',
  },
  {
    key: 'polyethylene-10-mil',
    title: 'Polyethylene, 10 mil (0.25 mm)',
    thicknessM: 0.000254,
    perms: 0.03,
    lowPerms: 0.03,
    highPerms: 0.04,
    sourceId: handbook,
    note: 'ISO 10456 gives 0.035; another reading of the same handbook table gives 0.04.',
  },
  {
    key: 'polyethylene-12-mil',
    title: 'Polyethylene, 12 mil (0.30 mm)',
    thicknessM: 0.0003048,
    perms: 0.0275,
    lowPerms: 0.025,
    highPerms: 0.03,
    sourceId: moistureSources.iso10456.id,
    note: 'Computed from 0.30 to 0.36 perm mil.',
  },
  {
    key: 'polyethylene-20-mil',
    title: 'Polyethylene, 20 mil (0.51 mm)',
    thicknessM: 0.000508,
    perms: 0.0165,
    lowPerms: 0.015,
    highPerms: 0.018,
    sourceId: moistureSources.iso10456.id,
    note: 'Computed from 0.30 to 0.36 perm mil.',
  },
  {
    key: 'reinforced-liner',
    title: 'Reinforced liner, 6 to 20 mil',
    perms: 0.03,
    lowPerms: 0.01,
    highPerms: 0.1,
    sourceId: practice,
    note: 'Use the test report; 0.1 is the limit of ASTM E1745. Reinforcement does not lower permeance.',
  },
  {
    key: 'expanded-polystyrene-1-in',
    title: 'Expanded polystyrene, 1 in (25 mm)',
    thicknessM: 0.0254,
    perms: 3.9,
    lowPerms: 2,
    highPerms: 5.8,
    sourceId: handbook,
  },
  {
    key: 'extruded-polystyrene-1-in',
    title: 'Extruded polystyrene, 1 in (25 mm)',
    thicknessM: 0.0254,
    perms: 1.2,
    lowPerms: 0.4,
    highPerms: 1.6,
    sourceId: handbook,
  },
  {
    key: 'foil-faced-foam',
    title: 'Polyisocyanurate foam, foil on both faces',
    perms: 0.05,
    lowPerms: 0,
    highPerms: 0.05,
    sourceId: handbook,
    note: 'The foil governs; seams and edges decide.',
  },
  {
    key: 'unfaced-foam-1-in',
    title: 'Polyurethane or polyisocyanurate foam without facing, 1 in (25 mm)',
    thicknessM: 0.0254,
    perms: 1,
    lowPerms: 0.4,
    highPerms: 1.6,
    sourceId: handbook,
  },
  {
    key: 'concrete-4-in',
    title: 'Concrete, 4 in (100 mm)',
    thicknessM: 0.1016,
    perms: 0.8,
    lowPerms: 0.6,
    highPerms: 1.2,
    sourceId: handbook,
    note: 'From 3.2 perm inch; range is common practice.',
  },
  {
    key: 'hollow-block-8-in',
    title: 'Concrete block, cored, 8 in (200 mm)',
    thicknessM: 0.2032,
    perms: 2.4,
    lowPerms: 1.6,
    highPerms: 3.6,
    sourceId: handbook,
    note: 'Air through the cores usually carries more; range is common practice.',
  },
  {
    key: 'brick-4-in',
    title: 'Brick masonry, 4 in (100 mm)',
    thicknessM: 0.1016,
    perms: 0.8,
    lowPerms: 0.6,
    highPerms: 1.2,
    sourceId: handbook,
    note: 'Range is common practice.',
  },
  {
    key: 'plywood-quarter-in',
    title: 'Plywood with exterior glue, 1/4 in (6 mm)',
    thicknessM: 0.00635,
    perms: 0.7,
    lowPerms: 0.5,
    highPerms: 1,
    sourceId: handbook,
    note: 'Rises steeply when wet; range is common practice.',
  },
  {
    key: 'kraft-facing',
    title: 'Kraft facing of batts, dry',
    perms: 0.65,
    lowPerms: 0.3,
    highPerms: 1,
    sourceId: handbook,
    note: 'Several times higher when wet.',
  },
];

/** Permeance of a layer, kg/(m²·s·Pa), as a middle with its range. Design values are assumptions until tested. */
export function layerPermeance(layer: Layer) {
  return {
    value: permeanceFromPerms(layer.perms),
    low: permeanceFromPerms(layer.lowPerms),
    high: permeanceFromPerms(layer.highPerms),
    assumed: true,
  };
}
