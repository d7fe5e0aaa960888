import {
  airflow,
  causes,
  coverage,
  dehumidifier,
  distribution,
  criteria as engineCriteria,
  moisture,
  mold,
  plan as planning,
  psychrometrics,
  type Source,
  season,
  wood,
} from '@undercroft/engine';
import type { ItemKey, Job } from '@undercroft/record';
import type { Assessment, CriterionResult, ReadingMeaning } from '../assessment.ts';
import type { DefectResult } from '../defects/defect-result.ts';
import type { Origin } from '../origin.ts';
import { type ItemsOfJob, itemsOfJob } from './items-of-job.ts';

/** Where a figure comes from. */
export interface Trace {
  /** Publications and habits behind the calculation or the criterion. */
  readonly sources: readonly Source[];
  /** Things of the record that went in, as they are named in its log. */
  readonly items: readonly ItemKey[];
  /** What was taken for granted, by title. */
  readonly assumptions: readonly string[];
}

const NOTHING: Trace = { sources: [], items: [], assumptions: [] };

type Sources = Readonly<Record<string, Source>>;
const all = (...sets: readonly Sources[]): Source[] => sets.flatMap((set) => Object.values(set));

/** Several traces as one, each thing once. */
function together(traces: readonly Trace[]): Trace {
  const sources = new Map(traces.flatMap((t) => t.sources.map((s) => [s.id, s] as const)));
  const items = new Map(traces.flatMap((t) => t.items.map((i) => [`${i.kind} ${i.id}`, i] as const)));
  return {
    sources: [...sources.values()],
    items: [...items.values()],
    assumptions: [...new Set(traces.flatMap((t) => t.assumptions))],
  };
}

const READINGS = ['air', 'surface', 'wood', 'level'];

/** The whole drawing of the space. */
const drawing = (items: ItemsOfJob): ItemKey[] => [...items.single('plan'), ...items.all(...items.planKinds)];

/** What one origin stands for. A mean of readings stands for all of its kind. */
function ofOrigin(origin: Origin, items: ItemsOfJob, climate: Source): Trace {
  const { kind, id = '', note } = origin;
  const found = (list: ItemKey[]): Trace => ({ ...NOTHING, items: list });
  switch (kind) {
    case 'reading': {
      // Without an id it is the coldest of the surfaces that were read.
      const own = id === '' ? items.all('surface') : items.withId(id, READINGS);
      return found(note?.startsWith('mean of') ? items.all(...own.map((i) => i.kind)) : own);
    }
    case 'observation':
    case 'finding':
    case 'photo':
      return found(items.withId(id, [kind]));
    case 'house':
      return found(items.single('house'));
    case 'plan': {
      // An id that no item has names the floor, the ground or the vents as a whole.
      const own = items.withId(id, items.planKinds);
      return found(own.length > 0 ? own : [...items.single('plan'), ...items.all('zone', 'vent')]);
    }
    case 'climate':
      return { ...NOTHING, sources: [climate], items: items.single('header') };
    case 'assumption':
      return { ...NOTHING, assumptions: [note ?? 'not measured'] };
  }
}

/** Where the signs, grades and remedies of defects come from. */
const DEFECT_SOURCE: Source = {
  id: 'defects',
  citation: 'Signs, grades and remedies of defects: common practice, no source',
  provenance: 'practice',
};

const climateSource = ({ climate }: Assessment): Source => ({
  id: 'climate',
  citation: climate.source,
  provenance: 'read',
});

function ofReading({ id, kind }: ReadingMeaning, job: Job, items: ItemsOfJob): Trace {
  const reading = [...job.readings.air, ...job.readings.surface, ...job.readings.wood].find(
    (r) => r.id === id,
  );
  const instrument =
    reading?.instrument === undefined ? [] : items.withId(reading.instrument, ['instrument']);
  const sources = kind === 'wood' ? all(wood.woodSources) : all(psychrometrics.psychrometricsSources);
  // A surface is held against the air beside it.
  const beside = kind === 'surface' ? items.all('air') : [];
  return { ...NOTHING, sources, items: [...items.withId(id, [kind]), ...instrument, ...beside] };
}

function ofCriterion(criterion: CriterionResult, items: ItemsOfJob, climate: Source): Trace {
  const { id, source, sourceKnown, evidence } = criterion;
  const own = { ...NOTHING, sources: [{ id, citation: source, provenance: sourceKnown }] };
  return together([own, ...evidence.map((e) => ofOrigin(e.origin, items, climate))]);
}

