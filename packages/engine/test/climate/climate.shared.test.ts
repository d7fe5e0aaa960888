import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { deepGroundTemperatureC } from '../../src/climate/ground-temperature.ts';
import { type ClimateMonth, monthlyOf } from '../../src/climate/monthly.ts';
import { readWeather } from '../../src/climate/read-weather.ts';
import { stationDewPointC } from '../../src/climate/station-dew-point.ts';
import { stationById } from '../../src/climate/stations.ts';
import type { ClimateYear } from '../../src/climate/year.ts';
import { vaporPressureFromHumidityRatioPa } from '../../src/psychrometrics/humidity-ratio.ts';

const shared = process.env.UNDERCROFT_SHARED;
if (!shared) {
  process.stderr.write(
    'NOT RUN: climate.shared.test.ts needs UNDERCROFT_SHARED, the path of the shared reference data.\n',
  );
}

/** Rows of a comma-separated table without quoted fields, by column name. */
function table(path: string): Record<string, string>[] {
  const [head, ...rows] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  const names = head!.split(',');
  return rows.map((row) => Object.fromEntries(row.split(',').map((value, c) => [names[c]!, value])));
}

describe.skipIf(!shared)('typical years of the shared data', () => {
  const folder = join(shared ?? '.', 'data', 'weather');
  const files = shared ? readdirSync(folder).filter((name) => name.endsWith('.gz')) : [];
  const monthly = shared ? table(join(folder, 'tmy_monthly.csv')) : [];
  const stations = shared ? table(join(folder, 'stations.csv')) : [];

  it('has 22 files', () => {
    expect(files).toHaveLength(22);
  });

  it('have head lines whose ground temperatures at 4 m stand about the same mean', () => {
    const deep = table(join(folder, 'ground_temperatures.csv')).filter((row) => Number(row.depth_m) === 4);
    expect(deep).toHaveLength(20);
    for (const row of deep) {
      const months = stationById(row.station!)!.monthly.months.map((month, m) => ({
        ...month,
        temperatureMeanC: Number(row[`m${String(m + 1).padStart(2, '0')}_c`]),
      }));
      const ground = deepGroundTemperatureC({ months, source: 'head lines' }).value;
      const ours = deepGroundTemperatureC(stationById(row.station!)!.monthly).value;
      expect(Math.abs(ours - ground), row.station).toBeLessThan(0.16);
    }
  });

  it.each(files)('%s agrees with its monthly and annual statistics', (file) => {
    const id = file.split('.')[0]!;
    const result = readWeather(gunzipSync(readFileSync(join(folder, file))), file);
    if (!result.ok) throw new Error(result.issues.map((issue) => issue.message).join('\n'));
    const { year } = result;
    expect(year.kind).toBe('typical-year-file');
    expect(year.repairs.count).toBe(0);

    // Half a unit of the last digit of the table, and a hair for values that lie on the half.
    const cent = 0.005 + 1e-6;
    const rows = monthly.filter((row) => row.station === id);
    expect(rows).toHaveLength(12);
    monthlyOf(year).months.forEach((month, m) => {
      const row = rows[m]!;
      const near = (name: string, actual: number, tolerance = cent): void => {
        expect(Math.abs(actual - Number(row[name])), `${id} month ${m + 1} ${name}`).toBeLessThanOrEqual(
          tolerance,
        );
      };
      near('t_mean_c', month.temperatureMeanC);
      near('dew_point_mean_c', month.dewPointMeanC);
      near('humidity_ratio_g_kg', month.humidityRatioMean * 1000);
      near('pressure_kpa', month.pressurePa / 1000);
      near('wind_m_s', month.windSpeedMPerS);
      near('t_abs_min_c', month.temperatureMinC!);
      near('t_abs_max_c', month.temperatureMaxC!);
      // The table rounds the mean daily lowest and highest each.
      const range = Number(row.t_mean_daily_max_c) - Number(row.t_mean_daily_min_c);
      expect(Math.abs(month.dailyRangeK - range), `${id} month ${m + 1} range`).toBeLessThanOrEqual(2 * cent);
    });

    // The built-in table was computed from these files and rounded as stated with it.
    const built = stationById(id)!;
    const actual = monthlyOf(year).months;
    built.monthly.months.forEach((month, m) => {
      const within = (name: keyof ClimateMonth, tolerance: number): void => {
        const gap = Math.abs(month[name]! - actual[m]![name]!);
        expect(gap, `${id} month ${m + 1} built-in ${name}`).toBeLessThanOrEqual(tolerance + 1e-9);
      };
      within('temperatureMeanC', 0.005);
      within('dewPointMeanC', 0.005);
      within('humidityRatioMean', 0.000005);
      within('pressurePa', 5);
      within('windSpeedMPerS', 0.005);
      within('dailyRangeK', 0.01);
      within('temperatureMinC', 0);
      within('temperatureMaxC', 0);
      within('globalHorizontalMeanWPerM2', 0.05);
    });

    const station = stations.find((row) => row.station === id)!;
    const dewPoint = dewPointOf(year);
    expect(Math.abs(mean(year.temperatureC) - Number(station.t_mean_c))).toBeLessThanOrEqual(cent);
    expect(Math.abs(mean(dewPoint) - Number(station.dew_point_mean_c))).toBeLessThanOrEqual(cent);
    expect(
      Math.abs(mean(year.humidityRatio) * 1000 - Number(station.humidity_ratio_g_kg)),
    ).toBeLessThanOrEqual(cent);
    // The column's limit is 55 °F, 12.78 °C: counted so, all stations agree to the hour (12.8 itself counts).
    expect(dewPoint.filter((value) => value > (55 - 32) / 1.8).length).toBe(
      Number(station.hours_dew_point_above_12_8_c),
    );
    expect(built.ieccZone).toBe(station.iecc_zone);
    expect(built.moistureRegime).toBe(station.moisture_regime);
    expect({ ...built.place, name: '' }).toEqual({ ...year.place, name: '' });
    expect(year.place.latitudeDeg).toBe(Number(station.lat));
    expect(year.place.longitudeDeg).toBe(Number(station.lon));
    expect(year.place.elevationM).toBe(Number(station.elev_m));
    expect(year.place.utcOffsetHours).toBe(Number(station.utc_offset_h));
  });
});

function dewPointOf(year: ClimateYear): Float64Array {
  return year.humidityRatio.map((ratio, hour) =>
    stationDewPointC(vaporPressureFromHumidityRatioPa(ratio, year.pressurePa[hour]!)),
  );
}

function mean(series: Float64Array): number {
  return series.reduce((sum, value) => sum + value, 0) / series.length;
}
