import { describe, expect, test } from 'vitest';
import { runCalculator } from '../../src/calculators/index.ts';
import { dewPointC, vaporPressureFromHumidityRatioPa } from '../../src/psychrometrics/index.ts';

/** Results of a run by key; throws with the issues when there are any. */
function results(name: string, inputs: Record<string, string | number>) {
  const run = runCalculator(name, inputs);
  if (!run.ok) throw new Error(JSON.stringify(run.issues));
  return run.answer.results;
}

function near(actual: unknown, expected: number, tolerance: number): void {
  expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(
    tolerance,
  );
}

describe('air-state', () => {
  // Computed with psychrolib 1.1.1 and a separate program; tolerances 0.01 %, dew point 0.001 K, wet bulb 0.005 K.
  test('70 °F and 60 % at sea level', () => {
    const answer = results('air-state', { temperature: '70F', relativeHumidity: '60%' });
    near(answer.vaporPressure!.value, 1502.82, 0.15);
    near(answer.humidityRatio!.value, 0.0093634, 9.4e-7);
    near(answer.dewPoint!.value, 13.051, 0.001);
    near(answer.wetBulb!.value, 16.105, 0.005);
    near(answer.enthalpy!.value, 45.023, 0.0045);
    near(answer.specificVolume!.value, 0.84616, 8.5e-5);
  });

  test('20 °C and 50 % at 1600 m', () => {
    const answer = results('air-state', { temperature: '20 C', relativeHumidity: 0.5, altitude: '1600 m' });
    near(answer.humidityRatio!.value, 0.0088314, 8.8e-7);
    near(answer.wetBulb!.value, 13.316, 0.005);
    near(answer.specificVolume!.value, 1.02176, 1.1e-4);
  });
});

describe('surface-condensation', () => {
  // Computed outside this project with the ASHRAE saturation equations; 0.01 K and 0.1 % RH.
  test.each([
    {
      temperature: '27C',
      relativeHumidity: '75%',
      surfaceTemperature: '20C',
      dew: 22.19,
      rhs: 1.144,
      condensing: true,
    },
    {
      temperature: '24C',
      relativeHumidity: '65%',
      surfaceTemperature: '19C',
      dew: 17.019,
      rhs: 0.883,
      condensing: false,
    },
  ])('$temperature, $relativeHumidity at $surfaceTemperature', ({ dew, rhs, condensing, ...inputs }) => {
    const answer = results('surface-condensation', inputs);
    near(answer.dewPoint!.value, dew, 0.01);
    near(answer.surfaceRelativeHumidity!.value, rhs, 0.001);
    expect(answer.condensing).toEqual({ value: condensing, unit: '' });
  });
});

describe('pipe-fall', () => {
  // Computed: 1/8 in per ft is 1.0417 %, 1/4 in per ft is 2.0833 %; 35 ft at 1/8 in per ft drop 4.375 in.
  test.each([
    ['1/8"', '1ft', 0.010417],
    ['1/4in', '1 ft', 0.020833],
    ['4.375 in', `35'`, 0.010417],
  ])('%s over %s', (drop, run, expected) => {
    near(results('pipe-fall', { drop, run }).slope!.value, expected, 5e-7);
  });
});

describe('convert', () => {
  // NIST SP 811 factors, from memory.
  test.each([
    ['50 cfm', 'L/s', 23.59737, 'L/s'],
    ['1 perm', 'ng/(s m2 Pa)', 57.2135, 'ng/(s m2 Pa)'],
    ['72F', 'C', 22.22222, 'C'],
    [`12' 6"`, 'm', 3.81, 'm'],
    ['6-1/2in', 'mm', 165.1, 'mm'],
    ['100 sq ft', 'M²', 9.290304, 'm2'],
    ['4 pCi/L', 'bq/m3', 148, 'Bq/m3'],
  ])('%s to %s', (value, to, expected, unit) => {
    const answer = results('convert', { value, to });
    near(answer.value!.value, expected, 6e-6 * expected);
    expect(answer.value!.unit).toBe(unit);
  });
});

describe('wood-equilibrium and wood-humidity', () => {
  // Wood Handbook (2021) Table 4-2 as quoted, 0.07 % MC for its rounding.
  test.each([
    ['21.1C', '50%', 0.092],
    ['21.1C', '75%', 0.144],
    ['37.8C', '90%', 0.195],
  ])('%s, %s', (temperature, relativeHumidity, expected) => {
    near(
      results('wood-equilibrium', { temperature, relativeHumidity }).moistureContent!.value,
      expected,
      0.0007,
    );
  });

  // Computed outside this project by bisection of the Handbook equation; 0.1 % RH.
  test.each([
    ['20C', '15%', 0.768],
    ['5C', '19%', 0.862],
  ])('%s, %s', (temperature, moistureContent, expected) => {
    near(results('wood-humidity', { temperature, moistureContent }).relativeHumidity!.value, expected, 0.001);
  });
});

