import { units } from '@undercroft/engine';
import { expect, it } from 'vitest';
import { pressKey } from '../../src/parts/pad-keys.ts';

const typedBy = (...keys: string[]) => keys.reduce(pressKey, '');

/** Lengths by definition: 1 in = 25.4 mm, 1 ft = 12 in. */
it.each([
  [['1', '2', 'ft', '6', '1/2'], 150.5],
  [['1', '2', 'ft', '6', 'in', '1/2'], 150.5],
  [['1', '2', 'ft'], 144],
  [['7', 'in'], 7],
  [['3/8'], 0.375],
  [['6', '1/2', '5/8'], 6.625],
  [['6', '1/2', '+1/16'], 6.5625],
  [['1', '1', 'in', '+1/16'], 11.0625],
  [['8', 'ft', '3', '1/4', 'back'], 99],
  [['9', 'in', '4', 'in'], 4],
])('keys %j give %f in', (keys, inches) => {
  const read = units.parseLength(typedBy(...keys), 'in');
  expect(read.ok && read.nanometers).toBe(inches * 25_400_000);
});

it.each([
  [['3', '.', '8', 'm'], 3.8],
  [['4', '2', 'cm'], 0.42],
  [['9', '5', 'mm'], 0.095],
])('keys %j give %f m', (keys, meters) => {
  const read = units.parseLength(typedBy(...keys));
  expect(read.ok && read.nanometers).toBe(meters * 1e9);
});

it('ignores a unit without a number and a second foot', () => {
  expect(typedBy('ft', 'in', 'mm')).toBe('');
  expect(typedBy('5', 'ft', '2', 'ft')).toBe("5' 2");
});
