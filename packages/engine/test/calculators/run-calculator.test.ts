import { describe, expect, test } from 'vitest';
import { calculators, findCalculator, runCalculator } from '../../src/calculators/index.ts';

function issues(name: string, inputs: Record<string, string | number>) {
  const run = runCalculator(name, inputs);
  if (run.ok) throw new Error(`${name} ran`);
  return run.issues;
}

function notices(name: string, inputs: Record<string, string | number>) {
  const run = runCalculator(name, inputs);
  if (!run.ok) throw new Error(JSON.stringify(run.issues));
  return run.answer.notices.map((notice) => notice.code);
}

describe('the answer', () => {
  test('is plain data with units, defaults and sources', () => {
    const run = runCalculator('air-state', { temperature: '25C', relativeHumidity: '60%' });
    expect(run.ok).toBe(true);
    if (!run.ok) return;
    expect(JSON.parse(JSON.stringify(run.answer))).toEqual(run.answer);
    expect(Object.keys(run.answer)).toEqual(['name', 'inputs', 'results', 'notices', 'sources']);
    expect(run.answer.inputs).toEqual({
      temperature: { value: 25, unit: 'C' },
      relativeHumidity: { value: 0.6, unit: 'fraction' },
      altitude: { value: 0, unit: 'm' },
    });
    expect(run.answer.results.dewPoint?.unit).toBe('C');
    expect(run.answer.notices).toEqual([]);
    expect(run.answer.sources[0]?.id).toBe('ashrae-fundamentals-2017-ch1');
  });

  test('numbers are taken in canonical units', () => {
    const typed = runCalculator('air-state', {
      temperature: '86F',
      relativeHumidity: '70%',
      altitude: '1000 ft',
    });
    const plain = runCalculator('air-state', { temperature: 30, relativeHumidity: 0.7, altitude: 304.8 });
    expect(typed).toEqual(plain);
  });

  test('air without vapor has no dew point', () => {
    const run = runCalculator('air-state', { temperature: '20C', relativeHumidity: '0%' });
    expect(run).toMatchObject({ ok: true, answer: { results: { dewPoint: { value: 'none', unit: '' } } } });
    expect(
      notices('surface-condensation', { temperature: 20, relativeHumidity: 0, surfaceTemperature: 5 }),
    ).toEqual(['no-dew-point']);
  });
});

describe('what is wrong is listed, all of it', () => {
  test('an unknown calculator', () => {
    expect(issues('air', {})).toEqual([
      {
        path: 'name',
        found: '"air"',
        expected: `one of ${calculators.map((known) => known.name).join(', ')}`,
      },
    ]);
    expect(issues('__proto__', {})).toHaveLength(1);
  });

  test('unknown, missing, unreadable and out-of-range inputs together', () => {
    expect(
      issues('surface-condensation', { temp: '20C', temperature: '200F', relativeHumidity: '65' }),
    ).toEqual([
      {
        path: 'temp',
        found: 'an input "temp"',
        expected: 'one of the inputs temperature, relativeHumidity, surfaceTemperature',
      },
      {
        path: 'temperature',
        found: '"200F"',
        expected: 'air temperature from -58 °F to 140 °F (-50.0 °C to 60.0 °C)',
      },
      {
        path: 'relativeHumidity',
        found: '"65"',
        expected:
          'relative humidity of the air from 0% to 100%: "65" as a relative humidity without a percent sign would be ' +
          '6500%; write 65% or a fraction from 0 to 1',
      },
      {
        path: 'surfaceTemperature',
        found: 'nothing',
        expected: 'surface temperature from -58 °F to 194 °F (-50.0 °C to 90.0 °C)',
      },
    ]);
  });

  test('numbers that are none', () => {
    expect(issues('air-state', { temperature: Number.NaN, relativeHumidity: 1.2 })).toEqual([
      {
        path: 'temperature',
        found: 'NaN C',
        expected: 'air temperature from -58 °F to 140 °F (-50.0 °C to 60.0 °C)',
      },
      {
        path: 'relativeHumidity',
        found: '1.2 fraction',
        expected: 'relative humidity of the air from 0% to 100%',
      },
    ]);
  });

  test('at, just inside and just outside a bound', () => {
    const at = (temperature: number) => runCalculator('air-state', { temperature, relativeHumidity: 0.4 }).ok;
    expect([at(-50), at(60), at(-50.001), at(60.001)]).toEqual([true, true, false, false]);
  });

  test('choices', () => {
    expect(
      issues('meter-correction', { reading: '16%', temperature: '10C', species: 'balsa' })[0],
    ).toMatchObject({
      path: 'species',
      found: '"balsa"',
      expected: expect.stringMatching(/^species of the wood, one of douglas-fir, .*, unknown$/),
    });
  });

  test('conversions', () => {
    expect(issues('convert', { value: '5 ft', to: 'perm' })).toEqual([
      {
        path: 'to',
        found: '"perm"',
        expected: 'ft cannot be converted to perm; it converts to m, cm, mm, um, ft, in, yd, mil',
      },
    ]);
    expect(issues('convert', { value: '5 smoots', to: 'm' })).toEqual([
      {
        path: 'value',
        found: '"5 smoots"',
        expected: 'a number with its unit, e.g. 50cfm or 72F; "smoots" is not a known unit',
      },
    ]);
    expect(issues('convert', { value: '5', to: 'm' })[0]?.expected).toContain('it has no unit');
    expect(issues('convert', { value: '1,5 m', to: 'ft' })[0]?.expected).toContain('has a comma');
    expect(issues('convert', { to: 'ft' })[0]).toMatchObject({ path: 'value', found: 'nothing' });
  });
});

