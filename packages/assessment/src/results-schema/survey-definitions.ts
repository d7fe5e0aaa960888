import type { Notice, Source } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type {
  Assessment,
  BudgetResult,
  CautionShown,
  ClimateUsed,
  ClosureResult,
  CriterionResult,
  GeometryResult,
  OpenQuestion,
  Origin,
  ReadingMeaning,
  WallEdge,
  ZoneArea,
} from '../assessment.ts';
import type { Assumption } from '../assumption.ts';
import type { BudgetPath, PathInputShown, PathStep } from '../budget/budget-path.ts';
import type { ConditionOrigins } from '../budget/origins.ts';
import type { EvidenceUsed } from '../evidence-used.ts';
import {
  amount,
  count,
  fraction,
  listOf,
  namedNumbers,
  number,
  object,
  oneOf,
  ref,
  type Schema,
  text,
  yesNo,
} from './build.ts';

const notices = listOf(ref('Notice'));
const provenance = oneOf('read', 'quoted', 'memory', 'computed', 'practice');

const airState = object<BudgetResult['crawl']>({
  temperatureC: number,
  relativeHumidity: fraction,
  dewPointC: number,
});

/** What the survey comes to: geometry, readings, criteria, balances. */
export const SURVEY_DEFINITIONS = {
  Notice: object<Notice>({ code: text, message: text }),
  Point: object<Point>({ xM: number, yM: number }),
  Source: object<Source>({ id: text, citation: text, provenance }),
  Origin: object<Origin>(
    {
      kind: oneOf('reading', 'observation', 'finding', 'plan', 'house', 'climate', 'photo', 'assumption'),
    },
    { id: text, who: text, when: text, note: text },
  ),
  Assumption: object<Assumption>(
    { key: text, title: text, value: { type: ['number', 'string', 'boolean'] }, unit: text, why: text },
    { low: number, high: number },
  ),
  Climate: object<ClimateUsed>({ name: text, source: text, kind: text, notices }, { distanceKm: amount }),
  Wall: object<WallEdge>({
    id: text,
    from: ref('Point'),
    to: ref('Point'),
    lengthM: amount,
    bearingDeg: number,
  }),
  /** JSON knows no infinity, so the precision of an exact closure is left out. */
  Closure: object<Partial<Pick<ClosureResult, 'precision'>> & Omit<ClosureResult, 'precision'>>(
    {
      misclosureM: amount,
      verdict: oneOf('good', 'doubtful', 'poor'),
      adjustment: oneOf('compass', 'transit'),
    },
    { precision: amount, hint: text },
  ),
  Zone: object<ZoneArea>({ id: text, name: text, cover: text, areaM2: amount }),
  Geometry: object<GeometryResult>(
    {
      corners: listOf(ref('Point')),
      edges: listOf(ref('Wall')),
      floorAreaM2: amount,
      perimeterM: amount,
      volumeM3: amount,
      clearHeightM: object<GeometryResult['clearHeightM']>({
        minimum: amount,
        mean: amount,
        maximum: amount,
        assumed: yesNo,
      }),
      zones: listOf(ref('Zone')),
      bareEarthM2: amount,
      pierCount: count,
      openVentAreaM2: amount,
      notices,
    },
    { closure: ref('Closure') },
  ),
  Reading: object<ReadingMeaning>(
    {
      id: text,
      kind: oneOf('air', 'surface', 'wood'),
      place: text,
      when: text,
      who: text,
      shown: text,
      means: text,
      state: oneOf('fine', 'watch', 'alarm'),
      figures: namedNumbers(),
      notices,
    },
    { at: ref('Point') },
  ),
  Evidence: object<EvidenceUsed>({
    value: { type: ['number', 'boolean'] },
    unit: text,
    assumed: yesNo,
    origin: ref('Origin'),
  }),
  Criterion: object<CriterionResult>(
    {
      id: text,
      subject: text,
      title: text,
      kind: oneOf('code', 'standard', 'guide', 'practice'),
      limit: text,
      limitSi: text,
      source: text,
      sourceKnown: provenance,
      verdict: oneOf('met', 'not-met', 'not-shown'),
      reason: text,
      evidence: listOf(ref('Evidence')),
      governs: yesNo,
    },
    { consequence: text, licensedTrade: text },
  ),
  CriteriaCount: object<Assessment['criteriaCount']>({ met: count, notMet: count, notShown: count }),
  OpenQuestion: object<OpenQuestion>({
    question: text,
    text,
    answers: listOf(text),
    criteria: listOf(text),
  }),
  BudgetPath: object<BudgetPath>({
    key: text,
    title: text,
    kgPerDay: number,
    low: number,
    high: number,
    assumed: yesNo,
    formula: text,
    source: ref('Source'),
    inputs: listOf(
      object<PathInputShown>({
        name: text,
        unit: text,
        value: number,
        low: number,
        high: number,
        assumed: yesNo,
        origin: ref('Origin'),
      }),
    ),
    steps: listOf(object<PathStep>({ name: text, unit: text, value: number })),
  }),
  Budget: object<BudgetResult>(
    {
      title: text,
      crawl: airState,
      outdoor: airState,
      groundTemperatureC: number,
      airChangesPerHour: amount,
      origins: object<ConditionOrigins>({
        crawl: ref('Origin'),
        outdoor: ref('Origin'),
        house: ref('Origin'),
        ground: ref('Origin'),
      }),
      paths: listOf(ref('BudgetPath')),
      totalInKgPerDay: amount,
      unexplainedKgPerDay: number,
      notices,
    },
    {
      relativeHumidityRange: object<NonNullable<BudgetResult['relativeHumidityRange']>>({
        low: fraction,
        high: fraction,
      }),
    },
  ),
  Caution: object<CautionShown>({ id: text, text, because: text }),
} as const satisfies Record<string, Schema>;
