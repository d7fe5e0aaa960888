import { describe, expect, test } from 'vitest';
import {
  type Criterion,
  criteria,
  type Evidence,
  type JobFacts,
  judge,
  judgeAll,
  limitText,
  valueText,
} from '../../src/criteria/index.ts';

const byId = (id: string): Criterion => {
  const found = criteria.find((criterion) => criterion.id === id);
  if (!found) throw new Error(id);
  return found;
};
const closed: JobFacts = { spaceType: 'closed' };
const laps = (...inches: number[]): Evidence[] =>
  inches.map((width, index) => ({ id: `lap-${index}`, quantity: 'seamLapWidthM', value: width * 0.0254 }));

describe('limits', () => {
  const codeLap = byId('UNV-03');

  test('at, just inside and just outside', () => {
    // 6 * 0.0254 is 0.15239999999999998 in floating point and still 6 in.
    expect(6 * 0.0254).toBeLessThan(0.1524);
    expect(judge(codeLap, laps(6, 6, 6, 6, 6), closed).verdict).toBe('met');
    expect(judge(codeLap, laps(6.001, 7, 8, 9, 10), closed).verdict).toBe('met');
    expect(judge(codeLap, laps(5.999, 7, 8, 9, 10), closed).verdict).toBe('not-met');
  });

  test('strict comparisons do not take the limit itself', () => {
    const content = (value: number) =>
      ['a', 'b', 'c'].map((id) => ({ id, quantity: 'woodMoistureContent', value }));
    expect(judge(byId('WMC-01'), content(0.1999), {}).verdict).toBe('met');
    expect(judge(byId('WMC-01'), content(0.2), {}).verdict).toBe('not-met');
    const surface = (value: number) => [{ id: 's', quantity: 'surfaceAboveDewPointK', value }];
    expect(judge(byId('surface-above-dew-point'), surface(0), {}).verdict).toBe('not-met');
    expect(judge(byId('surface-above-dew-point'), surface(0.1), {}).verdict).toBe('met');
  });

  test('a range takes both its ends', () => {
    const strip = (inches: number) =>
      ['n', 'e', 's', 'w'].map((id) => ({ id, quantity: 'termiteStripM', value: inches * 0.0254 }));
    const facts: JobFacts = { linerOnWalls: true };
    expect(
      [2.9, 3, 3.5, 4, 4.1].map((inches) => judge(byId('TRM-04b'), strip(inches), facts).verdict),
    ).toEqual(['not-met', 'met', 'met', 'met', 'not-met']);
  });

  test('the worst sample is named with its margin', () => {
    const judged = judge(codeLap, laps(9, 7, 12, 11, 8), closed);
    expect(judged).toMatchObject({ verdict: 'met', value: 7 * 0.0254 });
    expect(judged.margin).toBeCloseTo(0.0254, 9);
    expect(judged.reason).toBe(
      'All 5 samples pass, worst 7 in (177.8 mm); it should be at least 6 in (152 mm).',
    );
    const failing = judge(codeLap, laps(9, 4, 12, 5, 8), closed);
    expect(failing.evidence).toEqual(['lap-1', 'lap-3']);
    expect(failing.reason).toBe(
      '2 of 5 samples fail, worst 4 in (101.6 mm); it should be at least 6 in (152 mm).',
    );
  });
});

describe('doubt', () => {
  const band = byId('WMC-01');
  const wood = (id: string, value: number, uncertainty?: number): Evidence => ({
    id,
    quantity: 'woodMoistureContent',
    value,
    uncertainty,
  });

  test('over the limit is not shown', () => {
    const judged = judge(band, [wood('a', 0.19, 0.02), wood('b', 0.12, 0.02), wood('c', 0.13, 0.02)], {});
    expect(judged).toMatchObject({ verdict: 'not-shown', evidence: ['a'], value: 0.19 });
    expect(judged.reason).toBe(
      'The doubt of 19 % ± 2 % reaches over the limit, less than 20 %; measure it more closely.',
    );
  });

  test('on one side of it decides', () => {
    expect(judge(band, [wood('a', 0.17, 0.02), wood('b', 0.12), wood('c', 0.1, 0.01)], {}).verdict).toBe(
      'met',
    );
    expect(judge(band, [wood('a', 0.23, 0.02)], {}).verdict).toBe('not-met');
  });

  test('that touches the limit is over it only where the limit itself fails', () => {
    expect(judge(band, [wood('a', 0.18, 0.02), wood('b', 0.1), wood('c', 0.11)], {}).verdict).toBe(
      'not-shown',
    );
    const lap: Evidence[] = laps(7, 8, 9, 10, 11).map((sample) => ({ ...sample, uncertainty: 0.0254 }));
    expect(judge(byId('UNV-03'), lap, closed).verdict).toBe('met');
  });

  test('a clear failure outweighs a doubtful sample', () => {
    const judged = judge(band, [wood('a', 0.19, 0.02), wood('b', 0.3, 0.02)], {});
    expect(judged).toMatchObject({ verdict: 'not-met', evidence: ['b'] });
  });
});

