import { describe, expect, it } from 'vitest';
import { assess } from '../../src/index.ts';
import { demoJob, meanOf, plainJob, SUMMER, WINTER } from './jobs.ts';

const NAMES = ['neglected-vented', 'doubted-liner', 'sound-closed'] as const;
const seasons = new Map(NAMES.map((name) => [name, assess(demoJob(name)).season!]));

function finite(value: unknown, path = ''): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, v]) => finite(v, `${path}.${key}`));
}

describe.each(NAMES)('the years of %s', (name) => {
  const { cases, airExchange, sizing } = seasons.get(name)!;

  it('are twelve months of finite figures, settled', () => {
    expect(finite(seasons.get(name))).toEqual([]);
    for (const one of cases) {
      expect(one.months).toHaveLength(12);
      expect(one.settled, one.name).toBe(true);
    }
  });

  it('lose no water and no heat', () => {
    // Books are kept in floating point over 8760 steps; 1e-9 of what moved is far above its rounding.
    for (const one of cases) {
      expect(Math.abs(one.closure.water), one.name).toBeLessThan(1e-9);
      expect(Math.abs(one.closure.energy), one.name).toBeLessThan(1e-9);
    }
  });

  it('cost what their energy costs at the tariff, in whole cents', () => {
    const { tariffCentsPerKWh } = seasons.get(name)!;
    for (const one of cases) expect(one.costCents).toBe(Math.round(one.energyKWh * tariffCentsPerKWh));
  });

  it('sum their months', () => {
    for (const one of cases) {
      const sum = one.months.reduce((all, m) => all + m.waterRemovedKg, 0);
      expect(sum).toBeCloseTo(one.waterRemovedKg, 6);
    }
  });

  it('say for each quarter where the air of the floor goes', () => {
    for (const air of airExchange) {
      expect(air.quarters).toHaveLength(4);
      for (const q of air.quarters) {
        if (q.floorDirection === 'up') expect(q.floorFlowM3PerH).toBeGreaterThan(0);
        expect(q.floorShare).toBeGreaterThanOrEqual(0);
        expect(q.floorShare).toBeLessThanOrEqual(1);
      }
      // A heated house draws air up in winter.
      expect(air.quarters[0].floorDirection).toBe('up');
    }
  });

  it('put four ways of the code beside the load', () => {
    expect(sizing.codeOptions.map((o) => o.key)).toEqual(['exhaust', 'supply', 'plenum', 'dehumidifier']);
    for (const option of sizing.codeOptions) expect(option.warnings.length).toBeGreaterThan(0);
  });
});

describe('a neglected vented space in a mixed, humid climate', () => {
  const { cases, sizing, notices } = seasons.get('neglected-vented')!;
  const asFound = cases[0];
  const all = cases.find((c) => c.kind === 'all-repairs')!;

  it('is wet in summer as found, and dry with all repairs', () => {
    expect(asFound.daysAbove80).toBeGreaterThan(30);
    expect(meanOf(asFound.months, SUMMER, (m) => m.relativeHumidity)).toBeGreaterThan(0.8);
    expect(all.daysAbove80).toBe(0);
    expect(all.peakMoldIndex).toBeLessThan(1);
  });

  it('has one case for each repair that can act, none for one that cannot', () => {
    const single = cases.filter((c) => c.kind === 'repair');
    expect(single.flatMap((c) => c.repairIds)).toEqual(['r1', 'r3', 'r4', 'r5', 'r6', 'r7']);
    expect(all.repairIds).toEqual(['r1', 'r2', 'r3', 'r4', 'r5', 'r6', 'r7']);
  });

  it('gets wetter when its vents are closed over bare earth and nothing else is done', () => {
    const closed = cases.find((c) => c.repairIds.length === 1 && c.repairIds[0] === 'r5')!;
    for (let m = 0; m < 12; m++) {
      expect(closed.months[m].relativeHumidity).toBeGreaterThan(asFound.months[m].relativeHumidity);
    }
    expect(notices.map((n) => n.code)).toContain('wetter-alone');
  });

  it('takes the smallest machine of the list that holds the load', () => {
    expect(sizing.chosen?.id).toBe('m-small');
    const chosen = sizing.machines.find((m) => m.id === 'm-small')!;
    expect(chosen.holdsSteady).toBe(true);
    expect(chosen.steadyRunFraction).toBeLessThanOrEqual(sizing.runMax);
    expect(sizing.withPullDownKgPerDay).toBeGreaterThan(sizing.steadyKgPerDay);
    expect(sizing.pullDown.firstWeekKgPerDay).toBeGreaterThan(sizing.pullDown.meanKgPerDay);
  });

  it('says that the dryer still blows into it', () => {
    expect(notices.map((n) => n.code)).toContain('source-left-in');
    expect(all.waterKg.other).toBeCloseTo(1.8 * 365, 6);
  });

  it.each(['power', 'dehumidifier'] as const)('gets damp in a fortnight without %s', (what) => {
    const failed = cases.find((c) => c.failure?.what === what)!;
    const failure = failed.failure!;
    expect(failure.highestRelativeHumidity).toBeGreaterThan(failure.usualRelativeHumidity + 0.05);
    expect(failure.highestRelativeHumidity).toBeGreaterThanOrEqual(failure.startRelativeHumidity);
    expect(failed.months[6].relativeHumidity).toBeGreaterThan(all.months[6].relativeHumidity);
    expect(failed.months[3].relativeHumidity).toBeCloseTo(all.months[3].relativeHumidity, 3);
    expect(failed.energyKWh).toBeLessThan(all.energyKWh);
    expect(failure.daysToRecover).toBeGreaterThan(0);
    const hours = [failure.hoursUntilAbove60, failure.hoursUntilAbove70, failure.hoursUntilAbove80];
    const met = hours.filter((h) => h !== undefined);
    expect([...met].sort((a, b) => a - b)).toEqual(met);
  });
});

