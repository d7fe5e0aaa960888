import type { units } from '@undercroft/engine';
import type { Thing, ThingKind } from '../../../plan/things.ts';
import type { kindTexts } from './kind-texts.ts';

type TextKey = keyof (typeof kindTexts)['en'];

/** How a thing is put on the plan: by taps, the words of the step beside them. */
export type Placing = 'point' | 'two-points' | 'path' | 'area' | 'on-wall' | 'wall' | 'none';

/** One fact of a thing, as a form asks for it. `at` is its path in the record, e.g. `ground.cover`. */
export type FieldSpec = {
  readonly at: string;
  readonly name: TextKey;
  /** The fact is asked for only where this holds. */
  readonly when?: (value: Readonly<Record<string, unknown>>) => boolean;
  /** It cannot be left out; where a new thing lacks it, it is asked for as soon as the place is set. */
  readonly required?: true;
} & (
  | { readonly is: 'length'; readonly signed?: readonly [above: TextKey, below: TextKey] }
  | {
      readonly is: 'quantity';
      readonly dimension: units.Dimension;
      /** Units in which it is typed and shown: trade ones, metric ones. */
      readonly units: readonly [us: string, si: string];
    }
  | { readonly is: 'choice'; readonly options: readonly string[] }
  | { readonly is: 'yes-no' }
  | { readonly is: 'bearing' }
  | { readonly is: 'turn' }
  | { readonly is: 'words' }
  | { readonly is: 'openings' }
  | { readonly is: 'inverts' }
);

/** Everything that the drawing needs to know of a kind of thing. */
export interface KindSpec {
  readonly id: string;
  readonly kind: ThingKind;
  readonly name: TextKey;
  readonly placing: Placing;
  /** What to tap, in words. */
  readonly help: TextKey;
  readonly caution?: TextKey;
  /** What a new one is taken to be until somebody says otherwise. */
  readonly start: Readonly<Record<string, unknown>>;
  /** Facts that the next one of the kind takes over from the last. */
  readonly carries: readonly string[];
  readonly fields: readonly FieldSpec[];
}

const MASONRY = ['hollow-block', 'concrete', 'brick', 'stone', 'wood'] as const;

const length = (at: string, name: TextKey, more: { readonly required?: true } = {}): FieldSpec => ({
  at,
  name,
  is: 'length',
  ...more,
});
const yesNo = (at: string, name: TextKey): FieldSpec => ({ at, name, is: 'yes-no' });
const choice = (
  at: string,
  name: TextKey,
  options: readonly string[],
  more: { readonly required?: true } = {},
): FieldSpec => ({ at, name, is: 'choice', options, ...more });
const quantity = (
  at: string,
  name: TextKey,
  dimension: units.Dimension,
  us: string,
  si: string,
): FieldSpec => ({ at, name, is: 'quantity', dimension, units: [us, si] });
const note: FieldSpec = { at: 'note', name: 'note', is: 'words' };

const ofKinds =
  (...kinds: readonly string[]) =>
  (value: Readonly<Record<string, unknown>>) =>
    kinds.includes(value.kind as string);
const isOpeningInWall = (value: Readonly<Record<string, unknown>>) => value.kind !== 'floor-hatch';

const EQUIPMENT_KINDS = [
  'dehumidifier',
  'sump',
  'condensate-pump',
  'circulating-fan',
  'soil-gas-fan',
  'exhaust-fan',
  'air-handler',
  'furnace',
  'boiler',
  'water-heater',
  'other',
] as const;

const hasLiner = (value: Readonly<Record<string, unknown>>) =>
  (value.ground as { readonly cover?: string } | undefined)?.cover === 'liner';

