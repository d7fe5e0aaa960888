import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { isNamedBy } from '../../../src/criteria/defects/evidence-of-defects.ts';
import {
  type ClaimedDefect,
  type Criterion,
  criteria,
  type DefectEvidence,
  type DetectedDefect,
  defectOf,
  defects,
  detectDefects,
  type Evidence,
  type JobFacts,
  judgeAll,
} from '../../../src/criteria/index.ts';
import { factsFor } from '../applicable-facts.ts';
import { samples } from '../made-samples.ts';

const EXTENTS: DefectEvidence['extents'] = {
  floorM2: 120,
  perimeterM: 44,
  bareEarthM2: 6,
  seamM: 60,
  drainM: 30,
  ductM: 12,
  doorFrameM: 3,
  girderM: 24,
  doors: 1,
  vents: 8,
  piers: 12,
  sumps: 1,
  dehumidifiers: 1,
};

function detect(
  key: string,
  {
    taken = [],
    facts = {},
    claims = [],
  }: { taken?: readonly Evidence[]; facts?: JobFacts; claims?: readonly ClaimedDefect[] },
): DetectedDefect {
  const wanted = [defectOf(key), defectOf(defectOf(key)?.yieldsTo ?? '')].flatMap((d) => d?.criteria ?? []);
  const some = criteria.filter((c) => wanted.some((id) => isNamedBy(c.id, id)));
  const judgements = judgeAll(some, taken, facts);
  const found = detectDefects({
    criteria: some,
    judgements,
    samples: taken,
    facts,
    claims,
    extents: EXTENTS,
  });
  const one = found.find((d) => d.key === key);
  if (one === undefined) throw new Error(`${key} is not in the catalogue`);
  return one;
}

const claim = (defect: string, more: Partial<ClaimedDefect> = {}): ClaimedDefect => ({
  id: 'f1',
  defect,
  hasProof: false,
  ...more,
});

function tellingCriterion(key: string): Criterion | undefined {
  const defect = defectOf(key);
  const ids = defect?.shownBy ?? defect?.criteria ?? [];
  return criteria.find((c) => ids.some((id) => isNamedBy(c.id, id)));
}

const PIER_WRAP = factsFor(criteria.find((c) => c.id === 'LIN-08a')?.appliesWhen ?? { all: [] });

describe.each(defects.map((d) => [d.key, d] as const))('%s', (key, defect) => {
  const criterion = tellingCriterion(key);

  if (criterion !== undefined)
    test('is shown by one breach of its criterion', () => {
      if (criterion === undefined) return;
      const found = detect(key, {
        taken: samples(criterion, false, 1),
        facts: factsFor(criterion.appliesWhen),
      });
      // A lighter defect may yield to a graver one that the same reading shows.
      if (defect.yieldsTo !== undefined && found.state === 'absent') return;
      expect(found.state).toBe('shown');
      expect(found.broken).toContain(criterion.id);
      expect(found.samples).toContain('sample-1');
      expect(found.severity).toBeGreaterThanOrEqual(defect.severity);
      expect(found.severityBecause[0]).toBe(defect.gradedBecause);
    });

  test.skipIf(criterion === undefined)(
    'is absent where its criterion is met, and a claim is contradicted',
    () => {
      if (criterion === undefined) return;
      const given = {
        taken: samples(criterion, true, criterion.sampling.atLeast),
        facts: factsFor(criterion.appliesWhen),
      };
      const state = detect(key, given).state;
      // Another of its criteria may ask more of the same quantity.
      expect(['absent', 'shown']).toContain(state);
      if (state === 'shown') return;
      const claimed = detect(key, { ...given, claims: [claim(key, { hasProof: true })] });
      expect(claimed.state).toBe('contradicted');
      expect(claimed.claims).toEqual(['f1']);
      expect(claimed.met).toContain(criterion.id);
    },
  );

  it('is not shown by nothing, nor by what was assumed', () => {
    expect(detect(key, {}).state).toBe('not-shown');
    if (criterion === undefined) return;
    const taken = samples(criterion, false, criterion.sampling.atLeast, true);
    const found = detect(key, { taken, facts: factsFor(criterion.appliesWhen) });
    expect(found.state).toBe('not-shown');
    expect(found.severity).toBe(defect.severity);
  });

  it('is claimed without proof and shown with it', () => {
    expect(detect(key, { claims: [claim(key)] })).toMatchObject({
      state: 'claimed',
      severity: defect.severity,
    });
    expect(detect(key, { claims: [claim(key, { hasProof: true })] }).state).toBe('shown');
  });
});

