import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess, type DefectResult } from '../../src/index.ts';
import { demoJob, finding, madeJob } from './made.ts';

const SOURCES = [
  'exposed-earth',
  'bare-strip-under-ducts',
  'piers-not-wrapped',
  'glued-edge-letting-go',
  'seams-not-sealed',
  'seams-under-lapped',
  'door-frame-edge-open',
  'water-bed',
  'water-on-liner',
  'standing-water',
  'damp-walls',
  'drain-disconnected',
  'outside-water-let-in',
  'water-let-in-from-plumbing-or-dryer',
  'wet-floor-batts',
  'half-vented',
  'vent-loose-board',
  'access-door-leaks',
] as const;

/** Outdoor air that is drier than the space carries water out, so closing its way may leave more. */
const AIR = new Set<string>(['half-vented', 'vent-loose-board', 'access-door-leaks']);

function check(defects: readonly DefectResult[]): void {
  for (const { key, mended, mendedNot } of defects) {
    expect((mended === undefined) !== (mendedNot === undefined), key).toBe(true);
    if (mended === undefined) continue;
    expect(Number.isFinite(mended.waterKgPerDay), key).toBe(true);
    expect(Number.isFinite(mended.relativeHumidity), key).toBe(true);
    expect(Number.isFinite(mended.waterShare ?? 0), key).toBe(true);
    if (!AIR.has(key)) expect(mended.waterKgPerDay, key).toBeGreaterThanOrEqual(-1e-9);
    if (!AIR.has(key)) expect(mended.waterShare ?? 0, key).toBeLessThanOrEqual(1 + 1e-9);
  }
}

describe('mending one defect', () => {
  it('never adds water on its own path, and its share is finite', () => {
    const found = fc.record({
      defect: fc.constantFrom(...SOURCES),
      measured: fc.option(
        fc.record({
          quantity: fc.constantFrom('share', 'lengthM', 'areaM2', 'count'),
          value: fc.double({ min: 0, max: 1, noNaN: true }),
        }),
        { nil: undefined },
      ),
    });
    const ground = fc.constantFrom(
      { cover: 'bare-earth' as const, surface: 'wet' as const },
      { cover: 'bare-earth' as const, surface: 'standing-water' as const },
      { cover: 'gravel' as const },
      { cover: 'slab' as const },
      { cover: 'liner' as const },
      { cover: 'liner' as const, liner: { workmanship: 'sealed' as const } },
      { cover: 'liner' as const, liner: { workmanship: 'laid-and-lapped' as const } },
      { cover: 'liner' as const, liner: { openAreaM2: 2, waterOnTop: 'pond' as const } },
    );
    fc.assert(
      fc.property(ground, fc.array(found, { minLength: 1, maxLength: 5 }), (floor, some) => {
        const findings = some.map(({ defect, measured }, i) =>
          finding(defect, { id: `f${i}`, ...(measured === undefined ? {} : { measured }) }),
        );
        const job = madeJob({ ground: floor, findings, house: { floorInsulationRsi: 2.3 } });
        check(assess(job, undefined, { season: 'none', coverage: false }).defects);
      }),
      { numRuns: 15 },
    );
  });

  it.each(['neglected-vented', 'doubted-liner', 'sound-closed'])('holds for the demo job %s', (name) => {
    check(assess(demoJob(name), undefined, { season: 'none', coverage: false }).defects);
  });

  it('of two defects with the same water says so', () => {
    const { defects } = assess(demoJob('doubted-liner'), undefined, { season: 'none', coverage: false });
    const bed = defects.find((d) => d.key === 'water-bed');
    expect(bed?.mended?.sharesWith).toEqual(expect.arrayContaining(['drain-on-grade', 'drain-disconnected']));
  });

  it('runs the year for the heaviest works of a job, and not for a quick one', () => {
    const job = madeJob({ findings: [finding('damp-walls'), finding('water-on-liner')] });
    const years = (season: 'quick' | 'cases') =>
      assess(job, undefined, { season, coverage: false }).defects.flatMap((d) => d.mended?.year ?? []);
    expect(years('quick')).toHaveLength(0);
    const ran = years('cases');
    expect(ran).toHaveLength(2);
    for (const year of ran) {
      expect(year.daysAbove80).toBeLessThanOrEqual(0);
      expect(year.peakMoldIndex).toBeLessThanOrEqual(1e-9);
      expect(year.peakWoodMoisture).toBeLessThan(0);
    }
  });
});
