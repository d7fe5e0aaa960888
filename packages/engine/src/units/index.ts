export { convert } from './convert.ts';
export type { Dimension } from './dimensions.ts';
export { canonicalUnit, dimensionNames, dimensions, unitNames } from './dimensions.ts';
export type { UnitSystem } from './format-quantity.ts';
export { formatQuantity } from './format-quantity.ts';
export type { ParsedLength } from './length.ts';
export { parseLength } from './length.ts';
export type { FeetInchesOptions } from './length-format.ts';
export {
  formatFeetInches,
  formatMetric,
  metersFromNanometers,
  nanometersFromMeters,
} from './length-format.ts';
export type { LengthUnit } from './length-tokens.ts';
export type { NumberWithUnit, ParsedQuantity } from './parse-quantity.ts';
export { numberWithUnit, parseQuantity } from './parse-quantity.ts';
export { unitsSources } from './sources.ts';
export type { DimensionDefinition, Shown, Unit } from './unit.ts';
