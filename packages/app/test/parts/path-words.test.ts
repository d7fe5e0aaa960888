import { expect, it } from 'vitest';
import { inputName, isDrawn, pathTitle } from '../../src/parts/why/path-words.ts';

it.each([
  ['open-ground:elsewhere', 'Open ground', 'Tierra sin cubrir'],
  ['open-ground:z1', 'Open ground, Dry strip, south', 'Tierra sin cubrir, Dry strip, south'],
  ['liner-open:z1', 'Lined ground, Back room, through open spots', 'Por los huecos de la lámina, Back room'],
  ['liner-sheet:elsewhere', 'Lined ground, through the sheet', 'A través de la lámina'],
  ['wicking-masonry:w-1', 'Wall north draws up water', 'Muro que sube agua, north'],
  ['damp-masonry:w-2', 'Wall east, vapor from the soil behind', 'Vapor a través del muro o la losa, east'],
  ['edge:w-3', 'Loose liner edge at wall west', 'Orilla suelta de la lámina, west'],
  ['outside-air', 'Outdoor air', 'Aire de afuera'],
  ['something-new:x', 'A new path', 'A new path'],
])('names the path %s', (key, title, spanish) => {
  expect(pathTitle({ key, title }, 'en')).toBe(title);
  expect(pathTitle({ key, title }, 'es')).toBe(spanish);
});

it('names inputs, and leaves unknown ones as they are', () => {
  expect(inputName('gap', 'es')).toBe('Abertura');
  expect(inputName('something new', 'es')).toBe('something new');
});

it('draws a path whose range is wide though it carries little', () => {
  const path = { kgPerDay: 0.001, low: -0.2, high: 0.01 } as Parameters<typeof isDrawn>[0];
  expect(isDrawn(path)).toBe(true);
  expect(isDrawn({ ...path, low: 0 })).toBe(false);
});
