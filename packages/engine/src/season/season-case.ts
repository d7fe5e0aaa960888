import type { ColdBehavior } from '../dehumidifier/frost.ts';
import type { CapillaryWall } from '../moisture/wall.ts';
import type { MoldClass } from '../mold/classes.ts';
import type { AirExchange } from './air-exchange-case.ts';
import type { MoldSurface, WoodSite } from './places.ts';

/** Hourly outdoor air of one year, 8760 values each, local standard time from January 1. */
export interface SeasonWeather {
  /** Dry bulb, °C, −60 to 60. */
  readonly temperatureC: ArrayLike<number>;
  /** kg of water vapor per kg of dry air. */
  readonly humidityRatio: ArrayLike<number>;
  /** Station pressure, Pa. */
  readonly pressurePa: ArrayLike<number>;
  readonly windSpeedMPerS: ArrayLike<number>;
  /** Solar radiation on a horizontal plane, W/m²; absent means none. */
  readonly globalHorizontalWPerM2?: ArrayLike<number>;
}

/** The soil under the space: a column of layers, tied sideways to ground that no building disturbs. */
export interface SeasonSoil {
  readonly conductivityWPerMK: number;
  readonly heatCapacityJPerM3K: number;
  /** Thickness of each layer from the top, m; at least two. */
  readonly layersM: readonly number[];
  /** Air to ground surface, convection and radiation together, W/(m²·K). */
  readonly surfaceCoefficientWPerM2K: number;
  /** Heat coupling of the whole column to the ground around the house, per m² of plan, W/(m²·K). */
  readonly lateralWPerM2K: number;
  /** The layer whose bottom lies `z` below the surface is tied to outside ground at offset + factor·z, m. */
  readonly lateralOffsetM: number;
  readonly lateralDepthFactor: number;
  /** From the lower edge of the column to ground of constant temperature, m. */
  readonly deepDistanceM: number;
  readonly deepTemperatureC: number;
  /** Yearly wave of the undisturbed ground surface. */
  readonly annualWave: {
    readonly meanC: number;
    readonly amplitudeK: number;
    readonly coldestDay: number;
  };
  /** Diffusivity that the yearly wave outside travels with, m²/s. */
  readonly waveDiffusivityM2PerS: number;
}

/** One part of the ground, covered or not. */
export interface GroundZone {
  readonly areaM2: number;
  /** Share of the zone that no sheet covers, 0..1; 1 is uncovered ground. */
  readonly openFraction: number;
  /** Of the sheet, kg/(m²·s·Pa). */
  readonly sheetPermeanceKgPerM2SPa: number;
  /** Dry crust over the damp soil, s/m: 0 wet, 500 dark damp, 1000 average, 2350 pale crust. */
  readonly dryLayerResistanceSPerM: number;
}

/** Everything about the ground surface that gives water to the air. */
export interface SeasonGroundCover {
  /** Zones that together are the plan area. */
  readonly zones: readonly GroundZone[];
  /** Laps that are not taped, all together; diffusion of vapor through the gap along the lap. */
  readonly seams: {
    readonly lengthM: number;
    readonly gapM: number;
    readonly lapM: number;
    /** 2 to 5 where air is pumped from beneath, 1 for diffusion alone. */
    readonly pumpingFactor: number;
  };
  /** Water that stands all year, or is fed as fast as it dries, m². */
  readonly standingWaterAreaM2: number;
  /** What lies on the sheet before it runs off, kg/m² of covered area. */
  readonly puddleKgPerM2: number;
  /** Mass transfer coefficient between ground, masonry or duct and the air, m/s. */
  readonly massTransferMPerS: number;
}

/** Foundation walls, above and below grade. */
export interface SeasonWalls {
  readonly aboveGradeAreaM2: number;
  readonly aboveGradeUWPerM2K: number;
  /** Warming of the outside face by the sun, K per W/m² on a horizontal plane. */
  readonly solarFactorKM2PerW: number;
  readonly belowGradeAreaM2: number;
  readonly belowGradeUWPerM2K: number;
  /** Depth of the outside ground that stands for the below-grade wall, m. */
  readonly belowGradeDepthM: number;
  /** Inside surface coefficient, W/(m²·K). */
  readonly insideCoefficientWPerM2K: number;
  /** Vapor permeance of the wall, kg/(m²·s·Pa). */
  readonly permeanceKgPerM2SPa: number;
  /** What a face holds as film before it runs down, kg/m². */
  readonly filmKgPerM2: number;
  /** Water that rises in the wall from its foot and dries from one face. */
  readonly capillary: CapillaryWall & {
    /** 0 for none. */
    readonly lengthM: number;
    /** Masonry above the damp ground on the crawl side, m. */
    readonly faceHeightM: number;
  };
}

