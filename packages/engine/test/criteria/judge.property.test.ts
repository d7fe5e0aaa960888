import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Criterion,
  criteria,
  type Evidence,
  judge,
  judgeAll,
  quantities,
} from '../../src/criteria/index.ts';
import { factsFor } from './applicable-facts.ts';

const combines = ['each', 'mean', 'maximum', 'minimum'] as const;

/** A criterion of the catalogue, numbers also with other ways to put samples together. */
const anyCriterion: fc.Arbitrary<Criterion> = fc
  .record({
    criterion: fc.constantFrom(...criteria),
    combine: fc.constantFrom(...combines),
    atLeast: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ criterion, combine, atLeast }) =>
    criterion.unit === 'yes-no'
      ? { ...criterion, sampling: { atLeast, combine: 'each' } }
      : { ...criterion, sampling: { atLeast, combine } },
  );

const sampleId = fc.integer({ min: 0, max: 99 }).map((number) => `sample-${number}`);

/** Samples of the criterion's quantity, many of them near its limit. */
function samplesOf(criterion: Criterion): fc.Arbitrary<Evidence[]> {
  const { range } = quantities[criterion.quantity];
  const limits = [criterion.limit?.value ?? []].flat() as number[];
  const value: fc.Arbitrary<number | boolean> = range
    ? fc.oneof(
        fc.double({ min: range[0], max: range[1], noNaN: true }),
        fc
          .record({
            limit: fc.constantFrom(...limits),
            share: fc.double({ min: -0.1, max: 0.1, noNaN: true }),
          })
          .map(({ limit, share }) =>
            Math.min(range[1], Math.max(range[0], limit + share * (Math.abs(limit) || 1))),
          ),
      )
    : fc.boolean();
  const widest = Math.max(...limits.map(Math.abs), 1e-3) / 20;
  return fc.uniqueArray(
    fc.record(
      {
        id: sampleId,
        quantity: fc.constant(criterion.quantity as string),
        value,
        uncertainty: range ? fc.double({ min: 0, max: widest, noNaN: true }) : fc.constant(0),
        assumed: fc.boolean(),
      },
      { requiredKeys: ['id', 'quantity', 'value'] },
    ),
    { selector: ({ id }) => id, maxLength: 8 },
  );
}

const anyCase = anyCriterion.chain((criterion) =>
  fc.record({ criterion: fc.constant(criterion), evidence: samplesOf(criterion), seed: fc.nat() }),
);

/** The same list in an order that hangs on the seed. */
function shuffled<T>(list: readonly T[], seed: number): T[] {
  const rest = [...list];
  const result: T[] = [];
  let state = seed + 1;
  while (rest.length > 0) {
    state = (state * 48_271) % 2_147_483_647;
    result.push(...rest.splice(state % rest.length, 1));
  }
  return result;
}

const runs = { numRuns: 1000 };
const passes = (criterion: Criterion, sample: Evidence) =>
  judge(
    { ...criterion, sampling: { atLeast: 1, combine: 'each' } },
    [sample],
    factsFor(criterion.appliesWhen),
  ).verdict === 'met';

describe('judging', () => {
  test('never says met without enough measured samples', () => {
    fc.assert(
      fc.property(anyCase, ({ criterion, evidence }) => {
        const judged = judge(criterion, evidence, factsFor(criterion.appliesWhen));
        const measured = evidence.filter(({ assumed }) => !assumed).map(({ id }) => id);
        if (judged.verdict === 'met')
          expect(measured.length).toBeGreaterThanOrEqual(criterion.sampling.atLeast);
        if (judged.verdict !== 'not-shown') expect(judged.evidence.length).toBeGreaterThan(0);
        for (const id of judged.evidence) expect(measured).toContain(id);
      }),
      runs,
    );
  });

  test('does not depend on the order of the evidence', () => {
    fc.assert(
      fc.property(anyCase, ({ criterion, evidence, seed }) => {
        const facts = factsFor(criterion.appliesWhen);
        expect(judge(criterion, shuffled(evidence, seed), facts)).toEqual(judge(criterion, evidence, facts));
      }),
      runs,
    );
  });

  // A mean, largest or smallest value says nothing before its count is full, so the sample that fills it may uncover a
  // failure; from then on, and always where each sample is judged, a passing sample can only help.
  test('a further passing measurement never worsens the verdict', () => {
    const rank = { 'not-met': 0, 'not-shown': 1, met: 2 };
    fc.assert(
      fc.property(anyCase, ({ criterion, evidence }) => {
        const [added, ...before] = evidence;
        fc.pre(added !== undefined && !added.assumed && passes(criterion, added));
        const { atLeast, combine } = criterion.sampling;
        const counted = before.filter(({ assumed }) => !assumed).length;
        fc.pre(combine === 'each' || counted >= atLeast);
        const facts = factsFor(criterion.appliesWhen);
        const was = judge(criterion, before, facts).verdict;
        const now = judge(criterion, evidence, facts).verdict;
        expect(rank[now]).toBeGreaterThanOrEqual(rank[was]);
      }),
      runs,
    );
  });

  test('assumed values alone show nothing', () => {
    fc.assert(
      fc.property(anyCase, ({ criterion, evidence }) => {
        const guesses = evidence.map((sample) => ({ ...sample, assumed: true }));
        expect(judge(criterion, guesses, factsFor(criterion.appliesWhen)).verdict).toBe('not-shown');
      }),
      runs,
    );
  });

  test('an assumed value changes no verdict', () => {
    fc.assert(
      fc.property(anyCase, ({ criterion, evidence }) => {
        const facts = factsFor(criterion.appliesWhen);
        const measured = evidence.filter(({ assumed }) => !assumed);
        const withAll = judge(criterion, evidence, facts);
        const without = judge(criterion, measured, facts);
        expect(withAll.verdict).toBe(without.verdict);
        expect(withAll.value).toBe(without.value);
        if (withAll.assumed) expect(withAll.verdict).toBe('not-shown');
      }),
      runs,
    );
  });

  test('more doubt never decides anything', () => {
    fc.assert(
      fc.property(anyCase, ({ criterion, evidence }) => {
        fc.pre(criterion.unit !== 'yes-no');
        const facts = factsFor(criterion.appliesWhen);
        const was = judge(criterion, evidence, facts).verdict;
        const wider = evidence.map((sample) => ({
          ...sample,
          uncertainty: (sample.uncertainty ?? 0) * 2 + 1e-4,
        }));
        const now = judge(criterion, wider, facts).verdict;
        if (now !== 'not-shown') expect(now).toBe(was);
      }),
      runs,
    );
  });

  test('evidence of other quantities and refused samples change no verdict', () => {
    fc.assert(
      fc.property(anyCase, ({ criterion, evidence }) => {
        const facts = factsFor(criterion.appliesWhen);
        const clean = judge(criterion, evidence, facts);
        const other: Evidence = { id: 'other-quantity', quantity: 'unheardOf', value: 3 };
        const refused: Evidence = { id: 'not-a-number', quantity: criterion.quantity, value: Number.NaN };
        const [judged] = judgeAll([criterion], [other, refused, ...evidence], facts);
        expect({ ...judged, issues: [] }).toEqual(clean);
        expect(judged.issues).toHaveLength(1);
      }),
      runs,
    );
  });
});
