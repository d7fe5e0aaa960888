import { describe, expect, test } from 'vitest';
import { command } from './run-command.ts';

/** Results of a calculator in canonical units, asked for as a person types it. */
async function results(call: string): Promise<Record<string, { value: unknown; unit: string }>> {
  const { code, out, err } = await command(['calc', ...call.split(' '), '--json']);
  expect(err).toBe('');
  expect(code).toBe(0);
  return JSON.parse(out).results;
}

interface Row {
  readonly call: string;
  readonly key: string;
  readonly expected: number;
  readonly tolerance: number;
  readonly unit: string;
  /** Where the expected value is printed, and why the tolerance. */
  readonly source: string;
}

const rows: readonly Row[] = [
  // Wood Handbook FPL-GTR-282 (2021) Table 4-2 as quoted; 0.07 % MC for its rounding and that of its temperatures.
  ...(
    [
      ['70F', '30%', 0.062],
      ['70F', '50%', 0.092],
      ['70F', '75%', 0.144],
      ['70F', '85%', 0.179],
      ['30F', '75%', 0.149],
      ['100F', '90%', 0.195],
    ] as const
  ).map(
    ([t, rh, expected]): Row => ({
      call: `wood-equilibrium temperature=${t} relativeHumidity=${rh}`,
      key: 'moistureContent',
      expected,
      tolerance: 0.0007,
      unit: 'fraction',
      source: 'Wood Handbook (2021) Table 4-2, quoted',
    }),
  ),
  {
    call: 'wood-humidity temperature=70F moistureContent=9.2%',
    key: 'relativeHumidity',
    expected: 0.5,
    tolerance: 0.005,
    unit: 'fraction',
    source: 'Wood Handbook (2021) Table 4-2 read backward, quoted; 0.05 % MC is 0.3 % RH there',
  },
  {
    call: 'air-state temperature=25C relativeHumidity=100%',
    key: 'vaporPressure',
    expected: 3169.7,
    tolerance: 0.95,
    unit: 'Pa',
    source:
      'ASHRAE Handbook - Fundamentals (2017) ch. 1 Table 3 at 25 °C, quoted; the equations differ by 0.03 %',
  },
  {
    call: 'air-state temperature=20C relativeHumidity=50%',
    key: 'dewPoint',
    expected: 9.27,
    tolerance: 0.03,
    unit: 'C',
    source: 'Psychrometric tables, 20 °C and 50 %: dew point 9.3 °C, from memory',
  },
  {
    call: 'air-state temperature=80F relativeHumidity=60%',
    key: 'wetBulb',
    expected: (69.6 - 32) / 1.8,
    tolerance: 0.06,
    unit: 'C',
    source: 'AHAM DH-1 test air: 80 °F dry bulb, 69.6 °F wet bulb, as quoted; printed to 0.1 °F',
  },
  {
    call: 'meter-correction reading=16% species=douglas-fir temperature=50F',
    key: 'moistureContent',
    expected: 0.17,
    tolerance: 0.0006,
    unit: 'fraction',
    source: 'Wood Handbook ch. 13, 0.5 % MC per 10 °F below 70 °F, quoted',
  },
  {
    call: 'pipe-fall drop=3-1/8in run=25ft',
    key: 'slope',
    expected: 1 / 96,
    tolerance: 1e-9,
    unit: 'fraction',
    source: 'By hand: 25 ft at 1/8 in per ft drop 3 1/8 in; exact',
  },
  {
    call: 'convert value=50cfm to=L/s',
    key: 'value',
    expected: 23.59737,
    tolerance: 5e-6,
    unit: 'L/s',
    source: 'NIST SP 811 (2008) App. B, 1 ft³/min = 4.719474 E-04 m³/s, from memory',
  },
  {
    call: 'convert value=12ft6-1/2in to=m',
    key: 'value',
    expected: 3.8227,
    tolerance: 1e-9,
    unit: 'm',
    source: 'By hand: 150.5 in of exactly 25.4 mm',
  },
];

describe('answers against printed values', () => {
  test.each(rows)('$call: $key', async ({ call, key, expected, tolerance, unit }) => {
    const result = (await results(call))[key];
    expect(Math.abs((result.value as number) - expected)).toBeLessThanOrEqual(tolerance);
    expect(result.unit).toBe(unit);
  });

  test('condensation begins at the dew point of the air', async () => {
    // 24 °C and 65 % have their dew point at 17.02 °C (computed outside this project with the ASHRAE equations).
    const air = 'surface-condensation temperature=24C relativeHumidity=65%';
    expect((await results(`${air} surfaceTemperature=17.1C`)).condensing).toEqual({ value: false, unit: '' });
    expect((await results(`${air} surfaceTemperature=16.9C`)).condensing).toEqual({ value: true, unit: '' });
  });

  test('a sensitive surface at 25 °C and 90 % reaches index 1 in seven weeks', async () => {
    // Computed outside this project by the closed form of the model; 0.05 week.
    const { weeks } = await results(
      'mold-weeks temperature=25C relativeHumidity=90% class=sensitive index=1',
    );
    expect(Math.abs((weeks.value as number) - 7.21)).toBeLessThanOrEqual(0.05);
  });
});
