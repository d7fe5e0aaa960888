import { type Dimension, dimensionNames, dimensions } from './dimensions.ts';
import type { Unit } from './unit.ts';

/** A unit together with the kind of quantity that it measures. */
export interface FoundUnit {
  readonly dimension: Dimension;
  readonly unit: Unit;
}

/** One spelling for what is written in many ways: superscripts, the middle dot, the degree sign, spaces. */
function plain(text: string): string {
  return text
    .normalize('NFKC')
    .replace(/[µμ]/g, 'u')
    .replace(/\s+per\s+/gi, '/')
    .replace(/[\s.^()·⋅*Δ_-]/g, '')
    .replace(/°(?=[a-z])/gi, '');
}

interface Spellings {
  readonly exact: ReadonlyMap<string, Unit>;
  /** By lower case; undefined where two units differ only in case. */
  readonly anyCase: ReadonlyMap<string, Unit | undefined>;
}

const SPELLINGS = new Map<Dimension, Spellings>(dimensionNames.map((name) => [name, spellingsOf(name)]));

function spellingsOf(dimension: Dimension): Spellings {
  const exact = new Map<string, Unit>();
  const anyCase = new Map<string, Unit | undefined>();
  for (const unit of dimensions[dimension].units) {
    for (const written of [unit.name, unit.symbol, ...(unit.alsoWritten ?? [])]) {
      const spelling = plain(written);
      if (spelling === '') continue;
      if (!exact.has(spelling)) exact.set(spelling, unit);
      const lower = spelling.toLowerCase();
      const taken = anyCase.get(lower);
      anyCase.set(lower, anyCase.has(lower) && taken !== unit ? undefined : unit);
    }
  }
  return { exact, anyCase };
}

/**
 * The unit of one dimension that a text names, or undefined. Upper and lower case matter only where two units differ by
 * nothing else.
 */
export function unitOf(dimension: Dimension, text: string): Unit | undefined {
  const wanted = plain(text);
  const spellings = SPELLINGS.get(dimension);
  return spellings?.exact.get(wanted) ?? spellings?.anyCase.get(wanted.toLowerCase());
}

/** Every dimension that knows a unit of this name, in lookup order. Empty when none does. */
export function unitsNamed(text: string): readonly FoundUnit[] {
  const found: FoundUnit[] = [];
  for (const dimension of dimensionNames) {
    const unit = unitOf(dimension, text);
    if (unit) found.push({ dimension, unit });
  }
  return found;
}