describe('samples put together', () => {
  const row = (combine: 'mean' | 'maximum' | 'minimum', comparison: '<=' | '>='): Criterion => ({
    ...byId('DHU-02'),
    comparison,
    sampling: { atLeast: 3, combine },
  });
  const air = (...values: number[]): Evidence[] =>
    values.map((value, index) => ({ id: `log-${index}`, quantity: 'airRelativeHumidityMean7Day', value }));

  test('a mean hides one bad sample and needs its count', () => {
    expect(judge(row('mean', '<='), air(0.5, 0.55, 0.65), closed)).toMatchObject({ verdict: 'met' });
    expect(judge(row('mean', '<='), air(0.5, 0.55, 0.65), closed).value).toBeCloseTo(1.7 / 3, 12);
    expect(judge(row('mean', '<='), air(0.7, 0.8), closed).verdict).toBe('not-shown');
    expect(judge(row('mean', '<='), air(0.7, 0.8, 0.9), closed).verdict).toBe('not-met');
  });

  test('the doubt of a mean does not average out', () => {
    const doubtful = air(0.58, 0.58, 0.58, 0.58).map((sample) => ({ ...sample, uncertainty: 0.03 }));
    expect(judge(row('mean', '<='), doubtful, closed).verdict).toBe('not-shown');
  });

  test('a largest value over its limit fails before the count is full', () => {
    expect(judge(row('maximum', '<='), air(0.7), closed).verdict).toBe('not-met');
    expect(judge(row('maximum', '<='), air(0.5, 0.55), closed).verdict).toBe('not-shown');
    expect(judge(row('maximum', '<='), air(0.5, 0.55, 0.6), closed)).toMatchObject({
      verdict: 'met',
      value: 0.6,
    });
  });

  test('a largest value under a lower limit may still grow', () => {
    expect(judge(row('maximum', '>='), air(0.5), closed).verdict).toBe('not-shown');
    expect(judge(row('maximum', '>='), air(0.5, 0.55, 0.58), closed).verdict).toBe('not-met');
    expect(judge(row('minimum', '>='), air(0.5), closed).verdict).toBe('not-met');
    expect(judge(row('minimum', '>='), air(0.61, 0.7, 0.8), closed)).toMatchObject({
      verdict: 'met',
      value: 0.61,
    });
  });
});

describe('evidence that cannot be judged', () => {
  const wood = byId('WMC-02');
  const fine: Evidence[] = [0.11, 0.12, 0.13].map((value, index) => ({
    id: `pin-${index}`,
    quantity: 'woodMoistureContent',
    value,
  }));

  test.each([
    ['NaN', { value: Number.NaN }, 'evidence bad, value', 'NaN'],
    ['infinity', { value: Number.POSITIVE_INFINITY }, 'evidence bad, value', 'Infinity'],
    ['percent for a fraction', { value: 18 }, 'evidence bad, value', '18'],
    ['an answer for a number', { value: true }, 'evidence bad, value', 'true'],
    ['negative doubt', { value: 0.1, uncertainty: -0.02 }, 'evidence bad, uncertainty', '-0.02'],
    ['doubt that is no number', { value: 0.1, uncertainty: Number.NaN }, 'evidence bad, uncertainty', 'NaN'],
  ])('%s is refused with an issue', (_name, part, path, found) => {
    const bad: Evidence = { id: 'bad', quantity: 'woodMoistureContent', ...part };
    const judged = judge(wood, [bad, ...fine], {});
    expect(judged.verdict).toBe('met');
    expect(judged.evidence).not.toContain('bad');
    expect(judged.issues).toEqual([{ path, found, expected: expect.stringMatching(/./) }]);
    expect(judge(wood, [bad], {}).verdict).toBe('not-shown');
  });

  test('a number for an answer is refused', () => {
    const judged = judge(byId('UNV-04'), [{ id: 'x', quantity: 'seamsSealed', value: 1 }], closed);
    expect(judged.verdict).toBe('not-shown');
    expect(judged.issues).toEqual([
      { path: 'evidence x, value', found: '1', expected: 'true or false for seamsSealed' },
    ]);
  });

  test('one sample given twice counts once', () => {
    expect(judge(wood, [fine[0], fine[0], fine[1]], {}).verdict).toBe('not-shown');
    expect(judge(wood, [fine[0], fine[0], fine[1], fine[2]], {})).toMatchObject({
      verdict: 'met',
      issues: [],
    });
  });

  test('different samples with one id are refused together', () => {
    const judged = judge(wood, [...fine, { ...fine[0], value: 0.4 }], {});
    expect(judged).toMatchObject({ verdict: 'not-shown', evidence: ['pin-1', 'pin-2'] });
    expect(judged.issues[0]).toMatchObject({
      path: 'evidence pin-0, id',
      found: '2 different samples with this id',
    });
  });
});