/** Facts about what covers the floor; also of the floor as a whole. */
export const GROUND_FIELDS: readonly FieldSpec[] = [
  choice('ground.cover', 'cover', ['bare-earth', 'liner', 'slab', 'gravel'], { required: true }),
  choice('ground.surface', 'surface', [
    'standing-water',
    'wet',
    'dark-damp',
    'average',
    'dry-crust',
    'dry-gravel',
  ]),
  ...(
    [
      quantity('ground.liner.thicknessM', 'linerThickness', 'length', 'mil', 'mm'),
      choice('ground.liner.workmanship', 'workmanship', [
        'sealed',
        'taped-loose-piers',
        'laid-and-lapped',
        'torn-or-short',
      ]),
      quantity('ground.liner.openFraction', 'openFraction', 'share', '%', '%'),
      quantity('ground.liner.openAreaM2', 'openArea', 'area', 'ft2', 'm2'),
      choice('ground.liner.waterOnTop', 'waterOnTop', ['none', 'droplets', 'pond']),
      choice('ground.liner.waterBeneath', 'waterBeneath', ['none', 'droplets', 'free-water']),
      yesNo('ground.liner.reinforced', 'reinforced'),
      yesNo('ground.liner.oldLinerBelow', 'oldLinerBelow'),
    ] satisfies readonly FieldSpec[]
  ).map((field) => ({ ...field, when: hasLiner })),
];

/** Facts of the plan as a whole. */
export const PLAN_FIELDS: readonly FieldSpec[] = [
  ...GROUND_FIELDS,
  { at: 'northDeg', name: 'north', is: 'bearing', required: true },
];

const EQUIPMENT_FIELDS: readonly FieldSpec[] = [
  choice('kind', 'equipmentKind', EQUIPMENT_KINDS, { required: true }),
  {
    at: 'facingDeg',
    name: 'facing',
    is: 'bearing',
    when: (value) => value.kind !== 'sump' && value.kind !== 'condensate-pump',
  },
  { ...yesNo('running', 'running'), when: (value) => value.kind !== 'other' },
  { ...length('raisedM', 'raised'), when: (value) => value.kind !== 'sump' },
  { ...quantity('ratedKgPerDay', 'rated', 'massFlow', 'pint/day', 'L/day'), when: ofKinds('dehumidifier') },
  { ...choice('ratingPoint', 'ratingPoint', ['80F-60', '73F-60', '65F-60']), when: ofKinds('dehumidifier') },
  {
    ...quantity('litersPerKWh', 'efficiency', 'dehumidifierEfficiency', 'L/kWh', 'L/kWh'),
    when: ofKinds('dehumidifier'),
  },
  {
    ...quantity('setRelativeHumidity', 'setHumidity', 'relativeHumidity', '%', '%'),
    when: ofKinds('dehumidifier'),
  },
  {
    ...quantity('airflowM3PerS', 'airflow', 'flow', 'cfm', 'm3/h'),
    when: ofKinds('dehumidifier', 'circulating-fan', 'soil-gas-fan', 'exhaust-fan', 'air-handler'),
  },
  { ...quantity('runShare', 'runShare', 'share', '%', '%'), when: ofKinds('dehumidifier', 'sump') },
  {
    ...yesNo('burnsFuelWithRoomAir', 'burnsFuel'),
    when: ofKinds('furnace', 'boiler', 'water-heater', 'air-handler'),
  },
  {
    ...quantity('inputW', 'input', 'power', 'Btu/h', 'kW'),
    when: ofKinds('furnace', 'boiler', 'water-heater'),
  },
  { ...length('diameterM', 'diameter'), when: ofKinds('sump') },
  { ...length('depthM', 'depth'), when: ofKinds('sump') },
  { ...choice('lid', 'lid', ['none', 'loose', 'sealed']), when: ofKinds('sump') },
  {
    at: 'rimAboveFloorM',
    name: 'rim',
    is: 'length',
    signed: ['aboveFloor', 'belowFloor'],
    when: ofKinds('sump'),
  },
  note,
];

const DOOR_FIELDS: readonly FieldSpec[] = [
  length('widthM', 'width', { required: true }),
  length('heightM', 'height', { required: true }),
  { ...length('offsetM', 'offset'), when: isOpeningInWall },
  yesNo('weatherstripped', 'weatherstripped'),
  length('gapM', 'gapAround'),
  yesNo('linerSealedToFrame', 'linerToFrame'),
  note,
];

