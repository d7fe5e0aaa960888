import { describe, expect, it } from 'vitest';
import { type Entry, JobLog } from '../../src/index.ts';
import { smallLog } from '../small-job.ts';

const START = smallLog();

/** Later entries for a field of pier1, each having seen the one before: what a damaged or foreign program might write. */
function withValues(field: string, values: readonly unknown[], kind = 'pier', item = 'pier1'): JobLog {
  const log = new JobLog('small', START);
  let seen = log.history(kind, item)?.field(field)?.shown.entry.id;
  values.forEach((value, index) => {
    const id = `zz000000${index}-0000-foreign`;
    const entry: Entry = {
      id,
      version: 1,
      who: 'Ada',
      deviceTime: '2031-05-14T09:20:00-04:00',
      kind,
      item,
      field,
      value,
      seen: seen === undefined ? [] : [seen],
    };
    log.add(entry);
    seen = id;
  });
  return log;
}

const pier1 = (log: JobLog) => log.fold().job?.plan.piers.find((pier) => pier.id === 'pier1');

describe('a shown value that breaks the schema', () => {
  it('gives way to the newest value of the field that does not, and is named', () => {
    const log = withValues('widthM', [0.5, 0.6, -1, 'wide']);
    expect(pier1(log)?.widthM).toBe(0.6);
    expect(log.fold().issues).toEqual([
      { path: 'plan.piers.pier1.widthM', found: '"wide"', expected: 'a number' },
    ]);
  });

  it('gives way to nothing where the newest that fits took the field away', () => {
    const log = withValues('note', ['wet', null, 7]);
    expect(pier1(log)).not.toHaveProperty('note');
    expect(log.fold().issues).toMatchObject([
      { path: 'plan.piers.pier1.note', found: '7', expected: 'text' },
    ]);
  });

  it('is left out where the kind has no such field', () => {
    const log = withValues('color', ['red']);
    expect(pier1(log)).toMatchObject({ id: 'pier1', widthM: 0.3 });
    expect(log.fold().issues).toMatchObject([
      { path: 'plan.piers.pier1', expected: 'no field named "color"' },
    ]);
    expect(log.history('pier', 'pier1')?.field('color')?.values).toHaveLength(1);
  });

  it('takes the whole item out where nothing fits, and keeps its history', () => {
    const log = new JobLog('small', START);
    log.add({
      ...(START.at(-1) as Entry),
      id: 'zz0000000-0000-foreign',
      item: 'pier9',
      value: { at: 'there' },
    });
    expect(log.fold().job?.plan.piers.map((pier) => pier.id)).toEqual(['pier1', 'pier2', 'pier3']);
    expect(log.fold().issues).toEqual([
      { path: 'plan.piers.pier9.at', found: '"there"', expected: 'an object' },
    ]);
    expect(log.history('pier', 'pier9')?.isPresent).toBe(true);
  });

  it('does not let an entry give an item another id', () => {
    const log = withValues('id', ['pier2']);
    expect(log.fold().job?.plan.piers.map((pier) => pier.id)).toEqual(['pier1', 'pier2', 'pier3']);
  });

  it('of an outline repeats an id and gives way like any other', () => {
    const corner = { id: 'a', at: { xM: 0, yM: 0 } };
    const log = withValues(
      'outline',
      [{ kind: 'corners', corners: [corner, corner, corner] }],
      'plan',
      'plan',
    );
    expect(log.fold().job?.plan.outline).toMatchObject({
      kind: 'corners',
      corners: [{ id: 'a' }, { id: 'b' }, { id: 'c' }],
    });
    expect(log.fold().issues.map((issue) => issue.path)).toEqual([
      'plan.outline.corners[1].id',
      'plan.outline.corners[2].id',
    ]);
  });

  it('of many faults is named by the first ten', () => {
    const log = new JobLog('small', START);
    const finding = {
      defect: 'liner-torn',
      title: 'Liner torn',
      place: {},
      when: '2031-05-14T09:20:00-04:00',
      who: 'Ada',
      photoIds: Array(150).fill('not an id'),
    };
    log.add({
      ...(START.at(-1) as Entry),
      id: 'zz0000000-0000-foreign',
      kind: 'finding',
      item: 'f1',
      value: finding,
    });
    const { job, issues } = log.fold();
    expect(job?.findings).toMatchObject([{ id: 'f1', photoIds: [] }]);
    expect(issues).toHaveLength(11);
    expect(issues.at(-1)).toMatchObject({
      path: 'findings.f1.photoIds[10]',
      found: '10 faults before this one',
    });
  });
});

describe('what the program does not know', () => {
  it('is named and kept: a kind of item, a second header', () => {
    const [first] = START;
    const log = new JobLog('small', START);
    log.add({ ...first, id: 'zz0000000-0000-foreign', kind: 'painting', item: 'p1' });
    log.add({ ...first, id: 'zz0000001-0000-foreign', kind: 'header', item: 'second' });
    log.add({ ...first, id: 'zz0000002-0000-foreign', kind: 'constructor', item: 'header' });
    expect(log.fold().job?.header.title).toBe('Three piers');
    expect(log.fold().issues).toEqual([
      {
        path: 'constructor.header',
        found: 'constructor',
        expected: 'a kind of item that this program knows',
      },
      { path: 'header.second', found: 'second', expected: 'header, of which a job has one' },
      { path: 'painting.p1', found: 'painting', expected: 'a kind of item that this program knows' },
    ]);
    expect(log.size).toBe(START.length + 3);
  });

  it('is no job without a header', () => {
    expect(new JobLog('small').fold()).toEqual({
      job: null,
      issues: [{ path: 'header', found: 'nothing', expected: 'a header with a title' }],
    });
  });

  it('is refused when a newer program wrote it', () => {
    const log = new JobLog('small', START);
    expect(() => log.add({ ...START[0], id: 'zz0000000-0000-foreign', version: 3 })).toThrow(
      'entry zz0000000-0000-foreign is of record version 3; this program knows 2',
    );
    expect(log.size).toBe(START.length);
  });
});
