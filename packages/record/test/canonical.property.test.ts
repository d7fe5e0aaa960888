import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '../src/index.ts';

const SEED = 20310605;

/** The same value with the keys of every object in another order. */
function turned(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(turned);
  if (value === null || typeof value !== 'object') return value;
  const parts = Object.entries(value).map(([key, part]) => [key, turned(part)]);
  return Object.fromEntries(parts.reverse());
}

describe('canonical JSON', () => {
  it('is JSON of the same value', () => {
    fc.assert(
      fc.property(fc.jsonValue({ noUnicodeString: false }), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { numRuns: 150, seed: SEED },
    );
  });

  it('does not depend on the order of keys', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(canonicalJson(turned(value))).toBe(canonicalJson(value));
      }),
      { numRuns: 150, seed: SEED + 1 },
    );
  });

  it.each([
    [{ b: 1, a: [2, { d: null, c: 'x' }] }, '{"a":[2,{"c":"x","d":null}],"b":1}'],
    [{ b: undefined, a: 1 }, '{"a":1}'],
    [[undefined], '[null]'],
    [-0, '0'],
    ['\ud800', '"\\ud800"'],
    [JSON.parse('{"__proto__":1,"a":2}'), '{"__proto__":1,"a":2}'],
    [{ é: 1, z: 2, Z: 3 }, '{"Z":3,"z":2,"é":1}'],
    [1e21, '1e+21'],
  ])('writes %j as %s', (value, text) => {
    expect(canonicalJson(value)).toBe(text);
  });
});
