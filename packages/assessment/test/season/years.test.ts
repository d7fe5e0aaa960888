import { season } from '@undercroft/engine';
import { describe, expect, it } from 'vitest';
import { yearsOf } from '../../src/season/years.ts';

/** Weather without surprises: a warm, humid summer and a cold winter. */
function plainWeather(): season.SeasonWeather {
  const hours = (value: (hour: number) => number) => Float64Array.from({ length: 8760 }, (_, h) => value(h));
  const wave = (hour: number) => -Math.cos((2 * Math.PI * hour) / 8760);
  return {
    temperatureC: hours((h) => 14 + 11 * wave(h)),
    humidityRatio: hours((h) => 0.009 + 0.006 * wave(h)),
    pressurePa: hours(() => 100_200),
    windSpeedMPerS: hours(() => 2.6),
    globalHorizontalWPerM2: hours(() => 160),
  };
}

const weather = plainWeather();
const vented = { ...season.defaultSeasonCase(weather), name: 'vented' };
const low = { ...vented, name: 'low', heightM: 0.5 };

describe('years that were run before', () => {
  it('are what the engine gives, whatever was run before and in whatever order', () => {
    const fresh = season.runSeason([vented, low], plainWeather(), { hourly: true });
    expect(yearsOf([low, vented, low], weather)).toEqual([fresh[1], fresh[0], fresh[1]]);
    expect(yearsOf([vented], weather)).toEqual([fresh[0]]);
  });

  it('are taken again under another name, and not in other weather', () => {
    const [first] = yearsOf([vented], weather);
    const [again] = yearsOf([{ ...vented, name: 'the same' }], weather);
    expect(again.name).toBe('the same');
    expect(again.hourly).toBe(first.hourly);
    const [elsewhere] = yearsOf([vented], plainWeather());
    expect(elsewhere.hourly).not.toBe(first.hourly);
    expect(elsewhere).toEqual(first);
  });

  it('tell a change of one figure', () => {
    const [first, changed] = yearsOf([vented, { ...vented, heightM: vented.heightM + 1e-9 }], weather);
    expect(changed.hourly).not.toBe(first.hourly);
  });
});