describe('assumptions', () => {
  test('stand aside where enough was measured', () => {
    const evidence: Evidence[] = [
      ...laps(12, 13, 14, 15, 16),
      { id: 'guess', quantity: 'seamLapWidthM', value: 0.02, assumed: true },
    ];
    expect(judge(byId('UNV-03'), evidence, closed)).toMatchObject({ verdict: 'met', assumed: false });
  });

  test('do not fill up the count', () => {
    const [first, ...rest] = laps(12, 13, 14, 15, 16);
    const judged = judge(byId('UNV-03'), [{ ...first, assumed: true }, ...rest], closed);
    expect(judged).toMatchObject({ verdict: 'not-shown', assumed: true });
    expect(judged.reason).toContain('4 samples of the 5 it takes');
    expect(judged.reason).toContain('Assumed, not measured: 12 in (304.8 mm) [lap-0].');
  });
});

describe('items that each need a sample', () => {
  const facts: JobFacts = { linerPresent: true, piersPresent: true };
  const wrap = (item: string, inches: number): Evidence => ({
    id: `wrap-${item}`,
    quantity: 'pierWrapHeightM',
    value: inches * 0.0254,
    item,
  });
  const items = { pierWrapHeightM: ['p1', 'p2', 'p3'], pierWrapSealed: ['p1', 'p2', 'p3'] };

  test('one pier does not speak for the others', () => {
    const judged = judge(byId('LIN-08a'), [wrap('p2', 8)], facts, items);
    expect(judged.verdict).toBe('not-shown');
    expect(judged.reason).toMatch(/Not looked at yet: p1, p3\.$/);
    expect(judge(byId('LIN-08a'), [wrap('p2', 8)], facts).verdict).toBe('met');
  });

  test('three samples of one pier are not three piers', () => {
    const twice = [wrap('p1', 8), { ...wrap('p1', 9), id: 'b' }, { ...wrap('p1', 7), id: 'c' }];
    expect(judge(byId('LIN-08a'), twice, facts, items).verdict).toBe('not-shown');
    const elsewhere: Evidence[] = [{ id: 'nowhere', quantity: 'pierWrapHeightM', value: 0.3 }];
    expect(judge(byId('LIN-08a'), elsewhere, facts, items).verdict).toBe('not-shown');
  });

  test('all covered is met, one failing is not met whatever is unseen', () => {
    const covered = ['p1', 'p2', 'p3'].map((item, index) => wrap(item, 7 + index));
    expect(judge(byId('LIN-08a'), covered, facts, items).verdict).toBe('met');
    expect(judge(byId('LIN-08a'), [wrap('p3', 2)], facts, items).verdict).toBe('not-met');
  });

  test('an assumed value covers no item', () => {
    const evidence = [wrap('p1', 8), wrap('p2', 9), { ...wrap('p3', 10), assumed: true }];
    expect(judge(byId('LIN-08a'), evidence, facts, items)).toMatchObject({
      verdict: 'not-shown',
      assumed: true,
    });
  });

  test('an answer for the whole speaks for all, one for an item for that item', () => {
    const answer = (item?: string): Evidence => ({ id: 'a', quantity: 'pierWrapSealed', value: true, item });
    expect(judge(byId('LIN-08b'), [answer()], facts, items).verdict).toBe('met');
    expect(judge(byId('LIN-08b'), [answer('p1')], facts, items).verdict).toBe('not-shown');
  });

  test('many unseen items are counted', () => {
    const many = { pierWrapHeightM: Array.from({ length: 12 }, (_, index) => `p${index + 10}`) };
    const judged = judge(byId('LIN-08a'), [wrap('p10', 8)], facts, many);
    expect(judged.reason).toMatch(/Not looked at yet: p11, p12, p13, p14, p15 and 6 more\.$/);
  });
});

