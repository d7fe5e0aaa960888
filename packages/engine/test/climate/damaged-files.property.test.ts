import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readEpw } from '../../src/climate/epw.ts';
import type { ReadResult } from '../../src/climate/read-issue.ts';
import { readWeather } from '../../src/climate/read-weather.ts';
import { readTmy3 } from '../../src/climate/tmy3.ts';
import { epwLines, tmy3Lines } from './made-weather.ts';

const LAYOUTS = [
  { name: 'EPW', lines: epwLines(), read: readEpw },
  { name: 'TMY3', lines: tmy3Lines(), read: readTmy3 },
] as const;

/** Either a complete, physically possible year, or issues that say something. */
function holds(result: ReadResult): void {
  if (!result.ok) {
    expect(result.issues.length).toBeGreaterThan(0);
    expect(result.issues.length).toBeLessThanOrEqual(20);
    expect(result.issueCount).toBeGreaterThanOrEqual(result.issues.length);
    for (const issue of result.issues) {
      expect(Number.isInteger(issue.line) && issue.line >= 0).toBe(true);
      expect(issue.message.length).toBeGreaterThan(10);
      expect(issue.message.length).toBeLessThan(400);
      expect(issue.message).not.toMatch(/NaN|undefined/);
    }
    return;
  }
  const { year } = result;
  for (let hour = 0; hour < 8760; hour++) {
    const sound =
      year.temperatureC[hour]! >= -90 &&
      year.temperatureC[hour]! <= 57 &&
      year.humidityRatio[hour]! > 0 &&
      year.humidityRatio[hour]! < 0.08 &&
      year.relativeHumidity[hour]! > 0 &&
      year.relativeHumidity[hour]! <= 1 &&
      year.pressurePa[hour]! >= 45_000 &&
      year.windSpeedMPerS[hour]! >= 0 &&
      year.windFromDeg[hour]! >= 0 &&
      year.windFromDeg[hour]! <= 360 &&
      year.globalHorizontalWPerM2[hour]! >= 0;
    if (!sound) throw new Error(`hour ${hour} is not sound`);
  }
}

describe.each(LAYOUTS)('a damaged $name file gives a sound year or a named fault', ({ lines, read }) => {
  const text = lines.join('\r\n');

  it('when lines are lost', () => {
    fc.assert(
      fc.property(fc.nat(lines.length - 1), fc.integer({ min: 1, max: 40 }), (at, count) => {
        const result = read([...lines.slice(0, at), ...lines.slice(at + count)].join('\r\n'));
        holds(result);
        const hoursLost = Math.min(count, lines.length - at);
        // Beyond the head, up to six lost lines are bridged and more are not.
        if (at >= lines.length - 8760) expect(result.ok).toBe(hoursLost <= 6);
      }),
      { numRuns: 25, seed: 11 },
    );
  });

  it('when characters are changed', () => {
    const flip = fc.record({ at: fc.nat(text.length - 1), to: fc.integer({ min: 1, max: 255 }) });
    fc.assert(
      fc.property(fc.array(flip, { minLength: 1, maxLength: 30 }), (flips) => {
        const bytes = Buffer.from(text, 'latin1');
        for (const { at, to } of flips) bytes[at] = to;
        holds(read(bytes.toString('latin1')));
      }),
      { numRuns: 25, seed: 12 },
    );
  });

  it('when it is cut anywhere', () => {
    fc.assert(
      fc.property(fc.nat(text.length), (length) => holds(read(text.slice(0, length)))),
      { numRuns: 20, seed: 13 },
    );
  });

  it('when lines are repeated', () => {
    fc.assert(
      fc.property(fc.integer({ min: lines.length - 8760, max: lines.length - 1 }), (at) => {
        const result = read([...lines.slice(0, at + 1), ...lines.slice(at)].join('\n'));
        holds(result);
        expect(result.ok).toBe(false);
      }),
      { numRuns: 10, seed: 14 },
    );
  });
});

describe('any bytes', () => {
  it('give a result', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 3000 }), (bytes) => holds(readWeather(bytes, 'x'))),
      { numRuns: 300, seed: 15 },
    );
  });

  it('after a sound head give a result', () => {
    const heads = LAYOUTS.map(({ lines }) =>
      Buffer.from(`${lines.slice(0, lines.length - 8760).join('\n')}\n`),
    );
    fc.assert(
      fc.property(fc.constantFrom(...heads), fc.uint8Array({ maxLength: 3000 }), (head, bytes) =>
        holds(readWeather(new Uint8Array([...head, ...bytes]), 'x')),
      ),
      { numRuns: 200, seed: 16 },
    );
  });

  it('in great number do not take long', () => {
    const noise = new Uint8Array(3_000_000);
    let state = 1;
    for (let i = 0; i < noise.length; i++) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      noise[i] = 10 + ((state >>> 24) % 90);
    }
    const start = performance.now();
    for (const { lines } of LAYOUTS) {
      const head = Buffer.from(`${lines.slice(0, lines.length - 8760).join('\n')}\n`);
      holds(readWeather(new Uint8Array(Buffer.concat([head, noise])), 'x'));
    }
    // A guard against quadratic time only; the machine may be busy.
    expect(performance.now() - start).toBeLessThan(10_000);
  });
});