/** One path of a balance, or all of them; each also rests on the air that it was balanced in. */
function ofBudget(
  { budgets }: Assessment,
  day: 'surveyDay' | 'designMonth',
  key: string | undefined,
  items: ItemsOfJob,
  climate: Source,
): Trace | undefined {
  const paths = (budgets[day]?.paths ?? []).filter((p) => key === undefined || p.key === key);
  if (paths.length === 0) return undefined;
  const air = day === 'surveyDay' ? items.all('air') : [...items.single('header'), ...items.single('house')];
  const machines = paths.some((p) => p.key.startsWith('dehumidifier')) ? items.all('equipment') : [];
  return together([
    { ...NOTHING, items: [...air, ...machines] },
    ...paths.map((path) =>
      together([
        { ...NOTHING, sources: [path.source] },
        ...path.inputs.map((i) => ofOrigin(i.origin, items, climate)),
      ]),
    ),
  ]);
}

function ofSeason({ season: year }: Assessment, items: ItemsOfJob, climate: Source): Trace | undefined {
  if (year === undefined) return undefined;
  return {
    sources: [climate, ...all(season.seasonSources, dehumidifier.dehumidifierSources, mold.moldSources)],
    items: [
      ...items.single('header'),
      ...items.single('house'),
      ...drawing(items),
      ...items.all('wood', 'air', 'repair', 'machine'),
    ],
    assumptions: year.assumptions.map((a) => a.title),
  };
}

function ofDistribution(
  { distribution: air }: Assessment,
  items: ItemsOfJob,
  climate: Source,
): Trace | undefined {
  if (air?.outcome !== 'worked-out') return undefined;
  const sources = all(
    distribution.distributionSources,
    moisture.moistureSources,
    airflow.airflowSources,
    dehumidifier.dehumidifierSources,
  );
  const own = [...items.single('header'), ...items.single('house'), ...drawing(items)];
  return together([
    { ...NOTHING, sources: [climate, ...sources], items: own },
    ...air.inputs.map(({ title, origin }) =>
      origin.kind === 'assumption' ? { ...NOTHING, assumptions: [title] } : ofOrigin(origin, items, climate),
    ),
    ofOrigin(air.mixing.origin, items, climate),
  ]);
}

function ofCoverage(assessment: Assessment, [part, id = '']: readonly string[], items: ItemsOfJob): Trace {
  const sources = all(coverage.coverageSources);
  if (part === 'pictures') return { ...NOTHING, sources, items: items.withId(id, ['photo', 'clip']) };
  if (part === 'proofs') {
    const proof = assessment.coverage?.proofs.find((p) => p.id === id);
    const pictures = (proof?.pictures ?? []).flatMap((p) => items.withId(p, ['photo', 'clip']));
    return {
      ...NOTHING,
      sources,
      items: [...items.withId(id, ['acceptance', 'build-step', 'finding']), ...pictures],
    };
  }
  return { ...NOTHING, sources, items: [...items.all('photo', 'clip'), ...drawing(items)] };
}

function ofCauses(
  { causes: of }: Assessment,
  [part, to]: readonly string[],
  items: ItemsOfJob,
  climate: Source,
) {
  const about = part === undefined || part !== 'of' ? of.arrows : of.arrows.filter((a) => a.to === to);
  const ids = new Set(about.flatMap((a) => [...a.supports, ...a.contradicts]));
  const origins = [
    ...of.evidence.filter((e) => ids.has(e.id)).flatMap((e) => e.origins),
    ...of.observations.filter((o) => to === undefined || o.key === to).flatMap((o) => o.origins),
  ];
  return together([
    { ...NOTHING, sources: [...all(causes.causesSources), ...about.map((a) => a.source)] },
    ...origins.map((o) => ofOrigin(o, items, climate)),
  ]);
}

/** What settled a question about the job: its answer where somebody gave one, else the house and the drawing. */
function ofFacts(questions: readonly string[], job: Job, items: ItemsOfJob): ItemKey[] {
  return questions.flatMap((question) => {
    const answers = job.readings.answers.filter((a) => a.question === question);
    if (answers.length === 0) return [...items.single('house'), ...items.single('plan')];
    return answers.flatMap((a) => items.withId(a.id, ['answer']));
  });
}

function ofDefect(
  defect: DefectResult,
  assessment: Assessment,
  job: Job,
  items: ItemsOfJob,
  climate: Source,
): Trace {
  const broken = assessment.criteria.filter((c) => defect.broken.includes(c.id));
  return together([
    ...broken.map((c) => ofCriterion(c, items, climate)),
    ...[...defect.evidence, ...defect.against].map((e) => ofOrigin(e.origin, items, climate)),
    { ...NOTHING, items: defect.findings.flatMap((f) => items.withId(f.id, ['finding'])) },
    { ...NOTHING, items: ofFacts(defect.facts, job, items) },
    { ...NOTHING, items: defect.items.flatMap((id) => items.withId(id, items.planKinds)) },
    ...(defect.mended === undefined
      ? []
      : [ofBudget(assessment, 'designMonth', undefined, items, climate) ?? NOTHING]),
    ...(defect.mended?.year === undefined ? [] : [ofSeason(assessment, items, climate) ?? NOTHING]),
  ]);
}

