import { FOOT_M, GALLON_L } from './definitions.ts';
import type { DimensionDefinition } from './unit.ts';

const FT2 = FOOT_M * FOOT_M;
const FT3 = FT2 * FOOT_M;
const GALLON_M3 = GALLON_L / 1000;

/** Lengths, areas, volumes, slopes, angles, and what flows through them. */
export const spaceDimensions = {
  length: {
    title: 'length',
    canonical: 'm',
    us: { unit: 'ft', digits: 2 },
    si: { unit: 'm', digits: 3 },
    units: [
      { name: 'm', symbol: 'm', multiply: 1, alsoWritten: ['meter', 'meters', 'metro', 'metros'] },
      { name: 'cm', symbol: 'cm', multiply: 1, divide: 100 },
      { name: 'mm', symbol: 'mm', multiply: 1, divide: 1000 },
      { name: 'um', symbol: 'µm', multiply: 1, divide: 1e6, alsoWritten: ['micron', 'microns'] },
      { name: 'ft', symbol: 'ft', multiply: 3048, divide: 10_000, alsoWritten: ['foot', 'feet'] },
      { name: 'in', symbol: 'in', multiply: 254, divide: 10_000, alsoWritten: ['inch', 'inches'] },
      { name: 'yd', symbol: 'yd', multiply: 9144, divide: 10_000, alsoWritten: ['yard', 'yards'] },
      { name: 'mil', symbol: 'mil', multiply: 254, divide: 1e7, alsoWritten: ['mils'] },
    ],
  },
  area: {
    title: 'area',
    canonical: 'm2',
    us: { unit: 'ft2', digits: 1 },
    si: { unit: 'm2', digits: 2 },
    units: [
      { name: 'm2', symbol: 'm²', multiply: 1, alsoWritten: ['sq m', 'sqm'] },
      { name: 'cm2', symbol: 'cm²', multiply: 1, divide: 10_000 },
      { name: 'ft2', symbol: 'ft²', multiply: FT2, alsoWritten: ['sq ft', 'sqft', 'sf'] },
      { name: 'in2', symbol: 'in²', multiply: FT2, divide: 144, alsoWritten: ['sq in', 'sqin'] },
      { name: 'yd2', symbol: 'yd²', multiply: 9 * FT2, alsoWritten: ['sq yd', 'sqyd', 'sy'] },
    ],
  },
  volume: {
    title: 'volume',
    canonical: 'm3',
    us: { unit: 'ft3', digits: 1 },
    si: { unit: 'm3', digits: 3 },
    units: [
      { name: 'm3', symbol: 'm³', multiply: 1, alsoWritten: ['cu m'] },
      { name: 'L', symbol: 'L', multiply: 1, divide: 1000, alsoWritten: ['liter', 'liters'] },
      { name: 'mL', symbol: 'mL', multiply: 1, divide: 1e6 },
      { name: 'ft3', symbol: 'ft³', multiply: FT3, alsoWritten: ['cu ft', 'cuft', 'cf'] },
      { name: 'in3', symbol: 'in³', multiply: GALLON_M3, divide: 231, alsoWritten: ['cu in'] },
      { name: 'yd3', symbol: 'yd³', multiply: 27 * FT3, alsoWritten: ['cu yd', 'cy'] },
      { name: 'gal', symbol: 'gal', multiply: GALLON_M3, alsoWritten: ['gallon', 'gallons'] },
      { name: 'pint', symbol: 'pint', multiply: GALLON_M3, divide: 8, alsoWritten: ['pt', 'pints'] },
    ],
  },
  speed: {
    title: 'speed',
    canonical: 'm/s',
    us: { unit: 'mph', digits: 1 },
    si: { unit: 'm/s', digits: 2 },
    units: [
      { name: 'm/s', symbol: 'm/s', multiply: 1 },
      { name: 'km/h', symbol: 'km/h', multiply: 1, divide: 3.6 },
      { name: 'mph', symbol: 'mph', multiply: 1609.344, divide: 3600, alsoWritten: ['mi/h'] },
      { name: 'ft/min', symbol: 'ft/min', multiply: FOOT_M, divide: 60, alsoWritten: ['fpm'] },
      { name: 'ft/s', symbol: 'ft/s', multiply: FOOT_M, alsoWritten: ['fps'] },
    ],
  },
  rainRate: {
    title: 'rain or seepage rate',
    canonical: 'm/s',
    us: { unit: 'in/h', digits: 2 },
    si: { unit: 'mm/h', digits: 1 },
    units: [
      { name: 'm/s', symbol: 'm/s', multiply: 1 },
      { name: 'um/s', symbol: 'µm/s', multiply: 1, divide: 1e6 },
      { name: 'mm/h', symbol: 'mm/h', multiply: 1, divide: 3.6e6, alsoWritten: ['mm/hr'] },
      { name: 'in/h', symbol: 'in/h', multiply: 254, divide: 3.6e7, alsoWritten: ['in/hr', 'iph'] },
    ],
  },
  flow: {
    title: 'volume flow',
    canonical: 'm3/s',
    us: { unit: 'cfm', digits: 0 },
    si: { unit: 'L/s', digits: 1 },
    units: [
      { name: 'm3/s', symbol: 'm³/s', multiply: 1 },
      { name: 'm3/h', symbol: 'm³/h', multiply: 1, divide: 3600, alsoWritten: ['m3/hr'] },
      { name: 'L/s', symbol: 'L/s', multiply: 1, divide: 1000, alsoWritten: ['lps'] },
      { name: 'L/min', symbol: 'L/min', multiply: 1, divide: 60_000, alsoWritten: ['lpm'] },
      { name: 'L/day', symbol: 'L/day', multiply: 1, divide: 8.64e7, alsoWritten: ['L/d'] },
      { name: 'cfm', symbol: 'cfm', multiply: FT3, divide: 60, alsoWritten: ['ft3/min'] },
      { name: 'ft3/s', symbol: 'ft³/s', multiply: FT3, alsoWritten: ['cfs'] },
      { name: 'gpm', symbol: 'gpm', multiply: GALLON_M3, divide: 60, alsoWritten: ['gal/min'] },
      { name: 'gph', symbol: 'gph', multiply: GALLON_M3, divide: 3600, alsoWritten: ['gal/h', 'gal/hr'] },
      { name: 'gal/day', symbol: 'gal/day', multiply: GALLON_M3, divide: 86_400, alsoWritten: ['gpd'] },
    ],
  },
  // No plain numbers: `1/8` typed for a fall means 1/8 in per ft to one reader and 12.5 % to another.
  slope: {
    title: 'slope',
    canonical: 'fraction',
    us: { unit: 'in/ft', digits: 3 },
    si: { unit: '%', digits: 2 },
    units: [
      { name: 'fraction', symbol: '', multiply: 1, alsoWritten: ['m/m', 'ft/ft', 'in/in'] },
      { name: '%', symbol: '%', multiply: 1, divide: 100, alsoWritten: ['percent'] },
      { name: 'in/ft', symbol: 'in/ft', multiply: 1, divide: 12, alsoWritten: ['inch/foot', '"/ft', `"/'`] },
      { name: 'mm/m', symbol: 'mm/m', multiply: 1, divide: 1000 },
    ],
  },
  angle: {
    title: 'angle',
    canonical: 'deg',
    us: { unit: 'deg', digits: 1 },
    si: { unit: 'deg', digits: 1 },
    units: [
      { name: 'deg', symbol: '°', multiply: 1, alsoWritten: ['degree', 'degrees'] },
      { name: 'rad', symbol: 'rad', multiply: 180, divide: Math.PI },
    ],
  },
} as const satisfies Record<string, DimensionDefinition>;
