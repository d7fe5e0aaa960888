import { annualWaveFromMonthlyMeans } from '../ground/annual-wave.ts';
import type { SeasonCase, SeasonWeather, SeasonWood } from './season-case.ts';
import { prepareWeather } from './weather-series.ts';

/** Vapor permeance from air to the middle of a 5 mm surface layer of softwood: film and wood in series. */
const WOOD_PERMEANCE = 1.44e-9;
const WOOD_SURFACE_M = 0.005;
const WOOD_KG_PER_M3 = 500;

/**
 * A part of the framing from its geometry: a 5 mm surface layer of softwood (500 kg/m³) and what is left as core.
 * @param areaM2 surface in the air of the space
 * @param massKg oven-dry, all of the part; the core gets at least a tenth of it
 * @param coreDays 11 for joists, 100 for a girder of three plies (slab diffusion, computed)
 */
export function woodPart(
  areaM2: number,
  massKg: number,
  coreDays: number,
  weights: Pick<SeasonWood, 'houseWeight' | 'outdoorWeight'>,
): SeasonWood {
  const surfaceMassKg = Math.min(areaM2 * WOOD_SURFACE_M * WOOD_KG_PER_M3, 0.9 * massKg);
  return {
    areaM2,
    surfaceMassKg,
    coreMassKg: massKg - surfaceMassKg,
    coreDays,
    permeanceKgPerM2SPa: WOOD_PERMEANCE,
    ...weights,
  };
}

/**
 * A vented crawl space of 120 m² over uncovered average soil, to be changed by spreading: `{ ...defaultSeasonCase(),
 * name, cover }`. Where each value comes from stands beside it; sources are in `seasonSources`.
 * @param weather sets the yearly wave and the deep temperature of the ground; without it those of a mild climate stand
 */
export function defaultSeasonCase(weather?: SeasonWeather): SeasonCase {
  const planAreaM2 = 120;
  const perimeterM = 44;
  const prepared = weather === undefined ? undefined : prepareWeather(weather);
  // Without weather: mean, half swing and coldest day of the mild, humid climate in the ground model's own check.
  const annualWave =
    prepared === undefined
      ? { meanC: 16, amplitudeK: 11, coldestDay: 35 }
      : annualWaveFromMonthlyMeans(Array.from(prepared.monthMeanC));
  return {
    name: 'as found',
    planAreaM2,
    heightM: 0.9,
    soil: {
      // Clay: ISO 13370 classes (memory). Layers and coupling: `soilColumn` (computed).
      conductivityWPerMK: 1.5,
      heatCapacityJPerM3K: 2.2e6,
      layersM: [0.05, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2],
      // `surfaceCoefficients` (memory).
      surfaceCoefficientWPerM2K: 4,
      lateralWPerM2K: 0.45,
      lateralOffsetM: 0.5,
      lateralDepthFactor: 0.4,
      deepDistanceM: 2,
      deepTemperatureC: annualWave.meanC + 1,
      annualWave,
      waveDiffusivityM2PerS: 5.8e-7,
    },
    cover: {
      // Average soil, nothing laid. Sheet of 0.15 mm polyethylene: `materials` (memory).
      zones: [
        {
          areaM2: planAreaM2,
          openFraction: 1,
          sheetPermeanceKgPerM2SPa: 3.4e-12,
          dryLayerResistanceSPerM: 1000,
        },
      ],
      seams: { lengthM: 0, gapM: 0.002, lapM: 0.3, pumpingFactor: 3 },
      standingWaterAreaM2: 0,
      // A millimeter lies on a sheet before it finds a low spot: `practice`.
      puddleKgPerM2: 1,
      massTransferMPerS: 0.002,
    },
    walls: {
      // Uncovered 200 mm block, 0.6 m above grade and 0.3 m below: `materials` (memory).
      aboveGradeAreaM2: perimeterM * 0.6,
      aboveGradeUWPerM2K: 2,
      // Absorptance 0.6, a third of the horizontal sun on a mean wall, 25 W/(m²·K) outside (computed).
      solarFactorKM2PerW: 0.008,
      belowGradeAreaM2: perimeterM * 0.3,
      belowGradeUWPerM2K: 1.2,
      belowGradeDepthM: 0.4,
      insideCoefficientWPerM2K: 7.7,
      permeanceKgPerM2SPa: 137e-12,
      filmKgPerM2: 0.1,
      capillary: {
        lengthM: 0,
        faceHeightM: 0.9,
        thicknessM: 0.2,
        sorptivityMPerRootS: 1.29e-4,
        wetPorosity: 0.2,
      },
    },
    wood: {
      // `woodMass` (computed), `woodPermeance` (memory); temperature weights: `practice`.
      joists: woodPart(2.4 * planAreaM2, 18.5 * planAreaM2, 12, { houseWeight: 0.1, outdoorWeight: 0 }),
      girder: woodPart(0.1 * planAreaM2, 1.2 * planAreaM2, 100, { houseWeight: 0, outdoorWeight: 0 }),
      sill: woodPart(0.2 * perimeterM, 3 * perimeterM, 15, { houseWeight: 0, outdoorWeight: 0.25 }),
    },
    house: {
      // House temperatures and humidities: `practice`. Bare floor: `materials` (memory).
      heatingTemperatureC: 21,
      coolingTemperatureC: 24,
      changeoverC: 18,
      moistureGain: 0.0025,
      coolingRelativeHumidity: 0.55,
      floorUWPerM2K: 1.2,
      floorPermeanceKgPerM2SPa: 40e-12,
    },
    ducts: {
      // None in the space. Supply air and run shares: `practice`.
      areaM2: 0,
      resistanceM2KPerW: 1,
      outsideCoefficientWPerM2K: 8,
      filmKgPerM2: 0.1,
      supplyFlowM3PerS: 0,
      coolingSupplyC: 13,
      coolingSupplyHumidityRatio: 0.009,
      heatingSupplyC: 40,
      coolingStartC: 20,
      coolingFullC: 35,
      heatingStartC: 16,
      heatingFullC: -10,
      maximumRunShare: 1,
    },
    // `ventRates` (memory).
    airExchange: {
      kind: 'fixed',
      airChangesPerHour: 2,
      perKelvin: 0,
      referenceC: 22,
      houseAirChangesPerHour: 0,
    },
    machines: [],
    fans: [],
    otherWaterKgPerDay: 0,
    tariffCentsPerKWh: 17,
    failures: [],
    latentAtSurfaces: true,
    moldClasses: { joists: 'sensitive', girder: 'sensitive', sill: 'sensitive', wall: 'medium-resistant' },
  };
}