/** A part of the framing, as a surface layer and a core. */
export interface SeasonWood {
  readonly areaM2: number;
  /** Oven-dry, kg. */
  readonly surfaceMassKg: number;
  readonly coreMassKg: number;
  /** Time in which the core follows the surface, days. */
  readonly coreDays: number;
  /** Vapor permeance between air and the middle of the surface layer, kg/(m²·s·Pa). */
  readonly permeanceKgPerM2SPa: number;
  /** Wood temperature = air + houseWeight (house − air) + outdoorWeight (outdoors − air). */
  readonly houseWeight: number;
  readonly outdoorWeight: number;
}

/** The house above: heated or cooled by the month, as the outdoor mean of the month says. */
export interface SeasonHouse {
  readonly heatingTemperatureC: number;
  readonly coolingTemperatureC: number;
  /** Months whose mean outdoor temperature is at or above this are cooled, °C. */
  readonly changeoverC: number;
  /** Humidity ratio above outdoors from people, cooking and washing, kg/kg. */
  readonly moistureGain: number;
  /** Highest relative humidity that the cooling leaves in the house, 0..1. */
  readonly coolingRelativeHumidity: number;
  readonly floorUWPerM2K: number;
  readonly floorPermeanceKgPerM2SPa: number;
}

/** The air handler and its ducts in the space. */
export interface SeasonDucts {
  readonly areaM2: number;
  /** Of the duct insulation, m²K/W. */
  readonly resistanceM2KPerW: number;
  /** Outside surface coefficient of the duct, W/(m²·K). */
  readonly outsideCoefficientWPerM2K: number;
  /** What the outside of the ducts holds as drops before they fall, kg/m². */
  readonly filmKgPerM2: number;
  /** Supply air that enters the space while the fan runs: leaks and a register, m³/s. */
  readonly supplyFlowM3PerS: number;
  readonly coolingSupplyC: number;
  readonly coolingSupplyHumidityRatio: number;
  readonly heatingSupplyC: number;
  /** In cooled months the run share rises from 0 at start to the maximum at full, outdoor °C; equal for a step. */
  readonly coolingStartC: number;
  readonly coolingFullC: number;
  /** In heated months the run share rises from 0 at start down to the maximum at full. */
  readonly heatingStartC: number;
  readonly heatingFullC: number;
  readonly maximumRunShare: number;
}

/** A dehumidifier in the space. */
export interface SeasonMachine {
  /** Water removal at 26.7 °C (80 °F) and 60 % relative humidity, kg/day. */
  readonly ratedKgPerDay: number;
  /** At the same point, liters per kWh. */
  readonly ratedLPerKWh: number;
  /** Relative humidity that the machine holds at its intake, 0..1. */
  readonly setPoint: number;
  /** How it takes cold air: cuts out, or defrosts by itself. */
  readonly cold: ColdBehavior;
  /** Coldest intake air that its maker allows, °C; absent takes what is usual for its kind. */
  readonly lowestIntakeC?: number;
  /** (W_off − W_mean)/(W_off − W_intake): 1 when the air of the whole plan reaches the machine equally. */
  readonly planCoefficient: number;
}

/** A fan in the space. Its electric power stays there as heat. */
export interface SeasonFan {
  readonly powerW: number;
  /** Share of the time that it runs. */
  readonly runShare: number;
  /** Air blown out of the space and replaced from outdoors, m³/s; only with a fixed air exchange, else 0. */
  readonly exhaustM3PerS: number;
}

/** Hours without power, or with the dehumidifiers standing still: from `fromHour` up to, not including, `toHour`. */
export interface SeasonFailure {
  readonly what: 'power' | 'dehumidifier';
  readonly fromHour: number;
  readonly toHour: number;
}

/** One state of one space: as found, with a repair, with all repairs. SI throughout. */
export interface SeasonCase {
  readonly name: string;
  readonly planAreaM2: number;
  readonly heightM: number;
  readonly soil: SeasonSoil;
  readonly cover: SeasonGroundCover;
  readonly walls: SeasonWalls;
  readonly wood: Readonly<Record<WoodSite, SeasonWood>>;
  readonly house: SeasonHouse;
  readonly ducts: SeasonDucts;
  readonly airExchange: AirExchange;
  readonly machines: readonly SeasonMachine[];
  readonly fans: readonly SeasonFan[];
  /** Leaks, condensate, a dryer vent: water that evaporates into the space, kg/day. */
  readonly otherWaterKgPerDay: number;
  readonly tariffCentsPerKWh: number;
  readonly failures: readonly SeasonFailure[];
  /** Whether evaporating water cools the ground, the wood and the walls that it leaves. */
  readonly latentAtSurfaces: boolean;
  /** How readily mold grows on each surface. */
  readonly moldClasses: Readonly<Record<MoldSurface, MoldClass>>;
}
