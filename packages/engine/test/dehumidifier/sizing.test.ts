import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeAlternatives } from '../../src/dehumidifier/code-alternatives.ts';
import { designLoad } from '../../src/dehumidifier/design-load.ts';
import { type ListedMachine, sizeDehumidifier } from '../../src/dehumidifier/size.ts';
import { known } from '../../src/moisture/band.ts';
import { convert } from '../../src/units/convert.ts';

const codes = (notices: readonly { code: string }[]) => notices.map(({ code }) => code);

// Invented for the test.
const small: ListedMachine = {
  id: 's',
  name: 'Small',
  ratedKgPerDay: 26,
  ratingPoint: '80F-60',
  litersPerKWh: 2.1,
  priceCents: 90_000,
};
const middle: ListedMachine = {
  id: 'm',
  name: 'Middle',
  ratedKgPerDay: 22,
  ratingPoint: '65F-60',
  litersPerKWh: 1.9,
  priceCents: 130_000,
};
const large: ListedMachine = { id: 'l', name: 'Large', ratedKgPerDay: 57, ratingPoint: '80F-60' };
const need = {
  steadyKgPerDay: 10,
  withPullDownKgPerDay: 13.5,
  temperatureC: 21.1,
  relativeHumidity: 0.5,
  runMax: 0.75,
};

