import { calculators } from '@undercroft/engine';
import { describe, expect, test } from 'vitest';
import { EXAMPLES } from '../src/examples.ts';
import { command } from './run-command.ts';

const calc = (call: string, columns?: number) =>
  command(['calc', ...call.split(' ').filter((word) => word !== '')], '/', columns);

/** What people are told they can ask: every name with its keys in and out. */
const INTERFACE: Readonly<Record<string, readonly [inputs: readonly string[], results: readonly string[]]>> =
  {
    'air-state': [
      ['temperature', 'relativeHumidity', 'altitude'],
      ['humidityRatio', 'dewPoint', 'wetBulb', 'enthalpy', 'specificVolume', 'vaporPressure'],
    ],
    'wood-equilibrium': [['temperature', 'relativeHumidity'], ['moistureContent']],
    'wood-humidity': [['temperature', 'moistureContent'], ['relativeHumidity']],
    'meter-correction': [['reading', 'species', 'temperature'], ['moistureContent']],
    'mold-weeks': [
      ['temperature', 'relativeHumidity', 'class', 'index'],
      ['weeks', 'maximumIndex'],
    ],
    'surface-condensation': [
      ['temperature', 'relativeHumidity', 'surfaceTemperature'],
      ['dewPoint', 'surfaceRelativeHumidity', 'condensing'],
    ],
    'pipe-fall': [['drop', 'run'], ['slope']],
    'ground-evaporation': [
      ['temperature', 'relativeHumidity', 'groundTemperature', 'crustResistance', 'openFraction', 'area'],
      ['waterPerDay'],
    ],
    'design-load': [
      ['temperature', 'relativeHumidity', 'outdoorDewPoint', 'area', 'height', 'airChanges'],
      ['waterPerDay', 'capacityAt80F', 'capacityAt65F'],
    ],
    convert: [['value', 'to'], ['value']],
  };

