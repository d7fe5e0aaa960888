import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  all,
  always,
  any,
  type Condition,
  facts,
  holds,
  is,
  isFactValue,
  type JobFacts,
  not,
  openFacts,
} from '../../src/criteria/index.ts';

const yes = is('sumpPresent', true);
const no = is('drainPresent', true);
const open = is('radonSystem', true);
const known: JobFacts = { sumpPresent: true, drainPresent: false };

describe('conditions in three values', () => {
  test.each<[string, Condition, boolean | 'unknown']>([
    ['a known fact', yes, true],
    ['a known fact against', no, false],
    ['an absent fact', open, 'unknown'],
    ['not of unknown', not(open), 'unknown'],
    ['not', not(yes), false],
    ['all with one against', all(open, no), false],
    ['all with one unknown', all(yes, open), 'unknown'],
    ['any with one for', any(open, yes), true],
    ['any with one unknown', any(no, open), 'unknown'],
    ['all of nothing', always, true],
    ['any of nothing', any(), false],
    ['nested', all(any(open, yes), not(no)), true],
  ])('%s', (_name, condition, expected) => {
    expect(holds(condition, known)).toBe(expected);
  });

  test('one of several values', () => {
    const zones = is('climateZone', '5', '6');
    expect([
      holds(zones, { climateZone: '6' }),
      holds(zones, { climateZone: '4' }),
      holds(zones, {}),
    ]).toEqual([true, false, 'unknown']);
  });

  test('open facts are those that still matter', () => {
    expect(openFacts(all(any(open, yes), is('termiteZone', 'slight')), known)).toEqual(['termiteZone']);
    expect(openFacts(all(open, no), known)).toEqual([]);
    expect(openFacts(all(open, is('accessKind', 'floor-hatch')), known)).toEqual([
      'accessKind',
      'radonSystem',
    ]);
  });

  test('answers are checked against the registry', () => {
    expect(isFactValue('spaceType', 'vented')).toBe(true);
    expect(isFactValue('spaceType', true)).toBe(false);
    expect(isFactValue('floodZone', 'yes')).toBe(false);
    expect(isFactValue('floodZone', false)).toBe(true);
    for (const { question } of Object.values(facts)) expect(question).toMatch(/^[A-Z].*\?$/);
  });

  test('learning a fact never turns yes into no', () => {
    const leaf = fc.constantFrom(yes, no, open, is('floodZone', true), is('foamPresent', false));
    const { tree } = fc.letrec<{ tree: Condition }>((tie) => ({
      tree: fc.oneof(
        { depthSize: 'small' },
        leaf,
        tie('tree').map(not),
        fc.array(tie('tree'), { maxLength: 3 }).map((parts) => all(...parts)),
        fc.array(tie('tree'), { maxLength: 3 }).map((parts) => any(...parts)),
      ),
    }));
    const answers = fc.record(
      { radonSystem: fc.boolean(), floodZone: fc.boolean(), foamPresent: fc.boolean() },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(tree, answers, answers, (condition, first, more) => {
        const before = holds(condition, { ...known, ...first });
        const after = holds(condition, { ...known, ...more, ...first });
        if (before !== 'unknown') expect(after).toBe(before);
        expect(openFacts(condition, { ...known, ...first }).length > 0).toBe(before === 'unknown');
      }),
    );
  });
});
