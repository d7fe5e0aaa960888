import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { correctMeterReading } from '../../src/wood/meter.ts';
import type { MeterReading } from '../../src/wood/meter-reading.ts';
import { meterSpecies } from '../../src/wood/meter-species.ts';
import type { MeterTemperatureMethod } from '../../src/wood/meter-temperature.ts';

const cold: MeterReading = {
  reading: 0.17,
  meterCorrects: 'nothing',
  woodTemperatureC: 8,
  species: 'southern-pine',
};
const codes = (result: { notices: readonly { code: string }[] }) => result.notices.map((n) => n.code);

describe('correctMeterReading', () => {
  test('the calculation sheet: raw reading, then temperature, then species', () => {
    const result = correctMeterReading(cold);
    expect(result.steps.map((s) => s.what)).toEqual(['reading', 'temperature', 'species']);
    // 13.1 K below 21.1 °C is 23.58 °F: 1.179 % MC.
    expect(result.steps[1]!.change).toBeCloseTo(0.01179, 10);
    expect(result.steps[1]!.source?.provenance).toBe('quoted');
    expect(result.steps[2]!.source?.provenance).toBe('memory');
    expect(result.reading).toBe(0.17);
    const sum = result.steps.reduce((total, step) => total + step.change, result.reading);
    expect(result.moistureContent).toBeCloseTo(sum, 12);
    expect(result.steps.at(-1)!.moistureContent).toBe(result.moistureContent);
    expect(result.high - result.moistureContent).toBeCloseTo(0.02, 12);
    expect(result.moistureContent - result.low).toBeCloseTo(0.02, 12);
    expect(result.notices).toEqual([]);
  });

  test('never corrects what the meter did', () => {
    const temperature = correctMeterReading({ ...cold, meterCorrects: 'temperature' });
    expect(temperature.steps.map((s) => s.what)).toEqual(['reading', 'species']);
    const both = correctMeterReading({ ...cold, meterCorrects: 'temperature-and-species' });
    expect(both.steps.map((s) => s.what)).toEqual(['reading']);
    expect(both.moistureContent).toBe(0.17);
    expect(both.notices).toEqual([]);
  });

  test('a meter set to the wood has nothing left to correct for species', () => {
    const result = correctMeterReading({ ...cold, scaleSpecies: 'southern-pine' });
    expect(result.steps.at(-1)).toMatchObject({ what: 'species', change: 0 });
    // Also for a group without data: the scale is the wood's own.
    const group = correctMeterReading({
      ...cold,
      species: 'spruce-pine-fir',
      scaleSpecies: 'spruce-pine-fir',
    });
    expect(codes(group)).toEqual([]);
  });

  test.each([
    [null, 'the species was not recorded'],
    ['hemlock', 'no resistance data for hemlock'],
    ['spruce-pine-fir', 'differ by almost 2 % MC'],
    ['toString', 'no resistance data for toString'],
  ])('species %s is left uncorrected and says so', (species, words) => {
    const result = correctMeterReading({ ...cold, species });
    expect(result.steps.map((s) => s.what)).toEqual(['reading', 'temperature']);
    expect(codes(result)).toEqual(['uncorrected-for-species']);
    expect(result.notices[0]!.message).toContain(words);
  });

  test('a scale without data leaves the species uncorrected', () => {
    expect(codes(correctMeterReading({ ...cold, scaleSpecies: 'beech' }))).toEqual([
      'uncorrected-for-species',
    ]);
  });

  test('no wood temperature, no temperature correction', () => {
    const result = correctMeterReading({ ...cold, woodTemperatureC: null });
    expect(result.steps.map((s) => s.what)).toEqual(['reading', 'species']);
    expect(codes(result)).toEqual(['uncorrected-for-temperature']);
  });

  test.each([
    [0, []],
    [-0.1, ['outside-range']],
    [32.2, []],
    [32.3, ['outside-range']],
  ])('wood at %d °C', (woodTemperatureC, expected) => {
    expect(codes(correctMeterReading({ ...cold, woodTemperatureC }))).toEqual(expected);
  });

  test('outside the resistance table the last change is kept', () => {
    const white = { ...cold, meterCorrects: 'temperature', species: 'white-oak' } as const;
    const edge = correctMeterReading({ ...white, reading: 0.25 });
    expect(codes(edge)).toEqual([]);
    const beyond = correctMeterReading({ ...white, reading: 0.28 });
    expect(codes(beyond)).toEqual(['outside-species-table']);
    expect(beyond.steps.at(-1)!.change).toBeCloseTo(edge.steps.at(-1)!.change, 12);
    const drier = correctMeterReading({ ...white, reading: 0.05 });
    expect(codes(drier)).toEqual(['outside-species-table']);
  });

  test('wet, treated and hot-dried wood', () => {
    expect(codes(correctMeterReading({ ...cold, reading: 0.31, species: 'douglas-fir' }))).toEqual([
      'above-meter-range',
    ]);
    expect(codes(correctMeterReading({ ...cold, reading: 0.3, species: 'douglas-fir' }))).toEqual([]);
    expect(
      codes(correctMeterReading({ ...cold, preservativeTreated: true, highTemperatureDried: true })),
    ).toEqual(['treated-wood', 'high-temperature-dried']);
  });

  test('the fitted equation says that it ignores another calibration', () => {
    const options = { temperatureMethod: 'douglas-fir-equation' } as const;
    expect(codes(correctMeterReading({ ...cold, calibrationTemperatureC: 25 }, options))).toEqual([
      'calibration-not-used',
    ]);
    expect(codes(correctMeterReading(cold, options))).toEqual([]);
  });

  test('corrections below nothing give 0 with a notice', () => {
    const result = correctMeterReading({
      ...cold,
      reading: 0.004,
      woodTemperatureC: 31,
      species: 'douglas-fir',
    });
    expect(result.moistureContent).toBe(0);
    expect(result.low).toBe(0);
    expect(codes(result)).toEqual(['below-zero']);
  });

  test('meaningless input is refused by name', () => {
    expect(() => correctMeterReading({ ...cold, reading: 17 })).toThrow(
      /meter reading .*0\.16 for 16 %.*got 17/,
    );
    expect(() => correctMeterReading({ ...cold, woodTemperatureC: Number.NaN })).toThrow(EngineError);
    expect(() => correctMeterReading(cold, { doubt: -0.01 })).toThrow(/doubt/);
  });
});

