import { groundSurface } from '../moisture/ground-evaporation.ts';
import { convert } from '../units/convert.ts';
import type { QuantityInput } from './calculator.ts';

/** Polyethylene of 6 mil (0.15 mm), perm; ASHRAE Handbook - Fundamentals ch. 26, from memory. */
const SIX_MIL_PERM = 0.06;

/** Temperature of the ground surface. */
export const groundTemperature: QuantityInput = {
  key: 'groundTemperature',
  title: 'temperature of the ground surface',
  dimension: 'temperature',
  min: -40,
  max: 50,
};

/** Resistance of the dry layer over moist soil; default average soil. */
export const crustResistance: QuantityInput = {
  key: 'crustResistance',
  title: 'resistance of the dry layer (0 wet, 500 dark and damp, 1000 average, 2350 pale crust)',
  dimension: 'resistance',
  min: 0,
  max: 20_000,
  default: groundSurface('average').dryLayerSPerM,
};

/** Share of the ground without cover. */
export const openFraction: QuantityInput = {
  key: 'openFraction',
  title: 'share of the ground left open',
  dimension: 'share',
  min: 0,
  max: 1,
};

/** Plan area of the ground. */
export const groundArea: QuantityInput = {
  key: 'area',
  title: 'ground area',
  dimension: 'area',
  min: 0,
  max: 10_000,
};

/** Permeance of the sheet on the covered share; default 6 mil polyethylene. */
export const sheetPermeance: QuantityInput = {
  key: 'sheetPermeance',
  title: 'permeance of the sheet on the rest (6 mil polyethylene 0.06 perm)',
  dimension: 'permeance',
  min: 0,
  max: convert(100, 'perm', 'ng/(s m2 Pa)'),
  default: convert(SIX_MIL_PERM, 'perm', 'ng/(s m2 Pa)'),
};
