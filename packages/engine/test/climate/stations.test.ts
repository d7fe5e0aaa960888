import { describe, expect, it } from 'vitest';
import { checkMonthly } from '../../src/climate/given-months.ts';
import { deepGroundTemperatureC } from '../../src/climate/ground-temperature.ts';
import { nearestStation, STATIONS, stationById } from '../../src/climate/stations.ts';

describe('built-in stations', () => {
  it('are 22, each with its own id and twelve months', () => {
    expect(new Set(STATIONS.map((station) => station.id)).size).toBe(22);
    for (const station of STATIONS) {
      const checked = checkMonthly(station.monthly.months, station.monthly.source);
      expect(checked.ok ? [] : checked.issues).toEqual([]);
      expect(station.monthly.source).toContain('NREL/TP-581-43156');
      for (const month of station.monthly.months) {
        expect(month.temperatureMinC!).toBeLessThan(month.temperatureMeanC);
        expect(month.temperatureMaxC!).toBeGreaterThan(month.temperatureMeanC);
        expect(month.globalHorizontalMeanWPerM2!).toBeGreaterThan(0);
      }
    }
  });

  it('are found by id, and no other', () => {
    expect(stationById('duluth_mn')?.place.name).toBe('Duluth, MN');
    expect(stationById('nowhere_zz')).toBeUndefined();
  });
});

describe('the nearest station', () => {
  it('of a station is the station itself, without a notice', () => {
    for (const station of STATIONS) {
      const found = nearestStation(station.place);
      expect(found.station.id).toBe(station.id);
      expect(found.distanceKm).toBe(0);
      expect(found.notices).toEqual([]);
    }
  });

  it('lies at the great-circle distance: one degree of a meridian is 111.2 km', () => {
    const { place } = stationById('miami_fl')!;
    const found = nearestStation({ latitudeDeg: place.latitudeDeg - 1, longitudeDeg: place.longitudeDeg });
    expect(found.station.id).toBe('miami_fl');
    expect(found.distanceKm).toBeCloseTo((Math.PI * 6371.0088) / 180, 6);
    expect(found.notices).toEqual([]);
  });

  it('is looked for across the date line', () => {
    expect(nearestStation({ latitudeDeg: 53, longitudeDeg: 175 }).station.id).toBe('sand_point_ak');
  });

  it('is said to be far beyond 150 km', () => {
    const { latitudeDeg, longitudeDeg } = stationById('miami_fl')!.place;
    const south = (km: number): string[] =>
      nearestStation({ latitudeDeg: latitudeDeg - km / 111.195, longitudeDeg }).notices.map((n) => n.code);
    expect(south(149)).toEqual([]);
    expect(south(151)).toEqual(['station-far']);
  });

  it('is said to be lower or higher by more than 300 m', () => {
    const { place } = stationById('denver_co')!;
    const at = (elevationM: number): string[] =>
      nearestStation({ ...place, elevationM }).notices.map((n) => n.message);
    expect(at(place.elevationM + 300)).toEqual([]);
    expect(at(place.elevationM + 900)[0]).toContain('900 m higher');
    expect(at(place.elevationM + 900)[0]).toContain('6 K colder');
    expect(at(place.elevationM - 301)[0]).toContain('301 m lower');
  });

  it.each([
    { latitudeDeg: 91, longitudeDeg: 0 },
    { latitudeDeg: 0, longitudeDeg: 181 },
    { latitudeDeg: Number.NaN, longitudeDeg: 0 },
    { latitudeDeg: 0, longitudeDeg: 0, elevationM: 1e6 },
  ])('of %o is refused', (at) => {
    expect(() => nearestStation(at)).toThrow();
  });
});

describe('deep ground', () => {
  it('is at the mean of the year, days counted', () => {
    const months = STATIONS[0]!.monthly.months.map((month, m) => ({
      ...month,
      temperatureMeanC: m === 1 ? 10 : 0,
    }));
    const figure = deepGroundTemperatureC({ months, source: 'made' });
    expect(figure.value).toBeCloseTo((10 * 28) / 365, 12);
    expect(figure.notices.map((notice) => notice.code)).toEqual(['deep-ground-from-air']);
  });
});
