import type { distribution } from '@undercroft/engine';
import type {
  ArrangementChange,
  ArrangementsShown,
  ArrangementTried,
  DistributionBand,
  DistributionInput,
  DistributionMissing,
  DistributionState,
  DistributionWorkedOut,
  FanPlaced,
  FieldGridMap,
  FieldRange,
  FloorPartShown,
  MachinePlaced,
  MachinePlacing,
  ReadingsFit,
  RuleExcluded,
} from '../distribution/distribution-assessment.ts';
import {
  amount,
  count,
  fraction,
  listOf,
  number,
  object,
  oneOf,
  ref,
  type Schema,
  text,
  whole,
  yesNo,
} from './build.ts';

const point = ref('Point');
const range = ref('FieldRange');
const part = ref('FloorPart');
const notices = listOf(ref('Notice'));
const numberOrNull: Schema = { type: ['number', 'null'] };
const values = listOf(numberOrNull);

const machine = object<MachinePlaced>(
  {
    id: text,
    intake: point,
    outlet: point,
    bearingDeg: numberOrNull,
    ducted: yesNo,
    setRelativeHumidity: fraction,
    ratedKgPerDay: amount,
    litersPerKWh: amount,
    airflowM3PerS: amount,
  },
  {
    sensor: point,
    throwM: amount,
    throwEndedBy: oneOf('speed', 'low-space', 'obstacle', 'outlet-blocked'),
  },
);

const fan = object<FanPlaced>(
  { at: point, bearingDeg: number, airflowM3PerS: amount, powerW: amount },
  { id: text },
);

const ranges = object<DistributionBand['ranges']>(
  {
    duty: range,
    mixedDuty: range,
    intakeRelativeHumidity: range,
    farEndRelativeHumidity: range,
    dampestRelativeHumidity: range,
    meanRelativeHumidity: range,
    shareAbove60: range,
    shareAbove70: range,
    shareAbove80: range,
    reachM: range,
  },
  { planCoefficient: range },
);

const band = {
  machine: ref('MachinePlaced'),
  fans: listOf(ref('FanPlaced')),
  low: ref('DistributionState'),
  value: ref('DistributionState'),
  high: ref('DistributionState'),
  ranges,
};

const tried = {
  what: text,
  machine: ref('MachinePlaced'),
  fans: listOf(ref('FanPlaced')),
  dampestRelativeHumidity: amount,
  meanRelativeHumidity: amount,
  duty: fraction,
  holds: yesNo,
  energyKWhPerDay: amount,
  pumped: yesNo,
  costCents: whole,
};
const way = { wayM: amount };

const rule = oneOf(
  'no-floor',
  'clear-height',
  'clearance',
  'no-way',
  'service-reach',
  'outlet-run',
  'drain',
  'power',
  'no-return-path',
);

const fitted = object<distribution.FittedFigure>({
  value: number,
  low: number,
  high: number,
  determined: yesNo,
});

const day = object<DistributionWorkedOut['day']>({
  title: text,
  outdoorC: number,
  outdoorHumidityRatio: amount,
  crawlC: number,
  groundC: number,
  houseC: number,
  airChangesPerHour: amount,
});

const mixing = object<DistributionWorkedOut['mixing']>({
  low: amount,
  value: amount,
  high: amount,
  origin: ref('Origin'),
});

const inputs = listOf(
  object<DistributionInput>(
    {
      key: text,
      title: text,
      value: { type: ['number', 'string'] },
      unit: text,
      origin: ref('Origin'),
    },
    { low: number, high: number },
  ),
);

const excluded = listOf(
  object<ArrangementsShown['excluded'][number]>({
    at: point,
    bearingDeg: numberOrNull,
    rule,
    why: text,
  }),
);
const excludedByRule = listOf(object<RuleExcluded>({ rule, count }));

const suggested = object<NonNullable<ArrangementsShown['suggested']>>({
  ...band,
  what: text,
  costCents: whole,
});

