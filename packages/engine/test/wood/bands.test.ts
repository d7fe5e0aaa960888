import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { type WoodBand, woodBand, woodBands, woodHumidityAlarm } from '../../src/wood/bands.ts';

describe('woodBand', () => {
  test.each([
    [0, 'dry'],
    [0.15, 'dry'],
    [0.1501, 'mold-possible'],
    [0.1599, 'mold-possible'],
    [0.16, 'elevated'],
    [0.19, 'elevated'],
    [0.1901, 'above-dry-lumber'],
    [0.1999, 'above-dry-lumber'],
    [0.2, 'excessive'],
    [0.2799, 'excessive'],
    [0.28, 'decay-prone'],
    [0.3, 'decay-prone'],
    [0.3001, 'above-fiber-saturation'],
    [1.4, 'above-fiber-saturation'],
  ])('%d is %s', (mc, key) => {
    expect(woodBand(mc).key).toBe(key);
  });

  test('every threshold names where it comes from', () => {
    for (const band of woodBands) expect(band.sources.length).toBeGreaterThan(0);
    expect(woodHumidityAlarm.source.provenance).toBe('practice');
  });

  test('own thresholds, and bands that make no sense', () => {
    const [dry, ...rest] = woodBands;
    const strict: WoodBand[] = [dry!, { ...rest[1]!, key: 'too-wet', from: 0.13 }];
    expect(woodBand(0.14, strict).key).toBe('too-wet');
    expect(() => woodBand(0.14, [dry!, strict[1]!, { ...strict[1]!, key: 'again' }])).toThrow(
      /"again" begins at 0\.13/,
    );
    expect(() => woodBand(0.14, rest)).toThrow(EngineError);
    expect(() => woodBand(0.14, [])).toThrow(EngineError);
    expect(() => woodBand(14)).toThrow(/0\.18 for 18 %/);
  });
});