describe('the list', () => {
  test('alone it names every calculator and says how to go on', async () => {
    const { code, out } = await calc('');
    expect(code).toBe(0);
    for (const name of Object.keys(INTERFACE)) expect(out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
    expect(out).toContain('key=value');
  });

  test('as JSON it gives keys, units, limits and choices', async () => {
    const listed = JSON.parse((await calc('--json')).out);
    expect(listed.map((c: { name: string }) => c.name)).toHaveLength(calculators.calculators.length);
    const mold = listed.find((c: { name: string }) => c.name === 'mold-weeks');
    expect(mold.inputs.find((i: { key: string }) => i.key === 'temperature').unit).toBe('C');
    expect(mold.inputs.find((i: { key: string }) => i.key === 'class').choices).toContain('sensitive');
    expect(mold.results.map((r: { key: string }) => r.key)).toEqual(['weeks', 'maximumIndex']);
  });
});

describe('the interface', () => {
  test.each(Object.entries(INTERFACE))('%s has the keys it is promised with', (name, [inputs, results]) => {
    const calculator = calculators.findCalculator(name);
    expect(calculator?.inputs.map((i) => i.key)).toEqual(expect.arrayContaining([...inputs]));
    expect(calculator?.results.map((r) => r.key)).toEqual(expect.arrayContaining([...results]));
  });

  test('every calculator has an example, and each runs as text and as JSON', async () => {
    expect(Object.keys(EXAMPLES).sort()).toEqual(calculators.calculators.map((c) => c.name).sort());
    for (const [name, example] of Object.entries(EXAMPLES)) {
      const text = await calc(`${name} ${example}`);
      expect(text.err).toBe('');
      expect(text.code).toBe(0);
      const json = JSON.parse((await calc(`${name} ${example} --json`)).out);
      expect(Object.keys(json)).toEqual(['name', 'inputs', 'results', 'notices', 'sources']);
      expect(json.name).toBe(name);
      expect(Object.keys(json.results)).toEqual(
        calculators.findCalculator(name)?.results.map((result) => result.key),
      );
      for (const { value, unit } of [...Object.values(json.inputs), ...Object.values(json.results)] as {
        value: unknown;
        unit: unknown;
      }[]) {
        expect(['number', 'string', 'boolean']).toContain(typeof value);
        expect(typeof unit).toBe('string');
      }
      expect(json.sources.length).toBeGreaterThan(0);
    }
  });

  test('trade and SI units say the same', async () => {
    const us = JSON.parse(
      (await calc('air-state temperature=77F relativeHumidity=65% altitude=3280.839895ft --json')).out,
    );
    const si = JSON.parse(
      (await calc('air-state temperature=25C relativeHumidity=0.65 altitude=1000m --json')).out,
    );
    expect(us.inputs.temperature).toEqual({ value: 25, unit: 'C' });
    expect(us.results.dewPoint.value).toBeCloseTo(si.results.dewPoint.value, 9);
    expect(us.results.wetBulb.value).toBeCloseTo(si.results.wetBulb.value, 6);
  });

  test('negative values and a plain resistance are taken', async () => {
    expect((await calc('convert value=-40C to=F --json')).code).toBe(0);
    const ground =
      'ground-evaporation temperature=-2C relativeHumidity=70% groundTemperature=7C openFraction=5% area=110m2';
    const plain = JSON.parse((await calc(`${ground} crustResistance=2350 --json`)).out);
    const typed = JSON.parse((await calc(`${ground} crustResistance=2350s/m --json`)).out);
    expect(plain).toEqual(typed);
    expect(plain.inputs.crustResistance).toEqual({ value: 2350, unit: 's/m' });
  });

  test('where there is no number a word stands, with a notice', async () => {
    const { out } = await calc(
      'mold-weeks temperature=20C relativeHumidity=60% class=resistant index=2 --json',
    );
    const { results, notices } = JSON.parse(out);
    expect(results.weeks).toEqual({ value: 'never', unit: '' });
    expect(notices).toHaveLength(1);
  });
});

describe('text for people', () => {
  test('trade units stand first, SI beside them', async () => {
    const { out } = await calc('air-state temperature=72F relativeHumidity=65%');
    expect(out).toMatch(/^dew point +60 °F \(15\.3 °C\)$/m);
  });

  test('a flag is yes or no, a conversion has no rounding dust', async () => {
    const wet = await calc(
      'surface-condensation temperature=27C relativeHumidity=75% surfaceTemperature=20C',
    );
    expect(wet.out).toMatch(/^water forms on the surface +yes$/m);
    expect((await calc('convert value=50cfm to=L/s')).out).toBe('converted value  23.59737 L/s\n');
  });

  test('notices follow the answer and wrap', async () => {
    const { out } = await calc(`design-load ${EXAMPLES['design-load']}`, 80);
    expect(out).toMatch(/^Note: /m);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });
});

describe('what is wrong', () => {
  test.each([
    ['no-such', 'found "no-such"; expected one of air-state, surface-condensation'],
    ['no-such temperature=72F', 'expected one of air-state'],
    ['air-state temperature=72F', 'relativeHumidity: found nothing; expected relative humidity of the air'],
    ['air-state temp=72F', 'expected one of the inputs temperature, relativeHumidity, altitude'],
    [
      'air-state temperature=72X relativeHumidity=65%',
      '"X" is not a unit of temperature; use one of the units C, F, K',
    ],
    ['air-state temperature=72 relativeHumidity=65%', '"72" has no unit; use one of the units C, F, K'],
    ['air-state temperature=72F relativeHumidity=65', 'write 65% or a fraction from 0 to 1'],
    ['air-state temperature=900F relativeHumidity=65%', 'from -58 °F to 140 °F (-50.0 °C to 60.0 °C)'],
    ['air-state temperature=NaN relativeHumidity=65%', 'does not start with a number'],
    [
      'mold-weeks temperature=20C relativeHumidity=90% class=wet',
      'very-sensitive, sensitive, medium-resistant',
    ],
    ['meter-correction reading=17% species=oak temperature=50F', 'red-oak, white-oak'],
    ['pipe-fall drop=6in run=12', 'it could be 12 ft, 12 in, 12 m or 12 cm'],
    ['pipe-fall drop=6in run', '"run" is not key=value'],
    ['pipe-fall drop=6in =3ft', '"=3ft" is not key=value'],
    ['pipe-fall drop=6in run=9ft drop=7in', 'drop is given twice.'],
    ['convert value=5furlong to=m', '"furlong" is not a known unit'],
    ['convert value=50cfm to=perm', 'cfm'],
    ['air-state --json', 'temperature: found nothing'],
    ['air-state __proto__=1 temperature=72F relativeHumidity=65%', 'found an input "__proto__"'],
  ])('%s: exit 2', async (call, message) => {
    const { code, out, err } = await calc(call);
    expect(err).toContain(message);
    expect(out).toBe('');
    expect(code).toBe(2);
  });

  test('everything that is wrong comes at once', async () => {
    const { err } = await calc('air-state temperature=72X relativeHumidity=165% height=3ft');
    expect(err).toMatch(/^calc air-state: 3 things are wrong\.$/m);
    for (const key of ['temperature', 'relativeHumidity', 'height']) expect(err).toContain(`  ${key}: found`);
  });
});
