import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { ClimateMonth, MonthlyClimate } from './monthly.ts';
import { COLD_STATIONS } from './station-data/cold.ts';
import { DRY_STATIONS } from './station-data/dry.ts';
import { HOT_HUMID_STATIONS } from './station-data/hot-humid.ts';
import { MARINE_STATIONS } from './station-data/marine.ts';
import { MIXED_HUMID_STATIONS } from './station-data/mixed-humid.ts';
import type { StationRow } from './station-data/row.ts';
import type { Place } from './year.ts';

/** A built-in weather station with its monthly statistics. */
export interface ClimateStation {
  /** Stable id, e.g. `greensboro_nc`. */
  readonly id: string;
  readonly place: Place;
  /** Zone of the energy code's climate map, e.g. `4A` (zones as of IECC 2012). */
  readonly ieccZone: string;
  /** Moisture regime in words, e.g. `mixed-humid`. */
  readonly moistureRegime: string;
  readonly monthly: MonthlyClimate;
}

/** A station for a place that has none, how far off it is, and what that means. */
export interface NearestStation {
  readonly station: ClimateStation;
  readonly distanceKm: number;
  readonly notices: readonly Notice[];
}

/** Beyond this distance a station may stand for another climate, km. Common practice, no source. */
const FAR_KM = 150;

/** Beyond this difference in elevation temperatures differ by about 2 K (standard lapse 6.5 K/km), m. */
const HIGH_M = 300;

/** Mean radius of the Earth, km (IUGG). */
const EARTH_RADIUS_KM = 6371.0088;

/**
 * The built-in stations, in the order of their ids.
 *
 * Source: NREL TMY3 typical years (NREL/TP-581-43156, 2008), months of 1976-2005; see `StationRow`.
 */
export const STATIONS: readonly ClimateStation[] = [
  ...COLD_STATIONS,
  ...DRY_STATIONS,
  ...HOT_HUMID_STATIONS,
  ...MARINE_STATIONS,
  ...MIXED_HUMID_STATIONS,
]
  .map(stationOf)
  .sort((a, b) => (a.id < b.id ? -1 : 1));

/** The station with this id, or `undefined`. */
export function stationById(id: string): ClimateStation | undefined {
  return STATIONS.find((station) => station.id === id);
}

/**
 * The built-in station nearest to a place, by great-circle distance. Notices say when it is more than 150 km away or,
 * where the place's elevation is given, more than 300 m higher or lower; the temperatures are not corrected.
 * @param at position in degrees, north and east positive; elevation in m above sea level where known
 * @throws EngineError `not-finite` or `out-of-range` for a position that is none
 */
export function nearestStation(at: {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM?: number;
}): NearestStation {
  requireRange('latitude in degrees', at.latitudeDeg, -90, 90);
  requireRange('longitude in degrees', at.longitudeDeg, -180, 180);
  if (at.elevationM !== undefined) requireRange('elevation in m', at.elevationM, -450, 9000);
  let station = STATIONS[0]!;
  let distanceKm = Infinity;
  for (const candidate of STATIONS) {
    const distance = distanceBetweenKm(at, candidate.place);
    if (distance < distanceKm) {
      distanceKm = distance;
      station = candidate;
    }
  }
  return { station, distanceKm, notices: noticesFor(station, distanceKm, at.elevationM) };
}

function noticesFor(station: ClimateStation, distanceKm: number, elevationM: number | undefined): Notice[] {
  const notices: Notice[] = [];
  if (distanceKm > FAR_KM) {
    notices.push({
      code: 'station-far',
      message:
        `The nearest built-in station, ${station.place.name}, is ${Math.round(distanceKm)} km away; its climate may ` +
        'differ. Give a weather file or monthly values of the place.',
    });
  }
  const rise = (elevationM ?? station.place.elevationM) - station.place.elevationM;
  if (Math.abs(rise) > HIGH_M) {
    notices.push({
      code: 'station-elevation',
      message:
        `The place is ${Math.round(Math.abs(rise))} m ${rise > 0 ? 'higher' : 'lower'} than the station ` +
        `${station.place.name} (${station.place.elevationM} m); expect it about ` +
        `${(Math.abs(rise) * 0.0065).toFixed(0)} K ${rise > 0 ? 'colder' : 'warmer'}.`,
    });
  }
  return notices;
}

/** Great-circle distance in km (haversine form, good at all distances). */
function distanceBetweenKm(
  a: { readonly latitudeDeg: number; readonly longitudeDeg: number },
  b: { readonly latitudeDeg: number; readonly longitudeDeg: number },
): number {
  const radians = Math.PI / 180;
  const sinLatitude = Math.sin(((b.latitudeDeg - a.latitudeDeg) * radians) / 2);
  const sinLongitude = Math.sin(((b.longitudeDeg - a.longitudeDeg) * radians) / 2);
  const h =
    sinLatitude * sinLatitude +
    Math.cos(a.latitudeDeg * radians) * Math.cos(b.latitudeDeg * radians) * sinLongitude * sinLongitude;
  return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(h)));
}

function stationOf(row: StationRow): ClimateStation {
  const months = row.temperatureMeanC.map(
    (temperatureMeanC, m): ClimateMonth => ({
      temperatureMeanC,
      dailyRangeK: row.dailyRangeK[m]!,
      dewPointMeanC: row.dewPointMeanC[m]!,
      humidityRatioMean: row.humidityRatioMean[m]!,
      pressurePa: row.pressurePa[m]!,
      windSpeedMPerS: row.windSpeedMPerS[m]!,
      temperatureMinC: row.temperatureMinC[m]!,
      temperatureMaxC: row.temperatureMaxC[m]!,
      globalHorizontalMeanWPerM2: row.globalHorizontalMeanWPerM2[m]!,
    }),
  );
  return {
    id: row.id,
    place: {
      name: row.name,
      latitudeDeg: row.latitudeDeg,
      longitudeDeg: row.longitudeDeg,
      elevationM: row.elevationM,
      utcOffsetHours: row.utcOffsetHours,
    },
    ieccZone: row.ieccZone,
    moistureRegime: row.moistureRegime,
    monthly: {
      months,
      source: `Monthly statistics of the NREL TMY3 typical year of station ${row.stationNumber}, ${row.name} (NREL/TP-581-43156, months of 1976-2005)`,
    },
  };
}
