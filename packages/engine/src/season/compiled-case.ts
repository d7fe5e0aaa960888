import { undisturbedGroundC } from '../ground/undisturbed.ts';
import { VAPOR_DIFFUSIVITY_M2_PER_S } from '../moisture/ground-evaporation.ts';
import type { CapillaryWall } from '../moisture/wall.ts';
import { loopConstants } from './loop-constants.ts';
import type { CaseNumbers } from './loop-room.ts';
import { WOOD_SITES } from './places.ts';
import type { SeasonCase, SeasonMachine } from './season-case.ts';

/** Gas constant of dry air, J/(kg·K), and the temperature at which the air of the space is weighed, K. */
const DRY_AIR_GAS = 287.042;
const DENSITY_AT_K = 288.15;

/** A case in the form the hourly loop reads: coefficients, worked out once. */
export interface CompiledCase {
  readonly source: SeasonCase;
  readonly numbers: CaseNumbers;
  /** Soil: per m² of plan, W/(m²·K) and J/(m²·K). */
  readonly layers: number;
  readonly soilHeat: Float64Array;
  /** From layer i to i+1; the last entry leads to the deep ground. */
  readonly soilDown: Float64Array;
  readonly soilLateral: Float64Array;
  /** Undisturbed ground by layer: mean − cosine·cos − sine·sin of the day's angle. */
  readonly waveCos: Float64Array;
  readonly waveSin: Float64Array;
  /** Film surfaces in the order of FILM_SURFACES: m³/s and capacity in kg. */
  readonly filmM3PerS: Float64Array;
  readonly filmCapacityKg: Float64Array;
  readonly capillaryWall: CapillaryWall;
  /** Wood by site. */
  readonly woodKgPerSPa: Float64Array;
  readonly woodSurfaceKg: Float64Array;
  readonly woodCoreKg: Float64Array;
  readonly woodExchangeKgPerS: Float64Array;
  readonly woodHouseWeight: Float64Array;
  readonly woodOutdoorWeight: Float64Array;
  /** Machines from the highest set-point down. */
  readonly machines: readonly SeasonMachine[];
}

/** Works out the coefficients of a checked case for air of the mean pressure of the weather. */
export function compileCase(source: SeasonCase, meanPressurePa: number): CompiledCase {
  const density = meanPressurePa / (DRY_AIR_GAS * DENSITY_AT_K);
  const { walls, house, ducts, fans, wood, airExchange } = source;
  const airMassKg = density * source.planAreaM2 * source.heightM;
  const ductR = ducts.resistanceM2KPerW + 1 / ducts.outsideCoefficientWPerM2K;
  const fixed = airExchange.kind === 'fixed' ? airExchange : undefined;
  const { soilNumbers, ...soil } = compileSoil(source);
  const { groundNumbers, ...ground } = compileGround(source);
  return {
    source,
    numbers: {
      airMassKg,
      airHeatJPerK: airMassKg * loopConstants.AIR_HEAT,
      planM2: source.planAreaM2,
      floorWPerK: house.floorUWPerM2K * source.planAreaM2,
      wallAboveWPerK: walls.aboveGradeUWPerM2K * walls.aboveGradeAreaM2,
      wallBelowWPerK: walls.belowGradeUWPerM2K * walls.belowGradeAreaM2,
      solarFactor: walls.solarFactorKM2PerW,
      ductWPerK: ducts.areaM2 / ductR,
      ductSkinShare: 1 / ducts.outsideCoefficientWPerM2K / ductR,
      fanW: fans.reduce((sum, fan) => sum + fan.powerW * fan.runShare, 0),
      fanExhaustKgPerS: fans.reduce((sum, fan) => sum + fan.exhaustM3PerS * fan.runShare, 0) * density,
      supplyKgPerS: ducts.supplyFlowM3PerS * density,
      airChangesPerHour: fixed?.airChangesPerHour ?? 0,
      perKelvin: fixed?.perKelvin ?? 0,
      referenceC: fixed?.referenceC ?? 0,
      fixedHouseKgPerS: ((fixed?.houseAirChangesPerHour ?? 0) * airMassKg) / 3600,
      ...soilNumbers,
      ...groundNumbers,
      wallAbovePermeance: walls.permeanceKgPerM2SPa * walls.aboveGradeAreaM2,
      wallBelowPermeance: walls.permeanceKgPerM2SPa * walls.belowGradeAreaM2,
      floorPermeance: house.floorPermeanceKgPerM2SPa * source.planAreaM2,
      otherKgPerS: source.otherWaterKgPerDay / 86_400,
      wallAboveShare: walls.aboveGradeUWPerM2K / walls.insideCoefficientWPerM2K,
      wallBelowShare: walls.belowGradeUWPerM2K / walls.insideCoefficientWPerM2K,
      massTransfer: source.cover.massTransferMPerS,
      capillaryLengthM: walls.capillary.lengthM,
      capillaryHeightM: walls.capillary.faceHeightM,
      latentOn: source.latentAtSurfaces ? 1 : 0,
    },
    ...soil,
    ...ground,
    capillaryWall: walls.capillary,
    woodKgPerSPa: bySite((site) => wood[site].permeanceKgPerM2SPa * wood[site].areaM2),
    woodSurfaceKg: bySite((site) => wood[site].surfaceMassKg),
    woodCoreKg: bySite((site) => wood[site].coreMassKg),
    woodExchangeKgPerS: bySite((site) => wood[site].coreMassKg / (wood[site].coreDays * 86_400)),
    woodHouseWeight: bySite((site) => wood[site].houseWeight),
    woodOutdoorWeight: bySite((site) => wood[site].outdoorWeight),
    machines: [...source.machines].sort((a, b) => b.setPoint - a.setPoint),
  };
}

