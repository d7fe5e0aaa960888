import { units } from '@undercroft/engine';

type Dimension = units.Dimension;

/** A true minus, and no break between a number and its unit. */
export function typeset(text: string): string {
  return text.replace(/(?<![\w.])-(?=\d)/g, '−').replace(/(?<=[\d'"]) (?=[\d/%°µA-Za-z])/g, '\u00a0');
}

/** A value in the units of the United States with the metric value behind, e.g. `72 °F (22.4 °C)`. */
export function both(value: number, dimension: Dimension, usDigits?: number, siDigits?: number): string {
  const us = units.formatQuantity(value, dimension, 'us', usDigits);
  const si = units.formatQuantity(value, dimension, 'si', siDigits);
  return typeset(us === si ? us : `${us} (${si})`);
}

/** At most four digits that count, without trailing zeros. */
const short = (value: number): string => String(Number(value.toPrecision(4)));

/**
 * A length of evidence, metric behind: thin sheets in mils; on a tape where it is a sixteenth of an inch but for what was
 * lost in rounding; else in decimal inches, so that a near miss does not look like the limit.
 */
function lengthText(meters: number): string {
  const size = Math.abs(meters);
  const metric = size < 0.1 ? `${short(meters * 1000)} mm` : units.formatQuantity(meters, 'length', 'si');
  if (size > 0 && size < 0.0016) return `${short(units.convert(meters, 'm', 'mil'))} mil (${metric})`;
  const inches = units.convert(meters, 'm', 'in');
  const onTape = Math.abs(inches * 16 - Math.round(inches * 16)) <= 16 * Math.abs(inches) * 0.002;
  return `${onTape ? units.formatFeetInches(meters) : `${short(inches)} in`} (${metric})`;
}

/** A length as a tape reads it, to a quarter of an inch, metric behind: for sizes that decide nothing. */
export function tapeText(meters: number): string {
  const us = units.formatFeetInches(meters, { denominator: 4 });
  return typeset(`${us} (${units.formatQuantity(meters, 'length', 'si', 2)})`);
}

/** A share in the manner of its limit: a slope, one part in so many, or percent. */
function shareText(value: number, limit: string): string {
  if (limit.endsWith('in per ft')) return both(value, 'slope');
  if (/\b1\/\d+$/.test(limit) && value > 0) return `1/${short(1 / value)}`;
  if (limit.endsWith('points')) return `${short(100 * value)} points`;
  return `${short(100 * value)}%`;
}

/** How units of other packages are called in the engine: the kind of quantity and the name of the unit in it. */
const UNITS: Readonly<Record<string, readonly [Dimension, unit: string]>> = {
  'm²': ['area', 'm2'],
  K: ['temperatureDifference', 'K'],
  '°C': ['temperature', 'C'],
  'Bq/m³': ['radon', 'Bq/m3'],
  'ng/(s·m²·Pa)': ['permeance', 'ng/(s m2 Pa)'],
  'm²·K/W': ['thermalResistance', 'm2 K/W'],
  'W/(m·K)': ['thermalConductivity', 'W/(m K)'],
  'L/s': ['flow', 'L/s'],
  'm³/s': ['flow', 'm3/s'],
  Pa: ['pressure', 'Pa'],
  kg: ['mass', 'kg'],
  'kg/m³': ['density', 'kg/m3'],
  'kg/day': ['massFlow', 'kg/day'],
  'kg/kg': ['humidityRatio', 'kg/kg'],
  'm/s': ['speed', 'm/s'],
};

/** A quantity with so many digits that count in both systems; temperatures as people read them. */
function counted(value: number, dimension: Dimension, digits: number): string {
  if (dimension === 'temperature') return both(value, dimension);
  const shown = (system: units.UnitSystem) => {
    const exact = Math.abs(Number.parseFloat(units.formatQuantity(value, dimension, system, 12)));
    const whole = exact === 0 ? 0 : Math.floor(Math.log10(exact));
    const text = units.formatQuantity(
      value,
      dimension,
      system,
      Math.min(12, Math.max(0, digits - 1 - whole)),
    );
    return text.replace(/(\.\d*?)0+(?!\d)/, '$1').replace(/\.(?!\d)/, '');
  };
  const [us, si] = [shown('us'), shown('si')];
  return us === si ? us : `${us} (${si})`;
}

/**
 * A number with a unit that a criterion or an assumption carries, US first where the trade has a US unit for it.
 * @param limit words of the limit that it is held against, whose manner a share follows
 * @param digits digits that count, for units that are converted
 */
export function measureText(value: number, unit: string, limit = '', digits = 4): string {
  if (unit === 'm') return typeset(lengthText(value));
  if (unit === 'fraction') return typeset(shareText(value, limit));
  if (unit === 'm²' && value !== 0 && Math.abs(value) < 0.1)
    return typeset(`${short(units.convert(value, 'm2', 'in2'))} in² (${short(value * 1e4)} cm²)`);
  if (unit === 'kg/(m²·s·Pa)') return measureText(value * 1e12, 'ng/(s·m²·Pa)', limit, digits);
  // A speed this small is a transfer coefficient, which nobody thinks of in miles per hour.
  const known = unit === 'm/s' && Math.abs(value) < 0.1 ? undefined : UNITS[unit];
  if (known !== undefined) {
    const [dimension, name] = known;
    return typeset(counted(units.convert(value, name, units.canonicalUnit(dimension)), dimension, digits));
  }
  const plain = unit === '' || unit === 'count' || unit === 'index' || unit === 'yes-no';
  return typeset(plain ? short(value) : `${short(value)} ${unit}`);
}

/** What a sample said: yes, no or a number with its unit. */
export function evidenceText(value: number | boolean, unit: string, limit: string): string {
  return typeof value === 'boolean' ? (value ? 'yes' : 'no') : measureText(value, unit, limit);
}
