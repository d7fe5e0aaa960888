import { describe, expect, it } from 'vitest';
import { monthOfHour } from '../../src/climate/calendar.ts';
import { runSeason } from '../../src/season/run.ts';
import type { SeasonCase } from '../../src/season/season-case.ts';
import { type PlainYear, plainYear } from './plain-integrator.ts';
import { fullCase, networkCase, prototypeCases, prototypeWeather } from './test-cases.ts';

const weather = prototypeWeather();
const TIMEOUT = 180_000;

interface Difference {
  readonly rmsRelativeHumidity: number;
  readonly monthRelativeHumidity: number;
  readonly monthTemperatureK: number;
}

function fast(space: SeasonCase, stepsPerHour: number) {
  return runSeason([space], weather, { hourly: true, keepStart: true, stepsPerHour })[0]!;
}

function difference(result: ReturnType<typeof fast>, plain: PlainYear): Difference {
  let squares = 0;
  const humidity = new Float64Array(12);
  const temperature = new Float64Array(12);
  const hours = new Float64Array(12);
  for (let i = 0; i < 8760; i++) {
    const month = monthOfHour(i);
    const d = result.hourly!.relativeHumidity[i]! - plain.relativeHumidity[i]!;
    squares += d * d;
    humidity[month] = humidity[month]! + d;
    temperature[month] = temperature[month]! + result.hourly!.temperatureC[i]! - plain.temperatureC[i]!;
    hours[month] = hours[month]! + 1;
  }
  return {
    rmsRelativeHumidity: Math.sqrt(squares / 8760),
    monthRelativeHumidity: Math.max(...humidity.map((sum, m) => Math.abs(sum / hours[m]!))),
    monthTemperatureK: Math.max(...temperature.map((sum, m) => Math.abs(sum / hours[m]!))),
  };
}

/** Limits set for the project: half a point and 0.1 K by the month, 1.5 points rms by the hour. */
function expectWithin(d: Difference): void {
  expect(d.monthRelativeHumidity).toBeLessThan(0.005);
  expect(d.monthTemperatureK).toBeLessThan(0.1);
  expect(d.rmsRelativeHumidity).toBeLessThan(0.015);
}

describe('against a plain explicit integration of the same equations', () => {
  it(
    'agrees for a space with ducts, films, rising damp, two machines and a failure, water and energy too',
    () => {
      const space = fullCase();
      const result = fast(space, 1);
      const plain = plainYear(space, weather, result.start!, 30);
      expectWithin(difference(result, plain));
      expect(Math.abs(result.waterRemovedKg / plain.waterRemovedKg - 1)).toBeLessThan(0.005);
      expect(Math.abs(result.energyKWh / plain.energyKWh - 1)).toBeLessThan(0.01);
    },
    TIMEOUT,
  );

  it(
    'comes closer as the step gets shorter',
    () => {
      const space = { ...prototypeCases().a, latentAtSurfaces: true };
      const plain = plainYear(space, weather, fast(space, 1).start!, 20);
      const rms = [1, 2, 4].map((parts) => difference(fast(space, parts), plain).rmsRelativeHumidity);
      expectWithin(difference(fast(space, 1), plain));
      expect(rms[1]!).toBeLessThan(0.75 * rms[0]!);
      expect(rms[2]!).toBeLessThan(0.75 * rms[1]!);
    },
    TIMEOUT,
  );

  it(
    'agrees with the pressure network solved anew in every step instead of read from a table',
    () => {
      const space = networkCase(800);
      const result = fast(space, 1);
      expectWithin(difference(result, plainYear(space, weather, result.start!, 60)));
    },
    TIMEOUT,
  );
});
