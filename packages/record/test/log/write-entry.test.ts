import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Change,
  canonicalJson,
  JobLog,
  readEntries,
  readJob,
  settleWith,
  writeEntry,
} from '../../src/index.ts';
import { authorOn, START_MS, smallLog } from '../small-job.ts';

const AUTHOR = authorOn('desk', START_MS);

function issuesFor(change: Change, log = new JobLog('small', smallLog())) {
  const made = writeEntry(log, AUTHOR, change);
  return 'issues' in made
    ? made.issues.map(({ path, found, expected }) => `${path}: ${found}; ${expected}`)
    : [];
}

describe('a change that cannot be made', () => {
  const pier = { kind: 'pier', item: 'pier1' } as const;
  const rows: readonly [string, Change, string][] = [
    [
      'of an unknown kind',
      { do: 'remove', kind: 'painting', item: 'x' },
      'kind: "painting"; one of header, house',
    ],
    [
      'of a kind that every object has',
      { do: 'remove', kind: 'constructor', item: 'x' },
      'kind: "constructor"; one of',
    ],
    [
      'of an item that is not there',
      { do: 'remove', kind: 'pier', item: 'p9' },
      'plan.piers.p9: nothing; an item that',
    ],
    [
      'of a field that it has not',
      { do: 'set', ...pier, field: 'color', value: 1 },
      'plan.piers.pier1: "color"; a field of',
    ],
    [
      'of a field that every object has',
      { do: 'set', ...pier, field: 'constructor', value: 1 },
      '"constructor"; a field of',
    ],
    ['of the id', { do: 'set', ...pier, field: 'id', value: 'x' }, 'plan.piers.pier1: "id"; a field of pier'],
    [
      'of the bookkeeping',
      { do: 'set', ...pier, field: 'removed', value: true },
      '"removed"; a field of pier',
    ],
    [
      'to a value out of range',
      { do: 'set', ...pier, field: 'widthM', value: -1 },
      'plan.piers.pier1.widthM: -1; a value above 0',
    ],
    [
      'to no number',
      { do: 'set', ...pier, field: 'widthM', value: Number.NaN },
      'pier1.widthM: NaN; a number',
    ],
    [
      'that takes away what must be there',
      { do: 'set', ...pier, field: 'at', value: null },
      'pier1.at: null; an object',
    ],
    [
      'that creates what is there',
      { do: 'create', ...pier, value: { at: { xM: 1, yM: 1 } } },
      'an item of this id; an id',
    ],
    [
      'that creates with too little',
      { do: 'create', kind: 'pier', item: 'p9', value: {} },
      'plan.piers.p9.at: nothing; an object',
    ],
    [
      'that creates with an id of its own',
      { do: 'create', kind: 'pier', item: 'p9', value: { id: 'p8', at: { xM: 1, yM: 1 } } },
      'plan.piers.p9: an id in the value',
    ],
    [
      'that creates behind an item that is not there',
      { do: 'create', kind: 'pier', item: 'p9', value: { at: { xM: 1, yM: 1 } }, after: 'p8' },
      'plan.piers.p9: a place behind "p8"',
    ],
    [
      'that creates a second header',
      { do: 'create', kind: 'header', item: 'other', value: { title: 'x' } },
      'of which a job has one',
    ],
    ['that removes the plan', { do: 'remove', kind: 'plan', item: 'plan' }, 'plan: plan; an item of a list'],
    [
      'that moves the header',
      { do: 'move', kind: 'header', item: 'header', after: null },
      'header: header; an item of a list',
    ],
    [
      'that moves it behind itself',
      { do: 'move', ...pier, after: 'pier1' },
      'a place behind itself; another item',
    ],
    [
      'that moves it behind nothing',
      { do: 'move', ...pier, after: 'p9' },
      'a place behind "p9"; a place behind an item',
    ],
  ];

  it.each(rows)('%s is refused by name', (_, change, expected) => {
    const issues = issuesFor(change);
    expect(issues).toHaveLength(1);
    expect(issues[0]).toContain(expected);
  });

  it('is refused after the item was removed, except to restore it', () => {
    const log = new JobLog('small', smallLog());
    const removed = writeEntry(log, AUTHOR, { do: 'remove', ...pier });
    if ('entry' in removed) log.add(removed.entry);
    expect(issuesFor({ do: 'set', ...pier, field: 'widthM', value: 0.5 }, log)).toHaveLength(1);
    expect(issuesFor({ do: 'move', ...pier, after: null }, log)).toHaveLength(1);
    expect(issuesFor({ do: 'remove', ...pier }, log)).toHaveLength(1);
    expect(issuesFor({ do: 'restore', ...pier }, log)).toEqual([]);
  });

  it('is refused for an author that is none', () => {
    const log = new JobLog('small', smallLog());
    const change: Change = { do: 'remove', ...pier };
    expect(() => writeEntry(log, { ...AUTHOR, device: 'X' }, change)).toThrow(
      'device must be 4 to 16 of a-z, 0-9; got "X"',
    );
    expect(() => writeEntry(log, { ...AUTHOR, nowMs: Number.NaN }, change)).toThrow(
      'whole milliseconds; got NaN',
    );
    expect(writeEntry(log, { ...AUTHOR, who: '' }, change)).toMatchObject({
      issues: [{ path: 'entry.who' }],
    });
  });
});

