import { units } from '@undercroft/engine';

/** A quantity in trade units with SI beside it where they differ, e.g. `72 °F (22.2 °C)`. */
export function shownBoth(value: number, dimension: units.Dimension): string {
  const us = units.formatQuantity(value, dimension, 'us');
  const si = units.formatQuantity(value, dimension, 'si');
  return us === si ? us : `${us} (${si})`;
}

const NANOGRAMS_PER_KILOGRAM = 1e12;

/** Below this an area is a crack or a gap, told in square inches [m²]. */
const SMALL_AREA_M2 = 0.05;

function area(m2: number): string {
  if (m2 === 0 || m2 >= SMALL_AREA_M2) return shownBoth(m2, 'area');
  const squareInches = units.convert(m2, 'm2', 'in2').toPrecision(2);
  return `${Number(squareInches)} in² (${Number(units.convert(m2, 'm2', 'cm2').toPrecision(2))} cm²)`;
}

const as = (dimension: units.Dimension) => (value: number) => shownBoth(value, dimension);

/** How values are shown, by the unit that an assessment gives with them. */
const SHOWN: Readonly<Record<string, (value: number) => string>> = {
  '°C': as('temperature'),
  m: as('length'),
  'm²': area,
  'm/s': as('speed'),
  'kg/day': as('massFlow'),
  '1/h': as('airChanges'),
  'kg/(m²·s·Pa)': (value) => shownBoth(value * NANOGRAMS_PER_KILOGRAM, 'permeance'),
  fraction: as('share'),
};

/** A value with the unit that an assessment gives it, for people; in units not met in the trade with four digits. */
export function shownIn(value: number | string | boolean, unit: string): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return `${value} ${unit}`.trim();
  return SHOWN[unit]?.(value) ?? `${Number(value.toPrecision(4))} ${unit}`.trim();
}
