/** Numbers that say what to damage and how; a run takes as many as it needs. */
export type Picks = readonly number[];

export function from<T>(list: readonly T[], pick: number): T {
  return list[pick % list.length];
}

interface Spot {
  readonly holder: Record<string, unknown> | unknown[];
  readonly key: string | number;
}

/** Every value within a value, by what holds it. */
function spots(value: unknown, found: Spot[] = []): Spot[] {
  if (value === null || typeof value !== 'object') return found;
  const keys = Array.isArray(value) ? value.keys() : Object.keys(value);
  for (const key of keys) {
    found.push({ holder: value as Record<string, unknown>, key });
    spots((value as Record<string | number, unknown>)[key], found);
  }
  return found;
}

/** What JSON text may hold in place of a value and `JSON.stringify` would never write. */
const TEXTS: readonly string[] = [
  'NaN',
  'Infinity',
  '-Infinity',
  '1e999',
  '-1e999',
  '-0',
  '1e-400',
  '123456789012345678901234567890',
  '01',
  '+1',
  'undefined',
  '',
  '"\\ud800"',
  '"\\udc00\\ud800"',
  '"\\u0000"',
  `${'['.repeat(3000)}${']'.repeat(3000)}`,
  `${'{"a":'.repeat(3000)}1${'}'.repeat(3000)}`,
  '{"__proto__":{"widthM":1}}',
  '{"__proto__":null,"constructor":{"prototype":{"id":"x"}}}',
  '{"id":"a","id":"b"}',
];

const VALUES: readonly unknown[] = [
  null,
  true,
  false,
  'text',
  '',
  'a'.repeat(30_000),
  0,
  7,
  -1,
  0.5,
  1e308,
  5e-324,
  2 ** 53,
  -(2 ** 31),
  [],
  {},
  [[]],
  [null],
  { id: 'x' },
  Array(300).fill(1),
];

const KEYS = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'id',
  'note',
  'version',
  '',
  '*',
  'é',
];

function put(holder: Spot['holder'], key: string | number, value: unknown): void {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
}

function take({ holder, key }: Spot): unknown {
  return (holder as Record<string | number, unknown>)[key];
}

/** Ways to damage one value where it stands. */
const WAYS: Readonly<Record<string, (spot: Spot, pick: number, others: readonly Spot[]) => void>> = {
  'another value': ({ holder, key }, pick) => put(holder, key, structuredClone(from(VALUES, pick))),
  'text that is no value': ({ holder, key }, pick) => put(holder, key, `@@${pick % TEXTS.length}@@`),
  nothing: ({ holder, key }) => {
    if (Array.isArray(holder)) holder.splice(Number(key), 1);
    else delete holder[key];
  },
  twice: ({ holder, key }, pick) => {
    if (Array.isArray(holder)) holder.splice(pick % (holder.length + 1), 0, holder[Number(key)]);
    else put(holder, from(KEYS, pick), holder[key]);
  },
  'another name': ({ holder, key }, pick) => {
    if (Array.isArray(holder)) holder.reverse();
    else {
      const value = holder[key];
      delete holder[key];
      put(holder, from(KEYS, pick), value);
    }
  },
  'the value of another place': ({ holder, key }, pick, others) =>
    put(holder, key, structuredClone(take(from(others, pick)))),
  'a number that is off': ({ holder, key }, pick) => {
    const value = (holder as Record<string | number, unknown>)[key];
    const off = from([-1, 1e6, 1e-9, -1e-3, Number.MAX_VALUE, 2.5], pick);
    if (typeof value === 'number') put(holder, key, value * off);
    else if (typeof value === 'string')
      put(holder, key, value.slice(0, -1) + from(['', 'Z', '\ud83d', '\n'], pick));
    else put(holder, key, off);
  },
};

/** JSON text of a copy of a value with a few places damaged: three picks for each. */
export function spoiledText(value: unknown, picks: Picks): string {
  const copy = structuredClone(value);
  for (let i = 0; i + 2 < picks.length; i += 3) {
    const all = spots(copy);
    if (all.length === 0) break;
    from(Object.values(WAYS), picks[i + 1])(from(all, picks[i]), picks[i + 2], all);
  }
  return JSON.stringify(copy).replaceAll(/"@@(\d+)@@"/g, (_, index) => TEXTS[Number(index)]);
}

/** Text, bytes or lines. */
interface Row<R> {
  readonly length: number;
  slice(start?: number, end?: number): R;
}

/** Ways to damage a row between two places, `other` being what may come into it. */
const CUTS: readonly (<R extends Row<R>>(row: R, start: number, end: number, other: R) => R[])[] = [
  (row, start) => [row.slice(0, start)],
  (row, start) => [row.slice(start)],
  (row, start, end) => [row.slice(0, start), row.slice(end)],
  (row, start, end) => [row.slice(0, end), row.slice(start)],
  (row, start, end) => [row.slice(end), row.slice(start, end), row.slice(0, start)],
  (row, start, _, other) => [row.slice(0, start), other, row.slice(start)],
  (row, start, _, other) => [row.slice(0, start), other, row.slice(start + other.length)],
];

/** A row with a part of it cut off, cut out, repeated, moved, or with another put in: three picks for each damage. */
export function spoiledRow<R extends Row<R>>(
  row: R,
  other: R,
  picks: Picks,
  join: (parts: readonly R[]) => R,
): R {
  let spoiled = row;
  for (let i = 0; i + 2 < picks.length; i += 3) {
    const start = picks[i] % (spoiled.length + 1);
    const end = Math.min(spoiled.length, start + (picks[i + 1] % 200));
    spoiled = join(from(CUTS, picks[i + 2])(spoiled, start, end, other));
  }
  return spoiled;
}
