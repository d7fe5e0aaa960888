import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type MoldClass, moldClasses, moldParameters } from '../../src/mold/classes.ts';
import { steadyHumidityForMoldIndex, weeksToMoldIndex } from '../../src/mold/constant-air.ts';
import { criticalRelativeHumidity } from '../../src/mold/critical-humidity.ts';
import { moldDecline } from '../../src/mold/decline.ts';
import { largestMoldIndex } from '../../src/mold/growth.ts';
import { moldIndexOfSeries } from '../../src/mold/series.ts';
import { stepMoldIndex } from '../../src/mold/step.ts';

const temperature = fc.double({ min: -40, max: 60, noNaN: true });
const humidity = fc.double({ min: 0, max: 1, noNaN: true });
const parameters = fc
  .record({
    moldClass: fc.constantFrom(...(Object.keys(moldClasses) as MoldClass[])),
    criticalHumidity: fc.constantFrom('never-below-floor' as const, 'curve-then-floor' as const),
    woodFactor: fc.double({ min: 0, max: 1, noNaN: true }),
    declineFactor: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ moldClass, ...overrides }) => moldParameters(moldClass, overrides));

describe('mold index', () => {
  test('stays a number between 0 and the largest index any of its air allows', () => {
    const air = fc.array(fc.tuple(temperature, humidity), { minLength: 1, maxLength: 200 });
    fc.assert(
      fc.property(
        air,
        parameters,
        fc.double({ min: 0.1, max: 24, noNaN: true }),
        (steps, p, hoursPerStep) => {
          const t = steps.map((step) => step[0]);
          const h = steps.map((step) => step[1]);
          const result = moldIndexOfSeries(t, h, { parameters: p, hoursPerStep, keepHourly: true });
          const allowed = Math.max(...steps.map(([c, rh]) => largestMoldIndex(c, rh, p)));
          for (const index of result.hourly!) {
            expect(index).toBeGreaterThanOrEqual(0);
            expect(index).toBeLessThanOrEqual(allowed);
          }
          expect(result.maximumIndex).toBe(Math.max(0, ...result.hourly!));
          expect(result.finalIndex).toBe(result.hourly!.at(-1));
        },
      ),
    );
  });

  test('damper air never means less mold, from any start', () => {
    fc.assert(
      fc.property(
        temperature,
        humidity,
        humidity,
        parameters,
        fc.double({ min: 0, max: 6, noNaN: true }),
        (t, a, b, p, index) => {
          const [drier, damper] = a < b ? [a, b] : [b, a];
          const inDrier = { index, dryHours: 30 };
          const inDamper = { index, dryHours: 30 };
          stepMoldIndex(inDrier, t, drier, 1, p);
          stepMoldIndex(inDamper, t, damper, 1, p);
          expect(inDamper.index).toBeGreaterThanOrEqual(inDrier.index);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('decline over two stretches is the decline over both', () => {
    const hours = fc.double({ min: 0, max: 80, noNaN: true });
    fc.assert(
      fc.property(hours, hours, hours, (a, b, c) => {
        const whole = moldDecline(a, a + b + c);
        expect(moldDecline(a, a + b) + moldDecline(a + b, a + b + c)).toBeCloseTo(whole, 12);
      }),
    );
  });

  test('the steady humidity gives the index it was asked for', () => {
    const warm = fc.double({ min: 0.5, max: 49, noNaN: true });
    fc.assert(
      fc.property(warm, fc.double({ min: 0.5, max: 5.9, noNaN: true }), parameters, (t, index, p) => {
        const h = steadyHumidityForMoldIndex(t, p, index);
        if (h === null) expect(largestMoldIndex(t, 1, p)).toBeLessThan(index);
        // Below the base of the ceiling the index jumps in at the critical humidity.
        else if (index <= p.ceilingBase) expect(h).toBe(criticalRelativeHumidity(t, p));
        else expect(largestMoldIndex(t, h, p)).toBeCloseTo(index, 9);
      }),
    );
  });

  test('a higher index takes longer', () => {
    const index = fc.double({ min: 0.01, max: 6, noNaN: true });
    fc.assert(
      fc.property(temperature, humidity, parameters, index, index, (t, h, p, a, b) => {
        const ask = (i: number) =>
          weeksToMoldIndex({ temperatureC: t, relativeHumidity: h, parameters: p, index: i });
        const weeks = (i: number) =>
          ask(i).weeks === 'never' ? Number.POSITIVE_INFINITY : Number(ask(i).weeks);
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(weeks(low)).toBeGreaterThan(0);
        expect(weeks(low)).toBeLessThanOrEqual(weeks(high));
      }),
    );
  });
});
