import { describe, expect, test } from 'vitest';
import { type ColorName, GROUNDS, type GroundName } from '../../src/look/tokens.ts';

/** Relative luminance and contrast ratio as WCAG 2.2 defines them (from memory). */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

/** CIE lightness 0..100, what is left of a color in grey print. */
function lightness(hex: string): number {
  const y = luminance(hex);
  return y > 216 / 24389 ? 116 * Math.cbrt(y) - 16 : (24389 / 27) * y;
}

const GROUND_NAMES = Object.keys(GROUNDS) as GroundName[];
const SURFACES: ColorName[] = ['page', 'sheet'];
const FLOORS: ColorName[] = ['bareEarth', 'dampEarth', 'standingWater', 'liner', 'slab', 'gravel'];
const MARKS: ColorName[] = ['met', 'notMet', 'notShown', 'watch'];

describe.each(GROUND_NAMES)('on the ground "%s"', (name) => {
  const colors = GROUNDS[name];

  test.each([...SURFACES, ...FLOORS])('text reads on %s', (surface) => {
    for (const text of ['ink', 'soft', 'water'] as const)
      expect(contrast(colors[text], colors[surface]), text).toBeGreaterThanOrEqual(4.5);
  });

  test('the accent reads as text, and text reads on it', () => {
    for (const surface of SURFACES)
      expect(contrast(colors.accent, colors[surface])).toBeGreaterThanOrEqual(4.5);
    expect(contrast(colors.onAccent, colors.accent)).toBeGreaterThanOrEqual(4.5);
  });

  test.each(MARKS)('the mark %s stands out from page and sheet, and its sign from the mark', (mark) => {
    for (const surface of SURFACES) expect(contrast(colors[mark], colors[surface])).toBeGreaterThanOrEqual(3);
    expect(contrast(colors.sheet, colors[mark])).toBeGreaterThanOrEqual(3);
  });

  test.each(['wall', 'wetting', 'drying'] as const)('the area %s stands out from page and sheet', (area) => {
    for (const surface of SURFACES)
      expect(contrast(colors[area], colors[surface]), surface).toBeGreaterThanOrEqual(3);
  });

  test('verdicts differ in lightness, so that grey print and any kind of color blindness keep them apart', () => {
    const [a, b, c] = (['notMet', 'met', 'notShown'] as const)
      .map((m) => lightness(colors[m]))
      .sort((x, y) => x - y);
    expect(b - a).toBeGreaterThanOrEqual(8);
    expect(c - b).toBeGreaterThanOrEqual(8);
  });
});

test('black on white is 21 to 1, as the definition says', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
});
