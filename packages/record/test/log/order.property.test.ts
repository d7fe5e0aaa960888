import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Change, JobLog, writeEntry } from '../../src/index.ts';
import { isOrderKey, keyBetween, keysFor } from '../../src/log/order-key.ts';
import { authorOn, START_MS, smallLog } from '../small-job.ts';

const SEED = 20310604;

function make(log: JobLog, device: string, nowMs: number, change: Change): void {
  const made = writeEntry(log, authorOn(device, nowMs), change);
  if ('issues' in made) throw new Error(JSON.stringify(made.issues));
  log.add(made.entry);
}

function order(log: JobLog): string[] {
  return (log.fold().job?.plan.piers ?? []).map((pier) => pier.id);
}

describe('order keys', () => {
  it('between two others sort between them and are keys', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(), { maxLength: 80 }), (picks) => {
        const keys = keysFor(2);
        for (const pick of picks) {
          const at = pick % (keys.length + 1);
          keys.splice(at, 0, keyBetween(keys[at - 1] ?? null, keys[at] ?? null));
        }
        expect(keys).toEqual([...keys].sort());
        expect(new Set(keys).size).toBe(keys.length);
        expect(keys.every(isOrderKey)).toBe(true);
      }),
      { numRuns: 200, seed: SEED },
    );
  });

  it('are told from text that no key can be made next to', () => {
    for (const key of ['a0', 'az', 'a0V', 'b00', 'Zz', 'Y00', 'zzzzzzzzzzzzzzzzzzzzzzzzzzz'])
      expect(isOrderKey(key), key).toBe(true);
    for (const key of [
      '',
      'a',
      'b0',
      'a00',
      'a0V0',
      '0a',
      '!',
      'a0!',
      'a0é',
      'A00000000000000000000000000',
      7,
      null,
      undefined,
    ]) {
      expect(isOrderKey(key), String(key)).toBe(false);
    }
  });

  it('put each item where it was moved to, on one device', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 40 }), (moves) => {
        const log = new JobLog('small', smallLog());
        const expected = ['pier1', 'pier2', 'pier3'];
        moves.forEach(([which, where], index) => {
          const [item] = expected.splice(which % 3, 1);
          const at = where % 3;
          const after = at === 0 ? null : expected[at - 1];
          expected.splice(at, 0, item);
          make(log, 'desk', START_MS + index, { do: 'move', kind: 'pier', item, after });
          expect(order(log)).toEqual(expected);
        });
      }),
      { numRuns: 100, seed: SEED + 1 },
    );
  });

  it('may be the same on two devices: ties go by id, and one can still move behind, before and between them', () => {
    const log = new JobLog('small', smallLog());
    const other = new JobLog('small', smallLog());
    const at = { xM: 1, yM: 5 };
    make(log, 'desk', START_MS, { do: 'create', kind: 'pier', item: 'y', value: { at } });
    make(other, 'phone', START_MS, { do: 'create', kind: 'pier', item: 'x', value: { at } });
    for (const entry of other.entries()) log.add(entry);
    expect(log.history('pier', 'x')?.shown('order')).toBe(log.history('pier', 'y')?.shown('order'));
    expect(order(log)).toEqual(['pier1', 'pier2', 'pier3', 'x', 'y']);
    make(log, 'desk', START_MS + 1, { do: 'move', kind: 'pier', item: 'pier1', after: 'y' });
    expect(order(log)).toEqual(['pier2', 'pier3', 'x', 'y', 'pier1']);
    make(log, 'desk', START_MS + 2, { do: 'move', kind: 'pier', item: 'pier2', after: 'x' });
    expect(order(log)).toEqual(['pier3', 'x', 'y', 'pier2', 'pier1']);
    make(log, 'desk', START_MS + 3, { do: 'move', kind: 'pier', item: 'x', after: 'y' });
    expect(order(log)).toEqual(['pier3', 'y', 'x', 'pier2', 'pier1']);
    make(log, 'desk', START_MS + 4, { do: 'move', kind: 'pier', item: 'pier1', after: null });
    expect(order(log)).toEqual(['pier1', 'pier3', 'y', 'x', 'pier2']);
  });

  it('that are wrong or missing put an item first, are named, and do not stop anyone from moving things', () => {
    const [keyless] = smallLog().filter((entry) => entry.item === 'pier2');
    const { order: _, ...value } = keyless.value as Record<string, unknown>;
    const log = new JobLog('small', [
      ...smallLog().filter((entry) => entry.item !== 'pier2'),
      { ...keyless, value },
      {
        ...keyless,
        id: '0k4mup6tc-0000-phone',
        item: 'pier3',
        field: 'order',
        value: 'a0!',
        seen: [smallLog().at(-1)?.id as string],
      },
    ]);
    expect(order(log)).toEqual(['pier2', 'pier3', 'pier1']);
    expect(log.fold().issues).toEqual([
      { path: 'plan.piers.pier3.order', found: '"a0!"', expected: 'a key that sorts, like a0 or a0V' },
    ]);
    make(log, 'desk', START_MS, { do: 'move', kind: 'pier', item: 'pier1', after: null });
    expect(order(log)).toEqual(['pier2', 'pier3', 'pier1']);
    make(log, 'desk', START_MS + 1, { do: 'move', kind: 'pier', item: 'pier3', after: 'pier1' });
    expect(order(log)).toEqual(['pier2', 'pier1', 'pier3']);
  });
});