describe('severity', () => {
  const pierWrap = (count: number, failing: number): Evidence[] =>
    Array.from({ length: count }, (_, i) => ({
      id: `p${i}`,
      quantity: 'pierWrapHeightM',
      item: `pier${i}`,
      value: i < failing ? 0 : 0.2,
    }));

  it('is one step more where more than a quarter of what was looked at has the fault', () => {
    const few = detect('piers-not-wrapped', { taken: pierWrap(12, 2), facts: PIER_WRAP });
    expect(few).toMatchObject({ state: 'shown', severity: 2, items: ['pier0', 'pier1'] });
    const many = detect('piers-not-wrapped', { taken: pierWrap(12, 4), facts: PIER_WRAP });
    expect(many.severity).toBe(3);
    expect(many.severityBecause).toContain('33 % of what was looked at has it');
  });

  it('is one step more where wood was measured wet, and not where it was assumed so', () => {
    const wood = (assumed: boolean): Evidence => ({
      id: 'w',
      quantity: 'woodMoistureContent',
      value: 0.22,
      assumed,
    });
    const claims = [claim('seams-not-sealed', { hasProof: true })];
    expect(detect('seams-not-sealed', { taken: [wood(true)], claims }).severity).toBe(2);
    expect(detect('seams-not-sealed', { taken: [wood(false)], claims }).severity).toBe(3);
  });

  it('of mold follows the size band of the guides (10 ft² = 0.93 m², EPA 402-K-01-001)', () => {
    const area = (value: number) => [
      claim('visible-mold', { measured: { quantity: 'moldAreaM2', value }, hasProof: true }),
    ];
    expect(detect('visible-mold', { claims: area(0.5) }).severity).toBe(2);
    expect(detect('visible-mold', { claims: area(2) }).severity).toBe(3);
  });

  it('never rises when a measurement is taken away', () => {
    const telling = [...new Set(defects.flatMap((d) => tellingCriterion(d.key) ?? []))];
    const sample = fc.constantFrom(...telling).chain((criterion) =>
      fc.record({
        id: fc.string({ minLength: 1, maxLength: 6 }),
        quantity: fc.constant(criterion.quantity as string),
        value: fc.boolean().map((pass) => samples(criterion, pass, 1)[0].value),
        item: fc.constantFrom('a', 'b', 'c', 'd', 'e', undefined),
      }),
    );
    const wet = fc.record({
      id: fc.constant('wood'),
      quantity: fc.constant('woodMoistureContent'),
      value: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
      item: fc.constant(undefined),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.oneof(sample, wet), { selector: (s) => s.id, minLength: 1, maxLength: 8 }),
        fc.nat(),
        fc.array(fc.constantFrom(...defects.map((d) => d.key)), { maxLength: 4 }),
        (drawn, at, keys) => {
          const taken = drawn.map(({ item, ...rest }) => (item === undefined ? rest : { ...rest, item }));
          const claims = keys.map((key, i) => claim(key, { id: `f${i}`, hasProof: i % 2 === 0 }));
          const fewer = taken.filter((_, i) => i !== at % taken.length);
          const graded = (some: readonly Evidence[]) =>
            detectDefects({
              criteria: telling,
              judgements: judgeAll(telling, some, {}),
              samples: some,
              facts: {},
              claims,
              extents: EXTENTS,
            });
          const [all, less] = [graded(taken), graded(fewer)];
          all.forEach((one, i) => {
            const other = less[i];
            // Fewer looked at can make a share larger: what is left then was measured all the same.
            const share = other.severityBecause.some((why) => why.includes('looked at'));
            if (!share) expect(other.severity, one.key).toBeLessThanOrEqual(one.severity);
          });
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the bill', () => {
  it('of an edge is the perimeter times the loose share that was measured', () => {
    const share = claim('glued-edge-letting-go', {
      measured: { quantity: 'exposedEarthFraction', value: 0.25 },
      hasProof: true,
    });
    expect(detect('glued-edge-letting-go', { claims: [share] }).bill).toMatchObject({ value: 11, unit: 'm' });
  });

  it('says that it assumes the whole where no share was measured', () => {
    const { bill } = detect('seams-not-sealed', { claims: [claim('seams-not-sealed', { hasProof: true })] });
    expect(bill).toMatchObject({ value: 60, range: [0, 60], unit: 'm', assumed: true });
  });

  it('counts the piers that fail, and those not looked at as the upper end', () => {
    const taken: Evidence[] = ['a', 'b', 'c'].map((item, i) => ({
      id: item,
      quantity: 'pierWrapHeightM',
      item,
      value: i === 0 ? 0.3 : 0,
    }));
    const { bill } = detect('piers-not-wrapped', { taken, facts: PIER_WRAP });
    expect(bill).toMatchObject({ value: 2, range: [2, 11], unit: 'each' });
  });

  it('adds up what was measured in place', () => {
    const claims = [0.5, 1.25].map((value, i) =>
      claim('visible-mold', { id: `f${i}`, measured: { quantity: 'moldAreaM2', value }, hasProof: true }),
    );
    expect(detect('visible-mold', { claims }).bill).toMatchObject({
      value: 1.75,
      unit: 'm2',
      assumed: false,
    });
    expect(detect('visible-mold', { claims: [claim('visible-mold')] }).bill.value).toBeUndefined();
  });
});
