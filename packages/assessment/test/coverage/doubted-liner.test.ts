import { describe, expect, test } from 'vitest';
import { assess } from '../../src/index.ts';
import { demoJob } from '../season/jobs.ts';

const job = demoJob('doubted-liner');
const result = assess(job, undefined, { season: 'none' });
const coverage = result.coverage!;

describe('the far corner of the doubted liner', () => {
  const [corner, ...rest] = coverage.unseen;

  test('is brought up by what no picture shows', () => {
    expect(corner.standsIn.slice(0, 2).map((s) => s.name)).toEqual([
      'Old batts and cans',
      'Far right corner, liner stops short',
    ]);
    expect(corner.covers).toEqual(['bare-earth']);
    expect(corner.areaM2).toBeGreaterThan(3);
    expect(corner.areaM2).toBeLessThan(6);
    for (const part of rest) expect(part.areaM2).toBeLessThan(corner.areaM2 / 2);
    expect(coverage.floor.share).toBeGreaterThan(0.9);
  });

  test('is told in the first notice and in the headline', () => {
    expect(coverage.notices[0].code).toBe('unseen-floor');
    for (const part of ['Old batts and cans', 'bare earth'])
      expect(coverage.notices[0].message).toContain(part);
    expect(result.headline).toContain('Old batts and cans');
  });

  test('is in no finding, no reading and no observation', () => {
    const inCorner = (at?: { xM: number; yM: number }) =>
      at !== undefined && at.xM > 45 * 0.3048 && at.yM > 23 * 0.3048;
    expect(job.findings.filter((f) => inCorner(f.place.at))).toEqual([]);
    const { air, surface, wood, observations } = job.readings;
    for (const r of [...air, ...surface, ...wood, ...observations])
      expect(inCorner(r.place?.at), r.id).toBe(false);
    for (const p of job.media.photos) expect(inCorner(p.place.at), p.id).toBe(false);
  });
});

test('a claim of "piers wrapped" that only three of four faces prove', () => {
  const proof = coverage.proofs.find((p) => p.id === 'ac-piers')!;
  expect(proof).toMatchObject({ of: 'acceptance', title: 'Piers wrapped', verdict: 'partly', others: [] });
  expect(proof.missing).toMatchObject([{ kind: 'pier', id: 'pb7', face: 2, share: 0 }]);
  expect(proof.says).toBe('The pictures do not show the north face of pier 14 (3 of 4 faces are shown).');
  expect(coverage.piers.find((p) => p.id === 'pb7')).toMatchObject({ facesShown: 3, facesOpen: 4 });
  expect(coverage.notices.filter((n) => n.code === 'claim-not-proved')).toHaveLength(1);
});

test('every finding has its proof, and a claim that is proved says who has to look', () => {
  const others = coverage.proofs.filter((p) => p.id !== 'ac-piers');
  expect(others.map((p) => p.verdict)).toEqual(others.map(() => 'proved'));
  expect(others).toHaveLength(job.findings.length + 1);
});

test('what no picture shows changes no criterion, reading, water path or severity', () => {
  const blind = { ...job, media: { photos: [], clips: [], audio: [] } };
  const without = assess(blind, undefined, { season: 'none' });
  const { coverage: _, headline: __, assumptions: ___, ...seen } = result;
  const { coverage: ____, headline: _____, assumptions: ______, ...unseen } = without;
  expect(JSON.stringify(unseen)).toBe(JSON.stringify(seen));
  expect(without.coverage?.floor.share).toBe(0);
  // Nothing in it is a severity, and nothing that nobody looked at is called met or not met.
  expect(JSON.stringify(without.coverage)).not.toMatch(/severity|not-met|"met"/);
});
