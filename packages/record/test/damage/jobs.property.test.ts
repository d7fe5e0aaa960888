import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, DEMO_JOBS, type JobRead, readJob, readJobText } from '../../src/index.ts';
import { DEMO_PARTS, RUNS } from './demo-parts.ts';
import { from, spoiledRow, spoiledText } from './spoil.ts';

const SEED = 20310607;
const pick = fc.nat(2 ** 30);
const TEXTS = DEMO_PARTS.map((parts) => JSON.stringify(parts));
/** Characters that mean something in JSON, and some that mean nothing anywhere. */
const CHARACTERS = [...'{}[]:,"\\.-+eE0189ntf \n', '\u0000', '\ud800', '\ufeff', 'é'];

/** What comes of damage: a job that is one, or issues with every part named. */
function judge(read: JobRead): boolean {
  if (!read.ok) {
    if (read.issues.length === 0) throw new Error('refused without an issue');
    for (const { path, found, expected } of read.issues) {
      if (path === '' || found === '' || expected === '') throw new Error(JSON.stringify(read.issues));
    }
    return false;
  }
  if (canonicalJson(readJob(read.job)) !== canonicalJson(read))
    throw new Error('a job that does not read as itself');
  return true;
}

function untouched(): void {
  expect(Object.keys(Object.prototype)).toEqual([]);
  expect(({} as { widthM?: number }).widthM).toBeUndefined();
}

describe('a damaged job', () => {
  it('is whole when nothing is damaged', () => {
    for (const parts of DEMO_PARTS) expect(readJob(parts)).toMatchObject({ ok: true });
    for (const { job } of DEMO_JOBS) expect(judge(readJobText(JSON.stringify(job)))).toBe(true);
  });

  it(`is refused by name or is a job: ${RUNS.text} texts with characters lost, repeated, turned and put in`, () => {
    const met = { refused: 0, taken: 0 };
    fc.assert(
      fc.property(fc.array(pick, { minLength: 4, maxLength: 10 }), ([which, letter, ...cuts]) => {
        const text = from(TEXTS, which);
        const put =
          letter % 3 === 0 ? text.slice(letter % text.length).slice(0, 40) : from(CHARACTERS, letter);
        const spoiled = spoiledRow<string>(text, put, cuts, (parts) => parts.join(''));
        if (judge(readJobText(spoiled))) met.taken += 1;
        else met.refused += 1;
      }),
      { numRuns: RUNS.text, seed: SEED },
    );
    expect(met.refused).toBeGreaterThan(RUNS.text / 2);
    untouched();
  });

  it(`is refused by name or is a job: ${RUNS.values} with values lost, repeated, exchanged, wrong, huge, deep`, () => {
    const met = { refused: 0, taken: 0 };
    fc.assert(
      fc.property(fc.array(pick, { minLength: 4, maxLength: 10 }), ([which, ...picks]) => {
        if (judge(readJobText(spoiledText(from(DEMO_PARTS, which), picks)))) met.taken += 1;
        else met.refused += 1;
      }),
      { numRuns: RUNS.values, seed: SEED + 1 },
    );
    expect(met.refused).toBeGreaterThan(RUNS.values / 2);
    expect(met.taken).toBeGreaterThan(50);
    untouched();
  });

  it.each([
    ['deeper than any reader goes', `${'['.repeat(2_000_000)}`],
    [
      'deep in a field',
      `{"format":"undercroft-job","version":1,"header":${'{"a":'.repeat(200_000)}1${'}'.repeat(200_000)}}`,
    ],
    [
      'of a million faults',
      `{"format":"undercroft-job","version":1,"plan":{"piers":[${'1,'.repeat(1_000_000)}1]}}`,
    ],
    [
      'of a million fields',
      `{"format":"undercroft-job","version":1,${Array.from({ length: 100_000 }, (_, i) => `"f${i}":1`)}}`,
    ],
    [
      'of one id ten thousand times',
      JSON.stringify({
        ...(DEMO_PARTS[0] as object),
        prices: Array(10_000).fill({ id: 'a', title: 'x', unit: 'm', cents: 1 }),
      }),
    ],
  ])('%s is refused with a thousand issues at most', (_, text) => {
    const started = performance.now();
    const read = readJobText(text);
    expect(judge(read)).toBe(false);
    // Looking at all of a million faults takes several times as long.
    expect(performance.now() - started).toBeLessThan(3000);
    if (!read.ok) expect(read.issues.length).toBeLessThanOrEqual(1001);
  });
});
