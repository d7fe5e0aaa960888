import { units } from '@undercroft/engine';
import { useSettings } from '../../../settings/settings.ts';
import { useTexts } from '../../../text/texts.ts';
import { kindTexts, optionTexts } from './kind-texts.ts';
import type { FieldSpec } from './kinds.ts';

/** The unit in which a quantity is typed, by its name and as it is printed. */
export function unitOf(
  field: FieldSpec & { readonly is: 'quantity' },
  system: units.UnitSystem,
): { readonly name: string; readonly symbol: string } {
  const name = field.units[system === 'us' ? 0 : 1];
  const unit = units.dimensions[field.dimension].units.find((one) => one.name === name);
  return { name, symbol: unit?.symbol ?? name };
}

/** Digits of a quantity that nobody reads finer. */
const DIGITS = 3;

/** A quantity in the unit in which it is typed, without the unit. */
export function numberOf(
  field: FieldSpec & { readonly is: 'quantity' },
  value: number,
  system: units.UnitSystem,
): string {
  const canonical = units.canonicalUnit(field.dimension);
  return String(Number(units.convert(value, canonical, unitOf(field, system).name).toPrecision(DIGITS)));
}

/** Gives a fact as people read it; null for one that nobody knows. */
export function useShown(): (field: FieldSpec, value: unknown) => string | null {
  const options = useTexts(optionTexts);
  const kinds = useTexts(kindTexts);
  const { units: system } = useSettings();
  const option = (value: string) => options(value as keyof (typeof optionTexts)['en']);
  return (field, value) => {
    if (value === undefined || value === null || value === '') return null;
    switch (field.is) {
      case 'length': {
        const meters = value as number;
        const text = units.formatQuantity(Math.abs(meters), 'length', system);
        return field.signed === undefined ? text : `${text} ${kinds(field.signed[meters < 0 ? 1 : 0])}`;
      }
      case 'quantity': {
        const { symbol } = unitOf(field, system);
        return `${numberOf(field, value as number, system)}${symbol === '%' ? '' : ' '}${symbol}`;
      }
      case 'choice':
        return option(value as string);
      case 'yes-no':
        return option(value === true ? 'yes' : 'no');
      case 'bearing':
      case 'turn':
        return `${value}°`;
      case 'words':
        return value as string;
      case 'openings':
      case 'inverts': {
        const list = value as readonly { readonly invertM?: number }[];
        const known =
          field.is === 'openings' ? list.length : list.filter((p) => p.invertM !== undefined).length;
        return known === 0 ? null : String(known);
      }
    }
  };
}
