import { dewPointC } from '../psychrometrics/dew-point.ts';
import {
  relativeHumidityFromHumidityRatio,
  vaporPressureFromHumidityRatioPa,
} from '../psychrometrics/humidity-ratio.ts';
import { equilibriumMoistureContent } from '../wood/equilibrium.ts';
import type { FieldModel } from './field-model.ts';

/** What the air of each cell means; by cell of the mesh. */
export interface FieldMaps {
  /** Fraction at the cell's own temperature; above 1 where the air would hold more than it can, and water falls out. */
  readonly relativeHumidity: Float64Array;
  readonly dewPointC: Float64Array;
  /** Moisture content that wood comes to in that air, fraction. */
  readonly woodMoisture: Float64Array;
}

/** Relative humidity, dew point and wood equilibrium of a state. Air above saturation counts as saturated for wood. */
export function fieldMaps(
  { pressurePa }: Pick<FieldModel, 'pressurePa'>,
  state: { readonly humidityRatio: Float64Array; readonly temperatureC: Float64Array },
): FieldMaps {
  const { humidityRatio, temperatureC } = state;
  const relativeHumidity = humidityRatio.map((w, i) =>
    relativeHumidityFromHumidityRatio(temperatureC[i]!, w, pressurePa),
  );
  return {
    relativeHumidity,
    dewPointC: humidityRatio.map((w) => dewPointC(vaporPressureFromHumidityRatioPa(w, pressurePa))),
    woodMoisture: relativeHumidity.map((rh, i) =>
      equilibriumMoistureContent(temperatureC[i]!, Math.min(1, Math.max(0, rh))),
    ),
  };
}
