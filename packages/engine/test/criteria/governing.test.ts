import { describe, expect, test } from 'vitest';
import {
  bandOf,
  type Criterion,
  criteria,
  type Evidence,
  type GoverningGroup,
  governing,
  type JobFacts,
  judgeAll,
} from '../../src/criteria/index.ts';

const groupOf = (facts: JobFacts, quantity: string, direction: string, rows = criteria): GoverningGroup => {
  const found = governing(rows, facts).find(
    (group) => group.quantity === quantity && group.direction === direction,
  );
  if (!found) throw new Error(`${quantity} ${direction}`);
  return found;
};
const idsOf = (rows: readonly Criterion[]) => rows.map(({ id }) => id);
const closedAndLined: JobFacts = {
  spaceType: 'closed',
  linerPresent: true,
  radonSystem: false,
  linerClass: 'none',
};

describe('the strictest that applies governs', () => {
  test('of laps', () => {
    const group = groupOf(closedAndLined, 'seamLapWidthM', 'at-least');
    expect(group.governs.id).toBe('LIN-01');
    expect(group.binding?.id).toBe('UNV-03');
    expect(idsOf(group.others)).toEqual(['UNV-03']);
    expect(group.undecided).toEqual([]);
  });

  test('of laps with a soil-gas system: of equal limits the most binding', () => {
    const group = groupOf({ ...closedAndLined, radonSystem: true }, 'seamLapWidthM', 'at-least');
    expect(group.governs.id).toBe('RAD-03b');
    expect(group.binding?.id).toBe('RAD-03b');
    expect(idsOf(group.others)).toEqual(['RAD-07a', 'LIN-01', 'UNV-03', 'RAD-07b']);
  });

  test('of wood moisture and radon, where less is stricter', () => {
    expect(idsOf(groupOf({}, 'woodMoistureContent', 'at-most').others)).toEqual(['WMC-01', 'WMC-02']);
    expect(groupOf({}, 'woodMoistureContent', 'at-most').governs.id).toBe('WMC-03');
    const radon = groupOf({}, 'radonBqPerM3', 'at-most');
    expect([radon.governs.id, ...idsOf(radon.others)]).toEqual(['RAD-01b', 'RAD-02a', 'RAD-01a', 'RAD-02b']);
    expect(radon.binding).toBeUndefined();
  });

  test('of access openings with an appliance', () => {
    const facts: JobFacts = { accessKind: 'wall-opening', applianceInSpace: true };
    expect(groupOf(facts, 'accessOpeningShortSideM', 'at-least').governs.id).toBe('APP-04a');
    expect(idsOf(groupOf(facts, 'accessOpeningShortSideM', 'at-least').others)).toEqual(['ACC-02a']);
  });

  test('rows that may apply are told apart', () => {
    const group = groupOf({ linerPresent: true }, 'seamLapWidthM', 'at-least');
    expect(group.governs.id).toBe('LIN-01');
    expect(idsOf(group.undecided)).toEqual(['RAD-03b', 'RAD-07a', 'UNV-03', 'LIN-02', 'RAD-07b']);
  });

  test('a group of which nothing surely applies is left out', () => {
    expect(governing(criteria, {}).some(({ quantity }) => quantity === 'ventAreaRatio')).toBe(false);
  });

  test('a strict comparison is stricter than one that takes the limit', () => {
    const base = criteria.find(({ id }) => id === 'DHU-02') as Criterion;
    const rows = [base, { ...base, id: 'strict', comparison: '<' as const }];
    expect(groupOf({ spaceType: 'closed' }, 'airRelativeHumidityMean7Day', 'at-most', rows).governs.id).toBe(
      'strict',
    );
  });

  test('each criterion that applies stands in just one group', () => {
    const groups = governing(criteria, closedAndLined);
    const ids = groups.flatMap(({ governs, others, undecided }) => idsOf([governs, ...others, ...undecided]));
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe('bands of a lap: under 6 in fails, to 12 in is advice, from 12 in passes', () => {
  const band = (evidence: readonly Evidence[], facts = closedAndLined) =>
    bandOf(groupOf(facts, 'seamLapWidthM', 'at-least'), judgeAll(criteria, evidence, facts));
  const laps = (inches: number, uncertainty = 0): Evidence[] =>
    ['a', 'b', 'c', 'd', 'e'].map((id) => ({
      id,
      quantity: 'seamLapWidthM',
      value: inches * 0.0254,
      uncertainty: uncertainty * 0.0254,
    }));

  test.each([
    [2, 'fail'],
    [5.99, 'fail'],
    [6, 'advise'],
    [9, 'advise'],
    [11.99, 'advise'],
    [12, 'pass'],
    [20, 'pass'],
  ])('%d in is %s', (inches, expected) => {
    expect(band(laps(inches))).toBe(expected);
  });

  test('doubt over 6 in shows nothing, doubt over 12 in neither advises nor passes', () => {
    expect(band(laps(6, 0.5))).toBe('not-shown');
    expect(band(laps(12, 0.5))).toBe('not-shown');
    expect(band(laps(9, 0.5))).toBe('advise');
  });

  test('nothing measured shows nothing', () => {
    expect(band([])).toBe('not-shown');
    expect(bandOf(groupOf(closedAndLined, 'seamLapWidthM', 'at-least'), [])).toBe('not-shown');
  });

  test('advice alone never fails', () => {
    const facts: JobFacts = {
      spaceType: 'vented',
      linerPresent: true,
      radonSystem: false,
      linerClass: 'none',
    };
    expect(band(laps(2), facts)).toBe('advise');
  });
});
