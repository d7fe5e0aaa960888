import { FOOT_M, GALLON_L, POUND_KG } from './definitions.ts';
import type { DimensionDefinition } from './unit.ts';

/** 1 grain per hour, square foot and inch of mercury, in ng/(s·m²·Pa). */
const PERM_NG = 64.79891e6 / (3600 * FOOT_M ** 2 * 3386.389);

/** Water by mass, vapor, wood moisture, soil gas, time and plain numbers. */
export const waterAndOtherDimensions = {
  mass: {
    title: 'mass',
    canonical: 'kg',
    us: { unit: 'lb', digits: 1 },
    si: { unit: 'kg', digits: 2 },
    units: [
      { name: 'kg', symbol: 'kg', multiply: 1 },
      { name: 'g', symbol: 'g', multiply: 1, divide: 1000 },
      { name: 'lb', symbol: 'lb', multiply: POUND_KG, alsoWritten: ['lbs', 'pound', 'pounds'] },
      { name: 'oz', symbol: 'oz', multiply: POUND_KG, divide: 16 },
      { name: 'gr', symbol: 'gr', multiply: POUND_KG, divide: 7000, alsoWritten: ['grain', 'grains'] },
    ],
  },
  // Liters, pints and gallons of water are taken as 1 kg per liter, as capacities of dehumidifiers are quoted; water at
  // 20 °C weighs 0.2 % less.
  massFlow: {
    title: 'water per time',
    canonical: 'kg/day',
    us: { unit: 'pint/day', digits: 1 },
    si: { unit: 'kg/day', digits: 2 },
    units: [
      { name: 'kg/day', symbol: 'kg/day', multiply: 1, alsoWritten: ['kg/d'] },
      { name: 'kg/h', symbol: 'kg/h', multiply: 24, alsoWritten: ['kg/hr'] },
      { name: 'kg/s', symbol: 'kg/s', multiply: 86_400 },
      { name: 'g/h', symbol: 'g/h', multiply: 24, divide: 1000, alsoWritten: ['g/hr'] },
      { name: 'g/day', symbol: 'g/day', multiply: 1, divide: 1000, alsoWritten: ['g/d'] },
      { name: 'lb/day', symbol: 'lb/day', multiply: POUND_KG, alsoWritten: ['lb/d', 'lbs/day'] },
      { name: 'lb/h', symbol: 'lb/h', multiply: 24 * POUND_KG, alsoWritten: ['lb/hr'] },
      {
        name: 'pint/day',
        symbol: 'pint/day',
        multiply: GALLON_L,
        divide: 8,
        alsoWritten: ['pints/day', 'pt/day', 'ppd', 'pint/d', 'pt/d'],
      },
      { name: 'L/day', symbol: 'L/day', multiply: 1, alsoWritten: ['L/d'] },
      { name: 'gal/day', symbol: 'gal/day', multiply: GALLON_L, alsoWritten: ['gpd'] },
    ],
  },
  massPerArea: {
    title: 'mass per area',
    canonical: 'kg/m2',
    us: { unit: 'lb/ft2', digits: 2 },
    si: { unit: 'kg/m2', digits: 2 },
    units: [
      { name: 'kg/m2', symbol: 'kg/m²', multiply: 1 },
      { name: 'g/m2', symbol: 'g/m²', multiply: 1, divide: 1000 },
      { name: 'lb/ft2', symbol: 'lb/ft²', multiply: POUND_KG, divide: FOOT_M ** 2, alsoWritten: ['psf'] },
    ],
  },
  dehumidifierEfficiency: {
    title: 'water removed per energy',
    canonical: 'kg/kWh',
    us: { unit: 'L/kWh', digits: 2 },
    si: { unit: 'L/kWh', digits: 2 },
    units: [
      { name: 'kg/kWh', symbol: 'kg/kWh', multiply: 1 },
      { name: 'L/kWh', symbol: 'L/kWh', multiply: 1 },
      {
        name: 'pint/kWh',
        symbol: 'pint/kWh',
        multiply: GALLON_L,
        divide: 8,
        alsoWritten: ['pints/kWh', 'pt/kWh'],
      },
    ],
  },
  permeance: {
    title: 'vapor permeance',
    canonical: 'ng/(s m2 Pa)',
    us: { unit: 'perm', digits: 3 },
    si: { unit: 'ng/(s m2 Pa)', digits: 1 },
    units: [
      {
        name: 'ng/(s m2 Pa)',
        symbol: 'ng/(s·m²·Pa)',
        multiply: 1,
        alsoWritten: ['ng/s m2 Pa', 'ng/(Pa s m2)'],
      },
      { name: 'perm', symbol: 'perm', multiply: PERM_NG, alsoWritten: ['perms'] },
    ],
  },
  resistance: {
    title: 'resistance to evaporation',
    canonical: 's/m',
    us: { unit: 's/m', digits: 0 },
    si: { unit: 's/m', digits: 0 },
    // Published and spoken of in s/m only, so that a plain number cannot be mistaken.
    plainNumber: true,
    units: [
      { name: 's/m', symbol: 's/m', multiply: 1 },
      { name: 's/ft', symbol: 's/ft', multiply: 10_000, divide: 3048 },
    ],
  },
  moistureContent: {
    title: 'wood moisture content',
    canonical: 'fraction',
    us: { unit: '%', digits: 1 },
    si: { unit: '%', digits: 1 },
    plainNumber: true,
    share: true,
    units: [
      { name: 'fraction', symbol: '', multiply: 1 },
      { name: '%', symbol: '%', multiply: 1, divide: 100, alsoWritten: ['percent', '%MC', '% mc'] },
    ],
  },
  share: {
    title: 'share of a whole',
    canonical: 'fraction',
    us: { unit: '%', digits: 0 },
    si: { unit: '%', digits: 0 },
    plainNumber: true,
    share: true,
    units: [
      { name: 'fraction', symbol: '', multiply: 1 },
      { name: '%', symbol: '%', multiply: 1, divide: 100, alsoWritten: ['percent'] },
    ],
  },
  radon: {
    title: 'radon concentration',
    canonical: 'Bq/m3',
    us: { unit: 'pCi/L', digits: 1 },
    si: { unit: 'Bq/m3', digits: 0 },
    units: [
      { name: 'Bq/m3', symbol: 'Bq/m³', multiply: 1 },
      { name: 'pCi/L', symbol: 'pCi/L', multiply: 37 },
    ],
  },
  airChanges: {
    title: 'air changes per hour',
    canonical: '1/h',
    us: { unit: '1/h', digits: 2 },
    si: { unit: '1/h', digits: 2 },
    plainNumber: true,
    units: [{ name: '1/h', symbol: '1/h', multiply: 1, alsoWritten: ['ACH', '/h', '1/hr'] }],
  },
  time: {
    title: 'time',
    canonical: 'h',
    us: { unit: 'h', digits: 1 },
    si: { unit: 'h', digits: 1 },
    units: [
      { name: 'h', symbol: 'h', multiply: 1, alsoWritten: ['hr', 'hour', 'hours'] },
      { name: 's', symbol: 's', multiply: 1, divide: 3600, alsoWritten: ['sec', 'second', 'seconds'] },
      { name: 'min', symbol: 'min', multiply: 1, divide: 60, alsoWritten: ['minute', 'minutes'] },
      { name: 'day', symbol: 'day', multiply: 24, alsoWritten: ['d', 'days'] },
      { name: 'week', symbol: 'weeks', multiply: 168, alsoWritten: ['wk', 'weeks'] },
    ],
  },
  weeks: {
    title: 'time in weeks',
    canonical: 'week',
    us: { unit: 'week', digits: 1 },
    si: { unit: 'week', digits: 1 },
    plainNumber: true,
    units: [
      { name: 'week', symbol: 'weeks', multiply: 1, alsoWritten: ['wk', 'weeks'] },
      { name: 'day', symbol: 'days', multiply: 1, divide: 7, alsoWritten: ['d', 'days'] },
      { name: 'h', symbol: 'h', multiply: 1, divide: 168, alsoWritten: ['hr', 'hour', 'hours'] },
    ],
  },
  dimensionless: {
    title: 'plain number',
    canonical: '1',
    us: { unit: '1', digits: 2 },
    si: { unit: '1', digits: 2 },
    plainNumber: true,
    units: [{ name: '1', symbol: '', multiply: 1 }],
  },
} as const satisfies Record<string, DimensionDefinition>;
