import { describe, expect, test } from 'vitest';
import { criteria, judge } from '../../src/criteria/index.ts';
import { factsFor } from './applicable-facts.ts';
import { samples, valueFor } from './made-samples.ts';

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
