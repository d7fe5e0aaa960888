import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import { WOOD_SITES } from './places.ts';
import type { SeasonCase, SeasonMachine } from './season-case.ts';

/** Name, value, least, most. */
type Row = readonly [name: string, value: number, min: number, max: number];

/** Zones must add up to the plan within this share. */
const AREA_TOLERANCE = 0.01;

/**
 * Refuses a case whose numbers make no sense.
 * @throws EngineError naming the case and the quantity
 */
export function checkCase(source: SeasonCase): void {
  const rows: Row[] = [
    ['plan area in m²', source.planAreaM2, 1, 20_000],
    ['height in m', source.heightM, 0.1, 10],
    ['other water in kg/day', source.otherWaterKgPerDay, 0, 10_000],
    ['tariff in cents/kWh', source.tariffCentsPerKWh, 0, 1000],
    ...soilRows(source),
    ...coverRows(source),
    ...wallRows(source),
    ...woodRows(source),
    ...houseRows(source),
    ...ductRows(source),
    ...exchangeRows(source),
    ...source.machines.flatMap(machineRows),
    ...source.fans.flatMap((fan, i): Row[] => [
      [`fan ${i + 1} power in W`, fan.powerW, 0, 5000],
      [`fan ${i + 1} run share`, fan.runShare, 0, 1],
      [`fan ${i + 1} exhaust in m³/s`, fan.exhaustM3PerS, 0, 5],
    ]),
    ...source.failures.flatMap((failure, i): Row[] => [
      [`failure ${i + 1} first hour`, failure.fromHour, 0, 8760],
      [`failure ${i + 1} hour after the last`, failure.toHour, failure.fromHour, 8760],
    ]),
  ];
  for (const [name, value, min, max] of rows) requireRange(`${source.name}: ${name}`, value, min, max);
  const zones = source.cover.zones.reduce((sum, zone) => sum + zone.areaM2, 0);
  if (Math.abs(zones - source.planAreaM2) > AREA_TOLERANCE * source.planAreaM2) {
    throw new EngineError(
      'bad-input',
      `${source.name}: the ground zones cover ${zones} m² of a plan of ${source.planAreaM2} m²; they must cover all of it`,
    );
  }
  if (source.airExchange.kind === 'network' && source.fans.some((fan) => fan.exhaustM3PerS > 0)) {
    throw new EngineError(
      'bad-input',
      `${source.name}: with a pressure network an exhaust fan belongs into the network; set its exhaust here to 0`,
    );
  }
}

function soilRows({ soil }: SeasonCase): Row[] {
  return [
    ['number of soil layers', soil.layersM.length, 2, 40],
    ...soil.layersM.map((d, i): Row => [`soil layer ${i + 1} in m`, d, 0.01, 10]),
    ['soil conductivity in W/(m·K)', soil.conductivityWPerMK, 0.05, 10],
    ['soil heat capacity in J/(m³·K)', soil.heatCapacityJPerM3K, 1e5, 6e6],
    ['ground surface coefficient in W/(m²·K)', soil.surfaceCoefficientWPerM2K, 0.1, 50],
    ['lateral coupling in W/(m²·K)', soil.lateralWPerM2K, 0, 10],
    ['lateral offset in m', soil.lateralOffsetM, 0, 20],
    ['lateral depth factor', soil.lateralDepthFactor, 0, 5],
    ['distance to deep ground in m', soil.deepDistanceM, 0, 100],
    ['deep ground temperature in °C', soil.deepTemperatureC, -40, 50],
    ['mean of the annual wave in °C', soil.annualWave.meanC, -40, 50],
    ['amplitude of the annual wave in K', soil.annualWave.amplitudeK, 0, 60],
    ['coldest day', soil.annualWave.coldestDay, -366, 366],
    ['diffusivity of the annual wave in m²/s', soil.waveDiffusivityM2PerS, 1e-8, 1e-5],
  ];
}

function coverRows({ cover, planAreaM2 }: SeasonCase): Row[] {
  return [
    ...cover.zones.flatMap((zone, i): Row[] => [
      [`ground zone ${i + 1} area in m²`, zone.areaM2, 0, 20_000],
      [`ground zone ${i + 1} open fraction`, zone.openFraction, 0, 1],
      [`ground zone ${i + 1} sheet permeance in kg/(m²·s·Pa)`, zone.sheetPermeanceKgPerM2SPa, 0, 1e-7],
      [`ground zone ${i + 1} dry layer in s/m`, zone.dryLayerResistanceSPerM, 0, 1e7],
    ]),
    ['seam length in m', cover.seams.lengthM, 0, 1e5],
    ['seam gap in m', cover.seams.gapM, 0, 1],
    ['seam lap in m', cover.seams.lapM, 0.001, 10],
    ['seam pumping factor', cover.seams.pumpingFactor, 0, 100],
    ['standing water in m²', cover.standingWaterAreaM2, 0, planAreaM2],
    ['puddle in kg/m²', cover.puddleKgPerM2, 0, 100],
    ['mass transfer in m/s', cover.massTransferMPerS, 1e-4, 0.05],
  ];
}

