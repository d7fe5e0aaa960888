/** What a color is for. Text and marks use these names, never a color value. */
export type ColorName =
  | 'page'
  | 'sheet'
  | 'rule'
  | 'ink'
  | 'soft'
  | 'accent'
  | 'onAccent'
  | 'met'
  | 'notMet'
  | 'notShown'
  | 'watch'
  | 'wall'
  | 'water'
  | 'wetting'
  | 'drying'
  | 'bareEarth'
  | 'dampEarth'
  | 'standingWater'
  | 'liner'
  | 'slab'
  | 'gravel'
  | 'hatch'
  | 'field0'
  | 'field1'
  | 'field2'
  | 'field3'
  | 'field4'
  | 'field5'
  | 'field6'
  | 'field7'
  | 'field8'
  | 'field9'
  | 'field10'
  | 'fieldInk'
  | 'fieldHalo';

/** What a drawing or page lies on: `under` for the dark of the space, `daylight` for desk and sun, `paper` for print. */
export type GroundName = 'under' | 'daylight' | 'paper';

export type Ground = Readonly<Record<ColorName, string>>;

/**
 * Bands of a computed field, driest first: cividis from its light end to its dark one in even steps (Nuñez, Anderton and
 * Renslow 2018, "Optimizing colormaps with consideration for color vision deficiency", PLoS ONE 13(7) e0199239), the same
 * on every ground, so that maps compare. Lines on it have a dark core in a light halo.
 */
const field = {
  field0: '#fdea45',
  field1: '#ead156',
  field2: '#caba6a',
  field3: '#ada476',
  field4: '#948f78',
  field5: '#7f7c75',
  field6: '#696970',
  field7: '#4d566d',
  field8: '#2b446e',
  field9: '#0a326a',
  field10: '#002051',
  fieldInk: '#1f2328',
  fieldHalo: '#ffffff',
} as const;

const daylight: Ground = {
  ...field,
  page: '#f7f4ee',
  sheet: '#ffffff',
  rule: '#d8d2c6',
  ink: '#1f2328',
  soft: '#5d6066',
  accent: '#9a6200',
  onAccent: '#ffffff',
  met: '#0f6262',
  notMet: '#7f1810',
  notShown: '#766e9e',
  watch: '#8a5800',
  wall: '#86837b',
  water: '#2a5d85',
  wetting: '#4f86ae',
  drying: '#a3763a',
  bareEarth: '#f1e9db',
  dampEarth: '#eae0ce',
  standingWater: '#dbe8f1',
  liner: '#f0f2f3',
  slab: '#ecebe7',
  gravel: '#f1eee7',
  hatch: '#b9aa90',
};

const under: Ground = {
  ...field,
  page: '#14161a',
  sheet: '#1d2026',
  rule: '#3a3f48',
  ink: '#ece7dc',
  soft: '#a9a498',
  accent: '#f2b84b',
  onAccent: '#14161a',
  met: '#57b3b1',
  notMet: '#ffa98c',
  notShown: '#877db4',
  watch: '#f2b84b',
  wall: '#7d7a72',
  water: '#8fc1e3',
  wetting: '#6ea8d0',
  drying: '#c79b58',
  bareEarth: '#2b261e',
  dampEarth: '#332b21',
  standingWater: '#1b3040',
  liner: '#262b2e',
  slab: '#2d2e31',
  gravel: '#2a2925',
  hatch: '#6d6250',
};

/** Color values of each ground. Tests hold the contrast of every pair that meets. */
export const GROUNDS: Readonly<Record<GroundName, Ground>> = {
  under,
  daylight,
  paper: { ...daylight, page: '#ffffff' },
};
