import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  criteria,
  type DefectEvidence,
  type DetectedDefect,
  defects,
  detectDefects,
  type Evidence,
  type JobFacts,
  judgeAll,
  type QuantityKey,
  quantities,
} from '../../../src/criteria/index.ts';
import { defectCases } from './cases.ts';
import { EXTENTS } from './extents.ts';

function detect(
  taken: readonly Evidence[],
  facts: JobFacts,
  more: Partial<Pick<DefectEvidence, 'claims' | 'drawn'>> = {},
): readonly DetectedDefect[] {
  const judgements = judgeAll(criteria, taken, facts);
  return detectDefects({
    criteria,
    judgements,
    samples: taken,
    facts,
    claims: [],
    extents: EXTENTS,
    ...more,
  });
}

const one = (found: readonly DetectedDefect[], key: string): DetectedDefect => {
  const match = found.find((d) => d.key === key);
  if (match === undefined) throw new Error(`no ${key}`);
  return match;
};

const sample = (quantity: QuantityKey, value: number | boolean, more: Partial<Evidence> = {}): Evidence => ({
  id: `${quantity}-${String(more.item ?? '')}`,
  quantity,
  value,
  ...more,
});

const lined: JobFacts = { linerPresent: true, spaceType: 'closed', piersPresent: true };

describe('severity', () => {
  it('follows the rules that name a higher grade, and says why', () => {
    const bare = (share: number) => one(detect([sample('exposedEarthFraction', share)], {}), 'exposed-earth');
    expect(bare(0.02)).toMatchObject({ state: 'shown', severity: 2 });
    expect(bare(0.021).severity).toBe(3);
    expect(bare(0.021).severityBecause).toContain('more than 2 % of the floor is bare');
    // 10 ft² = 0.929 m², the first size band of EPA 402-K-01-001.
    const mold = (area: number) => one(detect([sample('moldAreaM2', area)], {}), 'visible-mold').severity;
    expect([mold(0.92), mold(0.93)]).toEqual([2, 3]);
  });

  it('rises by one step where wood is wet, and only as far as that is sure', () => {
    const seams = (wood: Partial<Evidence>) =>
      one(detect([sample('woodMoistureContent', 0.21, wood)], lined), 'seams-not-sealed').severity;
    expect(seams({})).toBe(3);
    expect(seams({ uncertainty: 0.009 })).toBe(3);
    expect(seams({ uncertainty: 0.011 })).toBe(2);
    expect(seams({ assumed: true })).toBe(2);
  });

  it('rises by one step where water stands', () => {
    const lid = (taken: readonly Evidence[], facts: JobFacts = {}) =>
      one(detect(taken, facts), 'sump-lid-holes-open').severity;
    expect(lid([])).toBe(2);
    expect(lid([sample('standingWaterDepthM', 0.01)])).toBe(3);
    expect(lid([], { standingWater: true })).toBe(3);
  });

  it('rises by one step above a quarter of all piers, those not looked at counted as sound', () => {
    const wraps = (failing: number, seen: number) =>
      Array.from({ length: seen }, (_, i) =>
        sample('pierWrapHeightM', i < failing ? 0 : 0.2, { item: `p${i}` }),
      );
    const piers = (failing: number, seen: number) =>
      one(detect(wraps(failing, seen), lined), 'piers-not-wrapped');
    expect(piers(3, 3)).toMatchObject({ severity: 2, share: 0.25 });
    expect(piers(4, 4)).toMatchObject({ severity: 3, items: ['p0', 'p1', 'p2', 'p3'] });
    expect(piers(4, 4).severityBecause).toContain('33 % of it has the fault');
  });

  it('of a glued edge is 3 above a tenth of the perimeter, and a quarter does not count twice', () => {
    const edge = (amount: number) =>
      one(
        detect([], lined, { drawn: [{ defect: 'glued-edge-letting-go', amount, whole: 44 }] }),
        'glued-edge-letting-go',
      ).severity;
    expect([edge(4.3), edge(4.5), edge(12)]).toEqual([2, 3, 3]);
  });

  it('never passes 4, and damp under a liner stays 0', () => {
    const taken = [sample('woodMoistureContent', 0.4), sample('standingWaterDepthM', 0.1)];
    for (const { key, severity } of detect(taken, lined)) {
      expect(severity, key).toBeLessThanOrEqual(4);
      if (key === 'damp-under-liner') expect(severity).toBe(0);
    }
  });

  it('never rises when a measurement, an answer or a fact is taken away', () => {
    const rows = Object.values(defectCases);
    const fromCases = fc.constantFrom(
      ...rows.flatMap((row) => [...(row.shown.taken ?? []), ...(row.refuted.taken ?? [])]),
    );
    const numeric = fc
      .constantFrom(...(Object.keys(quantities) as QuantityKey[]).filter((k) => quantities[k].range))
      .chain((quantity) => {
        const [min, max] = quantities[quantity].range as readonly [number, number];
        return fc
          .double({ min, max: Math.min(max, min + 2), noNaN: true })
          .map((value): readonly [string, number] => [quantity, value]);
      });
    const drawn = fc.record({
      taken: fc.oneof(fromCases, numeric),
      item: fc.constantFrom('a', 'b', 'c', 'd', undefined),
      doubt: fc.constantFrom(0, 0, 0.01),
      assumed: fc.boolean(),
    });
    const facts = fc.constantFrom(...rows.map((row) => ({ ...row.facts, ...row.shown.facts })));
    fc.assert(
      fc.property(
        fc.array(drawn, { minLength: 1, maxLength: 10 }),
        fc.nat(),
        facts,
        fc.array(fc.constantFrom(...defects.map((d) => d.key)), { maxLength: 3 }),
        (some, at, known, claimed) => {
          const taken = some.map(({ taken: [quantity, value], item, doubt, assumed }, i) => ({
            id: `s${i}`,
            quantity,
            value,
            ...(item === undefined ? {} : { item }),
            ...(typeof value === 'number' ? { uncertainty: doubt } : {}),
            assumed,
          }));
          const claims = claimed.map((defect, i) => ({ id: `f${i}`, defect, hasProof: i % 2 === 0 }));
          const all = detect(taken, known, { claims });
          const fewer = taken.filter((_, i) => i !== at % taken.length);
          const unanswered = Object.fromEntries(
            Object.entries(known).filter(([fact]) => fact !== 'standingWater'),
          );
          for (const less of [detect(fewer, known, { claims }), detect(taken, unanswered, { claims })]) {
            less.forEach((other, i) => {
              expect(other.severity, other.key).toBeLessThanOrEqual(all[i]?.severity ?? 0);
            });
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  it('and the whole result do not depend on the order of samples and claims', () => {
    const taken = Object.values(defectCases)
      .flatMap((row) => row.shown.taken ?? [])
      .map(([quantity, value], i) => ({ id: `s${i}`, quantity, value }));
    const claims = defects.map(({ key }, i) => ({ id: `f${i}`, defect: key, hasProof: i % 3 === 0 }));
    const forward = detect(taken, lined, { claims });
    expect(detect([...taken].reverse(), lined, { claims: [...claims].reverse() })).toEqual(forward);
  });
});
