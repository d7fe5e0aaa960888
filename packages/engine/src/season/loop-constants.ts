import { CONDENSATION_HEAT_J_PER_KG } from '../dehumidifier/heat.ts';
import { VAPOR_GAS_CONSTANT } from '../moisture/vapor-density.ts';

/** Physical constants of the hourly loop. Taken out as `stepPlaces` are, for the same reason. */
export const loopConstants = {
  /** Specific heat of air, J/(kg·K). */
  AIR_HEAT: 1006,
  /** Mass ratio of water vapor to dry air. */
  MASS_RATIO: 0.621945,
  /** J/(kg·K). */
  VAPOR_GAS_CONSTANT,
  /** J/kg. */
  CONDENSATION_HEAT_J_PER_KG,
} as const;