describe('a sound closed space', () => {
  const { cases, sizing } = seasons.get('sound-closed')!;

  it('stays below 60 % in July with its machine, and wettens without it', () => {
    const [asFound] = cases;
    expect(asFound.months[6].relativeHumidity).toBeLessThan(0.6);
    expect(asFound.highestDayRelativeHumidity).toBeLessThan(0.65);
    const failed = cases.find((c) => c.failure?.what === 'dehumidifier')!;
    expect(failed.failure!.highestRelativeHumidity).toBeGreaterThan(failed.failure!.usualRelativeHumidity);
  });

  it('has no repair to run, and judges the machine that stands there', () => {
    expect(cases.map((c) => c.kind)).toEqual(['as-found', 'failure', 'failure']);
    expect(sizing.machines.map((m) => m.from)).toEqual(['found']);
    expect(sizing.chosen).toBeUndefined();
  });
});

describe('vents closed over a liner with 5 % open ground', () => {
  const job = plainJob({ cover: 'liner', surface: 'average', liner: { openFraction: 0.05 } }, [
    'close-vents',
    'ground-liner',
  ]);
  const { cases } = assess(job).season!;
  const [asFound, closed] = cases;

  it('makes the winter wetter than the vented space was', () => {
    expect(closed.name).toMatch(/Vents closed/);
    const rise =
      meanOf(closed.months, WINTER, (m) => m.relativeHumidity) -
      meanOf(asFound.months, WINTER, (m) => m.relativeHumidity);
    expect(rise).toBeGreaterThan(0.05);
  });

  it('does not with a sealed liner under it', () => {
    const all = cases.find((c) => c.kind === 'all-repairs')!;
    expect(meanOf(all.months, WINTER, (m) => m.relativeHumidity)).toBeLessThan(
      meanOf(closed.months, WINTER, (m) => m.relativeHumidity) - 0.1,
    );
  });
});

describe('wood in summer', () => {
  it('holds more water the more outdoor air the space lets in over a sound liner', () => {
    // Field study of 17 New Jersey houses (Custer and Stiles, abstract): joist moisture rises with crawl leakage.
    const lined = { cover: 'liner' as const, liner: { openFraction: 0.002 } };
    const surfaces = [2, 4, 8, 16].map((vents) => {
      const { cases, airExchange } = assess(plainJob(lined, [], { vents })).season!;
      return {
        leakageM2: airExchange[0].leakageM2,
        wood: meanOf(cases[0].months, SUMMER, (m) => m.woodMoistureSurface),
      };
    });
    for (let i = 1; i < surfaces.length; i++) {
      expect(surfaces[i].leakageM2).toBeGreaterThan(surfaces[i - 1].leakageM2);
      expect(surfaces[i].wood).toBeGreaterThan(surfaces[i - 1].wood);
    }
  });
});

describe('the depth of an assessment', () => {
  const job = demoJob('sound-closed');

  it('leaves the year out when asked to', () => {
    expect(assess(job, undefined, { season: 'none' }).season).toBeUndefined();
  });

  it('has no ranking and no chances unless asked for', () => {
    const { season } = assess(job);
    expect(season!.ranking).toBeUndefined();
    expect(season!.chances).toBeUndefined();
  });

  it('gives the same again, and other weather from another seed', () => {
    const again = assess(job).season!;
    expect(again).toEqual(seasons.get('sound-closed'));
    const other = assess(job, undefined, { seed: 2 }).season!;
    expect(other.weather.seed).toBe(2);
    expect(other.cases[0].waterRemovedKg).not.toBe(again.cases[0].waterRemovedKg);
  });

  it('tells its progress in order, to the end', () => {
    const told: number[] = [];
    let total = 0;
    assess(job, undefined, {
      progress: (done, of) => {
        told.push(done);
        total = of;
      },
    });
    expect([...told].sort((a, b) => a - b)).toEqual(told);
    expect(told.at(-1)).toBe(total);
  });
});
