/**
 * e^(−x) for x of 0 and more, inline: the (3,3) Padé form of e^(−x/16), raised to the sixteenth power. Off by less than
 * 3e-9 (held by a test); 0 from 20 on, where nothing is left that matters. A balance that uses it closes with any value.
 *
 * Kernel: unchecked. `Math.exp` is a call out of compiled code, which costs several times as much in the hourly loop.
 */
export function decayOf(x: number): number {
  if (x > 20) return 0;
  const y = x * 0.0625;
  const even = 1 + 0.1 * y * y;
  const odd = y * (0.5 + y * y * (1 / 120));
  let r = (even - odd) / (even + odd);
  r *= r;
  r *= r;
  r *= r;
  return r * r;
}
