/** Lists in objects in lists...: no value of the record is deeper than a few levels. */
const MAX_DEPTH = 32;

/**
 * True for what JSON can write and read back as it was: text, finite numbers, true, false, null, and lists and plain
 * objects of these, at most 32 levels deep. A key named `__proto__` is refused, because most programs that copy objects
 * lose it or worse.
 */
export function isJsonValue(value: unknown, depth = 0): boolean {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return true;
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || depth === MAX_DEPTH) return false;
  if (Array.isArray(value)) return value.every((part) => isJsonValue(part, depth + 1));
  const prototype = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) return false;
  return Object.entries(value).every(([key, part]) => key !== '__proto__' && isJsonValue(part, depth + 1));
}
