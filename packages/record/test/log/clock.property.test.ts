import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CLOCK_STAMP, FOLLOW_LIMIT_MS, nextStamp, stampMs } from '../../src/log/clock.ts';

const NOW = Date.UTC(2031, 4, 14, 13);
const LAST_MS = 36 ** 9 - 1;
const SEED = 20310603;
const ms = fc.integer({ min: 0, max: LAST_MS });
const device = fc.stringMatching(/^[a-z0-9]{4,16}$/);

describe('a stamp', () => {
  it('sorts as text as its time does, and gives the time back', () => {
    fc.assert(
      fc.property(ms, ms, device, device, (a, b, one, other) => {
        const [first, second] = [nextStamp(null, a, one), nextStamp(null, b, other)];
        expect(first).toMatch(CLOCK_STAMP);
        expect(stampMs(first)).toBe(a);
        if (a !== b) expect(first < second).toBe(a < b);
      }),
      { numRuns: 500, seed: SEED },
    );
  });

  it('is later than the newest stamp that its device follows, whatever the device shows', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -FOLLOW_LIMIT_MS, max: 5000 }), { maxLength: 60 }),
        (offsets) => {
          let newest: string | null = null;
          offsets.forEach((off, index) => {
            const stamp = nextStamp(newest, NOW + off, index % 2 === 0 ? 'phone' : 'tablet');
            expect(stamp).toMatch(CLOCK_STAMP);
            if (newest !== null && stampMs(newest) <= NOW + off + FOLLOW_LIMIT_MS)
              expect(stamp > newest).toBe(true);
            newest = stamp;
          });
        },
      ),
      { numRuns: 300, seed: SEED + 1 },
    );
  });

  it('follows a clock that is ahead by up to a day, and no further', () => {
    const at = (aheadMs: number) => nextStamp(nextStamp(null, NOW + aheadMs, 'other'), NOW, 'phone');
    expect(at(-1)).toBe(nextStamp(null, NOW, 'phone'));
    expect(at(0)).toBe(`${nextStamp(null, NOW, 'phone').slice(0, 9)}-0001-phone`);
    expect(stampMs(at(FOLLOW_LIMIT_MS - 1))).toBe(NOW + FOLLOW_LIMIT_MS - 1);
    expect(stampMs(at(FOLLOW_LIMIT_MS))).toBe(NOW + FOLLOW_LIMIT_MS);
    expect(stampMs(at(FOLLOW_LIMIT_MS + 1))).toBe(NOW);
  });

  it('counts within a millisecond and goes on into the next when the counter is full', () => {
    const first = nextStamp(null, NOW, 'phone');
    const second = nextStamp(first, NOW, 'phone');
    expect(second.slice(9)).toBe('-0001-phone');
    const full = `${first.slice(0, 9)}-zzzz-phone`;
    const after = nextStamp(full, NOW, 'phone');
    expect(stampMs(after)).toBe(NOW + 1);
    expect(after.slice(9)).toBe('-0000-phone');
    expect(after > full).toBe(true);
  });

  it('is refused for a device or a time that is none', () => {
    for (const name of ['abc', 'a'.repeat(17), 'Phone', 'pho ne', 'phone-', '']) {
      expect(() => nextStamp(null, NOW, name)).toThrow(`got "${name}"`);
    }
    for (const time of [-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY, LAST_MS + 1]) {
      expect(() => nextStamp(null, time, 'phone')).toThrow(`got ${time}`);
    }
    expect(nextStamp(null, LAST_MS, 'phone')).toBe('zzzzzzzzz-0000-phone');
    expect(nextStamp(null, 0, 'phone')).toBe('000000000-0000-phone');
  });

  it('is told from other text', () => {
    expect('0k4mup6tc-0000-phone').toMatch(CLOCK_STAMP);
    for (const text of [
      '',
      '0k4mup6tc-0000-',
      'k4mup6tc-0000-phone',
      '0K4mup6tc-0000-phone',
      '0k4mup6tc-0000-phone\n',
    ]) {
      expect(text).not.toMatch(CLOCK_STAMP);
    }
  });
});