function wallRows({ walls }: SeasonCase): Row[] {
  return [
    ['wall area above grade in m²', walls.aboveGradeAreaM2, 0, 20_000],
    ['wall U above grade in W/(m²·K)', walls.aboveGradeUWPerM2K, 0, walls.insideCoefficientWPerM2K],
    ['solar factor in K·m²/W', walls.solarFactorKM2PerW, 0, 0.1],
    ['wall area below grade in m²', walls.belowGradeAreaM2, 0, 20_000],
    ['wall U below grade in W/(m²·K)', walls.belowGradeUWPerM2K, 0, walls.insideCoefficientWPerM2K],
    ['depth beside the wall in m', walls.belowGradeDepthM, 0, 20],
    ['inside wall coefficient in W/(m²·K)', walls.insideCoefficientWPerM2K, 0.1, 50],
    ['wall permeance in kg/(m²·s·Pa)', walls.permeanceKgPerM2SPa, 0, 1e-7],
    ['wall film in kg/m²', walls.filmKgPerM2, 0, 10],
    ['rising damp length in m', walls.capillary.lengthM, 0, 5000],
    ['rising damp face height in m', walls.capillary.faceHeightM, 0, 20],
    ['rising damp wall thickness in m', walls.capillary.thicknessM, 0.01, 5],
    ['rising damp sorptivity in m/s^0.5', walls.capillary.sorptivityMPerRootS, 0, 0.01],
    ['rising damp porosity', walls.capillary.wetPorosity, 0.01, 1],
  ];
}

function woodRows({ wood, planAreaM2 }: SeasonCase): Row[] {
  return WOOD_SITES.flatMap((site): Row[] => {
    const w = wood[site];
    return [
      [`${site} area in m²`, w.areaM2, 0.01, 10 * planAreaM2],
      [`${site} surface mass in kg`, w.surfaceMassKg, 0.2 * w.areaM2, 100 * w.areaM2],
      [`${site} core mass in kg`, w.coreMassKg, 0.01, 1e7],
      [`${site} core time in days`, w.coreDays, 0.5, 5000],
      [`${site} permeance in kg/(m²·s·Pa)`, w.permeanceKgPerM2SPa, 0, 2e-8],
      [`${site} house weight`, w.houseWeight, 0, 1],
      [`${site} outdoor weight`, w.outdoorWeight, 0, 1 - w.houseWeight],
    ];
  });
}

function houseRows({ house }: SeasonCase): Row[] {
  return [
    ['house heating temperature in °C', house.heatingTemperatureC, 0, 40],
    ['house cooling temperature in °C', house.coolingTemperatureC, 0, 40],
    ['changeover in °C', house.changeoverC, -60, 60],
    ['house moisture gain in kg/kg', house.moistureGain, 0, 0.05],
    ['house cooling relative humidity', house.coolingRelativeHumidity, 0.05, 1],
    ['floor U in W/(m²·K)', house.floorUWPerM2K, 0, 20],
    ['floor permeance in kg/(m²·s·Pa)', house.floorPermeanceKgPerM2SPa, 0, 1e-7],
  ];
}

function ductRows({ ducts }: SeasonCase): Row[] {
  return [
    ['duct area in m²', ducts.areaM2, 0, 2000],
    ['duct resistance in m²K/W', ducts.resistanceM2KPerW, 0, 20],
    ['duct outside coefficient in W/(m²·K)', ducts.outsideCoefficientWPerM2K, 0.5, 50],
    ['duct film in kg/m²', ducts.filmKgPerM2, 0, 10],
    ['supply flow in m³/s', ducts.supplyFlowM3PerS, 0, 5],
    ['cooling supply in °C', ducts.coolingSupplyC, 0, 40],
    ['cooling supply humidity ratio in kg/kg', ducts.coolingSupplyHumidityRatio, 0.0001, 0.05],
    ['heating supply in °C', ducts.heatingSupplyC, 0, 80],
    ['cooling start in °C', ducts.coolingStartC, -60, 60],
    ['cooling full in °C', ducts.coolingFullC, ducts.coolingStartC, 80],
    ['heating start in °C', ducts.heatingStartC, -60, 60],
    ['heating full in °C', ducts.heatingFullC, -80, ducts.heatingStartC],
    ['run share of the air handler', ducts.maximumRunShare, 0, 1],
  ];
}

function exchangeRows({ airExchange }: SeasonCase): Row[] {
  // The network checks its own numbers when it is made.
  if (airExchange.kind === 'network') return [];
  return [
    ['air changes per hour', airExchange.airChangesPerHour, 0, 60],
    ['air changes per kelvin', airExchange.perKelvin, 0, 1],
    ['reference temperature in °C', airExchange.referenceC, -60, 60],
    ['house air changes per hour', airExchange.houseAirChangesPerHour, 0, 60],
  ];
}

function machineRows(machine: SeasonMachine, i: number): Row[] {
  return [
    [`dehumidifier ${i + 1} capacity in kg/day`, machine.ratedKgPerDay, 0.1, 1000],
    [`dehumidifier ${i + 1} efficiency in L/kWh`, machine.ratedLPerKWh, 0.1, 10],
    [`dehumidifier ${i + 1} set-point`, machine.setPoint, 0.2, 0.95],
    [`dehumidifier ${i + 1} plan coefficient`, machine.planCoefficient, 0.05, 5],
    [`dehumidifier ${i + 1} coldest intake in °C`, machine.lowestIntakeC ?? 0, -40, 40],
  ];
}
