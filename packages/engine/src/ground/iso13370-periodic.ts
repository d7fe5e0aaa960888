import { type SuspendedFloor, suspendedFloor } from './iso13370.ts';
import { periodicDepthM, type Soil } from './soil-types.ts';

/** Heat flow of the annual swings, on top of the steady flow of `suspendedFloor`. */
export interface PeriodicCoefficients {
  /** W per K of swing of the house temperature. */
  readonly insideWPerK: number;
  /** W per K of swing of the outdoor temperature. */
  readonly outsideWPerK: number;
}

/**
 * Annual periodic coefficients of a suspended floor, W/K.
 *
 * Source: ISO 13370:2017 annex H, suspended floors; the outside coefficient was seen in a quotation, the inside one is
 * from memory (its quotation had lost the reciprocal that makes it W/K).
 * @param floor the floor; its ground conductivity is replaced by that of the soil
 * @throws EngineError as `suspendedFloor`
 */
export function suspendedFloorPeriodic(
  floor: Omit<SuspendedFloor, 'groundConductivityWPerMK'>,
  soil: Pick<Soil, 'conductivityWPerMK' | 'heatCapacityJPerM3K'>,
): PeriodicCoefficients {
  const conductivity = soil.conductivityWPerMK;
  const { value } = suspendedFloor({ ...floor, groundConductivityWPerMK: conductivity });
  const depth = periodicDepthM(soil);
  const ground = conductivity / depth + value.sidesWPerM2K;
  return {
    insideWPerK: floor.areaM2 / (1 / floor.floorWPerM2K + 1 / ground),
    outsideWPerK:
      (floor.floorWPerM2K *
        (0.37 * floor.exposedPerimeterM * conductivity * Math.log(depth / value.equivalentThicknessM + 1) +
          value.sidesWPerM2K * floor.areaM2)) /
      (ground + floor.floorWPerM2K),
  };
}
