import { MONTH_START_HOUR } from '../../src/climate/calendar.ts';
import { saturationPressurePa } from '../../src/psychrometrics/saturation-pressure.ts';
import type { SeasonCase, SeasonMachine, SeasonWeather } from '../../src/season/season-case.ts';

const OUTDOOR_C = [5.0, 6.5, 10.5, 15.5, 20, 24.5, 26.5, 25.8, 22.5, 16.5, 11, 6.5];
const DEW_POINT_C = [-0.5, 0, 3.5, 8.5, 14.5, 19.5, 21.5, 21.5, 18, 11.5, 5.5, 1.5];
const PRESSURE = 101325;

function atMidMonths(values: readonly number[], hour: number): number {
  const mid = values.map((_, m) => (MONTH_START_HOUR[m]! + MONTH_START_HOUR[m + 1]!) / 2);
  let next = mid.findIndex((h) => h > hour);
  if (next < 0) next = 12;
  const after = mid[next % 12]! + (next === 12 ? 8760 : 0);
  const before = mid[(next + 11) % 12]! - (next === 0 ? 8760 : 0);
  const share = (hour - before) / (after - before);
  return values[(next + 11) % 12]! * (1 - share) + values[next % 12]! * share;
}

function humidityRatio(vaporPa: number): number {
  return (0.621945 * vaporPa) / (PRESSURE - vaporPa);
}

/**
 * The stylized year of a climate like eastern North Carolina: monthly means at mid-month joined by straight lines, a
 * daily swing of 5.5 K that peaks at 15 h, humidity at the monthly dew point.
 */
export function prototypeWeather(): SeasonWeather {
  const temperatureC = new Float64Array(8760);
  const humidity = new Float64Array(8760);
  for (let hour = 0; hour < 8760; hour++) {
    const t = atMidMonths(OUTDOOR_C, hour) + 5.5 * Math.cos((2 * Math.PI * ((hour % 24) + 0.5 - 15)) / 24);
    const dew = Math.min(atMidMonths(DEW_POINT_C, hour), t);
    temperatureC[hour] = t;
    humidity[hour] = humidityRatio(saturationPressurePa(dew));
  }
  return {
    temperatureC,
    humidityRatio: humidity,
    pressurePa: new Float64Array(8760).fill(PRESSURE),
    windSpeedMPerS: new Float64Array(8760).fill(2),
  };
}

const A = 97;

function ground(openFraction: number, dryLayerResistanceSPerM: number): SeasonCase['cover'] {
  return {
    zones: [{ areaM2: A, openFraction, sheetPermeanceKgPerM2SPa: 3.4e-12, dryLayerResistanceSPerM }],
    seams: { lengthM: 0, gapM: 0.002, lapM: 0.3, pumpingFactor: 1 },
    standingWaterAreaM2: 0,
    puddleKgPerM2: 1,
    massTransferMPerS: 0.002,
  };
}

const wood = (share: number) => ({
  areaM2: 2.6 * A * share,
  surfaceMassKg: 2.6 * A * 0.005 * 500 * share,
  coreMassKg: (0.04 * 500 - 2.6 * 0.005 * 500) * A * share,
  coreDays: 12,
  permeanceKgPerM2SPa: 1.44e-9,
  houseWeight: 0,
  outdoorWeight: 0,
});

/** 33 kg/day at 80 °F/60 %, 2.0 L/kWh, set to 55 %, running whatever the temperature. */
export const prototypeDryer: SeasonMachine = {
  ratedKgPerDay: 33,
  ratedLPerKWh: 2,
  setPoint: 0.55,
  cold: 'household',
  lowestIntakeC: -40,
  planCoefficient: 1,
};

const VENTED = {
  kind: 'fixed',
  airChangesPerHour: 3,
  perKelvin: 0,
  referenceC: 22,
  houseAirChangesPerHour: 0,
} as const;
const CLOSED = {
  kind: 'fixed',
  airChangesPerHour: 0.06,
  perKelvin: 0.012,
  referenceC: 22,
  houseAirChangesPerHour: 0,
} as const;

/** The rows of the prototype year, with every input that was stated for it. */
export function prototypeCases(): Record<'a' | 'b' | 'b2' | 'c' | 'c2' | 'd' | 'e' | 'f', SeasonCase> {
  const a: SeasonCase = {
    name: 'a',
    planAreaM2: A,
    heightM: 0.9,
    soil: {
      conductivityWPerMK: 1.3,
      heatCapacityJPerM3K: 2.2e6,
      layersM: [0.05, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2],
      surfaceCoefficientWPerM2K: 4,
      lateralWPerM2K: 0.45,
      lateralOffsetM: 0.5,
      lateralDepthFactor: 0.4,
      deepDistanceM: 2,
      deepTemperatureC: 17,
      annualWave: { meanC: 16, amplitudeK: 10.8, coldestDay: 30 },
      waveDiffusivityM2PerS: 0.05 / 86400,
    },
    cover: ground(1, 1000),
    walls: {
      aboveGradeAreaM2: 24,
      aboveGradeUWPerM2K: 1.7,
      solarFactorKM2PerW: 0,
      belowGradeAreaM2: 0,
      belowGradeUWPerM2K: 0,
      belowGradeDepthM: 0,
      insideCoefficientWPerM2K: 7.7,
      permeanceKgPerM2SPa: 0,
      filmKgPerM2: 0.1,
      capillary: { lengthM: 0, faceHeightM: 1, thicknessM: 0.2, sorptivityMPerRootS: 0, wetPorosity: 0.2 },
    },
    // One body of wood in the prototype; the three parts share it and behave alike.
    wood: { joists: wood(0.8), girder: wood(0.15), sill: wood(0.05) },
    house: {
      heatingTemperatureC: 21,
      coolingTemperatureC: 24,
      changeoverC: 18,
      moistureGain: 0,
      coolingRelativeHumidity: 0.55,
      floorUWPerM2K: 1.2,
      floorPermeanceKgPerM2SPa: 0,
    },
    ducts: {
      areaM2: 0,
      resistanceM2KPerW: 1,
      outsideCoefficientWPerM2K: 8,
      filmKgPerM2: 0.1,
      supplyFlowM3PerS: 0,
      coolingSupplyC: 14,
      coolingSupplyHumidityRatio: 0.0088,
      heatingSupplyC: 40,
      coolingStartC: 21,
      coolingFullC: 21,
      heatingStartC: -60,
      heatingFullC: -60,
      maximumRunShare: 0.35,
    },
    airExchange: VENTED,
    machines: [],
    fans: [],
    otherWaterKgPerDay: 0,
    tariffCentsPerKWh: 15,
    failures: [],
    latentAtSurfaces: false,
    moldClasses: { joists: 'sensitive', girder: 'sensitive', sill: 'sensitive', wall: 'medium-resistant' },
  };
  const b = { ...a, name: 'b', cover: ground(0.02, 1000) };
  const c = { ...a, name: 'c', cover: ground(0.005, 500), airExchange: CLOSED };
  return {
    a,
    b,
    b2: { ...b, name: 'b2', house: { ...b.house, floorUWPerM2K: 0.35 } },
    c,
    c2: { ...c, name: 'c2', cover: ground(0.05, 500) },
    // 1 cfm for 30 ft² of plan.
    d: { ...c, name: 'd', ducts: { ...c.ducts, supplyFlowM3PerS: (4.719e-4 * A) / (30 * 0.09290304) } },
    e: { ...c, name: 'e', machines: [prototypeDryer] },
    f: { ...c, name: 'f', cover: ground(0.1, 500), machines: [prototypeDryer] },
  };
}