describe('notices', () => {
  test('fall of pipes, at and around the common limits', () => {
    const fall = (drop: string) => notices('pipe-fall', { drop, run: '12in' });
    expect(fall('1/8in')).toEqual(['below-small-pipe-fall']);
    expect(fall('0.1249in')).toEqual(['below-common-fall']);
    expect(fall('0.2499in')).toEqual(['below-small-pipe-fall']);
    expect(fall('1/4in')).toEqual([]);
  });

  test('mold-prone surfaces, wood near saturation, ground that takes water', () => {
    const joist = (surfaceTemperature: string) =>
      notices('surface-condensation', { temperature: '24C', relativeHumidity: '65%', surfaceTemperature });
    expect(joist('19C')).toEqual(['mold-prone']);
    expect(joist('22C')).toEqual([]);
    expect(joist('15C')).toEqual([]);
    const wet = runCalculator('wood-equilibrium', { temperature: '20C', relativeHumidity: '97%' });
    expect(wet).toMatchObject({
      ok: true,
      answer: { results: { moistureContent: { value: 'near fiber saturation', unit: '' } } },
    });
    expect(
      notices('ground-evaporation', {
        temperature: '27C',
        relativeHumidity: '80%',
        groundTemperature: '12C',
        area: '80 m2',
      }),
    ).toEqual(['assumed-transfer', 'ground-takes-water']);
    expect(notices('meter-correction', { reading: '16%', temperature: '10C', species: 'unknown' })).toEqual([
      'uncorrected-for-species',
    ]);
  });
});

describe('design load', () => {
  const dry = {
    temperature: '60F',
    relativeHumidity: '60%',
    outdoorDewPoint: '30F',
    area: '1200 ft2',
    height: '3ft',
    airChanges: '0.4 ACH',
    groundTemperature: '58F',
  };

  test('no machine where the outdoor air dries the space', () => {
    const run = runCalculator('design-load', dry);
    expect(run).toMatchObject({
      ok: true,
      answer: { results: { capacityAt80F: { value: 0, unit: 'kg/day' } } },
    });
    expect(notices('design-load', dry)).toEqual(['assumed-transfer', 'nothing-to-remove']);
  });

  test('no label where the air is too cold and dry for any capacity', () => {
    const cold = { ...dry, temperature: '40F', relativeHumidity: '30%', outdoorDewPoint: '38F' };
    const run = runCalculator('design-load', cold);
    expect(run).toMatchObject({
      ok: true,
      answer: { results: { capacityAt65F: { value: 'none', unit: '' } } },
    });
    expect(notices('design-load', cold)).toEqual([
      'assumed-transfer',
      'extrapolated',
      'no-capacity',
      'generic-machine',
    ]);
  });

  test('the default run share asks for a third more than running through', () => {
    const capacity = (inputs: Record<string, string | number>) => {
      const run = runCalculator('design-load', { ...dry, outdoorDewPoint: '65F', ...inputs });
      if (!run.ok) throw new Error(JSON.stringify(run.issues));
      return run.answer.results.capacityAt80F?.value as number;
    };
    expect(capacity({}) / capacity({ runFraction: '100%' })).toBeCloseTo(4 / 3, 12);
  });
});

describe('the list', () => {
  test.each(calculators.map((calculator) => [calculator.name, calculator] as const))(
    '%s is complete',
    (name, calculator) => {
      expect(findCalculator(name)).toBe(calculator);
      expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(calculator.answers).toMatch(/\?$/);
      expect(calculator.sources.length).toBeGreaterThan(0);
      const inputKeys = calculator.inputs.map((input) => input.key);
      const resultKeys = calculator.results.map((result) => result.key);
      expect(new Set(inputKeys).size).toBe(inputKeys.length);
      expect(new Set(resultKeys).size).toBe(resultKeys.length);
      for (const input of calculator.inputs) {
        if (input.dimension === 'text') continue;
        if (input.dimension === 'choice') {
          if (input.default !== undefined) expect(input.choices).toContain(input.default);
          continue;
        }
        expect(input.min).toBeLessThan(input.max);
        if (input.default !== undefined) {
          expect(input.default).toBeGreaterThanOrEqual(input.min);
          expect(input.default).toBeLessThanOrEqual(input.max);
        }
      }
    },
  );

  test('names are all different', () => {
    const names = calculators.map((calculator) => calculator.name);
    expect(new Set(names).size).toBe(names.length);
  });
});
