import type { ColdBehavior } from '../dehumidifier/frost.ts';
import type { Band } from './band.ts';

/** What every entry of a budget carries: a short key, unique in its list, and the words that a reader sees. */
export interface Named {
  readonly key: string;
  readonly title: string;
}

/** Ground without cover. */
export interface OpenGround extends Named {
  readonly areaM2: Band;
  /** Temperature of the ground surface, °C. */
  readonly groundTemperatureC: Band;
  /** Resistance of the dry layer, s/m; see `GROUND_SURFACES`. */
  readonly dryLayerSPerM: Band;
}

/** Ground under a liner. */
export interface LinedGround extends Named {
  readonly areaM2: Band;
  readonly groundTemperatureC: Band;
  /** Permeance of the sheet, kg/(m²·s·Pa); see `LAYERS`. */
  readonly sheetKgPerM2SPa: Band;
  /** Open share of the area, 0..1; see `WORKMANSHIP`. Leave out what is entered as seams, edges or piers. */
  readonly openFraction: Band;
  /** Resistance of the ground below, s/m. Ground under a liner is damp: 500 is common. */
  readonly dryLayerSPerM: Band;
}

/** Laps of a liner that are not sealed. */
export interface LinerSeam extends Named {
  readonly lengthM: Band;
  /** Mean opening of the lap, m. */
  readonly gapM: Band;
  readonly lapM: Band;
  /** Factor for air pumped through the lap; see `SEAM_PUMPING`. 1 for diffusion alone. */
  readonly pumpingFactor: Band;
  readonly groundTemperatureC: Band;
}

/** Open strip of ground along a wall, or round piers and pipes. */
export interface LinerGap extends Named {
  readonly lengthM: Band;
  readonly gapM: Band;
  readonly groundTemperatureC: Band;
  readonly dryLayerSPerM: Band;
}

/** Wall, pier or slab that vapor diffuses through from damp soil. */
export interface DampMasonry extends Named {
  readonly areaM2: Band;
  readonly permeanceKgPerM2SPa: Band;
  /** Temperature of the damp side, °C; it is taken as saturated. */
  readonly behindTemperatureC: Band;
}

/** Masonry that draws water from the ground and gives it off on the crawl side. */
export interface WickingMasonry extends Named {
  readonly lengthM: Band;
  readonly faceHeightM: Band;
  readonly thicknessM: Band;
  /** Sorptivity, m/s^0.5; 1 mm/min^0.5 is 1.29e-4. */
  readonly sorptivityMPerRootS: Band;
  readonly wetPorosity: Band;
  readonly surfaceTemperatureC: Band;
}

/** Free water, or a surface that may be below the dew point. */
export interface WaterSurface extends Named {
  readonly areaM2: Band;
  readonly temperatureC: Band;
}

/** Air that comes into the space. */
export interface AirStream extends Named {
  /** Volume flow into the space, m³/s. */
  readonly flowM3PerS: Band;
  /** kg of vapor per kg of dry air. */
  readonly humidityRatio: Band;
}

/** Water that the user enters as an amount; negative where it is taken out. */
export interface EnteredSource extends Named {
  readonly kgPerDay: Band;
}

/** How a dehumidifier's removal is known. */
export type Dehumidifier =
  /** Its water was collected and measured. */
  | { readonly kind: 'collected'; readonly kgPerDay: Band }
  /** It runs a known share of the time, 1 for all of it. */
  | {
      readonly kind: 'running';
      /** Capacity at 80 °F/60 %, kg/day; convert other labels with `convertCapacity`. */
      readonly ratedKgPerDay: Band;
      readonly runFraction: Band;
      readonly cold?: ColdBehavior;
      readonly lowestAirC?: number;
    }
  /** It holds the air at a setting as far as it can. */
  | {
      readonly kind: 'humidistat';
      readonly ratedKgPerDay: Band;
      readonly setRelativeHumidity: number;
      readonly cold?: ColdBehavior;
      readonly lowestAirC?: number;
    };

/** State of the crawl air: read on site, or to be solved for. */
export type BudgetState =
  /** Each path at the air as it was read; what they leave over is storage or not explained. */
  | { readonly kind: 'read'; readonly relativeHumidity: Band }
  /** The humidity at which all paths balance; `range: false` leaves its range out, which is most of the work. */
  | { readonly kind: 'steady'; readonly range?: boolean };

/** Everything that wets or dries the air of one crawl space in one state. Lists that are left out are empty. */
export interface BudgetInput {
  readonly state: BudgetState;
  readonly airTemperatureC: Band;
  /** Barometric pressure, Pa. */
  readonly pressurePa: number;
  /** Vapor transfer coefficient of all surfaces, m/s; 0.002 (0.0014 to 0.0028), assumed, when absent. */
  readonly surfaceTransferMPerS?: Band;
  readonly openGround?: readonly OpenGround[];
  readonly linedGround?: readonly LinedGround[];
  readonly seams?: readonly LinerSeam[];
  readonly edges?: readonly LinerGap[];
  readonly piers?: readonly LinerGap[];
  readonly standingWater?: readonly WaterSurface[];
  readonly dampMasonry?: readonly DampMasonry[];
  readonly wickingMasonry?: readonly WickingMasonry[];
  /** Ducts, pipes, blocks that may be below the dew point. They only take water: what they lost before is not known. */
  readonly coldSurfaces?: readonly WaterSurface[];
  /** Outdoor air into the space, with what makes up for air that goes up into the house. */
  readonly outsideAir?: AirStream;
  /** Air between house and space: positive comes down, negative goes up. */
  readonly houseAir?: AirStream;
  /** Other air into the space, such as leaks of supply ducts. */
  readonly otherAir?: readonly AirStream[];
  readonly entered?: readonly EnteredSource[];
  readonly dehumidifier?: Dehumidifier;
}
