import { describe, expect, test } from 'vitest';
import { ENGLISH_CHAIN_WORDS } from '../../src/drawing/chain/chain-words.ts';
import { chainSvg } from '../../src/index.ts';
import { demo } from '../jobs.ts';
import { allOf, readTags } from '../tags.ts';

const options = { widthPx: 700, textPx: 14, ground: 'under' } as const;

describe.each(['neglected-vented', 'doubted-liner'])('the chain of %s for a screen', (name) => {
  const { causes } = demo(name).assessment;
  const { svg, arrows, widthPx, heightPx } = chainSvg(causes, options);
  const tags = allOf(readTags(svg, 'xml'));

  test('has a group for every arrow that is drawn, and tells where it runs', () => {
    const numbers = causes.arrows.flatMap((a) => (a.number === undefined ? [] : [a.number]));
    const groups = new Set(tags.flatMap((tag) => tag.attributes['data-of'] ?? []));
    expect(groups).toEqual(new Set(numbers.map((n) => `arrow ${n}`)));
    expect(arrows.map((a) => a.number).sort((a, b) => a - b)).toEqual(numbers);
    for (const { points } of arrows) {
      for (const { x, y } of points) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(widthPx);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(heightPx);
      }
    }
  });

  test('is a picture with a title and a description', () => {
    expect(tags.find((tag) => tag.name === 'svg')?.attributes.role).toBe('img');
    expect(svg).toContain(`>${ENGLISH_CHAIN_WORDS.title}</title>`);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('speaks the words that it is given', () => {
    const words = {
      ...ENGLISH_CHAIN_WORDS,
      title: 'Por qué está así',
      nodes: { ...ENGLISH_CHAIN_WORDS.nodes, 'free-water': 'Hay agua' },
    };
    const spanish = chainSvg(causes, { ...options, words }).svg;
    expect(spanish).toContain('>Por qué está así</title>');
    expect(spanish).toContain('Hay agua');
  });
});

test('a room or lettering outside its range is refused', () => {
  const { causes } = demo('neglected-vented').assessment;
  for (const widthPx of [199, 4001, Number.NaN]) {
    expect(() => chainSvg(causes, { ...options, widthPx })).toThrow(/200 to 4000/);
  }
  for (const textPx of [5, 41]) expect(() => chainSvg(causes, { ...options, textPx })).toThrow(/6 to 40/);
  expect(() => chainSvg(causes, { ...options, widthPx: 200, textPx: 6 })).not.toThrow();
});