function ofCaution({ id, source }: engineCriteria.Caution): Source {
  const { citation, edition, section, provenance } = source;
  const parts = [citation, edition, section].filter((part) => part !== undefined && part !== '');
  return { id, citation: parts.join(', '), provenance };
}

function ofGeometry([part, id = '']: readonly string[], items: ItemsOfJob): Trace {
  const more: Readonly<Record<string, ItemKey[]>> = {
    clearHeightM: items.all('height'),
    volumeM3: items.all('height'),
    bareEarthM2: items.all('zone'),
    pierCount: items.all('pier'),
    openVentAreaM2: items.all('vent'),
    zones: [...items.withId(id, ['zone'])],
  };
  const sources = all(planning.planSources);
  return { ...NOTHING, sources, items: [...items.single('plan'), ...(more[part ?? ''] ?? [])] };
}

/** The record itself: `job/header`, `job/finding/f1`. What people entered has its entries and no publication. */
function ofJob([kind = '', id]: readonly string[], items: ItemsOfJob): Trace {
  const own = id === undefined ? items.single(kind) : items.withId(id, [kind]);
  return { ...NOTHING, items: own };
}

function find(assessment: Assessment, job: Job, pointer: string): Trace | undefined {
  const [part, ...rest] = pointer.split('/');
  const [id] = rest;
  const items = itemsOfJob(job);
  const climate = climateSource(assessment);
  const criteria = (list: readonly CriterionResult[]) =>
    together(list.map((c) => ofCriterion(c, items, climate)));
  switch (part) {
    case 'job':
      return ofJob(rest, items);
    case 'geometry':
      return ofGeometry(rest, items);
    case 'climate':
      return { ...NOTHING, sources: [climate], items: items.single('header') };
    case 'readings': {
      const list = assessment.readings.filter((r) => id === undefined || r.id === id);
      return list.length === 0 ? undefined : together(list.map((r) => ofReading(r, job, items)));
    }
    case 'criteria': {
      const list = assessment.criteria.filter((c) => id === undefined || c.id === id);
      return list.length === 0 ? undefined : criteria(list);
    }
    case 'budgets':
      if (id !== 'surveyDay' && id !== 'designMonth') return undefined;
      return ofBudget(assessment, id, rest[1], items, climate);
    case 'season':
      return ofSeason(assessment, items, climate);
    case 'distribution':
      return ofDistribution(assessment, items, climate);
    case 'coverage':
      return assessment.coverage === undefined ? undefined : ofCoverage(assessment, rest, items);
    case 'defects': {
      const list = assessment.defects.filter((d) => id === undefined || d.key === id);
      if (list.length === 0 && id !== undefined) return undefined;
      return together([
        { ...NOTHING, sources: [DEFECT_SOURCE] },
        ...list.map((d) => ofDefect(d, assessment, job, items, climate)),
      ]);
    }
    case 'causes':
      return ofCauses(assessment, rest, items, climate);
    case 'sources':
      return { ...NOTHING, sources: assessment.sources };
    case 'cautions': {
      const list = engineCriteria.cautions.filter((c) => id === undefined || c.id === id);
      return list.length === 0 ? undefined : { ...NOTHING, sources: list.map(ofCaution) };
    }
    case 'assumptions': {
      const list = [...assessment.assumptions, ...(assessment.season?.assumptions ?? [])].filter(
        (a) => a.key === id,
      );
      return list.length === 0 ? undefined : { ...NOTHING, assumptions: list.map((a) => a.title) };
    }
    case 'headline':
      return together([
        criteria(assessment.criteria),
        ...assessment.readings.map((r) => ofReading(r, job, items)),
        ofBudget(
          assessment,
          assessment.budgets.surveyDay === undefined ? 'designMonth' : 'surveyDay',
          undefined,
          items,
          climate,
        ) ?? NOTHING,
        ...(assessment.coverage === undefined ? [] : [ofCoverage(assessment, [], items)]),
      ]);
    default:
      return undefined;
  }
}

/**
 * Where a figure comes from: its sources, the things of the record that went in, and what was taken for granted.
 * @param pointer what the figure tells, e.g. `criteria/LIN-08a`, `readings/air-1`, `budgets/surveyDay/open-ground`,
 *   `coverage/pictures/ph3`, `season`, `job/finding/f1`
 * @throws RangeError for a pointer to nothing
 */
export function traceOf(job: Job, assessment: Assessment, pointer: string): Trace {
  const trace = find(assessment, job, pointer);
  const empty =
    trace !== undefined && trace.sources.length + trace.items.length + trace.assumptions.length === 0;
  if (trace === undefined || empty) throw new RangeError(`"${pointer}" leads to nothing in this assessment`);
  return trace;
}
