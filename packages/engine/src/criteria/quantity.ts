/** Units that quantities are kept in. `fraction` is a share 0..1; `count` a whole number; `yes-no` an answer. */
export type QuantityUnit =
  | 'm'
  | 'm²'
  | 'fraction'
  | 'count'
  | 'index'
  | 'yes-no'
  | 'ng/(s·m²·Pa)'
  | 'L/(s·m²)'
  | 'L/(d·m²)'
  | 'L/s'
  | 'L/kWh'
  | 'm³/kW'
  | 'm²·K/W'
  | 'm/d'
  | 'kg'
  | 'kg/m³'
  | 'N/m'
  | 'Pa'
  | 'K'
  | 'Bq/m³'
  | 'ppm'
  | '1/h'
  | 'h'
  | 'month'
  | 'year';

/** What on the plan or around the house a quantity belongs to. `papers` is what is kept on file. */
export type QuantityPlace =
  | 'space'
  | 'floor'
  | 'ground'
  | 'wall'
  | 'pier'
  | 'seam'
  | 'liner'
  | 'liner-edge'
  | 'vent'
  | 'access'
  | 'passage'
  | 'joist'
  | 'girder'
  | 'post'
  | 'sill'
  | 'wood'
  | 'duct'
  | 'equipment'
  | 'dehumidifier'
  | 'condensate'
  | 'sump'
  | 'drain'
  | 'discharge'
  | 'wiring'
  | 'soil-gas'
  | 'outside'
  | 'house'
  | 'papers';

/** Something a surveyor can measure or answer on site. */
export interface Quantity {
  /** Stable name; ends in its unit where that is not plain from the words, e.g. `seamLapWidthM`. */
  readonly key: string;
  readonly title: string;
  readonly unit: QuantityUnit;
  /** How it is measured or answered, one plain sentence. */
  readonly measured: string;
  readonly place: QuantityPlace;
  /**
   * Closed range of values that can be real, in `unit`; a value outside is refused as a slip (percent for fraction,
   * inches for meters). Ranges are ours, wide on purpose. Absent on yes-no quantities.
   */
  readonly range?: readonly [number, number];
}

/** A quantity before it is given its key by the registry. */
export type QuantityEntry = Omit<Quantity, 'key'>;

/** Entry for a quantity that is a number. */
export function number(
  title: string,
  unit: Exclude<QuantityUnit, 'yes-no'>,
  place: QuantityPlace,
  range: readonly [number, number],
  measured: string,
): QuantityEntry {
  return { title, unit, measured, place, range };
}

/** Entry for a quantity that is answered yes or no. */
export function yesNo(title: string, place: QuantityPlace, measured: string): QuantityEntry {
  return { title, unit: 'yes-no', measured, place };
}
