import { describe, expect, test } from 'vitest';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { squareAxisDeg } from '../../src/plan/adjust-courses.ts';
import { blunderHints } from '../../src/plan/blunder-hints.ts';
import { closureVerdict, traverseClosure } from '../../src/plan/closure.ts';
import { azimuthsFromTurns, courseOf, type TraverseLeg, turnMisclosureDeg } from '../../src/plan/courses.ts';
import { solveTraverse } from '../../src/plan/traverse.ts';

/** An ell: east 11, north 5, west 4, north 3, west 7, south 8 m; closes. */
const LENGTHS = [11, 5, 4, 3, 7, 8];
const TURNS = [-90, -90, 90, -90, -90];

const walk = (lengths: readonly number[], turns: readonly number[], first = 90): TraverseLeg[] => {
  const azimuths = azimuthsFromTurns(first, turns);
  return lengths.map((lengthM, i) => ({ lengthM, azimuthDeg: azimuths[i]! }));
};
const changed = (values: readonly number[], index: number, by: number): number[] =>
  values.map((value, i) => (i === index ? value + by : value));

describe('azimuths from turns', () => {
  test('right turns add, one leg more than turns', () => {
    expect(azimuthsFromTurns(90, TURNS)).toEqual([90, 0, 270, 0, 270, 180]);
    expect(azimuthsFromTurns(350, [45, 90])).toEqual([350, 35, 125]);
    expect(azimuthsFromTurns(12, [])).toEqual([12]);
  });

  test('a turn that is no number is refused, naming the leg', () => {
    expect(() => azimuthsFromTurns(90, [90, Number.NaN])).toThrow('the azimuth of leg 2 must be a number');
  });

  test('all turns of a round miss a full turn by', () => {
    expect(turnMisclosureDeg([-90, -90, -90, 90, -90, -90])).toBe(0);
    expect(turnMisclosureDeg([90, 92, 90, 91])).toBe(3);
    expect(turnMisclosureDeg([-90, -88, -90, -91])).toBe(-1);
  });
});

describe('closure', () => {
  test('a round that closes has no precision to speak of', () => {
    const closure = traverseClosure(walk(LENGTHS, TURNS).map(courseOf));
    expect(closure).toMatchObject({
      perimeterM: 38,
      linearM: 0,
      azimuthDeg: null,
      precisionDenominator: null,
    });
    expect(closureVerdict(closure)).toBe('good');
    expect(traverseClosure([]).precisionDenominator).toBeNull();
  });

  test('direction of the closing error is where the walk ended', () => {
    const closure = traverseClosure(walk(changed(LENGTHS, 0, 0.3), TURNS).map(courseOf));
    expect(closure.linearM).toBeCloseTo(0.3, 12);
    expect(closure.azimuthDeg).toBeCloseTo(90, 9);
  });

  test.each([
    [500, 'good'],
    [499.99, 'doubtful'],
    [200, 'doubtful'],
    [199.99, 'poor'],
  ])('1:%d is %s', (precisionDenominator, verdict) => {
    expect(closureVerdict({ precisionDenominator })).toBe(verdict);
  });

  test('limits can be set, but not the wrong way round', () => {
    const limits = { acceptDenominator: 1000, warnDenominator: 300 };
    expect(closureVerdict({ precisionDenominator: 999 }, limits)).toBe('doubtful');
    expect(closureVerdict({ precisionDenominator: 299 }, limits)).toBe('poor');
    const wrong = { acceptDenominator: 200, warnDenominator: 500 };
    expect(() => closureVerdict({ precisionDenominator: 900 }, wrong)).toThrow(EngineError);
  });
});

describe('hints at blunders', () => {
  test('a wall read 0.30 m too long: it and the walls parallel to it are named', () => {
    const hints = blunderHints(walk(changed(LENGTHS, 2, 0.3), TURNS), 'turned');
    const lengths = hints.filter((hint) => hint.kind === 'length');
    expect(lengths.map((hint) => hint.legIndex)).toEqual([0, 2, 4]);
    expect(lengths[0]!.changeM).toBeCloseTo(0.3, 12);
    expect(lengths[1]!.changeM).toBeCloseTo(-0.3, 12);
    expect(lengths[2]!.changeM).toBeCloseTo(-0.3, 12);
    for (const hint of lengths) expect(hint.remainingM).toBeLessThan(1e-12);
  });

  test('a corner turned wrongly takes all later walls with it and is found', () => {
    const hints = blunderHints(walk(LENGTHS, changed(TURNS, 2, 7)), 'turned');
    expect(hints[0]).toMatchObject({ kind: 'turn', legIndex: 3, changeM: null });
    expect(hints[0]!.changeDeg).toBeCloseTo(-7, 9);
  });

  test('a left turn written down as a right turn is found', () => {
    const hints = blunderHints(walk(LENGTHS, changed(TURNS, 0, 180)), 'turned');
    expect(hints).toContainEqual(expect.objectContaining({ kind: 'turn', legIndex: 1 }));
    expect(Math.abs(hints.find((hint) => hint.legIndex === 1)!.changeDeg!)).toBeCloseTo(180, 9);
  });

  test('one wrong compass bearing is found', () => {
    const legs = walk(LENGTHS, TURNS).map((leg, i) =>
      i === 3 ? { ...leg, azimuthDeg: leg.azimuthDeg + 12 } : leg,
    );
    const hints = blunderHints(legs, 'compass');
    expect(hints[0]).toMatchObject({ kind: 'direction', legIndex: 3 });
    expect(hints[0]!.changeDeg).toBeCloseTo(-12, 9);
  });

  test('no hints for a round that closes well, nor for two mistakes at odds', () => {
    expect(blunderHints(walk(changed(LENGTHS, 2, 0.05), TURNS), 'turned')).toEqual([]);
    const two = changed(changed(LENGTHS, 2, 0.9), 3, -0.7);
    expect(blunderHints(walk(two, TURNS), 'turned').filter((hint) => hint.kind === 'length')).toEqual([]);
  });
});