describe('meter-correction', () => {
  // Wood Handbook ch. 13 as quoted, 0.5 % MC per 10 °F from 70 °F; a computed table prints these to 0.1 % MC.
  test.each([
    ['16%', '0C', 0.179],
    ['16%', '10C', 0.17],
    ['18%', '4.4C', 0.195],
    ['12%', '5C', 0.135],
  ])('%s at %s in Douglas-fir', (reading, temperature, expected) => {
    const answer = results('meter-correction', { reading, temperature, species: 'douglas-fir' });
    near(answer.moistureContent!.value, expected, 0.0006);
  });
});

describe('mold-weeks', () => {
  // Computed outside this project by the closed form; 0.03 week or 0.3 %.
  test.each([
    ['20C', '97%', 'very-sensitive', 3, 2.97, 5.504],
    ['25C', '90%', 'sensitive', 1, 7.21, 3.05],
    ['25C', '95%', 'sensitive', 3, 13.67, 4.237],
    ['25C', '97%', 'medium-resistant', 3, 66.59, 3.04],
  ])('%s, %s, %s to %d', (temperature, relativeHumidity, moldClass, index, weeks, ceiling) => {
    const answer = results('mold-weeks', { temperature, relativeHumidity, class: moldClass, index });
    near(answer.weeks!.value, weeks, Math.max(0.03, 0.003 * weeks));
    near(answer.maximumIndex!.value, ceiling, 0.01);
    expect(answer.weeks!.unit).toBe('week');
  });

  test('20 °C and 85 % never bring a very sensitive surface to 3', () => {
    const answer = results('mold-weeks', {
      temperature: '20C',
      relativeHumidity: '85%',
      class: 'very-sensitive',
    });
    expect(answer.weeks).toEqual({ value: 'never', unit: '' });
    near(answer.maximumIndex!.value, 2.616, 0.01);
  });
});

describe('ground-evaporation', () => {
  // Computed outside this project by the same equation, g/(m²·day), printed without decimals.
  test.each([
    ['12C', '70%', 0, 553],
    ['15C', '75%', 500, 277],
    ['20C', '80%', 1000, 199],
    ['20C', '55%', 2350, 236],
  ])('%s, %s, %d s/m', (temperature, relativeHumidity, crustResistance, expected) => {
    const answer = results('ground-evaporation', {
      temperature,
      relativeHumidity,
      groundTemperature: temperature,
      crustResistance,
      area: '100 m2',
    });
    near((answer.waterPerDay!.value as number) * 10, expected, 0.5);
  });

  // Computed outside this project: soil 16 °C, air 20 °C and 55 %, 120 m², 1000 s/m, 6 mil sheet; kg/day as printed.
  test.each([
    ['0%', 0.02, 0.005],
    ['0.5%', 0.14, 0.025],
    ['5%', 1.4, 0.05],
    ['20%', 5.7, 0.05],
    ['100%', 28, 0.5],
  ])('%s open', (openFraction, expected, tolerance) => {
    const answer = results('ground-evaporation', {
      temperature: '20C',
      relativeHumidity: '55%',
      groundTemperature: '16C',
      openFraction,
      area: '120 m2',
    });
    near(answer.waterPerDay!.value, expected, tolerance);
  });
});

describe('design-load', () => {
  /**
   * Computed outside this project: 120 m² by 0.8 m at 70 °F/50 % (7.78 g/kg), outdoor air of 19 g/kg at 0.30 ach, 1 % open ground of
   * 1000 s/m at the same temperature, 3.6 kg/day of drying wood; infiltration 9.3, ground 0.6, sum 13.5 kg/day, sheet left out.
   */
  test('load by parts', () => {
    const answer = results('design-load', {
      temperature: '70F',
      relativeHumidity: '50%',
      outdoorDewPoint: dewPointC(vaporPressureFromHumidityRatioPa(0.019, 101_325)),
      area: '120 m2',
      height: '80 cm',
      airChanges: 0.3,
      groundTemperature: '70F',
      sheetPermeance: 0,
      otherWater: '3.6 kg/day',
    });
    near(answer.fromOutdoorAir!.value, 9.3, 0.05);
    near(answer.fromGround!.value, 0.6, 0.05);
    near(answer.waterPerDay!.value, 13.5, 0.05);
  });

  // Computed outside this project from the generic surface for 13.5 kg/day and a machine that never rests, to 1 L/day.
  test.each([
    ['70F', '50%', 24.3, 0.1],
    ['65F', '50%', 30, 0.5],
    ['60F', '50%', 39, 0.5],
    ['70F', '55%', 20, 0.5],
  ])('rated capacity at 80 °F/60 % for %s, %s', (temperature, relativeHumidity, expected, tolerance) => {
    const answer = results('design-load', {
      temperature,
      relativeHumidity,
      outdoorDewPoint: '60F',
      area: '100 m2',
      height: '3ft',
      airChanges: 0,
      groundTemperature: '60F',
      openFraction: 0,
      sheetPermeance: 0,
      otherWater: 13.5,
      runFraction: 1,
    });
    expect(answer.waterPerDay!.value).toBe(13.5);
    near(answer.capacityAt80F!.value, expected, tolerance);
    // Labels at 65 °F read 0.659 of those at 80 °F: computed from the same surface.
    near((answer.capacityAt65F!.value as number) / (answer.capacityAt80F!.value as number), 0.659, 0.0005);
  });
});
