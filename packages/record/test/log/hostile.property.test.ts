import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, type Entry, JobLog, readEntries, readJob } from '../../src/index.ts';
import { smallLog } from '../small-job.ts';

const SEED = 20310601;

/** Few stamps, so that entries clash, replace each other in rings, and name stamps that are not there. */
const stamp = fc
  .tuple(fc.nat(6), fc.nat(2), fc.constantFrom('phone', 'desk', 'office'))
  .map(([ms, counter, device]) => `k5d3x8q0${ms}-000${counter}-${device}`);

const WORDS = [
  'widthM',
  'note',
  'at',
  'outline',
  'title',
  'removed',
  'order',
  '*',
  'id',
  'constructor',
  'toString',
  'no',
];

const value = fc.oneof(
  fc.constantFrom<unknown>(
    true,
    false,
    null,
    0.4,
    0.5,
    -1,
    'a0',
    'a1',
    'a1V',
    '!',
    '',
    'dry',
    [],
    {},
    { xM: 1, yM: 2 },
  ),
  fc.record({
    at: fc.constantFrom<unknown>({ xM: 1, yM: 2 }, { xM: 3, yM: 1 }, { xM: 'far' }, null),
    widthM: fc.constantFrom<unknown>(0.4, 0.5, -1, 'wide', null),
    order: fc.constantFrom<unknown>('a0', 'a1', 'a0!', 7),
  }),
  fc.dictionary(fc.constantFrom(...WORDS), fc.jsonValue({ maxDepth: 2 }), { maxKeys: 4 }),
  fc.jsonValue({ maxDepth: 3 }),
);

const entry: fc.Arbitrary<unknown> = fc.record({
  id: stamp,
  version: fc.constant(1),
  who: fc.constantFrom('Ada', 'Bo'),
  deviceTime: fc.constant('2031-05-14T09:20:00-04:00'),
  kind: fc.constantFrom('pier', 'pier', 'header', 'plan', 'house', 'finding', 'constructor', 'painting'),
  item: fc.constantFrom('pier1', 'pier2', 'header', 'plan', 'house', 'constructor'),
  field: fc.constantFrom(...WORDS),
  value,
  seen: fc.array(stamp, { maxLength: 3 }),
});

const entries = fc.array(entry, { maxLength: 40, size: 'max' }).map((raw) => {
  const read = readEntries(raw);
  if ('issues' in read) throw new Error(canonicalJson(read.issues));
  return read.entries;
});

function answers(log: JobLog): string {
  return canonicalJson([log.fold(), log.disagreements(), log.entries(), log.clashes(), log.size]);
}

describe('entries that no device of ours would write', () => {
  it('fold the same in any order, from scratch and step by step, any number of times', () => {
    fc.assert(
      fc.property(entries, fc.boolean(), fc.nat(), (foreign, begun, turn) => {
        const all: Entry[] = begun ? [...smallLog(), ...foreign] : foreign;
        const log = new JobLog('small', all);
        const at = turn % (all.length + 1);
        const stepwise = new JobLog('small');
        [...all.slice(at), ...all.slice(0, at)].reverse().forEach((one, index) => {
          stepwise.add(one);
          if (index % 3 === 0) stepwise.fold();
          stepwise.add(one);
        });
        expect(answers(stepwise)).toBe(answers(log));
      }),
      { numRuns: 300, seed: SEED },
    );
  });

  it('give a job that can be read, or none, and name what is wrong', () => {
    fc.assert(
      fc.property(entries, (foreign) => {
        const { job, issues } = new JobLog('small', [...smallLog(), ...foreign]).fold();
        for (const issue of issues) {
          for (const text of [issue.path, issue.found, issue.expected]) expect(text).not.toBe('');
        }
        if (job === null) expect(issues).not.toEqual([]);
        else expect(readJob(job)).toEqual({ ok: true, job });
      }),
      { numRuns: 150, seed: SEED + 1 },
    );
  });
});
