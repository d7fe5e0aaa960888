import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import type { Band } from './band.ts';
import type {
  BudgetInput,
  LinedGround,
  LinerGap,
  LinerSeam,
  OpenGround,
  WaterSurface,
} from './budget-input.ts';
import { groundEvaporationKgPerM2S } from './ground-evaporation.ts';
import { edgeGapAreaM2, seamDiffusionKgPerMS } from './liner.ts';
import { type PathInput, type PathModel, pathInput } from './path-model.ts';
import { moistureSources } from './sources.ts';
import { saturationVaporDensityKgPerM3 } from './vapor-density.ts';
import { waterEvaporationKgPerM2S } from './water-surface.ts';

const area = (path: string, band: Band) => pathInput(path, 'area', 'm²', band, 0, 1e5);
const length = (path: string, band: Band) => pathInput(path, 'length', 'm', band, 0, 1e5);
const gap = (path: string, band: Band) => pathInput(path, 'gap', 'm', band, 0, 1);
const ground = (path: string, band: Band) => pathInput(path, 'ground temperature', '°C', band, -40, 50);
const dryLayer = (path: string, band: Band) =>
  pathInput(path, 'resistance of the dry layer', 's/m', band, 0, 1e5);

function openGround(zone: OpenGround, film: PathInput): PathModel {
  const { title } = zone;
  return {
    key: `open-ground:${zone.key}`,
    title,
    formula:
      'area x (saturated vapor density at the ground - vapor density of the air) / (1 / transfer + dry layer)',
    sourceId: moistureSources.lewisAnalogy.id,
    inputs: [
      area(title, zone.areaM2),
      ground(title, zone.groundTemperatureC),
      dryLayer(title, zone.dryLayerSPerM),
      film,
    ],
    kgPerS: (v, air) => v[0]! * groundEvaporationKgPerM2S(v[1]!, 1, air.vaporDensity, v[3]!, v[2]!),
  };
}

function linerSheet(zone: LinedGround): PathModel {
  const { title } = zone;
  return {
    key: `liner-sheet:${zone.key}`,
    title: `${title}, through the sheet`,
    formula:
      '(1 - open share) x area x permeance x (saturation pressure at the ground - vapor pressure of the air)',
    sourceId: moistureSources.ashraeSheets.id,
    inputs: [
      area(title, zone.areaM2),
      pathInput(title, 'open share', 'fraction', zone.openFraction, 0, 1),
      pathInput(title, 'sheet permeance', 'kg/(m²·s·Pa)', zone.sheetKgPerM2SPa, 0, 1e-6),
      ground(title, zone.groundTemperatureC),
    ],
    kgPerS: (v, air) => (1 - v[1]!) * v[0]! * v[2]! * (saturationPressurePa(v[3]!) - air.vaporPressurePa),
  };
}

function linerOpen(zone: LinedGround, film: PathInput): PathModel {
  const { title } = zone;
  return {
    key: `liner-open:${zone.key}`,
    title: `${title}, through open spots`,
    formula:
      'open share x area x (saturated vapor density at the ground - vapor density of the air) / (1 / transfer + dry layer)',
    sourceId: moistureSources.lewisAnalogy.id,
    inputs: [
      area(title, zone.areaM2),
      pathInput(title, 'open share', 'fraction', zone.openFraction, 0, 1),
      ground(title, zone.groundTemperatureC),
      dryLayer(title, zone.dryLayerSPerM),
      film,
    ],
    kgPerS: (v, air) => v[0]! * v[1]! * groundEvaporationKgPerM2S(v[2]!, 1, air.vaporDensity, v[4]!, v[3]!),
  };
}

function seam(entry: LinerSeam): PathModel {
  const { title } = entry;
  return {
    key: `seam:${entry.key}`,
    title,
    formula: 'length x pumping x vapor diffusivity x gap / lap x difference of vapor density',
    sourceId: moistureSources.lapDiffusion.id,
    inputs: [
      length(title, entry.lengthM),
      gap(title, entry.gapM),
      pathInput(title, 'lap', 'm', entry.lapM, 0.001, 10),
      pathInput(title, 'pumping factor', '1', entry.pumpingFactor, 1, 100),
      ground(title, entry.groundTemperatureC),
    ],
    kgPerS: (v, air) =>
      v[0]! *
      v[3]! *
      seamDiffusionKgPerMS(v[1]!, v[2]!, saturationVaporDensityKgPerM3(v[4]!) - air.vaporDensity),
  };
}

function linerGap(kind: 'edge' | 'pier', entry: LinerGap, film: PathInput): PathModel {
  const { title } = entry;
  return {
    key: `${kind}:${entry.key}`,
    title,
    formula:
      'length x gap x (saturated vapor density at the ground - vapor density of the air) / (1 / transfer + dry layer)',
    sourceId: moistureSources.lewisAnalogy.id,
    inputs: [
      length(title, entry.lengthM),
      gap(title, entry.gapM),
      ground(title, entry.groundTemperatureC),
      dryLayer(title, entry.dryLayerSPerM),
      film,
    ],
    kgPerS: (v, air) =>
      edgeGapAreaM2(v[0]!, v[1]!) * groundEvaporationKgPerM2S(v[2]!, 1, air.vaporDensity, v[4]!, v[3]!),
  };
}

function standingWater(entry: WaterSurface, film: PathInput): PathModel {
  const { title } = entry;
  return {
    key: `standing-water:${entry.key}`,
    title,
    formula: 'area x transfer x (saturated vapor density at the water - vapor density of the air)',
    sourceId: moistureSources.lewisAnalogy.id,
    inputs: [
      area(title, entry.areaM2),
      pathInput(title, 'water temperature', '°C', entry.temperatureC, -40, 50),
      film,
    ],
    kgPerS: (v, air) => v[0]! * waterEvaporationKgPerM2S(v[1]!, air.vaporDensity, v[2]!),
  };
}

/** Paths of a budget that start at the ground. */
export function groundPaths(budget: BudgetInput, film: PathInput): PathModel[] {
  return [
    ...(budget.openGround ?? []).map((zone) => openGround(zone, film)),
    ...(budget.linedGround ?? []).flatMap((zone) => [linerSheet(zone), linerOpen(zone, film)]),
    ...(budget.seams ?? []).map(seam),
    ...(budget.edges ?? []).map((entry) => linerGap('edge', entry, film)),
    ...(budget.piers ?? []).map((entry) => linerGap('pier', entry, film)),
    ...(budget.standingWater ?? []).map((entry) => standingWater(entry, film)),
  ];
}