describe('an entry', () => {
  it('names what its author had seen of the field, and of the whole item when it removes it', () => {
    const log = new JobLog('small', smallLog());
    const created = log.history('pier', 'pier1')?.field('widthM')?.shown.entry.id;
    const set = writeEntry(log, AUTHOR, {
      do: 'set',
      kind: 'pier',
      item: 'pier1',
      field: 'widthM',
      value: 0.5,
    });
    if (!('entry' in set)) throw new Error('refused');
    expect(set.entry.seen).toEqual([created]);
    expect(log.size).toBe(smallLog().length);
    log.add(set.entry);
    const removal = writeEntry(log, AUTHOR, { do: 'remove', kind: 'pier', item: 'pier1' });
    expect(removal).toMatchObject({
      entry: { field: 'removed', value: true, seen: [created, set.entry.id] },
    });
  });

  it('does not change when the object that it was written from does, and forgets what is undefined', () => {
    const log = new JobLog('small', smallLog());
    const at = { xM: 1, yM: 2 };
    const value = { at, note: undefined };
    const made = writeEntry(log, AUTHOR, { do: 'create', kind: 'pier', item: 'pier9', value });
    at.xM = 500;
    expect(made).toMatchObject({ entry: { value: { at: { xM: 1, yM: 2 } } } });
    if ('entry' in made) expect(Object.keys(made.entry.value as object)).toEqual(['at', 'order']);
  });

  it('never breaks the schema, whatever is asked for', () => {
    const log = new JobLog('small', smallLog());
    const SENSIBLE = [
      0.5,
      'dry',
      true,
      null,
      { xM: 1, yM: 2 },
      { cover: 'slab' },
      Number.POSITIVE_INFINITY,
      -0,
    ];
    const anything = fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom<unknown>(...SENSIBLE) },
      { weight: 1, arbitrary: fc.anything({ maxDepth: 2, withNullPrototype: true }) },
    );
    const target = fc.constantFrom(
      ...[
        ['pier', 'pier1'],
        ['pier', 'pier2'],
        ['pier', 'pier9'],
        ['header', 'header'],
        ['plan', 'plan'],
        ['house', 'house'],
        ['house', 'pier1'],
        ['__proto__', '__proto__'],
        ['pier', '__proto__'],
        ['pier', 'a b'],
        ['finding', ''],
      ].map(([kind, item]) => ({ kind, item })),
    );
    const FIELDS = [
      'widthM',
      'note',
      'at',
      'title',
      'ground',
      'outline',
      '__proto__',
      '*',
      'order',
      'cooled',
    ];
    const field = fc.constantFrom(...FIELDS);
    const change = fc.oneof(
      fc
        .tuple(target, field, anything)
        .map(([to, name, value]): Change => ({ do: 'set', ...to, field: name, value })),
      fc.tuple(target, fc.dictionary(field, anything, { maxKeys: 2 })).map(([to, some]): Change => {
        return { do: 'create', ...to, value: { at: { xM: 1, yM: 1 }, ...some } };
      }),
      fc.tuple(target, fc.constantFrom('remove' as const, 'restore' as const)).map(([to, what]): Change => {
        return { do: what, ...to };
      }),
      fc.tuple(target, fc.option(target)).map(([to, after]): Change => {
        return { do: 'move', ...to, after: after?.item ?? null };
      }),
    );
    let taken = 0;
    fc.assert(
      fc.property(change, (one) => {
        const made = writeEntry(log, AUTHOR, one);
        if ('issues' in made) {
          expect(made.issues.length).toBeGreaterThan(0);
          return;
        }
        taken += 1;
        const stored = JSON.parse(canonicalJson(made.entry));
        expect(readEntries([stored])).toEqual({ entries: [made.entry] });
        const { job, issues } = new JobLog('small', [...log.entries(), stored]).fold();
        expect(issues).toEqual([]);
        expect(readJob(job).ok).toBe(true);
      }),
      { numRuns: 1500, seed: 20310602 },
    );
    expect(taken).toBeGreaterThan(100);
  });
});

describe('settling', () => {
  it('takes the side as a value of the field, as a removal or as a restoration', () => {
    const side = { entryId: 'x', who: 'Ada', deviceTime: '' };
    const about = { kind: 'pier', item: 'pier1', sides: [] };
    const field = { ...about, about: 'field', field: 'widthM' } as const;
    const removal = { ...about, about: 'removal', field: 'removed' } as const;
    expect(settleWith(field, { ...side, field: 'widthM', value: 0.5 })).toEqual({
      do: 'set',
      kind: 'pier',
      item: 'pier1',
      field: 'widthM',
      value: 0.5,
    });
    expect(settleWith(removal, { ...side, field: 'removed', value: true })).toMatchObject({ do: 'remove' });
    expect(settleWith(removal, { ...side, field: 'removed', value: false })).toMatchObject({ do: 'restore' });
    expect(settleWith(removal, { ...side, field: 'wrapSealed', value: true })).toMatchObject({
      do: 'restore',
    });
  });
});