describe('facts', () => {
  test('a fact with a value nobody allows is unknown, and said so', () => {
    const facts = { spaceType: 'sealed' } as unknown as JobFacts;
    const judged = judge(byId('UNV-03'), laps(7, 8, 9, 10, 11), facts);
    expect(judged).toMatchObject({ verdict: 'met', applies: 'unknown' });
    expect(judged.issues).toEqual([
      { path: 'fact spaceType', found: 'sealed', expected: 'one of vented, closed' },
    ]);
  });

  test('known facts can decide beside unknown ones', () => {
    expect(judge(byId('VNT-01'), [], { spaceType: 'vented', crossVentilated: false }).applies).toBe(true);
    expect(judge(byId('VNT-01'), [], { spaceType: 'vented', crossVentilated: true }).applies).toBe('unknown');
    expect(judge(byId('VNT-01'), [], { spaceType: 'closed' }).applies).toBe(false);
  });
});

describe('faulty criteria', () => {
  test.each([
    [{ quantity: 'seamLapWidthInches' }, /seamLapWidthInches.*not a registered quantity/],
    [{ limit: undefined }, /UNV-03.*one finite limit/],
    [{ limit: { value: [1, 2], us: '', si: '' } }, /UNV-03.*one finite limit/],
    [{ comparison: 'within' }, /UNV-03.*pair of limits/],
    [{ comparison: 'within', limit: { value: [2, 1], us: '', si: '' } }, /low first/],
  ])('%j throws', (part, message) => {
    const faulty = { ...byId('UNV-03'), ...part } as Criterion;
    expect(() => judge(faulty, laps(7, 7, 7, 7, 7), closed)).toThrow(message);
  });
});

describe('words', () => {
  test('limits', () => {
    expect(limitText(byId('UNV-03'))).toEqual({ us: 'at least 6 in', si: 'at least 152 mm' });
    expect(limitText(byId('WOD-08'))).toEqual({ us: 'more than 8 in', si: 'more than 203 mm' });
    expect(limitText(byId('RAD-01a'))).toEqual({ us: 'less than 4 pCi/L', si: 'less than 148 Bq/m³' });
    expect(limitText(byId('DHU-10'))).toEqual({ us: 'at most 3 per h', si: 'at most 3 per h' });
    expect(limitText(byId('TRM-04b'))).toEqual({ us: 'within 3-4 in', si: 'within 76-102 mm' });
    expect(limitText(byId('UNV-01'))).toEqual({ us: 'exactly 0 %', si: 'exactly 0 %' });
    expect(limitText(byId('DEB-01'))).toEqual({ us: 'no', si: 'no' });
  });

  test.each([
    ['UNV-03', 0.152, '5.984 in (152 mm)'],
    ['APP-02', 7.3152, '24 ft (7.315 m)'],
    ['MAT-05a', 0.0001016, '4 mil (0.1016 mm)'],
    ['UNV-02', 11.4427, '0.2 perm (11.44 ng/(s·m²·Pa))'],
    ['RAD-01a', 185, '5 pCi/L (185 Bq/m³)'],
    ['MLD-04a', 1.8580608, '20 ft² (1.858 m²)'],
    ['VNT-01', 0.004, '1/250'],
    ['DHU-09', 0.12, '12 points'],
    ['SIT-01', -0.02, '-2 %'],
    ['CON-01', 0.005, '5 mm/m'],
    ['FLD-02a', 1, '1'],
    ['EXS-01', -0.4, '-0.4 Pa'],
    ['DPR-10a', 1.2, '1.2'],
  ])('%s shows %d as %s', (id, value, text) => {
    expect(valueText(value, byId(id))).toBe(text);
  });
});

describe('many criteria', () => {
  test('are judged like one by one', () => {
    const evidence = [...laps(7, 8, 9, 10, 11), { id: 's', quantity: 'seamsSealed', value: true }];
    expect(judgeAll(criteria, evidence, closed)).toEqual(
      criteria.map((criterion) => judge(criterion, evidence, closed)),
    );
  });

  test('take less than 5 ms with 500 samples', () => {
    const keys = [...new Set(criteria.map(({ quantity }) => quantity))];
    const evidence: Evidence[] = Array.from({ length: 500 }, (_, index) => {
      const criterion = criteria.find(({ quantity }) => quantity === keys[index % keys.length]) as Criterion;
      const value =
        criterion.unit === 'yes-no' ? index % 3 > 0 : ([criterion.limit?.value].flat()[0] as number);
      return { id: `sample-${index}`, quantity: criterion.quantity, value };
    });
    let best = Number.POSITIVE_INFINITY;
    for (let run = 0; run < 50; run++) {
      const start = performance.now();
      judgeAll(criteria, evidence, closed);
      best = Math.min(best, performance.now() - start);
    }
    expect(best).toBeLessThan(5);
  });
});
