import { describe, expect, test } from 'vitest';
import { dewPointC, psychrometricsSources, saturationPressurePa } from '../../src/psychrometrics/index.ts';

/** `psychrometricsSources.iso13788Saturation`: a second, coarser fit of the same curve. */
function isoSaturationPa(t: number): number {
  return t >= 0 ? 610.5 * Math.exp((17.269 * t) / (237.3 + t)) : 610.5 * Math.exp((21.875 * t) / (265.5 + t));
}

/** `psychrometricsSources.peppersDewPoint`, recalled from memory: no iteration, 0 to 93 °C and below 0 °C. */
function peppersDewPointC(vaporPressurePa: number): number {
  const kPa = vaporPressurePa / 1000;
  const a = Math.log(kPa);
  const warm = 6.54 + 14.526 * a + 0.7389 * a ** 2 + 0.09486 * a ** 3 + 0.4569 * kPa ** 0.1984;
  return warm >= 0 ? warm : 6.09 + 12.608 * a + 0.4959 * a ** 2;
}

describe('against other fits of the saturation curve', () => {
  test('the ISO 13788 fit lies 0.05 to 0.13 % lower over 0 to 30 °C', () => {
    for (let t = 0; t <= 30; t += 0.5) {
      const gapPercent = 100 * (isoSaturationPa(t) / saturationPressurePa(t) - 1);
      // The range is given to two decimals, so half a hundredth more on each side.
      expect(gapPercent).toBeLessThanOrEqual(-0.045);
      expect(gapPercent).toBeGreaterThanOrEqual(-0.135);
    }
    expect(psychrometricsSources.iso13788Saturation.provenance).toBe('quoted');
  });

  test('the ISO 13788 fit lies 0.5 % lower at -20 °C', () => {
    expect(100 * (isoSaturationPa(-20) / saturationPressurePa(-20) - 1)).toBeCloseTo(-0.5, 1);
  });

  test.each([
    103.26, 207.92, 611.15, 785.24, 982.4, 1193.81, 1169.4, 1871.04, 1502.82, 1901.53, 2972.22, 2617.19,
    2251.13,
  ])('the direct dew point fit agrees to 0.04 K at %d Pa', (vaporPressurePa) => {
    expect(Math.abs(dewPointC(vaporPressurePa) - peppersDewPointC(vaporPressurePa))).toBeLessThan(0.04);
  });
});
