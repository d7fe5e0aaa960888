import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson, type Entry, JobLog, JobSchema, readEntries, readJob } from '../../src/index.ts';
import { Crew, type Step, step } from './random-program.ts';

const program = fc.record({
  devices: fc.integer({ min: 3, max: 5 }),
  steps: fc.array(step, { minLength: 20, maxLength: 90, size: 'max' }),
});
const SEED = 20310514;

function runProgram({ devices, steps }: { devices: number; steps: readonly Step[] }): Crew {
  const crew = new Crew(devices);
  for (const one of steps) crew.run(one);
  return crew;
}

/** Everything that a log says, as text. */
function answers(log: JobLog): string {
  return canonicalJson([log.fold(), log.disagreements(), log.entries(), log.clashes()]);
}

describe('random programs of edits, partitions, delays, repetitions and losses', () => {
  it('end with the same job and the same disagreements everywhere, and no entry lost', () => {
    fc.assert(
      fc.property(program, (made) => {
        const crew = runProgram(made);
        crew.reunite();
        const [first, ...others] = crew.logs.map(answers);
        for (const other of others) expect(other).toBe(first);
        const kept = new Map(crew.logs[0].entries().map((entry) => [entry.id, entry]));
        expect(kept.size).toBe(crew.written.length);
        for (const entry of crew.written) expect(kept.get(entry.id)).toEqual(entry);
      }),
      { numRuns: 80, seed: SEED },
    );
  });

  it('fold the same at every step as from scratch, whatever the order of the entries', () => {
    fc.assert(
      fc.property(program, fc.infiniteStream(fc.nat()), (made, chance) => {
        const crew = new Crew(made.devices);
        made.steps.forEach((one, index) => {
          crew.run(one);
          const log = crew.logs[index % made.devices];
          if (index % 5 === 0) log.fold();
          if (index % 15 !== 0) return;
          const shuffled = log
            .entries()
            .map((entry) => ({ entry, at: chance.next().value as number }))
            .sort((a, b) => a.at - b.at)
            .map(({ entry }) => entry);
          expect(answers(new JobLog(log.jobId, shuffled))).toBe(answers(log));
        });
      }),
      { numRuns: 40, seed: SEED + 1 },
    );
  });

  it('keep every value in the history', () => {
    fc.assert(
      fc.property(program, (made) => {
        const crew = runProgram(made);
        crew.reunite();
        for (const log of crew.logs.slice(0, 1)) {
          for (const entry of crew.written) {
            for (const [field, value] of givenBy(entry)) {
              const values = log.history(entry.kind, entry.item)?.field(field)?.values ?? [];
              expect(values.find((v) => v.entry.id === entry.id)?.value).toEqual(value);
              expect(values.map((v) => v.entry.id)).toEqual(values.map((v) => v.entry.id).sort());
            }
          }
        }
      }),
      { numRuns: 30, seed: SEED + 2 },
    );
  });

  it('give jobs that can be read, from entries that can be read', () => {
    fc.assert(
      fc.property(program, (made) => {
        const crew = runProgram(made);
        for (const log of crew.logs) {
          const { job, issues } = log.fold();
          expect(issues).toEqual([]);
          expect(JobSchema.parse(job)).toEqual(job);
          expect(readJob(job)).toEqual({ ok: true, job });
          expect(readEntries(JSON.parse(JSON.stringify(log.entries())))).toEqual({ entries: log.entries() });
        }
      }),
      { numRuns: 40, seed: SEED + 3 },
    );
  });

  it('meet what they are for: disagreements, removals that met edits, equal order keys, refusals', () => {
    const met = { fields: 0, removals: 0, gone: 0, equalKeys: 0, refused: 0 };
    for (const made of fc.sample(program, { numRuns: 60, seed: SEED })) {
      const crew = runProgram(made);
      crew.reunite();
      const [log] = crew.logs;
      const open = log.disagreements();
      const piers = ['pier1', 'pier2', 'pier3', 'pier4', 'pier5', 'pier6', 'pier7'];
      const keys = piers
        .map((pier) => log.history('pier', pier)?.shown('order'))
        .filter((key) => key !== undefined);
      met.fields += open.filter((d) => d.about === 'field').length;
      met.removals += open.filter((d) => d.about === 'removal').length;
      met.gone += piers.filter((pier) => log.history('pier', pier)?.isPresent === false).length;
      met.equalKeys += keys.length - new Set(keys).size;
      met.refused += crew.refused;
    }
    for (const [what, times] of Object.entries(met)) expect(times, what).toBeGreaterThan(10);
  });

  it('give each entry a stamp of its own', () => {
    fc.assert(
      fc.property(program, (made) => {
        const stamps = runProgram(made).written.map((entry) => entry.id);
        expect(new Set(stamps).size).toBe(stamps.length);
      }),
      { numRuns: 60, seed: SEED + 4 },
    );
  });
});

/** The fields to which an entry gives a value. */
function givenBy({ field, value }: Entry): [string, unknown][] {
  return field === '*' ? Object.entries(value as object) : [[field, value]];
}
