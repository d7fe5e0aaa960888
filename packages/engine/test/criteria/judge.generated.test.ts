import { describe, expect, test } from 'vitest';
import { type Criterion, criteria, type Evidence, judge, quantities } from '../../src/criteria/index.ts';
import { factsFor } from './applicable-facts.ts';

/** A value on the wanted side of the limit, half of the way to the end of the range of the quantity at most. */
function valueFor({ comparison, limit, quantity }: Criterion, pass: boolean): number | boolean {
  if (comparison === 'yes' || comparison === 'no') return (comparison === 'yes') === pass;
  const [low, high] = quantities[quantity].range ?? [0, 0];
  const value = limit?.value;
  if (typeof value !== 'number') {
    const [least, most] = value ?? [0, 0];
    return pass ? (least + most) / 2 : most + (high - most) / 3;
  }
  const above = value + (high - value) / 1000;
  const below = value - (value - low) / 7;
  if (comparison === '=') return pass ? value : above;
  const wantsAbove = (comparison === '>=' || comparison === '>') === pass;
  return wantsAbove ? above : below;
}

function samples(criterion: Criterion, pass: boolean, count: number, assumed = false): Evidence[] {
  return Array.from({ length: count }, (_, index) => ({
    id: `sample-${index + 1}`,
    quantity: criterion.quantity,
    value: valueFor(criterion, pass),
    assumed,
  }));
}

describe.each(criteria.map((criterion) => [criterion.id, criterion] as const))('%s', (_id, criterion) => {
  const facts = factsFor(criterion.appliesWhen);
  const { atLeast } = criterion.sampling;

  test('met by enough passing samples', () => {
    const judged = judge(criterion, samples(criterion, true, atLeast), facts);
    expect(judged).toMatchObject({
      criterionId: criterion.id,
      verdict: 'met',
      applies: true,
      assumed: false,
      issues: [],
    });
    expect(judged.evidence).toHaveLength(atLeast);
    expect(judged.value).toBe(valueFor(criterion, true));
    if (criterion.limit) expect(judged.margin).toBeGreaterThanOrEqual(0);
  });

  // A quantity that cannot lie on the failing side (an answer of 0 at most, say) would have no limit worth judging.
  test('not met by one failing sample', () => {
    const [failing] = samples(criterion, false, 1);
    const passing = samples(criterion, true, atLeast).map((sample) => ({
      ...sample,
      id: `more-${sample.id}`,
    }));
    for (const evidence of [[failing], [failing, ...passing]]) {
      const judged = judge(criterion, evidence, facts);
      expect(judged).toMatchObject({ verdict: 'not-met', evidence: ['sample-1'], value: failing.value });
      if (criterion.limit) expect(judged.margin).toBeLessThanOrEqual(0);
    }
  });

  test('not shown by too little', () => {
    const without = judge(criterion, [], facts);
    expect(without).toMatchObject({ verdict: 'not-shown', evidence: [], assumed: false });
    expect(without.value).toBeUndefined();
    if (atLeast > 1) {
      const judged = judge(criterion, samples(criterion, true, atLeast - 1), facts);
      expect(judged.verdict).toBe('not-shown');
      expect(judged.reason).toContain(`${atLeast}`);
    }
  });

  test('not shown by assumed values, which are named', () => {
    for (const pass of [true, false]) {
      const judged = judge(criterion, samples(criterion, pass, atLeast, true), facts);
      expect(judged).toMatchObject({ verdict: 'not-shown', assumed: true });
      expect(judged.reason).toMatch(/Assumed, not measured: .*sample-1/);
    }
  });

  test('does not apply, or may not', () => {
    const evidence = samples(criterion, true, atLeast);
    const unknown = judge(criterion, evidence, {});
    if (JSON.stringify(criterion.appliesWhen) === '{"all":[]}') {
      expect(unknown).toMatchObject({ applies: true, verdict: 'met' });
      return;
    }
    expect(unknown).toMatchObject({ applies: 'unknown', verdict: 'met' });
    expect(unknown.reason).toMatch(/Not known whether it applies: .*\?/);
    const elsewhere = judge(criterion, evidence, factsFor(criterion.appliesWhen, false));
    expect(elsewhere).toMatchObject({ applies: false, verdict: 'not-shown', evidence: [] });
  });
});
