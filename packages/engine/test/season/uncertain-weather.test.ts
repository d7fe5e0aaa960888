import { describe, expect, it } from 'vitest';
import type { SeasonWeather } from '../../src/season/season-case.ts';
import { runUncertainty, usualUnknowns } from '../../src/season/uncertainty.ts';
import { prototypeCases, prototypeWeather } from './prototype-year.ts';

const dry = prototypeWeather();
/** The same hours with a fifth more water in the outdoor air, saturation left to the model. */
const humid: SeasonWeather = { ...dry, humidityRatio: Array.from(dry.humidityRatio, (w) => 1.2 * w) };
const space = prototypeCases().b!;
const unknowns = usualUnknowns().slice(0, 2);

describe('years of other weather among what is not known', () => {
  const both = runUncertainty(space, unknowns, dry, {
    count: 20,
    otherWeather: { name: 'weather', years: [dry, humid] },
  });

  it('names the weather and puts it first where it matters most', () => {
    expect(both.influences).toHaveLength(unknowns.length + 1);
    expect(both.influences[0]!.name).toBe('weather');
    expect(both.influences[0]!.onHumidity).toBeGreaterThan(0.5);
  });

  it('is the one weather where that is the only year', () => {
    const alone = runUncertainty(space, unknowns, dry, { count: 20 });
    const given = runUncertainty(space, unknowns, humid, {
      count: 20,
      otherWeather: { name: 'weather', years: [dry] },
    });
    expect(given.highestDayRelativeHumidity).toEqual(alone.highestDayRelativeHumidity);
    expect(given.influences.find((i) => i.name === 'weather')!.onHumidity).toBe(0);
    expect(both.daysAbove80.high).toBeGreaterThan(alone.daysAbove80.high);
  });

  it('refuses no years at all', () => {
    expect(() => runUncertainty(space, unknowns, dry, { otherWeather: { name: 'w', years: [] } })).toThrow(
      /no year/,
    );
  });
});
