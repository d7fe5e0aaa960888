import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { columnsOf, heading, wrap } from '../src/wrap.ts';

describe('wrap', () => {
  test('breaks between words and indents what follows', () => {
    expect(wrap('The wettest soil lies right under the coldest metal.', 34, '  Note: ')).toEqual([
      '  Note: The wettest soil lies',
      '        right under the coldest',
      '        metal.',
    ]);
  });

  test.each([
    ['Clear height 1234567890123 at 2.54 m here', '2.54 m'],
    ['Stone under the pipe of the drain 57 % here', '57 %'],
    ['Space at the middle of the house 66% RH here', '66% RH'],
    ['A flow that somebody measured: 7 kg/day here', '7 kg/day'],
  ])('keeps a number and its unit on one line: %s', (text, whole) => {
    expect(wrap(text, 36).some((line) => line.includes(whole))).toBe(true);
  });

  test('no word is lost, no line is too wide unless it is a single piece', () => {
    const words = fc.array(fc.stringMatching(/^[A-Za-z0-9%²°.]{1,24}$/), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 120 }), (list, columns) => {
        const lines = wrap(list.join(' '), columns, '  - ');
        expect(lines.map((line) => line.slice(4)).join(' ')).toBe(list.join(' '));
        for (const line of lines.filter((l) => l.length > columns)) expect(line.slice(4)).toMatch(/\d /);
      }),
    );
  });
});

describe('columnsOf', () => {
  test('meanings stand in one column, below a name that is too long', () => {
    const rows = [
      ['sump', 'Lid sealed'],
      ['a name that takes more than a third of the line', 'Rigid lid, screwed down'],
    ] as const;
    expect(columnsOf(rows, 60)).toEqual([
      '  sump                  Lid sealed',
      '  a name that takes more than a third of the line',
      '                        Rigid lid, screwed down',
    ]);
  });

  test('nothing to list gives no lines', () => {
    expect(columnsOf([], 80)).toEqual([]);
  });
});

test('a heading is underlined as far as it goes', () => {
  expect(heading('Cautions')).toEqual(['', 'Cautions', '--------']);
});
