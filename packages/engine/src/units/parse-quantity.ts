import { type Dimension, dimensions, unitNames } from './dimensions.ts';
import { unitOf } from './find-unit.ts';
import { parseLength } from './length.ts';
import { metersFromNanometers } from './length-format.ts';
import { commaProblem, normalizeTyped } from './normalize-typed.ts';
import { toCanonical, type Unit } from './unit.ts';

/** Why a typed text was not understood, and what to type instead. */
interface NotUnderstood {
  readonly ok: false;
  readonly problem: string;
  readonly hint: string;
}

/** A typed quantity that was understood, or why it was not. */
export type ParsedQuantity =
  | {
      readonly ok: true;
      /** In the canonical unit of the dimension. */
      readonly value: number;
      /** Name of the canonical unit. */
      readonly unit: string;
    }
  | NotUnderstood;

/** A number and the unit written after it, before the kind of quantity is known. */
export type NumberWithUnit =
  | { readonly ok: true; readonly number: number; readonly unit: string }
  | NotUnderstood;

const SIGN_AND_NUMBER =
  /^([+-]?)\s*(?:(\d+)(?:\s+|\s*-\s*)(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|((?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?))/i;

/**
 * Reads a quantity with its unit as a person types it: `72F`, `22 °C`, `65%`, `50 cfm`, `1/8 in/ft`, `R-19`, and for
 * lengths everything that `parseLength` accepts. The result is in the canonical unit of the dimension.
 *
 * A number without a unit is taken only for shares (relative humidity, moisture content: a fraction 0..1, and a number
 * above 1 is asked about), counts, weeks, air changes and resistance to evaporation (s/m); elsewhere it is refused with
 * the list of units. Decimal commas are refused. Ranges are not checked here. Never throws.
 */
export function parseQuantity(text: string, dimension: Dimension): ParsedQuantity {
  const definition = dimensions[dimension];
  const typed = normalizeTyped(text);
  const units = `use one of the units ${unitNames(dimension).join(', ')}`;
  if (typed === '') return refuse(`no ${definition.title} was typed`, units);
  const comma = commaProblem(typed);
  if (comma) return { ok: false, ...comma };

  for (const unit of definition.units as readonly Unit[]) {
    const match = unit.prefix && new RegExp(`^${unit.prefix}\\s*-?\\s*(\\d*\\.?\\d+)$`, 'i').exec(typed);
    if (match) return accept(dimension, unit, Number(match[1]));
  }
  if (dimension === 'length') {
    const length = parseLength(typed);
    if (length.ok) return { ok: true, value: metersFromNanometers(length.nanometers), unit: 'm' };
    const other = numberWithUnit(typed);
    const unit = other.ok && unitOf('length', other.unit);
    return unit && !TAPE_UNITS.has(unit.name) ? accept(dimension, unit, other.number) : length;
  }

  const read = numberWithUnit(typed);
  if (!read.ok) return read;
  if (read.unit === '') {
    const canonical = unitOf(dimension, definition.canonical);
    if (!canonical || !definition.plainNumber) return refuse(`"${typed}" has no unit`, units);
    if (definition.share && read.number > 1) {
      return refuse(
        `"${typed}" as a ${definition.title} without a percent sign would be ${read.number * 100}%`,
        `write ${read.number}% or a fraction from 0 to 1`,
      );
    }
    return accept(dimension, canonical, read.number);
  }
  const unit = unitOf(dimension, read.unit);
  if (!unit) return refuse(`"${read.unit}" is not a unit of ${definition.title}`, units);
  return accept(dimension, unit, read.number);
}

/** Units that `parseLength` judges alone, so that its refusals stand. */
const TAPE_UNITS: ReadonlySet<string> = new Set(['ft', 'in', 'm', 'cm', 'mm']);

/**
 * Splits a text into its number (decimal, fraction or whole number and fraction) and the unit after it, which may be
 * empty. The unit is not looked up. Never throws.
 */
export function numberWithUnit(text: string): NumberWithUnit {
  const typed = normalizeTyped(text);
  const comma = commaProblem(typed);
  if (comma) return { ok: false, ...comma };
  const match = SIGN_AND_NUMBER.exec(typed);
  if (!match)
    return refuse(`"${typed}" does not start with a number`, 'write the number first, then its unit');
  const [all, sign, whole, numerator, denominator, onlyNumerator, onlyDenominator, decimal] = match;
  const size =
    decimal !== undefined
      ? Number(decimal)
      : Number(whole ?? 0) + Number(numerator ?? onlyNumerator) / Number(denominator ?? onlyDenominator);
  if (!Number.isFinite(size)) return refuse(`"${typed}" is not a number`, 'write a number, then its unit');
  const unit = typed.slice(all.length).trim();
  if (/^[\d.+-]/.test(unit) && !/^1\/[a-z]/i.test(unit)) {
    return refuse(
      `"${unit}" after the number in "${typed}" is not a unit`,
      'write one number, then its unit',
    );
  }
  return { ok: true, number: sign === '-' && size !== 0 ? -size : size, unit };
}

function refuse(problem: string, hint: string): NotUnderstood {
  return { ok: false, problem, hint };
}

function accept(dimension: Dimension, unit: Unit, reading: number): ParsedQuantity {
  return { ok: true, value: toCanonical(unit, reading), unit: dimensions[dimension].canonical };
}
