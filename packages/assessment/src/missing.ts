import { criteria } from '@undercroft/engine';
import { isSurveyed, type Job } from '@undercroft/record';
import type { Assessment } from './assessment.ts';
import type { NextMeasurementShown } from './causes/causes-assessment.ts';
import { catalogueOf } from './criteria.ts';
import { itemsToShow } from './evidence/from-plan.ts';

/** What an answer, a measurement or a reading is wanted for. */
export interface WantedFor {
  /** Criteria that wait for it, and how many of them are code. */
  readonly criteria: number;
  readonly codes: number;
  /** What it would tell about the cause of what was found [bits]. */
  readonly gainBits?: number;
  /** Its share of what is not sure about the year. */
  readonly share?: number;
}

/** Something that the assessment lacks. */
export type Wanted = { readonly key: string; readonly for: WantedFor } & (
  | { readonly kind: 'walls' | 'ground' }
  | { readonly kind: 'reading'; readonly of: 'air' | 'outdoor-air' | 'wood' | 'surface' }
  | {
      readonly kind: 'quantity';
      readonly quantity: string;
      readonly title: string;
      readonly how: string;
      /** Things on the plan of which each wants a look and has had none. */
      readonly unseen: readonly string[];
    }
  | {
      readonly kind: 'answer';
      readonly question: string;
      readonly text: string;
      readonly answers: readonly string[];
    }
  /** A trial that the record has no number for; it is told in words. */
  | { readonly kind: 'trial'; readonly title: string; readonly how: string; readonly reason: string }
  /** A guess of the year by the hour, with its range. */
  | { readonly kind: 'guess'; readonly title: string; readonly assumption: string }
);

/** How much a criterion that waits counts (common practice, no source). */
const COUNTS = { code: 4, standard: 3, guide: 2, practice: 1 } as const;

/** Below these an unknown hardly moves what is told [bits; share of the spread]. */
const LEAST = { gainBits: 0.02, share: 0.02 } as const;

const NOTHING: WantedFor = { criteria: 0, codes: 0 };

type Catalogue = ReadonlyMap<string, criteria.Criterion>;

function waitingFor(
  byId: Catalogue,
  ids: readonly string[],
): { readonly for: WantedFor; readonly weight: number } {
  const kinds = ids.flatMap((id) => byId.get(id)?.kind ?? []);
  return {
    for: { criteria: ids.length, codes: kinds.filter((kind) => kind === 'code').length },
    weight: kinds.reduce((sum, kind) => sum + COUNTS[kind], 0),
  };
}

/** Readings without which no balance of the survey day stands. */
function readingsWanted({ readings }: Job): Wanted[] {
  const wanted: Wanted[] = [];
  const lacks = (of: 'air' | 'outdoor-air' | 'wood' | 'surface', count: number) => {
    if (count === 0) wanted.push({ key: `reading-${of}`, kind: 'reading', of, for: NOTHING });
  };
  lacks('air', readings.air.filter((r) => r.where === 'crawl').length);
  lacks('outdoor-air', readings.air.filter((r) => r.where === 'outdoor').length);
  lacks('wood', readings.wood.length);
  lacks('surface', readings.surface.length);
  return wanted;
}

/** Quantities that criteria wait for, with the things of the plan that nobody has looked at. */
function quantitiesWanted(
  job: Job,
  byId: Catalogue,
  shown: Pick<Assessment, 'criteria'>,
): (Wanted & { readonly weight: number })[] {
  const waiting = new Map<string, string[]>();
  for (const { id, verdict } of shown.criteria) {
    const quantity = byId.get(id)?.quantity;
    if (verdict !== 'not-shown' || quantity === undefined) continue;
    waiting.set(quantity, [...(waiting.get(quantity) ?? []), id]);
  }
  const toShow = isSurveyed(job) ? itemsToShow(job) : {};
  const seen = new Set(
    job.readings.observations.flatMap((o) =>
      o.place?.on === undefined || o.assumed ? [] : [`${o.quantity} ${o.place.on.id}`],
    ),
  );
  return [...waiting].flatMap(([quantity, ids]) => {
    const known = criteria.findQuantity(quantity);
    if (known === undefined) return [];
    return [
      {
        key: `quantity-${quantity}`,
        kind: 'quantity' as const,
        quantity,
        title: known.title,
        how: known.measured,
        unseen: (toShow[quantity] ?? []).filter((item) => !seen.has(`${quantity} ${item}`)),
        ...waitingFor(byId, ids),
      },
    ];
  });
}

function trialOf(next: NextMeasurementShown): Wanted {
  const { key, title, how, reason, gainBits } = next;
  return { key: `trial-${key}`, kind: 'trial', title, how, reason, for: { ...NOTHING, gainBits } };
}

/**
 * What the assessment lacks, what matters most first: walls and ground, readings without which nothing is balanced, what
 * tells rival causes apart by its gain, guesses that move the year by their share, then answers and quantities by the
 * criteria that wait for them, code before advice. What is wanted for two reasons stands once, where it matters more.
 * @param shown null while there is no assessment
 */
export function missingOf(
  job: Job,
  shown: Pick<Assessment, 'criteria' | 'openQuestions' | 'causes' | 'season'> | null,
): readonly Wanted[] {
  const drawn: Wanted[] = [
    ...(job.plan.outline === undefined ? [{ key: 'walls', kind: 'walls', for: NOTHING } as const] : []),
    ...(job.plan.ground === undefined ? [{ key: 'ground', kind: 'ground', for: NOTHING } as const] : []),
  ];
  const readings = readingsWanted(job);
  if (shown === null) return [...drawn, ...readings];
  const byId = new Map(catalogueOf(job, []).criteria.map((criterion) => [criterion.id, criterion]));
  const quantities = quantitiesWanted(job, byId, shown);
  const telling = shown.causes.next.flatMap((next): Wanted[] => {
    if (next.gainBits < LEAST.gainBits) return [];
    const waits = quantities.find((q) => q.kind === 'quantity' && q.quantity === next.quantity);
    if (waits !== undefined) {
      const { weight: _, ...wanted } = waits;
      return [{ ...wanted, for: { ...wanted.for, gainBits: next.gainBits } }];
    }
    if (next.quantity === undefined) return [trialOf(next)];
    const { quantity, title, how, gainBits } = next;
    return [
      {
        key: `quantity-${quantity}`,
        kind: 'quantity',
        quantity,
        title,
        how,
        unseen: [],
        for: { ...NOTHING, gainBits },
      },
    ];
  });
  const guesses = (shown.season?.chances?.influences ?? []).flatMap((one): Wanted[] =>
    one.key === 'weather' || one.share < LEAST.share
      ? []
      : [
          {
            key: `guess-${one.key}`,
            kind: 'guess',
            title: one.title,
            assumption: one.key,
            for: { ...NOTHING, share: one.share },
          },
        ],
  );
  const answers = shown.openQuestions.map(({ question, text, answers: allowed, criteria: ids }) => ({
    key: `answer-${question}`,
    kind: 'answer' as const,
    question,
    text,
    answers: allowed,
    ...waitingFor(byId, ids),
  }));
  const waiting = [...answers, ...quantities].sort((a, b) => b.weight - a.weight || (a.key < b.key ? -1 : 1));
  const listed = new Set<string>();
  return [
    ...drawn,
    ...readings,
    ...telling,
    ...guesses,
    ...waiting.map(({ weight: _, ...one }) => one),
  ].filter(({ key }) => !listed.has(key) && listed.add(key));
}
