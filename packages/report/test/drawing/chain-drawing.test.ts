import { describe, expect, test } from 'vitest';
import { chainDrawing } from '../../src/drawing/chain/chain-drawing.ts';
import { ENGLISH_CHAIN_WORDS } from '../../src/drawing/chain/chain-words.ts';
import { percent } from '../../src/drawing/chain/percent.ts';
import {
  type Drawing,
  flatten,
  type Item,
  type LayerItem,
  type LineItem,
} from '../../src/drawing/display-list.ts';
import { demo } from '../jobs.ts';

const ROOMS = [
  ['a sheet', { width: 690, height: 500, textSize: 7.2 }],
  ['a desk', { width: 960, textSize: 12.5 }],
  ['a phone', { width: 340, textSize: 12 }],
] as const;

function layersNamed(items: readonly Item[], name: string): LayerItem[] {
  return items.flatMap((item) =>
    item.kind !== 'layer' ? [] : [...(item.name === name ? [item] : []), ...layersNamed(item.items, name)],
  );
}

/** Shaft of every arrow by its number. */
function shafts(drawing: Drawing): Map<number, LineItem> {
  return new Map(
    layersNamed(drawing.items, 'arrow').map((layer) => [
      Number(layer.of?.id),
      layer.items.find((item): item is LineItem => item.kind === 'line') as LineItem,
    ]),
  );
}

/** Boxes of the drawing: their outlines. */
function boxes(drawing: Drawing) {
  const [layer] = layersNamed(drawing.items, 'boxes');
  return layer.items.flatMap((item) =>
    item.kind === 'area' && item.stroke !== undefined ? [item.outlines[0]] : [],
  );
}

describe.each(['neglected-vented', 'doubted-liner'])('the chain of %s', (name) => {
  const { causes } = demo(name).assessment;
  const drawn = causes.arrows.filter((a) => a.number !== undefined);
  const found = new Set<string>(causes.observations.map((o) => o.key));

  describe.each(ROOMS)('on %s', (_room, room) => {
    const drawing = chainDrawing(causes, room, ENGLISH_CHAIN_WORDS);

    test('has an arrow, a number and a share for each explanation that is drawn', () => {
      expect([...shafts(drawing).keys()].sort((a, b) => a - b)).toEqual(drawn.map((a) => a.number));
      for (const layer of layersNamed(drawing.items, 'number')) {
        const texts = flatten(layer.items).flatMap((i) => (i.kind === 'text' ? [i.text] : []));
        const arrow = drawn.find((a) => String(a.number) === layer.of?.id);
        const share = found.has(arrow?.to ?? '') ? [percent(arrow?.weight ?? 0)] : [];
        expect(texts).toEqual([...share, layer.of?.id]);
      }
    });

    test('draws the heavier the wider', () => {
      const lines = shafts(drawing);
      const into = drawn.filter((a) => found.has(a.to)).sort((a, b) => a.weight - b.weight);
      const widths = into.map((a) => lines.get(a.number as number)?.stroke.width ?? 0);
      expect([...widths].sort((a, b) => a - b)).toEqual(widths);
      expect(widths[widths.length - 1]).toBeGreaterThan(2 * widths[0]);
    });

    test('breaks the line exactly where something speaks against it or nothing was shown', () => {
      const lines = shafts(drawing);
      for (const a of drawn) {
        const broken = found.has(a.to) && (a.contradicts.length > 0 || a.standing === 'not-shown');
        expect(lines.get(a.number as number)?.stroke.dash !== undefined, String(a.number)).toBe(broken);
      }
    });

    test('keeps boxes and numbers apart and on the sheet', () => {
      const rings = layersNamed(drawing.items, 'number').flatMap((l) =>
        flatten(l.items).flatMap((i) => (i.kind === 'circle' ? [i] : [])),
      );
      for (const [i, a] of rings.entries()) {
        for (const b of rings.slice(i + 1)) {
          expect(Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y)).toBeGreaterThan(a.radius + b.radius - 0.5);
        }
      }
      const spans = boxes(drawing).map((o) => ({
        left: Math.min(...o.map((p) => p.x)),
        right: Math.max(...o.map((p) => p.x)),
        top: Math.min(...o.map((p) => p.y)),
        bottom: Math.max(...o.map((p) => p.y)),
      }));
      for (const [i, a] of spans.entries()) {
        for (const b of spans.slice(i + 1)) {
          const apart = a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top;
          expect(apart).toBe(true);
        }
      }
      for (const item of flatten(drawing.items)) {
        const spots =
          item.kind === 'line' ? item.points : item.kind === 'area' ? item.outlines.flat() : [item.at];
        for (const { x, y } of spots) {
          expect(x).toBeGreaterThanOrEqual(-0.01);
          expect(x).toBeLessThanOrEqual(drawing.width + 0.01);
          expect(y).toBeGreaterThanOrEqual(-0.01);
          expect(y).toBeLessThanOrEqual(drawing.height + 0.01);
        }
      }
      if ('height' in room) expect(drawing.height).toBeLessThanOrEqual(room.height + 0.01);
    });

    test('tells the same in words', () => {
      for (const a of drawn) {
        const [from, to] = [ENGLISH_CHAIN_WORDS.nodes[a.from], ENGLISH_CHAIN_WORDS.nodes[a.to]];
        expect(drawing.description).toContain(`${a.number}. ${from} leads to ${to}`);
      }
    });
  });

  test('is the same drawing each time', () => {
    const room = { width: 690, height: 500, textSize: 7.2 };
    expect(chainDrawing(causes, room, ENGLISH_CHAIN_WORDS)).toEqual(
      chainDrawing(causes, room, ENGLISH_CHAIN_WORDS),
    );
  });

  test('can be drawn for one finding, with what explains it and what it leads to', () => {
    const about = causes.observations[0].key;
    const drawing = chainDrawing(causes, { width: 340, textSize: 12 }, ENGLISH_CHAIN_WORDS, about);
    const near = drawn.filter((a) => a.to === about || a.from === about).map((a) => a.number);
    expect([...shafts(drawing).keys()].sort((a, b) => a - b)).toEqual(near);
  });
});

test('a space with nothing to explain has an empty drawing that says its title', () => {
  const { causes } = demo('sound-closed').assessment;
  const drawing = chainDrawing(causes, { width: 500, textSize: 8 }, ENGLISH_CHAIN_WORDS);
  expect(shafts(drawing).size).toBe(0);
  expect(boxes(drawing)).toEqual([]);
  expect(Number.isFinite(drawing.height)).toBe(true);
});
