import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../src/look/tokens.css', import.meta.url), 'utf8');

function tokensOf(ground: string): Record<string, string> {
  const block = css.slice(css.indexOf(`[data-ground="${ground}"]`)).match(/\{([^}]*)\}/)?.[1] ?? '';
  return Object.fromEntries(
    [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/g)].map(([, name, value]) => [name, value]),
  );
}

/** Relative luminance, WCAG 2.2 (definition from memory). */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

it('measures contrast as others do', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  // #767676 on white is the lightest grey that passes 4.5 (widely published).
  expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
});

/** Text of 18 px and more under the house: 7:1 (WCAG 1.4.6). Marks and edges of controls: 3:1 (1.4.11). */
const PAIRS: readonly (readonly [front: string, back: string, least: number])[] = [
  ['ink', 'ground', 7],
  ['ink', 'sheet', 7],
  ['soft', 'ground', 7],
  ['soft', 'sheet', 7],
  ['on-lamp', 'lamp', 4.5],
  ['lamp', 'ground', 4.5],
  ['lamp', 'sheet', 4.5],
  ['edge', 'ground', 3],
  ['edge', 'sheet', 3],
  ['met', 'ground', 4.5],
  ['met', 'sheet', 4.5],
  ['not-met', 'ground', 4.5],
  ['not-met', 'sheet', 4.5],
  ['not-shown', 'ground', 4.5],
  ['not-shown', 'sheet', 4.5],
  ['wetting', 'ground', 3],
  ['wetting', 'sheet', 3],
  ['drying', 'ground', 3],
  ['drying', 'sheet', 3],
];

describe.each(['under', 'daylight', 'sun'])('ground %s', (ground) => {
  const tokens = tokensOf(ground);

  it.each(PAIRS)('%s on %s reaches %d:1', (front, back, least) => {
    expect(tokens[front]).toMatch(/^#/);
    expect(contrast(tokens[front], tokens[back])).toBeGreaterThanOrEqual(least);
  });

  it('keeps the verdicts apart in a grey print, too', () => {
    const [a, b] = [luminance(tokens.met), luminance(tokens['not-met'])];
    expect(Math.max(a, b) / Math.min(a, b)).toBeGreaterThan(1.3);
  });

  it('keeps before and after apart in a grey print, too', () => {
    const [a, b] = [luminance(tokens.wetting), luminance(tokens.drying)];
    expect(Math.max(a, b) / Math.min(a, b)).toBeGreaterThan(1.3);
  });
});
