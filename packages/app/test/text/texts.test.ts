import { expect, it } from 'vitest';
import { readSettings } from '../../src/settings/settings.ts';
import { sayIn, shownTime, texts } from '../../src/text/texts.ts';

const sample = texts(
  { plain: 'Pier', put: '{who} at {where}', many: { one: '{count} pier', other: '{count} piers' } },
  { plain: 'Pilar', put: '{where}: {who}', many: { one: '{count} pilar', other: '{count} pilares' } },
);

it('says a text in each language, with its values and counts', () => {
  const [en, es] = [sayIn('en', sample), sayIn('es', sample)];
  expect([en('plain'), es('plain')]).toEqual(['Pier', 'Pilar']);
  expect(es('put', { who: 'Ana', where: '$& norte' })).toBe('$& norte: Ana');
  expect([0, 1, 2].map((count) => en('many', { count }))).toEqual(['0 piers', '1 pier', '2 piers']);
  expect([0, 1, 2].map((count) => es('many', { count }))).toEqual(['0 pilares', '1 pilar', '2 pilares']);
});

it('writes a day so that no language reads it as another one', () => {
  expect(shownTime('2026-03-04T12:00:00Z', 'en')).toMatch(/^Mar 4, 2026/);
  expect(shownTime('2026-03-04T12:00:00Z', 'es')).toMatch(/^4 mar 2026/);
  expect(shownTime('yesterday', 'en')).toBe('yesterday');
});

it('takes what it knows of kept settings and leaves the rest as on the first day', () => {
  expect(readSettings('{"ground":"sun","hand":"third","units":"si","name":"Ana"}')).toMatchObject({
    ground: 'sun',
    hand: 'right',
    units: 'si',
    name: 'Ana',
  });
  expect(readSettings('{broken')).toEqual(readSettings(null));
  expect(readSettings('null')).toEqual(readSettings(null));
});
