import fc from 'fast-check';
import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { LabelPlaces, type Wanted } from '../../src/drawing/place-labels.ts';
import type { Box } from '../../src/drawing/polygon.ts';
import { breakText, fitText, textWidth } from '../../src/drawing/text-width.ts';
import { packageFonts } from '../jobs.ts';

const overlap = (a: Box, b: Box) =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

const wanted = (x: number, y: number): Wanted => ({ at: { x, y }, width: 42, height: 9, gap: 4, reach: 90 });

describe('places of labels', () => {
  test('the first label stands to the right of its spot', () => {
    const { box, away, covered } = new LabelPlaces({ left: 0, top: 0, right: 300, bottom: 300 }).find(
      wanted(100, 80),
    );
    expect(box).toEqual({ left: 104, top: 75.5, right: 146, bottom: 84.5 });
    expect({ away, covered }).toEqual({ away: 4, covered: 0 });
  });

  test('labels of any thirty spots cover each other by less than a hundredth of one label', () => {
    const spot = fc.record({ x: fc.integer({ min: 60, max: 740 }), y: fc.integer({ min: 60, max: 740 }) });
    fc.assert(
      fc.property(fc.array(spot, { minLength: 30, maxLength: 30 }), (spots) => {
        const places = new LabelPlaces({ left: 0, top: 0, right: 800, bottom: 800 });
        const boxes: Box[] = [];
        for (const { x, y } of spots) {
          const { box } = places.find(wanted(x, y));
          for (const other of boxes) expect(overlap(box, other)).toBeLessThan(0.01 * 42 * 9);
          boxes.push(box);
          places.take(box);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('a label at the edge turns inward', () => {
    const { box } = new LabelPlaces({ left: 0, top: 0, right: 200, bottom: 100 }).find(wanted(196, 50));
    expect(box.right).toBeLessThanOrEqual(200);
  });

  test('where everything is taken it says how much it covers', () => {
    const places = new LabelPlaces({ left: 0, top: 0, right: 100, bottom: 100 });
    places.take({ left: -100, top: -100, right: 200, bottom: 200 });
    expect(places.find(wanted(50, 50)).covered).toBeGreaterThanOrEqual(42 * 9 - 1e-9);
  });
});

describe('widths of lettering', () => {
  const { text, figures } = packageFonts();
  const doc = new PDFDocument({ font: null as unknown as string, autoFirstPage: false });
  doc.registerFont('figures', figures as unknown as string);
  doc.registerFont('text', text as unknown as string);

  test.each(['38\' 4 1/2"', '17.5% MC', '72 °F', '1,022 ft² · 3 m³', 'Walls are dimensioned as taped.'])(
    'of the figures face are those of the font: %s',
    (words) => {
      const exact = doc.font('figures').fontSize(10).widthOfString(words);
      // Kerning is left out on purpose; it moves a short label by less than 3 %.
      expect(Math.abs(textWidth(words, 10) - exact)).toBeLessThan(0.03 * exact);
    },
  );

  test.each(['Weir Street 212: second opinion on a two-year-old liner', 'Owner or client', 'Mmmm WWW'])(
    'of the text face are never too narrow by much: %s',
    (words) => {
      const exact = doc.font('text').fontSize(10).widthOfString(words);
      expect(textWidth(words, 10, 'text')).toBeGreaterThan(0.97 * exact);
    },
  );

  test('text is broken at spaces and cut where one word is too wide', () => {
    const lines = breakText('Bare damp earth over the whole floor', 60, 7);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join(' ')).toBe('Bare damp earth over the whole floor');
    for (const l of lines) expect(textWidth(l, 7)).toBeLessThanOrEqual(60);
    expect(fitText('Unbreakablelongword', 40, 7)).toMatch(/^Unb.*\.\.\.$/);
    expect(textWidth(fitText('Unbreakablelongword', 40, 7), 7)).toBeLessThanOrEqual(40);
  });
});
