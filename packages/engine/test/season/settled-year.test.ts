import { describe, expect, it } from 'vitest';
import { crawlNetwork } from '../../src/airflow/build.ts';
import { stationById } from '../../src/climate/stations.ts';
import { synthesizeYear } from '../../src/climate/synthesize.ts';
import { defaultSeasonCase } from '../../src/season/default-case.ts';
import { runSeason } from '../../src/season/run.ts';
import type { SeasonCase } from '../../src/season/season-case.ts';

/**
 * The spin-up runs in half-day steps, whose steady year lies up to 0.1 K of soil beside that of the hours. A year that
 * was started there must be followed by one that is started where it ended, or no number of tries ever repeats.
 */
describe('a year that repeats', () => {
  const rows: { name: string; change: Partial<SeasonCase> }[] = [
    { name: 'vented by its pressures', change: vented(120 / 150) },
    { name: 'low and vented', change: { ...vented(120 / 150), heightM: 0.4 } },
    { name: 'almost tight', change: fixed(0.02) },
  ];

  it.each(rows)('$name: settles, and goes on as it began', ({ name, change }) => {
    const station = stationById('denver_co')!;
    const weather = synthesizeYear(station.monthly, station.place, 1);
    const result = runSeason([{ ...defaultSeasonCase(weather), ...change, name }], weather)[0]!;
    expect(result.ending.converged).toBe(true);
    expect(result.ending.residual).toBeLessThanOrEqual(1);
    expect(result.notices.map((notice) => notice.code)).not.toContain('year-not-settled');
  });
});

function vented(netFreeAreaM2: number): Partial<SeasonCase> {
  const { network } = crawlNetwork({
    floorAreaM2: 120,
    crawlHeightM: 0.9,
    vents: [{ netFreeAreaM2, state: 'open' }],
    walls: 'as-built',
    floor: 'as-built',
    house: {},
  });
  return { airExchange: { kind: 'network', network } };
}

function fixed(airChangesPerHour: number): Partial<SeasonCase> {
  return {
    airExchange: {
      kind: 'fixed',
      airChangesPerHour,
      perKelvin: 0,
      referenceC: 20,
      houseAirChangesPerHour: 0,
    },
  };
}