/** Kinds in the order in which a survey comes to them. Start sizes are those met most (common practice, no source). */
export const KIND_SPECS: readonly KindSpec[] = [
  {
    id: 'door',
    kind: 'door',
    name: 'door',
    placing: 'on-wall',
    help: 'tapWallDoor',
    caution: 'cautionEntry',
    start: { kind: 'wall', widthM: 0.6096, heightM: 0.6096 },
    carries: [],
    fields: DOOR_FIELDS,
  },
  {
    id: 'hatch',
    kind: 'door',
    name: 'hatch',
    placing: 'point',
    help: 'tapMiddle',
    caution: 'cautionEntry',
    start: { kind: 'floor-hatch', widthM: 0.762, heightM: 0.6096 },
    carries: [],
    fields: DOOR_FIELDS,
  },
  {
    id: 'vent',
    kind: 'vent',
    name: 'vent',
    placing: 'on-wall',
    help: 'tapWallVent',
    start: { widthM: 0.4064, heightM: 0.2032 },
    carries: ['widthM', 'heightM', 'sillHeightM', 'netFreeAreaM2', 'state'],
    fields: [
      choice('state', 'ventState', ['open', 'screened', 'louver-shut', 'loose-board', 'sealed']),
      length('widthM', 'width', { required: true }),
      length('heightM', 'height', { required: true }),
      length('offsetM', 'offset', { required: true }),
      { at: 'sillHeightM', name: 'sill', is: 'length', signed: ['aboveFloor', 'belowFloor'] },
      quantity('netFreeAreaM2', 'netFreeArea', 'area', 'in2', 'cm2'),
      yesNo('floodOpening', 'floodOpening'),
      note,
    ],
  },
  {
    id: 'pier',
    kind: 'pier',
    name: 'pier',
    placing: 'point',
    help: 'tapMiddle',
    caution: 'cautionLoad',
    start: { widthM: 0.4064, depthM: 0.4064 },
    carries: ['widthM', 'depthM', 'turnDeg', 'heightM', 'material'],
    fields: [
      length('widthM', 'width', { required: true }),
      length('depthM', 'depthSide', { required: true }),
      length('heightM', 'height'),
      choice('material', 'material', [...MASONRY, 'steel']),
      { at: 'turnDeg', name: 'turn', is: 'turn' },
      length('wrapHeightM', 'wrapHeight'),
      yesNo('wrapSealed', 'wrapSealed'),
      note,
    ],
  },
  {
    id: 'girder',
    kind: 'girder',
    name: 'girder',
    placing: 'two-points',
    help: 'tapTwoEnds',
    caution: 'cautionLoad',
    start: { widthM: 0.1143 },
    carries: ['widthM', 'clearanceM'],
    fields: [length('widthM', 'width', { required: true }), length('clearanceM', 'clearance'), note],
  },
  {
    id: 'joists',
    kind: 'joists',
    name: 'joists',
    placing: 'none',
    help: 'setJoists',
    start: { bearingDeg: 0 },
    carries: ['bearingDeg', 'spacingM', 'depthM'],
    fields: [
      { at: 'bearingDeg', name: 'run', is: 'bearing', required: true },
      length('spacingM', 'spacing', { required: true }),
      length('depthM', 'depthTall', { required: true }),
      length('clearanceM', 'clearance'),
      { at: 'species', name: 'species', is: 'words' },
    ],
  },
  {
    id: 'interior-wall',
    kind: 'interior-wall',
    name: 'interiorWall',
    placing: 'two-points',
    help: 'tapTwoEnds',
    start: { thicknessM: 0.2032 },
    carries: ['thicknessM'],
    fields: [
      length('thicknessM', 'thickness', { required: true }),
      { at: 'openings', name: 'openings', is: 'openings' },
      note,
    ],
  },
  {
    id: 'height',
    kind: 'height',
    name: 'clearHeight',
    placing: 'point',
    help: 'tapHeight',
    start: {},
    carries: [],
    fields: [length('clearHeightM', 'clearHeight', { required: true })],
  },
  {
    id: 'duct',
    kind: 'duct',
    name: 'duct',
    placing: 'path',
    help: 'tapPath',
    start: { widthM: 0.2032 },
    carries: ['widthM', 'heightM', 'carries', 'insulationRsi'],
    fields: [
      choice('carries', 'carries', ['supply', 'return', 'exhaust', 'dryer', 'pipe']),
      length('widthM', 'width', { required: true }),
      length('heightM', 'height'),
      length('clearanceM', 'clearance'),
      quantity('insulationRsi', 'insulation', 'thermalResistance', 'R', 'RSI'),
      yesNo('leaks', 'leaks'),
      yesNo('linerBeneath', 'linerBeneath'),
      note,
    ],
  },
  {
    id: 'dehumidifier',
    kind: 'equipment',
    name: 'dehumidifier',
    placing: 'point',
    help: 'tapMiddle',
    caution: 'cautionPower',
    start: { kind: 'dehumidifier' },
    carries: [],
    fields: EQUIPMENT_FIELDS,
  },
  {
    id: 'sump',
    kind: 'equipment',
    name: 'sump',
    placing: 'point',
    help: 'tapMiddle',
    caution: 'cautionPower',
    start: { kind: 'sump' },
    carries: [],
    fields: EQUIPMENT_FIELDS,
  },
  {
    id: 'equipment',
    kind: 'equipment',
    name: 'equipment',
    placing: 'point',
    help: 'tapMiddle',
    caution: 'cautionFuel',
    start: { kind: 'other' },
    carries: ['kind'],
    fields: EQUIPMENT_FIELDS,
  },
  {
    id: 'drain',
    kind: 'drain',
    name: 'drain',
    placing: 'path',
    help: 'tapFlow',
    start: {},
    carries: ['diameterM', 'sock', 'aggregate'],
    fields: [
      choice('endsIn', 'endsIn', ['sump', 'daylight', 'soil', 'unknown']),
      length('diameterM', 'diameter'),
      { at: 'path', name: 'inverts', is: 'inverts' },
      yesNo('sock', 'sock'),
      yesNo('aggregate', 'aggregate'),
      yesNo('joined', 'joined'),
      note,
    ],
  },
  {
    id: 'zone',
    kind: 'zone',
    name: 'zone',
    placing: 'area',
    help: 'tapArea',
    caution: 'cautionWater',
    start: { ground: { cover: 'bare-earth' } },
    carries: [],
    fields: [{ at: 'name', name: 'zoneName', is: 'words', required: true }, ...GROUND_FIELDS, note],
  },
  {
    id: 'seam',
    kind: 'seam',
    name: 'seam',
    placing: 'path',
    help: 'tapPath',
    start: {},
    carries: ['lapM'],
    fields: [length('lapM', 'lap'), length('tapedM', 'taped'), length('gapM', 'gapOpen'), note],
  },
  {
    id: 'wall',
    kind: 'wall',
    name: 'wallFacts',
    placing: 'wall',
    help: 'tapWall',
    start: {},
    carries: ['material', 'thicknessM', 'heightM'],
    fields: [
      choice('material', 'material', MASONRY),
      length('thicknessM', 'thickness'),
      length('heightM', 'wallHeight'),
      { at: 'gradeAboveFloorM', name: 'grade', is: 'length', signed: ['aboveFloor', 'belowFloor'] },
      choice('dampness', 'dampness', ['dry', 'damp', 'wet']),
      length('dampHeightM', 'dampHeight'),
      length('linerHeightM', 'linerHeight'),
      choice('linerFixing', 'linerFixing', ['none', 'adhesive', 'mechanical']),
      yesNo('linerSealed', 'linerSealed'),
      length('linerLooseM', 'linerLoose'),
      quantity('insulationRsi', 'insulation', 'thermalResistance', 'R', 'RSI'),
      yesNo('outdoors', 'outdoors'),
      note,
    ],
  },
  {
    id: 'obstacle',
    kind: 'obstacle',
    name: 'obstacle',
    placing: 'area',
    help: 'tapArea',
    caution: 'cautionAsbestos',
    start: {},
    carries: [],
    fields: [
      { at: 'what', name: 'what', is: 'words', required: true },
      length('heightM', 'height'),
      yesNo('noGo', 'noGo'),
      note,
    ],
  },
];

/** What is known of the kind of a thing. */
export function specOf({ kind, value }: Thing): KindSpec {
  const fits = KIND_SPECS.filter((spec) => spec.kind === kind);
  const own = (value as { readonly kind?: string }).kind;
  return (fits.find((spec) => spec.start.kind === own) ?? fits.at(-1)) as KindSpec;
}

export function specById(id: string): KindSpec | undefined {
  return KIND_SPECS.find((spec) => spec.id === id);
}
