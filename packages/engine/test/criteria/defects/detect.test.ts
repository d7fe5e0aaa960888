import { describe, expect, it, test } from 'vitest';
import { detectAmong } from '../../../src/criteria/defects/detect-defects.ts';
import { defectRules } from '../../../src/criteria/defects/rules.ts';
import {
  type ClaimedDefect,
  criteria,
  type DefectEvidence,
  type DetectedDefect,
  defects,
  type Evidence,
  type JobFacts,
  judgeAll,
} from '../../../src/criteria/index.ts';
import { defectCases, evidenceOf } from './cases.ts';
import { EXTENTS } from './extents.ts';

interface Given extends Partial<Pick<DefectEvidence, 'claims' | 'items' | 'drawn'>> {
  readonly taken?: readonly Evidence[];
  readonly facts?: JobFacts;
}

/** Ids of the criteria that a defect is proved by; judging the others would take most of the time. */
function usedBy(key: string): ReadonlySet<string> {
  const { proofs = [], also = [], hints = [] } = defectRules[key] ?? {};
  return new Set([...proofs, ...also, ...hints].flatMap((p) => (p.by === 'criterion' ? [p.id] : [])));
}

function detect(key: string, given: Given): DetectedDefect {
  const { taken = [], facts = {}, claims = [], items, drawn } = given;
  const judged = criteria.filter(({ id }) => usedBy(key).has(id));
  const [one] = detectAmong(
    defects.filter((d) => d.key === key),
    {
      criteria: judged,
      judgements: judgeAll(judged, taken, facts, items),
      samples: taken,
      facts,
      claims,
      extents: EXTENTS,
      ...(items === undefined ? {} : { items }),
      ...(drawn === undefined ? {} : { drawn }),
    },
  );
  if (one === undefined) throw new Error(`${key} is not in the catalogue`);
  return one;
}

const claim = (defect: string, more: Partial<ClaimedDefect> = {}): ClaimedDefect => ({
  id: 'f1',
  defect,
  hasProof: false,
  ...more,
});

test('every defect of the catalogue has its proofs and its row of cases', () => {
  const keys = defects.map(({ key }) => key).sort();
  expect(Object.keys(defectRules).sort()).toEqual(keys);
  expect(Object.keys(defectCases).sort()).toEqual(keys);
});

describe.each(defects.map((d) => [d.key, d] as const))('%s', (key, defect) => {
  const row = defectCases[key];
  if (row === undefined) throw new Error(`no case for ${key}`);
  const shown = { taken: evidenceOf(row.shown.taken), facts: { ...row.facts, ...row.shown.facts } };
  const refuted = { taken: evidenceOf(row.refuted.taken), facts: { ...row.facts, ...row.refuted.facts } };

  it(`is shown by what was measured (${row.source})`, () => {
    const found = detect(key, shown);
    expect(found).toMatchObject({ state: 'shown', certainty: 'measured' });
    expect(found.because.join(' ')).not.toBe('');
    expect(found.severity).toBeGreaterThanOrEqual(defect.severity);
    expect(found.severityBecause[0]).toBe(defect.gradedBecause);
    if (shown.taken.length > 0) expect(found.samples.length).toBeGreaterThan(0);
    expect(detect(key, { ...shown, claims: [claim(key)] }).claims).toEqual(['f1']);
  });

  it('is absent where what was measured clears it, and a claim is contradicted', () => {
    const found = detect(key, refuted);
    expect(found).toMatchObject({ state: 'absent', certainty: 'none', severity: defect.severity });
    const claimed = detect(key, { ...refuted, claims: [claim(key, { hasProof: true })] });
    expect(claimed.state).toBe('contradicted');
    expect(claimed.claims).toEqual(['f1']);
    expect(claimed.because.join(' ')).not.toBe('');
    if (refuted.taken.length > 0) expect(claimed.against.length).toBeGreaterThan(0);
  });

  it('is not shown by nothing, by less than it takes, nor by what was assumed', () => {
    expect(detect(key, { facts: row.facts ?? {} })).toMatchObject({
      state: 'not-shown',
      severity: defect.severity,
    });
    for (const state of ['shown', 'refuted'] as const) {
      const assumed = (state === 'shown' ? shown : refuted).taken.map((s) => ({ ...s, assumed: true }));
      const found = detect(key, { taken: assumed, facts: row.facts ?? {} });
      expect(found).toMatchObject({ state: 'not-shown', severity: defect.severity });
    }
    const fewer = refuted.taken.slice(1);
    if (fewer.length > 0) expect(detect(key, { ...refuted, taken: fewer }).state).toBe('not-shown');
  });

  it('is claimed without proof and shown with it', () => {
    const facts = row.facts ?? {};
    expect(detect(key, { facts, claims: [claim(key)] })).toMatchObject({
      state: 'claimed',
      certainty: 'suspected',
      severity: defect.severity,
    });
    expect(detect(key, { facts, claims: [claim(key, { hasProof: true })] })).toMatchObject({
      state: 'shown',
      certainty: 'seen',
    });
  });
});

describe('certainty', () => {
  const closed = { linerPresent: true, spaceType: 'closed' } as const;

  it('a value whose doubt reaches over the threshold only makes a defect likely', () => {
    const water = { id: 'w', quantity: 'freeWaterUnderLinerM', value: 0.0035, uncertainty: 0.001 };
    expect(detect('water-bed', { taken: [water], facts: closed })).toMatchObject({
      state: 'not-shown',
      certainty: 'suspected',
      samples: ['w'],
    });
  });

  it('a hint makes it likely and never shows it', () => {
    const glue = { id: 'g', quantity: 'linerEdgeMechanicallyFixed', value: false };
    expect(detect('glued-edge-letting-go', { taken: [glue], facts: closed })).toMatchObject({
      state: 'not-shown',
      certainty: 'suspected',
    });
  });

  it('piers that nobody looked at keep it from being refuted', () => {
    const facts = { ...closed, piersPresent: true };
    const items = { pierWrapHeightM: ['p1', 'p2'], pierWrapSealed: ['p1', 'p2'] };
    const one = evidenceOf([
      ['pierWrapHeightM', 0.2, 'p1'],
      ['pierWrapSealed', true, 'p1'],
    ]);
    expect(detect('piers-not-wrapped', { taken: one, facts, items }).state).toBe('not-shown');
    const both = evidenceOf([
      ['pierWrapHeightM', 0.2, 'p1'],
      ['pierWrapHeightM', 0.2, 'p2'],
      ['pierWrapSealed', true, 'p1'],
      ['pierWrapSealed', true, 'p2'],
    ]);
    expect(detect('piers-not-wrapped', { taken: both, facts, items }).state).toBe('absent');
  });

  it('answers that differ show it and are both kept', () => {
    const taken = evidenceOf([
      ['seamsSealed', true],
      ['seamsSealed', false],
    ]);
    expect(detect('seams-not-sealed', { taken, facts: closed })).toMatchObject({
      state: 'shown',
      samples: ['s2'],
      against: ['s1'],
    });
  });

  it('a claim about something that the space has not is contradicted', () => {
    const claims = [claim('seams-not-sealed', { hasProof: true })];
    const found = detect('seams-not-sealed', { claims, facts: { linerPresent: false } });
    expect(found.state).toBe('contradicted');
  });
});
