import { HOURS_PER_YEAR } from '../climate/calendar.ts';
import { loopRoom } from './loop-room.ts';
import { stepPlaces } from './step-values.ts';
import { waterPlaces } from './store-places.ts';

const {
  AIR_C,
  DEW_POINT_C,
  FANS_W,
  GROUND_C,
  HUMIDITY_RATIO,
  MACHINES_W,
  OUTDOOR_KG_PER_S,
  RELATIVE_HUMIDITY,
  WATER_MACHINES,
} = stepPlaces;
const { WOOD_CORE, WOOD_STRIDE, WOOD_SURFACE } = waterPlaces;
const { c, values, wood } = loopRoom;

/** Hourly series of one case, 8760 values each. Means of the hour; wood and mold at its end. */
export interface SeasonHourly {
  readonly temperatureC: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly humidityRatio: Float64Array;
  readonly dewPointC: Float64Array;
  readonly groundSurfaceC: Float64Array;
  /** Of the joists. */
  readonly woodMoistureSurface: Float64Array;
  readonly woodMoistureCore: Float64Array;
  readonly girderMoistureSurface: Float64Array;
  readonly sillMoistureSurface: Float64Array;
  /** Highest on any surface, in the class that the case gives it. */
  readonly moldIndex: Float64Array;
  readonly airChangesPerHour: Float64Array;
  readonly waterRemovedKg: Float64Array;
  readonly energyKWh: Float64Array;
}

export function createHourly(): SeasonHourly {
  const series = () => new Float64Array(HOURS_PER_YEAR);
  return {
    temperatureC: series(),
    relativeHumidity: series(),
    humidityRatio: series(),
    dewPointC: series(),
    groundSurfaceC: series(),
    woodMoistureSurface: series(),
    woodMoistureCore: series(),
    girderMoistureSurface: series(),
    sillMoistureSurface: series(),
    moldIndex: series(),
    airChangesPerHour: series(),
    waterRemovedKg: series(),
    energyKWh: series(),
  };
}

/** Keeps hour `i` of the series, whose means and stores stand in the working room. */
export function keepHour(hourly: SeasonHourly, i: number, moldIndex: number): void {
  hourly.temperatureC[i] = values[AIR_C]!;
  hourly.relativeHumidity[i] = values[RELATIVE_HUMIDITY]!;
  hourly.humidityRatio[i] = values[HUMIDITY_RATIO]!;
  hourly.dewPointC[i] = values[DEW_POINT_C]!;
  hourly.groundSurfaceC[i] = values[GROUND_C]!;
  hourly.woodMoistureSurface[i] = wood[WOOD_SURFACE]!;
  hourly.woodMoistureCore[i] = wood[WOOD_CORE]!;
  hourly.girderMoistureSurface[i] = wood[WOOD_STRIDE + WOOD_SURFACE]!;
  hourly.sillMoistureSurface[i] = wood[2 * WOOD_STRIDE + WOOD_SURFACE]!;
  hourly.moldIndex[i] = moldIndex;
  hourly.airChangesPerHour[i] = (3600 * values[OUTDOOR_KG_PER_S]!) / c.airMassKg;
  hourly.waterRemovedKg[i] = -3600 * values[WATER_MACHINES]!;
  hourly.energyKWh[i] = (values[FANS_W]! + values[MACHINES_W]!) / 1000;
}