describe('choice of a machine', () => {
  it('compares labels at one test air: 22 at 65 °F is larger than 26 at 80 °F', () => {
    const { options } = sizeDehumidifier(need, [small, middle]);
    expect(options[0]!.labels['80F-60']).toBeCloseTo(26, 12);
    // 22/0.659, the printed ratio with half of its last digit.
    expect(Math.abs(options[1]!.labels['80F-60'] - 22 / 0.659)).toBeLessThan(0.03);
  });

  it('takes the smallest that holds the load, and says when drying down needs more', () => {
    // 10/(0.75 · 0.556) = 24.0 at 80 °F; with pull-down 32.4.
    const sizing = sizeDehumidifier(need, [large, middle, small]);
    expect(sizing.forSteady!.machine.id).toBe('s');
    expect(sizing.forPullDown!.machine.id).toBe('m');
    expect(codes(sizing.notices)).toEqual(['rent-for-pull-down']);
    expect(sizing.options.map(({ machine }) => machine.id)).toEqual(['l', 'm', 's']);
  });

  it('says when none holds, and how many it would take', () => {
    const sizing = sizeDehumidifier({ ...need, steadyKgPerDay: 25, withPullDownKgPerDay: 25 }, [small]);
    expect(sizing.forSteady).toBeUndefined();
    expect(codes(sizing.notices)).toEqual(['none-holds']);
    // 25/(0.75 · 26 · 0.556) = 2.3.
    expect(sizing.options[0]!.unitsForSteady).toBe(3);
    expect(sizing.options[0]!.steadyRunFraction).toBe(1);
  });

  it('asks for a list when there is none', () => {
    expect(codes(sizeDehumidifier(need, []).notices)).toEqual(['no-machines']);
  });

  it('of equal machines the cheaper one', () => {
    const twin = { ...small, id: 't', priceCents: 80_000 };
    expect(sizeDehumidifier(need, [small, twin]).forSteady!.machine.id).toBe('t');
    expect(sizeDehumidifier(need, [twin, small]).forSteady!.machine.id).toBe('t');
  });

  it('energy and heat of the steady load, by hand', () => {
    // Surface at 21.1 °C/50 %, computed from the printed coefficients: 0.55609 of capacity, 0.64603 of efficiency.
    const { energyKWhPerDay, meanHeatW, runningHeatW } = sizeDehumidifier(need, [small]).options[0]!;
    const here = 26 * 0.55609;
    const ratio = 10 / here;
    const running = ((26 / 24 / 2.1) * 1000 * 0.55609) / 0.64603;
    const share = ratio / (0.9 + 0.1 * ratio);
    // Five digits of the surface leave 0.002 %.
    expect(energyKWhPerDay! / ((running * share * 24) / 1000)).toBeCloseTo(1, 3);
    expect(meanHeatW! / (running * share + (10 * 2.45e6) / 86_400)).toBeCloseTo(1, 3);
    expect(runningHeatW! / (running + (here * 2.45e6) / 86_400)).toBeCloseTo(1, 3);
  });

  it('gives no energy without an efficiency', () => {
    expect(sizeDehumidifier(need, [large]).options[0]!.energyKWhPerDay).toBeUndefined();
  });

  it('counts frost only where the machine is known, and says so where it is not', () => {
    const cold = { ...need, temperatureC: 12, steadyKgPerDay: 3, withPullDownKgPerDay: 3 };
    const list = [
      large,
      { ...large, id: 'h', cold: 'household' },
      { ...large, id: 'c', cold: 'low-temperature' },
    ];
    const [unknown, household, low] = sizeDehumidifier(cold, list as ListedMachine[]).options;
    expect(codes(unknown!.notices)).toEqual(['extrapolated', 'cold-limit-unknown']);
    expect(household!.capacityHereKgPerDay).toBe(0);
    expect(household!.holdsSteady).toBe(false);
    expect(household!.unitsForSteady).toBeUndefined();
    expect(low!.capacityHereKgPerDay).toBeCloseTo(0.825 * unknown!.capacityHereKgPerDay, 12);
  });

  it('warns of short cycles where only little air stores the water', () => {
    const at = (bandKg: number) =>
      codes(
        sizeDehumidifier({ ...need, steadyKgPerDay: 7, withPullDownKgPerDay: 7, bandKg }, [small]).options[0]!
          .notices,
      );
    expect(at(0.02)).toContain('short-cycles');
    expect(at(2)).not.toContain('short-cycles');
  });

  it('never chooses a machine that does not hold, nor passes over a smaller one that does', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 90, noNaN: true }), { minLength: 1, maxLength: 8 }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (ratings, load) => {
          const list = ratings.map((ratedKgPerDay, i) => ({
            id: `${i}`,
            name: `Machine ${i}`,
            ratedKgPerDay,
            ratingPoint: '73F-60' as const,
          }));
          const { options, forSteady } = sizeDehumidifier(
            { ...need, steadyKgPerDay: load, withPullDownKgPerDay: load + 2 },
            list,
          );
          const holding = options.filter(({ capacityHereKgPerDay }) => load <= 0.75 * capacityHereKgPerDay);
          expect(forSteady === undefined).toBe(holding.length === 0);
          if (forSteady) {
            const least = Math.min(...holding.map(({ machine }) => machine.ratedKgPerDay));
            // Two ratings that differ by rounding alone convert to one label.
            expect(forSteady.machine.ratedKgPerDay).toBeCloseTo(least, 9);
          }
        },
      ),
    );
  });

  it('refuses what makes no sense, by name', () => {
    expect(() => sizeDehumidifier({ ...need, runMax: 1.1 }, [small])).toThrow(/share of time running/);
    expect(() => sizeDehumidifier({ ...need, withPullDownKgPerDay: 9 }, [small])).toThrow(
      /load with pull-down/,
    );
    expect(() => sizeDehumidifier(need, [{ ...small, ratedKgPerDay: -2 }])).toThrow(/capacity of "Small"/);
  });
});

describe('design load', () => {
  const dryDay = {
    airTemperatureC: known(20),
    pressurePa: 101_325,
    targetRelativeHumidity: 0.55,
    outsideAir: { key: 'o', title: 'Outdoors', flowM3PerS: known(0.01), humidityRatio: known(0.004) },
  };

  it('is 0, not negative, where the air dries by itself', () => {
    const load = designLoad({ ...dryDay, pullDownKgPerDay: known(2.5) });
    expect(load.steadyKgPerDay).toBe(0);
    expect(load.withPullDownKgPerDay).toBe(2.5);
    expect(codes(load.notices)).toContain('no-machine-needed');
    expect(codes(load.notices)).not.toContain('source-not-found');
  });

  it('gives no label where no machine of the surface removes water', () => {
    const load = designLoad({ ...dryDay, airTemperatureC: known(2), targetRelativeHumidity: 0.4 });
    expect(load.labels).toEqual([]);
    expect(codes(load.notices)).toEqual(expect.arrayContaining(['extrapolated', 'no-capacity']));
  });
});

