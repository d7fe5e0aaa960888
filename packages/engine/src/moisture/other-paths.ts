import { saturationPressurePa } from '../psychrometrics/saturation-pressure.ts';
import type {
  AirStream,
  BudgetInput,
  DampMasonry,
  EnteredSource,
  WaterSurface,
  WickingMasonry,
} from './budget-input.ts';
import { condensationKgPerM2S } from './condensation.ts';
import { type PathInput, type PathModel, pathInput } from './path-model.ts';
import { moistureSources } from './sources.ts';
import { asWaterMPerS, risingDampKgPerMS, wallVaporKgPerS } from './wall.ts';
import { waterEvaporationKgPerM2S } from './water-surface.ts';

function dampMasonry(wall: DampMasonry): PathModel {
  const { title } = wall;
  return {
    key: `damp-masonry:${wall.key}`,
    title,
    formula: 'area x permeance x (saturation pressure behind - vapor pressure of the air)',
    sourceId: moistureSources.ashraeSheets.id,
    inputs: [
      pathInput(title, 'area', 'm²', wall.areaM2, 0, 1e5),
      pathInput(title, 'permeance', 'kg/(m²·s·Pa)', wall.permeanceKgPerM2SPa, 0, 1e-6),
      pathInput(title, 'temperature behind', '°C', wall.behindTemperatureC, -40, 50),
    ],
    kgPerS: (v, air) => wallVaporKgPerS(v[0]!, v[1]!, saturationPressurePa(v[2]!), air.vaporPressurePa),
  };
}

function wickingMasonry(wall: WickingMasonry, film: PathInput): PathModel {
  const { title } = wall;
  return {
    key: `wicking-masonry:${wall.key}`,
    title,
    formula:
      'length x evaporation x the lesser of face height and sorptivity x root(thickness / (2 x evaporation x porosity))',
    sourceId: moistureSources.sharpFront.id,
    inputs: [
      pathInput(title, 'length', 'm', wall.lengthM, 0, 1e5),
      pathInput(title, 'face height', 'm', wall.faceHeightM, 0, 10),
      pathInput(title, 'thickness', 'm', wall.thicknessM, 0.01, 3),
      pathInput(title, 'sorptivity', 'm/s^0.5', wall.sorptivityMPerRootS, 0, 0.01),
      pathInput(title, 'wet porosity', 'fraction', wall.wetPorosity, 0.01, 0.9),
      pathInput(title, 'surface temperature', '°C', wall.surfaceTemperatureC, -40, 50),
      film,
    ],
    kgPerS: (v, air) =>
      v[0]! *
      risingDampKgPerMS(
        { thicknessM: v[2]!, sorptivityMPerRootS: v[3]!, wetPorosity: v[4]! },
        v[1]!,
        asWaterMPerS(waterEvaporationKgPerM2S(v[5]!, air.vaporDensity, v[6]!)),
      ),
  };
}

function coldSurface(entry: WaterSurface, film: PathInput): PathModel {
  const { title } = entry;
  return {
    key: `cold-surface:${entry.key}`,
    title,
    formula:
      '- area x transfer x (vapor density of the air - saturated vapor density at the surface), where that is above 0',
    sourceId: moistureSources.lewisAnalogy.id,
    inputs: [
      pathInput(title, 'area', 'm²', entry.areaM2, 0, 1e5),
      pathInput(title, 'surface temperature', '°C', entry.temperatureC, -40, 50),
      film,
    ],
    kgPerS: (v, air) => {
      const taken = v[0]! * condensationKgPerM2S(v[1]!, air.vaporDensity, v[2]!);
      return taken === 0 ? 0 : -taken;
    },
  };
}

function airStream(key: string, stream: AirStream, lowestFlow: number): PathModel {
  const { title } = stream;
  return {
    key,
    title,
    formula: 'air density x flow into the space x (its humidity ratio - that of the crawl air)',
    sourceId: moistureSources.massBalance.id,
    inputs: [
      pathInput(title, 'flow', 'm³/s', stream.flowM3PerS, lowestFlow, 100),
      pathInput(title, 'humidity ratio', 'kg/kg', stream.humidityRatio, 0, 0.1),
    ],
    // Air that leaves takes the crawl air as it is and does not change it; only what comes in does.
    kgPerS: (v, air) => air.airKgPerM3 * Math.max(0, v[0]!) * (v[1]! - air.humidityRatio),
  };
}

function entered(source: EnteredSource): PathModel {
  const { title } = source;
  return {
    key: `entered:${source.key}`,
    title,
    formula: 'as entered',
    sourceId: moistureSources.massBalance.id,
    inputs: [pathInput(title, 'water', 'kg/day', source.kgPerDay, -1e4, 1e4)],
    kgPerS: (v) => v[0]! / 86_400,
  };
}

/** Paths of a budget by walls, cold surfaces, air and entered amounts. */
export function otherPaths(budget: BudgetInput, film: PathInput): PathModel[] {
  return [
    ...(budget.dampMasonry ?? []).map(dampMasonry),
    ...(budget.wickingMasonry ?? []).map((wall) => wickingMasonry(wall, film)),
    ...(budget.coldSurfaces ?? []).map((entry) => coldSurface(entry, film)),
    ...(budget.outsideAir ? [airStream('outside-air', budget.outsideAir, 0)] : []),
    ...(budget.houseAir ? [airStream('house-air', budget.houseAir, -100)] : []),
    ...(budget.otherAir ?? []).map((stream) => airStream(`air:${stream.key}`, stream, 0)),
    ...(budget.entered ?? []).map(entered),
  ];
}
