import { climate } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import type { ClimateUsed } from './assessment.ts';
import type { Assumptions } from './assumptions.ts';

/** The climate an assessment uses: monthly means, and the hours behind them where a file was given. */
export interface ChosenClimate {
  readonly used: ClimateUsed;
  readonly place: climate.Place;
  readonly monthly: climate.MonthlyClimate;
  readonly year?: climate.ClimateYear;
}

/** Where a job without a position is taken to be, so that something can be said at all. */
const FALLBACK_STATION = 'greensboro_nc';

function fromStation(
  station: climate.ClimateStation,
  distanceKm: number | undefined,
  notices: ClimateUsed['notices'],
): ChosenClimate {
  const { monthly, place } = station;
  const used = { name: place.name, source: monthly.source, kind: 'built-in monthly statistics', notices };
  return { used: distanceKm === undefined ? used : { ...used, distanceKm }, place, monthly };
}

function fromYear(year: climate.ClimateYear): ChosenClimate {
  return {
    used: { name: year.place.name, source: year.source, kind: year.kind, notices: year.notices },
    place: year.place,
    monthly: climate.monthlyOf(year),
    year,
  };
}

/** The given weather year, else the station that the job names, else the nearest one, else one that is marked assumed. */
export function chooseClimate(
  job: Job,
  year: climate.ClimateYear | undefined,
  assumptions: Assumptions,
): ChosenClimate {
  if (year !== undefined) return fromYear(year);
  const { climateStation, latitudeDeg, longitudeDeg, elevationM } = job.header;
  const named = climateStation === undefined ? undefined : climate.stationById(climateStation);
  if (named !== undefined) return fromStation(named, undefined, []);
  const notices: ClimateUsed['notices'] =
    climateStation === undefined
      ? []
      : [
          {
            code: 'no-such-station',
            message: `There is no built-in station "${climateStation}"; the nearest is taken.`,
          },
        ];
  if (latitudeDeg !== undefined && longitudeDeg !== undefined) {
    const at =
      elevationM === undefined ? { latitudeDeg, longitudeDeg } : { latitudeDeg, longitudeDeg, elevationM };
    const near = climate.nearestStation(at);
    return fromStation(near.station, near.distanceKm, [...notices, ...near.notices]);
  }
  const station = climate.stationById(FALLBACK_STATION) as climate.ClimateStation;
  assumptions.note(
    'place',
    'Place of the house',
    station.place.name,
    'The job has no position; enter latitude and longitude.',
  );
  return fromStation(station, undefined, notices);
}
