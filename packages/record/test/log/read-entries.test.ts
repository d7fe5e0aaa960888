import { describe, expect, it } from 'vitest';
import { type Entry, readEntries } from '../../src/index.ts';
import { smallLog } from '../small-job.ts';

const [GOOD] = smallLog();

function faults(changes: Readonly<Record<string, unknown>>): string[] {
  const read = readEntries([{ ...GOOD, ...changes }]);
  return 'issues' in read
    ? read.issues.map(({ path, found, expected }) => `${path}: ${found}; ${expected}`)
    : [];
}

/** A list in a list in a list... */
function nested(levels: number): unknown {
  return JSON.parse(`${'['.repeat(levels)}${']'.repeat(levels)}`);
}

describe('foreign entries', () => {
  it('are taken as they are when they have the form of entries', () => {
    expect(readEntries(JSON.parse(JSON.stringify(smallLog())))).toEqual({ entries: smallLog() });
    expect(readEntries([])).toEqual({ entries: [] });
  });

  it.each([null, 'x', { 0: GOOD }])('%j are no list', (raw) => {
    expect(readEntries(raw)).toMatchObject({ issues: [{ path: 'entries', expected: 'a list of entries' }] });
  });

  it.each<[Partial<Record<keyof Entry | 'more', unknown>>, string]>([
    [{ id: 'today' }, 'entries[0].id: "today"; a clock stamp'],
    [{ version: 0 }, 'entries[0].version: 0; a value above 0'],
    [{ version: 1.5 }, 'entries[0].version: 1.5; a whole number'],
    [
      { version: 3, kind: 7, more: 1 },
      'entries[0].version: 3; a record version up to 2; open this job with a newer program',
    ],
    [{ who: '' }, 'entries[0].who: ""; at least 1 characters'],
    [{ deviceTime: '2031-05-14 09:20' }, 'entries[0].deviceTime: "2031-05-14 09:20"; a time like'],
    [{ kind: '__proto__' }, 'entries[0].kind: "__proto__"; the name of a kind of item'],
    [{ item: 'a/b' }, 'entries[0].item: "a/b"; an id of 1 to 64'],
    [{ field: '__proto__' }, 'entries[0].field: "__proto__"; the name of a field'],
    [{ field: '**' }, 'entries[0].field: "**"; the name of a field'],
    [{ value: undefined }, 'entries[0].value: nothing; a JSON value'],
    [{ value: Number.NaN }, 'entries[0].value: NaN; a JSON value'],
    [{ value: [1, Number.POSITIVE_INFINITY] }, 'entries[0].value: [1,null]; a JSON value'],
    [{ value: new Date(0) }, 'entries[0].value: {}; a JSON value'],
    [
      { value: JSON.parse('{"at":{"__proto__":1}}') },
      'entries[0].value: {"at":{"__proto__":1}}; a JSON value',
    ],
    [{ seen: ['x'] }, 'entries[0].seen[0]: "x"; a clock stamp'],
    [{ seen: Array(10_001).fill(GOOD.id) }, '; at most 10000 items'],
    [{ more: 1 }, 'no field named "more"'],
  ])('with %j are refused by name', (changes, expected) => {
    const found = faults(changes);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(expected);
  });

  it('may nest values 32 levels deep, and no deeper', () => {
    expect(faults({ value: nested(32) })).toEqual([]);
    expect(faults({ value: nested(33) })).toHaveLength(1);
    expect(faults({ value: nested(1_000_000) })).toEqual([
      'entries[0].value: a value too deep to show; a JSON value at most 32 levels deep',
    ]);
  });

  it('are all looked at, and the first thousand faults listed', () => {
    const read = readEntries([GOOD, 7, GOOD, { ...GOOD, item: '' }]);
    expect(read).toMatchObject({ issues: [{ path: 'entries[1]' }, { path: 'entries[3].item' }] });
    const many = readEntries(Array(5000).fill(7));
    expect('issues' in many && many.issues).toHaveLength(1001);
  });
});
