import { BTU_J, FOOT_M, POUND_KG, STANDARD_GRAVITY } from './definitions.ts';
import type { DimensionDefinition } from './unit.ts';

const PSI_PA = (POUND_KG * STANDARD_GRAVITY * 144) / FOOT_M ** 2;
const FT2_M2 = FOOT_M ** 2;

/** Temperature, humidity, pressure, power and heat flow. Sources of the inexact factors: `unitsSources`. */
export const airAndHeatDimensions = {
  temperature: {
    title: 'temperature',
    canonical: 'C',
    us: { unit: 'F', digits: 0 },
    si: { unit: 'C', digits: 1 },
    units: [
      { name: 'C', symbol: '°C', multiply: 1, alsoWritten: ['celsius'] },
      { name: 'F', symbol: '°F', multiply: 5, divide: 9, zero: 32, alsoWritten: ['fahrenheit'] },
      { name: 'K', symbol: 'K', multiply: 1, zero: 273.15, alsoWritten: ['kelvin'] },
    ],
  },
  temperatureDifference: {
    title: 'temperature difference',
    canonical: 'K',
    us: { unit: 'F-difference', digits: 1 },
    si: { unit: 'K', digits: 1 },
    units: [
      { name: 'K', symbol: 'K', multiply: 1, alsoWritten: ['C', 'C difference', 'delta C', 'celsius'] },
      {
        name: 'F-difference',
        symbol: '°F',
        multiply: 5,
        divide: 9,
        alsoWritten: ['F', 'F difference', 'delta F'],
      },
    ],
  },
  relativeHumidity: {
    title: 'relative humidity',
    canonical: 'fraction',
    us: { unit: '%', digits: 0 },
    si: { unit: '%', digits: 0 },
    plainNumber: true,
    share: true,
    units: [
      { name: 'fraction', symbol: '', multiply: 1 },
      { name: '%', symbol: '%', multiply: 1, divide: 100, alsoWritten: ['percent', '%RH', '% rh'] },
    ],
  },
  humidityRatio: {
    title: 'humidity ratio',
    canonical: 'kg/kg',
    us: { unit: 'gr/lb', digits: 1 },
    si: { unit: 'g/kg', digits: 2 },
    units: [
      { name: 'kg/kg', symbol: 'kg/kg', multiply: 1, alsoWritten: ['lb/lb'] },
      { name: 'g/kg', symbol: 'g/kg', multiply: 1, divide: 1000 },
      { name: 'gr/lb', symbol: 'gr/lb', multiply: 1, divide: 7000, alsoWritten: ['grains/lb', 'gpp'] },
    ],
  },
  absoluteHumidity: {
    title: 'absolute humidity',
    canonical: 'g/m3',
    us: { unit: 'gr/ft3', digits: 2 },
    si: { unit: 'g/m3', digits: 2 },
    units: [
      { name: 'g/m3', symbol: 'g/m³', multiply: 1 },
      { name: 'gr/ft3', symbol: 'gr/ft³', multiply: POUND_KG / 7, divide: FOOT_M ** 3 },
    ],
  },
  // No Btu/lb: the I-P enthalpy of air counts from dry air at 0 °F, so a factor alone would give a wrong figure.
  enthalpy: {
    title: 'enthalpy of moist air, dry air at 0 °C being zero',
    canonical: 'kJ/kg',
    us: { unit: 'kJ/kg', digits: 1 },
    si: { unit: 'kJ/kg', digits: 1 },
    units: [
      { name: 'kJ/kg', symbol: 'kJ/kg', multiply: 1 },
      { name: 'J/kg', symbol: 'J/kg', multiply: 1, divide: 1000 },
    ],
  },
  specificVolume: {
    title: 'specific volume',
    canonical: 'm3/kg',
    us: { unit: 'ft3/lb', digits: 2 },
    si: { unit: 'm3/kg', digits: 3 },
    units: [
      { name: 'm3/kg', symbol: 'm³/kg', multiply: 1 },
      { name: 'ft3/lb', symbol: 'ft³/lb', multiply: FOOT_M ** 3, divide: POUND_KG },
    ],
  },
  density: {
    title: 'density',
    canonical: 'kg/m3',
    us: { unit: 'lb/ft3', digits: 4 },
    si: { unit: 'kg/m3', digits: 3 },
    units: [
      { name: 'kg/m3', symbol: 'kg/m³', multiply: 1 },
      { name: 'lb/ft3', symbol: 'lb/ft³', multiply: POUND_KG, divide: FOOT_M ** 3, alsoWritten: ['pcf'] },
    ],
  },
  pressure: {
    title: 'pressure',
    canonical: 'Pa',
    us: { unit: 'inH2O', digits: 3 },
    si: { unit: 'Pa', digits: 1 },
    units: [
      { name: 'Pa', symbol: 'Pa', multiply: 1 },
      { name: 'kPa', symbol: 'kPa', multiply: 1000 },
      { name: 'mbar', symbol: 'mbar', multiply: 100, alsoWritten: ['hPa'] },
      // Water at 60 °F (15.6 °C); at 4 °C the column weighs 0.1 % more.
      { name: 'inH2O', symbol: 'inH₂O', multiply: 248.84, alsoWritten: ['in w.c.', 'in wc', 'iwc', 'in wg'] },
      // Conventional column, mercury of 13.5951 kg/L at standard gravity.
      { name: 'inHg', symbol: 'inHg', multiply: 3386.389 },
      { name: 'psi', symbol: 'psi', multiply: PSI_PA, alsoWritten: ['lb/in2'] },
      { name: 'psf', symbol: 'psf', multiply: PSI_PA, divide: 144, alsoWritten: ['lb/ft2'] },
      { name: 'atm', symbol: 'atm', multiply: 101_325 },
    ],
  },
  power: {
    title: 'power',
    canonical: 'W',
    us: { unit: 'W', digits: 0 },
    si: { unit: 'W', digits: 0 },
    units: [
      { name: 'W', symbol: 'W', multiply: 1, alsoWritten: ['watt', 'watts'] },
      { name: 'kW', symbol: 'kW', multiply: 1000 },
      { name: 'Btu/h', symbol: 'Btu/h', multiply: BTU_J, divide: 3600, alsoWritten: ['Btu/hr', 'Btuh'] },
      {
        name: 'hp',
        symbol: 'hp',
        multiply: 550 * FOOT_M * POUND_KG * STANDARD_GRAVITY,
        alsoWritten: ['horsepower'],
      },
    ],
  },
  energy: {
    title: 'energy',
    canonical: 'kWh',
    us: { unit: 'kWh', digits: 1 },
    si: { unit: 'kWh', digits: 1 },
    units: [
      { name: 'kWh', symbol: 'kWh', multiply: 1 },
      { name: 'MJ', symbol: 'MJ', multiply: 1, divide: 3.6 },
      { name: 'Btu', symbol: 'Btu', multiply: BTU_J, divide: 3.6e6 },
    ],
  },
  thermalResistance: {
    title: 'thermal resistance',
    canonical: 'm2 K/W',
    us: { unit: 'ft2 F h/Btu', digits: 1 },
    si: { unit: 'm2 K/W', digits: 2 },
    units: [
      { name: 'm2 K/W', symbol: 'm²·K/W', multiply: 1, alsoWritten: ['RSI'] },
      {
        name: 'ft2 F h/Btu',
        symbol: 'ft²·°F·h/Btu',
        multiply: (FT2_M2 * 5 * 3600) / 9,
        divide: BTU_J,
        alsoWritten: ['h ft2 F/Btu', 'R'],
        prefix: 'R',
      },
    ],
  },
  thermalTransmittance: {
    title: 'thermal transmittance',
    canonical: 'W/(m2 K)',
    us: { unit: 'Btu/(h ft2 F)', digits: 3 },
    si: { unit: 'W/(m2 K)', digits: 2 },
    units: [
      { name: 'W/(m2 K)', symbol: 'W/(m²·K)', multiply: 1 },
      {
        name: 'Btu/(h ft2 F)',
        symbol: 'Btu/(h·ft²·°F)',
        multiply: BTU_J,
        divide: (FT2_M2 * 5 * 3600) / 9,
        alsoWritten: ['U'],
        prefix: 'U',
      },
    ],
  },
  thermalConductivity: {
    title: 'thermal conductivity',
    canonical: 'W/(m K)',
    us: { unit: 'Btu in/(h ft2 F)', digits: 2 },
    si: { unit: 'W/(m K)', digits: 3 },
    units: [
      { name: 'W/(m K)', symbol: 'W/(m·K)', multiply: 1 },
      {
        name: 'Btu in/(h ft2 F)',
        symbol: 'Btu·in/(h·ft²·°F)',
        multiply: (BTU_J * FOOT_M) / 12,
        divide: (FT2_M2 * 5 * 3600) / 9,
      },
    ],
  },
} as const satisfies Record<string, DimensionDefinition>;
