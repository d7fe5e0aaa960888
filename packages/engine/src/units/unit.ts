/**
 * A unit of one dimension. The value in the dimension's canonical unit is `(reading - zero) * multiply / divide`;
 * two integers instead of one factor keep conversions such as 212 °F and 65 % free of rounding.
 */
export interface Unit {
  /** Plain ASCII name, the one that files and commands use, e.g. `ft2`. */
  readonly name: string;
  /** As printed after a number, e.g. `ft²`. */
  readonly symbol: string;
  readonly multiply: number;
  readonly divide?: number;
  /** The reading that the canonical unit calls 0, for scales with another zero. */
  readonly zero?: number;
  /** Other ways to write it; spaces, dots, parentheses, `^` and `°` make no difference. */
  readonly alsoWritten?: readonly string[];
  /** Letters that may stand before the number instead of a unit after it, e.g. the `R` of `R-19`. */
  readonly prefix?: string;
}

/** How a dimension is shown in one system of units. */
export interface Shown {
  readonly unit: string;
  /** Decimals when the caller does not ask for others. */
  readonly digits: number;
}

/** A kind of quantity with its units. */
export interface DimensionDefinition {
  readonly title: string;
  /** Name of the unit that calculations use. */
  readonly canonical: string;
  readonly us: Shown;
  readonly si: Shown;
  readonly units: readonly Unit[];
  /** True when a plain number without unit is a value in the canonical unit. */
  readonly plainNumber?: boolean;
  /** True for shares of a whole, where a plain number above 1 is a forgotten percent sign. */
  readonly share?: boolean;
}

/** The reading of a unit in the canonical unit of its dimension. */
export function toCanonical(unit: Unit, reading: number): number {
  return ((reading - (unit.zero ?? 0)) * unit.multiply) / (unit.divide ?? 1);
}

/** The inverse of `toCanonical`. */
export function fromCanonical(unit: Unit, value: number): number {
  return (value * (unit.divide ?? 1)) / unit.multiply + (unit.zero ?? 0);
}
