import { type criteria, units } from '@undercroft/engine';
import type { Place } from '@undercroft/record';
import { readNumber, unitSymbol } from '../../parts/read-number.ts';

/** Things on the plan to which a quantity belongs. */
export const KINDS_OF_PLACES: Readonly<
  Partial<Record<criteria.QuantityPlace, readonly NonNullable<Place['on']>['kind'][]>>
> = {
  pier: ['pier'],
  wall: ['wall'],
  'liner-edge': ['wall', 'door'],
  vent: ['vent'],
  access: ['door'],
  duct: ['duct'],
  girder: ['girder'],
  sump: ['equipment'],
  dehumidifier: ['equipment'],
  equipment: ['equipment'],
  drain: ['drain'],
  floor: ['zone'],
  ground: ['zone'],
};

/** How a quantity is typed: on the tape pad, as a number of some kind with a unit, or as an answer. */
export type TypedAs =
  | { readonly as: 'answer' }
  | { readonly as: 'tape'; readonly signed: boolean }
  | {
      readonly as: 'number';
      readonly dimension: units.Dimension;
      /** The unit in which the record keeps it, as the engine calls it; absent for a plain number. */
      readonly kept?: string;
      readonly signed: boolean;
      /** Printed behind a plain number. */
      readonly symbol?: string;
    };

/** Units of quantities that people think of in a unit of the trade: the kind, and the engine's name of the unit. */
const KINDS: Readonly<Partial<Record<criteria.QuantityUnit, readonly [units.Dimension, kept: string]>>> = {
  'm²': ['area', 'm2'],
  'ng/(s·m²·Pa)': ['permeance', 'ng/(s m2 Pa)'],
  'L/s': ['flow', 'L/s'],
  'L/kWh': ['dehumidifierEfficiency', 'L/kWh'],
  'm²·K/W': ['thermalResistance', 'm2 K/W'],
  kg: ['mass', 'kg'],
  'kg/m³': ['density', 'kg/m3'],
  Pa: ['pressure', 'Pa'],
  K: ['temperatureDifference', 'K'],
  'Bq/m³': ['radon', 'Bq/m3'],
  '1/h': ['airChanges', '1/h'],
  h: ['time', 'h'],
};

const SLOPES = /slope|fallratio/i;

/** Lengths that no tape reads: sheets and wires [m]. */
const THIN_M = 0.02;

export function typedAs({ key, unit, range }: criteria.Quantity): TypedAs {
  const signed = range !== undefined && range[0] < 0;
  if (unit === 'yes-no') return { as: 'answer' };
  if (unit === 'm') {
    return range !== undefined && range[1] <= THIN_M
      ? { as: 'number', dimension: 'length', kept: 'm', signed }
      : { as: 'tape', signed };
  }
  if (unit === 'fraction') {
    return { as: 'number', dimension: SLOPES.test(key) ? 'slope' : 'share', kept: 'fraction', signed };
  }
  const known = KINDS[unit];
  if (known !== undefined) return { as: 'number', dimension: known[0], kept: known[1], signed };
  const plain = unit === 'count' || unit === 'index';
  return { as: 'number', dimension: 'dimensionless', signed, ...(plain ? {} : { symbol: unit }) };
}

/** Thin sheets are typed in mils or millimeters, not in feet. */
const THIN = { us: 'mil', si: 'mm' } as const;

/** The unit in which a number of this kind is typed when none is written. */
export function typedUnit(typed: TypedAs & { as: 'number' }, system: units.UnitSystem): string {
  if (typed.dimension === 'length') return THIN[system];
  return typed.symbol ?? unitSymbol(typed.dimension, system);
}

/** A typed number in the unit of the record; null for what is none. */
export function readQuantity(
  text: string,
  typed: TypedAs & { as: 'number' },
  system: units.UnitSystem,
): number | null {
  const bare = /^[-+]?[\d.]+$/.test(text.trim());
  const value = readNumber(
    typed.dimension === 'length' && bare ? `${text} ${THIN[system]}` : text,
    typed.dimension,
    system,
  );
  if (value === null || typed.kept === undefined) return value;
  return units.convert(value, units.canonicalUnit(typed.dimension), typed.kept);
}

/**
 * What was typed, in the unit of the record: on the tape pad, as a number, or `yes` and `no`. Null where nothing was, or
 * nothing that can be real.
 */
export function readTyped(
  quantity: criteria.Quantity,
  text: string,
  system: units.UnitSystem,
): { readonly value: number | boolean | null; readonly isReal: boolean } {
  const kind = typedAs(quantity);
  if (kind.as === 'answer') return { value: text === '' ? null : text === 'yes', isReal: true };
  let value: number | null;
  if (kind.as === 'tape') {
    const isMinus = text.trim().startsWith('-');
    const read = units.parseLength(text.replace('-', ''), system === 'us' ? 'in' : 'mm');
    value = read.ok ? units.metersFromNanometers(read.nanometers) * (isMinus ? -1 : 1) : null;
  } else value = readQuantity(text, kind, system);
  const { range } = quantity;
  const isReal = value === null || range === undefined || (value >= range[0] && value <= range[1]);
  return { value: isReal ? value : null, isReal };
}

/** A value of a quantity as people of a system read it. */
export function quantityText(quantity: criteria.Quantity, value: number, system: units.UnitSystem): string {
  const typed = typedAs(quantity);
  if (typed.as === 'answer') return String(value);
  if (typed.as === 'tape') {
    return `${value < 0 ? '−' : ''}${units.formatQuantity(Math.abs(value), 'length', system)}`;
  }
  const { dimension, kept, symbol } = typed;
  if (dimension === 'length') {
    return `${Number(units.convert(value, 'm', THIN[system]).toPrecision(4))} ${THIN[system]}`;
  }
  if (kept === undefined) return `${Number(value.toPrecision(4))} ${symbol ?? ''}`.trim();
  return units.formatQuantity(units.convert(value, kept, units.canonicalUnit(dimension)), dimension, system);
}

/** A value of the record as it would have been typed. */
export function typedText(
  quantity: criteria.Quantity,
  value: number | boolean,
  system: units.UnitSystem,
): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return quantityText(quantity, value, system).replace('−', '-');
}