function bySite(value: (site: (typeof WOOD_SITES)[number]) => number): Float64Array {
  return Float64Array.from(WOOD_SITES, value);
}

function compileSoil(source: SeasonCase) {
  const { soil } = source;
  const layers = soil.layersM.length;
  const depth = soil.layersM.reduce((sum, d) => sum + d, 0);
  const soilHeat = new Float64Array(layers);
  const soilDown = new Float64Array(layers);
  const soilLateral = new Float64Array(layers);
  const waveCos = new Float64Array(layers);
  const waveSin = new Float64Array(layers);
  const k = soil.conductivityWPerMK;
  // The wave is mean − c·cos(w t) − s·sin(w t): its values on day 0 and a quarter year later give c and s.
  const wave = (atDepthM: number, day: number) =>
    soil.annualWave.meanC - undisturbedGroundC(soil.annualWave, atDepthM, day, soil.waveDiffusivityM2PerS);
  let bottom = 0;
  for (let i = 0; i < layers; i++) {
    const d = soil.layersM[i]!;
    bottom += d;
    const next = soil.layersM[i + 1];
    soilHeat[i] = soil.heatCapacityJPerM3K * d;
    soilDown[i] = k / (next === undefined ? d / 2 + soil.deepDistanceM : (d + next) / 2);
    soilLateral[i] = (soil.lateralWPerM2K * d) / depth;
    const at = soil.lateralOffsetM + soil.lateralDepthFactor * bottom;
    waveCos[i] = wave(at, 0);
    waveSin[i] = wave(at, 365 / 4);
  }
  const half = soil.layersM[0]! / (2 * k);
  const airToSoil = 1 / (1 / soil.surfaceCoefficientWPerM2K + half);
  return {
    layers,
    soilHeat,
    soilDown,
    soilLateral,
    waveCos,
    waveSin,
    soilNumbers: {
      airToSoil,
      surfaceShare: airToSoil * half,
      deepC: soil.deepTemperatureC,
      deepWPerM2K: soilDown[layers - 1]!,
      waveMean: soil.annualWave.meanC,
      wallWaveCos: wave(source.walls.belowGradeDepthM, 0),
      wallWaveSin: wave(source.walls.belowGradeDepthM, 365 / 4),
    },
  };
}

function compileGround(source: SeasonCase) {
  const { cover, walls, ducts } = source;
  const h = cover.massTransferMPerS;
  let open = 0;
  let sheet = 0;
  let covered = 0;
  for (const zone of cover.zones) {
    open += (zone.openFraction * zone.areaM2) / (1 / h + zone.dryLayerResistanceSPerM);
    sheet += (1 - zone.openFraction) * zone.areaM2 * zone.sheetPermeanceKgPerM2SPa;
    covered += (1 - zone.openFraction) * zone.areaM2;
  }
  const { seams } = cover;
  if (seams.lengthM > 0) {
    open += (seams.lengthM * VAPOR_DIFFUSIVITY_M2_PER_S * seams.gapM * seams.pumpingFactor) / seams.lapM;
  }
  const filmAreas = [covered, walls.aboveGradeAreaM2, walls.belowGradeAreaM2, ducts.areaM2];
  const filmKg = [cover.puddleKgPerM2, walls.filmKgPerM2, walls.filmKgPerM2, ducts.filmKgPerM2];
  return {
    groundNumbers: {
      openM3PerS: open,
      sheetKgPerSPa: sheet,
      standingM3PerS: cover.standingWaterAreaM2 * h,
    },
    filmM3PerS: Float64Array.from(filmAreas, (area) => area * h),
    filmCapacityKg: Float64Array.from(filmAreas, (area, i) => area * filmKg[i]!),
  };
}