type NotFitted = Extract<ReadingsFit, { outcome: 'not-fitted' }>;
type Fitted = Extract<ReadingsFit, { outcome: 'fitted' }>;

const spot = object<DistributionState['highest']>({ relativeHumidity: amount, at: point });

/** Where the dry air goes on the plan, and where to stand the dehumidifier. */
export const DISTRIBUTION_DEFINITIONS = {
  FieldRange: object<FieldRange>({ low: number, value: number, high: number }),
  MachinePlaced: machine,
  FanPlaced: fan,
  FloorPart: object<FloorPartShown>({ areaM2: amount, relativeHumidity: amount, at: point }),
  FieldGridMap: object<FieldGridMap>({
    originXM: number,
    originYM: number,
    cellXM: amount,
    cellYM: amount,
    columns: count,
    rows: count,
    relativeHumidity: values,
    dewPointC: values,
    woodMoisture: values,
  }),
  DistributionState: object<DistributionState>(
    {
      mixingM2PerS: amount,
      outcome: oneOf('holds', 'undersized', 'idle', 'too-cold', 'given', 'none'),
      duty: fraction,
      mixedDuty: fraction,
      signature: yesNo,
      removedKgPerDay: number,
      energyKWhPerDay: amount,
      intakeRelativeHumidity: amount,
      sensorRelativeHumidity: amount,
      farEnd: part,
      dampest: part,
      worstBay: part,
      bayCount: count,
      highest: spot,
      lowest: spot,
      meanRelativeHumidity: amount,
      meanTemperatureC: number,
      meanWoodMoisture: amount,
      shareAbove60: fraction,
      shareAbove70: fraction,
      shareAbove80: fraction,
      shareSaturated: fraction,
      reachM: amount,
      farM: amount,
      water: listOf(object<DistributionState['water'][number]>({ what: text, kgPerDay: number })),
      map: ref('FieldGridMap'),
    },
    { planCoefficient: number },
  ),
  DistributionBand: object<DistributionBand>(band),
  ArrangementTried: object<ArrangementTried>(tried, way),
  ArrangementsShown: object<ArrangementsShown>(
    {
      screened: count,
      present: object<ArrangementsShown['present']>({ ...tried, rank: count }, way),
      ranked: listOf(ref('ArrangementTried')),
      changes: listOf(object<ArrangementChange>({ ...tried, kind: text }, way)),
      excluded,
      excludedByRule,
      notices,
    },
    {
      suggested,
    },
  ),
  ReadingsFit: {
    oneOf: [
      object<NotFitted>({ outcome: { const: 'not-fitted' }, why: text, places: count, needed: count }),
      object<Fitted>({
        outcome: { const: 'fitted' },
        mixingM2PerS: fitted,
        sourceStrength: fitted,
        correlation: number,
        residuals: listOf(
          object<Fitted['residuals'][number]>({
            readingId: text,
            at: point,
            read: fraction,
            modeled: amount,
          }),
        ),
        misfitBefore: amount,
        misfit: amount,
        used: yesNo,
        notices,
      }),
    ],
  },
  MachinePlacing: object<MachinePlacing>(
    {
      machine: text,
      day,
      mixing,
      screened: count,
      ranked: listOf(ref('ArrangementTried')),
      excluded,
      excludedByRule,
      inputs,
      limits: notices,
      notices,
    },
    { suggested },
  ),
  Distribution: {
    oneOf: [
      object<DistributionWorkedOut>(
        {
          outcome: { const: 'worked-out' },
          day,
          mixing,
          found: ref('DistributionBand'),
          fit: ref('ReadingsFit'),
          inputs,
          limits: notices,
          notices,
        },
        { search: ref('ArrangementsShown') },
      ),
      object<DistributionMissing>(
        { outcome: { const: 'missing' }, code: oneOf('no-machine', 'refused'), why: text },
        { placing: ref('MachinePlacing') },
      ),
    ],
  },
} as const satisfies Record<string, Schema>;