describe('options of the code (IRC R408.3: flows seen in quotation, 70 pints from memory)', () => {
  const comparison = {
    floorAreaM2: convert(1000, 'ft2', 'm2'),
    temperatureC: 21.1,
    relativeHumidity: 0.55,
    humidityRatio: 0.00858,
    pressurePa: 101_325,
    loadKgPerDay: 20,
    houseAir: { humidityRatio: 0.0105 },
    supplyAir: { humidityRatio: 0.0075, share: 0.4 },
  };
  const [exhaust, supply, plenum, dehumidifier] = codeAlternatives(comparison);

  it('20 cfm per 1000 ft², 0.10 L/(s m²)', () => {
    expect(convert(exhaust!.flowM3PerS!, 'm3/s', 'cfm')).toBeCloseTo(20, 9);
    expect(Math.abs((1000 * supply!.flowM3PerS!) / comparison.floorAreaM2 - 0.1)).toBeLessThanOrEqual(0.005);
  });

  it('33 L/day per 93 m², 0.36 L/(day m²), 73 lb/day', () => {
    expect(Math.abs(dehumidifier!.capacityKgPerDay! - 33)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(dehumidifier!.capacityKgPerDay! / comparison.floorAreaM2 - 0.36)).toBeLessThanOrEqual(
      0.005,
    );
    expect(Math.abs(convert(dehumidifier!.capacityKgPerDay!, 'kg/day', 'lb/day') - 73)).toBeLessThanOrEqual(
      0.5,
    );
  });

  it('moister house air wets, drier supply air dries for the time it flows', () => {
    expect(exhaust!.removesKgPerDay!).toBeLessThan(0);
    expect(exhaust!.coversLoad).toBe(false);
    expect(codes(exhaust!.warnings)).toContain('air-wets');
    // 20 cfm = 0.0094389 m³/s.
    expect(supply!.removesKgPerDay!).toBeCloseTo(86_400 * 1.2 * 0.0094389 * 0.4 * 0.00108, 3);
    expect(codes(supply!.warnings)).not.toContain('air-wets');
  });

  it('70 pints by area may fall short of a load by leaks', () => {
    // 33.1 · 0.667 = 22.1 kg/day at 21.1 °C/55 %.
    expect(dehumidifier!.coversLoad).toBe(true);
    const leaky = codeAlternatives({ ...comparison, loadKgPerDay: 25 })[3]!;
    expect(leaky.coversLoad).toBe(false);
    expect(Math.abs(leaky.removesKgPerDay! - 22.1)).toBeLessThanOrEqual(0.05);
  });

  it('each option carries its warnings and asks to be named', () => {
    expect(codes(exhaust!.warnings)).toEqual(
      expect.arrayContaining([
        'path-from-house',
        'wall-insulation',
        'combustion-and-soil-gas',
        'older-ratio',
      ]),
    );
    expect(codes(supply!.warnings)).toEqual(
      expect.arrayContaining(['return-path', 'wall-insulation', 'runs-with-the-system']),
    );
    expect(codes(plenum!.warnings)).toContain('existing-structures-only');
    expect(codes(dehumidifier!.warnings)).toEqual(
      expect.arrayContaining(['no-test-condition', 'crawl-is-cooler-than-the-test', 'area-is-not-load']),
    );
    for (const option of [exhaust, supply, plenum, dehumidifier]) {
      expect(codes(option!.warnings)).toContain('name-the-option');
    }
  });

  it('says nothing of water where the air is not known', () => {
    const [unknown] = codeAlternatives({ ...comparison, houseAir: undefined });
    expect(unknown!.removesKgPerDay).toBeUndefined();
    expect(unknown!.coversLoad).toBeUndefined();
  });
});