describe('solving a traverse', () => {
  test('1:293 is doubtful: a notice, hints, and the corners all the same', () => {
    const result = solveTraverse({ legs: walk(changed(LENGTHS, 4, 0.13), TURNS) });
    expect(result.verdict).toBe('doubtful');
    expect(result.issues).toEqual([]);
    expect(result.notices.map((notice) => notice.code)).toEqual([
      'closing-error',
      ...result.hints.map(() => 'possible-blunder'),
    ]);
    expect(result.notices[0]!.message).toBe(
      'The taped walls miss their start by 0.130 m in 38.13 m (1:293); 1:500 or better is wanted.',
    );
    expect(result.corners).toHaveLength(6);
  });

  test('a badly closing one is returned with an issue and hints', () => {
    const legs = walk(changed(LENGTHS, 2, -1), TURNS).map((leg, i) => ({ ...leg, id: `w${i}` }));
    const result = solveTraverse({ legs });
    expect(result.verdict).toBe('poor');
    expect(result.issues).toEqual([
      {
        code: 'does-not-close',
        path: 'legs',
        found: 'a closing error of 1.000 m in 37.00 m (1:37)',
        expected: 'at most 1:200, better 1:500; tape the doubtful walls again',
      },
    ]);
    expect(result.notices.map((notice) => notice.message)).toContain(
      'Look at wall 3 (w2) first: 1.000 m longer it would leave a closing error of 0.000 m. A hint, not a finding.',
    );
    expect(result.corners).toHaveLength(6);
  });

  test('too few legs and legs without length: all issues, no corners', () => {
    const result = solveTraverse({
      legs: [
        { lengthM: 0, azimuthDeg: 90 },
        { lengthM: -2, azimuthDeg: 200 },
      ],
    });
    expect(result.issues.map((issue) => [issue.code, issue.path])).toEqual([
      ['too-few-corners', 'legs'],
      ['bad-length', 'legs[0].lengthM'],
      ['bad-length', 'legs[1].lengthM'],
    ]);
    expect(result).toMatchObject({ corners: [], areaM2: 0, verdict: 'poor', hints: [] });
  });

  test('a length that is no number is refused', () => {
    expect(() => solveTraverse({ legs: [{ lengthM: Number.NaN, azimuthDeg: 0 }] })).toThrow(EngineError);
  });

  test('a square house drawn at an angle stays square under the transit rule', () => {
    const legs = walk(changed(changed(LENGTHS, 2, 0.06), 1, -0.04), TURNS, 113.7);
    const { corners, axisDeg } = solveTraverse({ legs });
    expect(axisDeg).toBeCloseTo(23.7, 9);
    for (let i = 0; i < 6; i += 1) {
      const [a, b, c] = [corners[i]!, corners[(i + 1) % 6]!, corners[(i + 2) % 6]!];
      const dot = (b.xM - a.xM) * (c.xM - b.xM) + (b.yM - a.yM) * (c.yM - b.yM);
      expect(Math.abs(dot)).toBeLessThan(1e-9);
    }
  });

  test('axes of the walls: a bay at 45 degrees does not count, no majority means the plan axes', () => {
    const bay = [
      { lengthM: 9, azimuthDeg: 110 },
      { lengthM: 6, azimuthDeg: 20 },
      { lengthM: 2, azimuthDeg: 335 },
      { lengthM: 7, azimuthDeg: 290 },
    ];
    expect(squareAxisDeg(bay)).toBe(20);
    expect(
      squareAxisDeg([
        { lengthM: 5, azimuthDeg: 10 },
        { lengthM: 6, azimuthDeg: 40 },
        { lengthM: 7, azimuthDeg: 70 },
      ]),
    ).toBe(0);
    expect(squareAxisDeg([])).toBe(0);
  });
});