describe('properties', () => {
  const methods: MeterTemperatureMethod[] = ['ten-degrees-fahrenheit', 'ten-kelvin', 'douglas-fir-equation'];
  const result = (
    reading: number,
    woodTemperatureC: number,
    species: string,
    temperatureMethod: MeterTemperatureMethod,
  ) =>
    correctMeterReading({ ...cold, reading, woodTemperatureC, species }, { temperatureMethod })
      .moistureContent;
  const readings = fc.double({ min: 0.06, max: 0.4, noNaN: true });

  test('a higher reading never gives drier wood, and colder wood never gives a drier answer', () => {
    fc.assert(
      fc.property(
        readings,
        readings,
        fc.double({ min: 0, max: 35, noNaN: true }),
        fc.double({ min: 0, max: 35, noNaN: true }),
        fc.constantFrom(...meterSpecies, 'unknown'),
        fc.constantFrom(...methods),
        (a, b, t, u, species, method) => {
          const [low, high] = a < b ? [a, b] : [b, a];
          const [colder, warmer] = t < u ? [t, u] : [u, t];
          const rounding = 1e-12;
          expect(result(low, t, species, method)).toBeLessThanOrEqual(
            result(high, t, species, method) + rounding,
          );
          expect(result(a, colder, species, method)).toBeGreaterThanOrEqual(
            result(a, warmer, species, method) - rounding,
          );
        },
      ),
    );
  });
});
