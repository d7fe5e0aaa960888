import { describe, expect, it } from 'vitest';
import { type Assessment, assess } from '../../src/index.ts';
import { finding, madeJob, observation } from './made.ts';

type Made = Parameters<typeof madeJob>[0];

const assessed = (made: Made): Assessment =>
  assess(madeJob(made), undefined, { season: 'none', coverage: false });
const month = (made: Made) => assessed(made).budgets.designMonth;
const path = (made: Made, key: string) => month(made).paths.find((p) => p.key === key);

describe('what a finding says and the drawing leaves open goes into the balance', () => {
  it('piers without a wrap: all of an open drawing, those that were counted, or those near the finding', () => {
    expect(path({}, 'pier:bare-piers')).toBeUndefined();
    const around = (made: Made) =>
      path(made, 'pier:bare-piers')?.inputs.find((i) => i.name === 'length')?.value;
    // A pier of 0.4 by 0.4 m is 1.6 m around.
    expect(around({ findings: [finding('piers-not-wrapped')] })).toBeCloseTo(8 * 1.6, 9);
    const counted = { measured: { quantity: 'count', value: 3 } };
    expect(around({ findings: [finding('piers-not-wrapped', counted)] })).toBeCloseTo(3 * 1.6, 9);
    const near = { place: { at: { xM: 1.4, yM: 3.2 } } };
    expect(around({ findings: [finding('piers-not-wrapped', near)] })).toBeCloseTo(1.6, 9);
  });

  it('a loose edge: as far as it was measured, else a tenth of the perimeter of 44 m as an assumption', () => {
    const loose = (made: Made) => {
      const { budgets, assumptions } = assessed(made);
      const edge = budgets.designMonth.paths.find((p) => p.key.startsWith('edge:'));
      return {
        lengthM: edge?.inputs.find((i) => i.name === 'length')?.value,
        origin: edge?.inputs.find((i) => i.name === 'length')?.origin.kind,
        assumed: assumptions.some((a) => a.key === 'looseEdgeShare'),
      };
    };
    const by = (quantity: string, value: number) => ({
      findings: [finding('glued-edge-letting-go', { measured: { quantity, value } })],
    });
    expect(loose(by('lengthM', 7.5))).toEqual({ lengthM: 7.5, origin: 'finding', assumed: false });
    expect(loose(by('share', 0.25)).lengthM).toBeCloseTo(11, 9);
    const guessed = loose({ findings: [finding('glued-edge-letting-go')] });
    expect(guessed.lengthM).toBeCloseTo(4.4, 9);
    expect(guessed.assumed).toBe(true);
  });

  it('bare ground: the share that was observed, of 120 m² less eight piers of 0.16 m²', () => {
    const made = {
      findings: [finding('exposed-earth')],
      observations: [observation('exposedEarthFraction', 0.05)],
    };
    const area = path(made, 'open-ground:said-bare')?.inputs.find((i) => i.name === 'area')?.value;
    expect(area).toBeCloseTo(0.05 * 118.72, 9);
    const lined = path(made, 'liner-open:elsewhere')?.inputs.find((i) => i.name === 'area')?.value;
    expect(lined).toBeCloseTo(0.95 * 118.72, 9);
    expect(assessed(made).geometry.bareEarthM2).toBe(0);
  });

  it('a liner cut short under a duct: length times width, unless it was drawn as a zone', () => {
    const duct = {
      id: 'd',
      path: [
        { xM: 2, yM: 5 },
        { xM: 8, yM: 5 },
      ],
      widthM: 0.5,
      linerBeneath: false,
    };
    const strip = path({ plan: { ducts: [duct] } }, 'open-ground:said-strips');
    expect(strip?.inputs.find((i) => i.name === 'area')?.value).toBeCloseTo(3, 9);
    const zone = {
      id: 'strip',
      name: 'Under the duct',
      outline: [
        { xM: 2, yM: 4.7 },
        { xM: 8, yM: 4.7 },
        { xM: 8, yM: 5.3 },
        { xM: 2, yM: 5.3 },
      ],
      ground: { cover: 'bare-earth' as const },
    };
    const drawn = month({ plan: { ducts: [duct], zones: [zone] } }).paths.map((p) => p.key);
    expect(drawn).not.toContain('open-ground:said-strips');
    expect(drawn).toContain('open-ground:strip');
  });

  it('seams without tape where none was drawn, with the lap that was measured', () => {
    const made = {
      findings: [finding('seams-not-sealed', { measured: { quantity: 'lengthM', value: 12 } })],
      observations: [observation('seamLapWidthM', 0.1)],
    };
    const inputs = path(made, 'seam:said-seam')?.inputs;
    expect(inputs?.find((i) => i.name === 'length')?.value).toBeCloseTo(12, 9);
    expect(inputs?.find((i) => i.name === 'lap')?.value).toBeCloseTo(0.1, 9);
  });

  it('an open edge at the door frame is as long as the door is wide', () => {
    const frame = path({ findings: [finding('door-frame-edge-open')] }, 'edge:door');
    expect(frame?.inputs.find((i) => i.name === 'length')?.value).toBeCloseTo(0.8, 9);
  });

  it('water under and on the liner, damp walls, and a leak', () => {
    const keys = (defect: string) => month({ findings: [finding(defect)] }).paths.map((p) => p.key);
    expect(keys('water-on-liner')).toContain('standing-water:pond-elsewhere');
    expect(keys('damp-walls').filter((k) => k.startsWith('wicking-masonry:'))).toHaveLength(4);
    expect(keys('water-let-in-from-plumbing-or-dryer')).toContain('entered:leak');
    const dry = path({}, 'liner-open:elsewhere')?.kgPerDay ?? 0;
    const flooded = path({ findings: [finding('water-bed')] }, 'liner-open:elsewhere')?.kgPerDay ?? 0;
    expect(flooded).toBeGreaterThan(1.2 * dry);
  });
});

describe('nothing is counted twice', () => {
  const same = (a: Made, b: Made) =>
    expect(month(a).paths.map(({ key, kgPerDay }) => [key, kgPerDay])).toEqual(
      month(b).paths.map(({ key, kgPerDay }) => [key, kgPerDay]),
    );

  it('where the drawing says the same as the finding', () => {
    const walls = madeJob().plan.walls.map((w, i) => ({ ...w, linerLooseM: i === 0 ? 3 : 0 }));
    const plan = { walls };
    same({ plan }, { plan, findings: [finding('glued-edge-letting-go')] });
    const piers = madeJob().plan.piers.map((p) => ({ ...p, wrapHeightM: 0.2, wrapSealed: false }));
    same({ plan: { piers } }, { plan: { piers }, findings: [finding('piers-not-wrapped')] });
  });

  it('where two findings say the same', () => {
    const one = finding('water-on-liner');
    same({ findings: [one] }, { findings: [one, { ...one, id: 'again' }] });
  });

  it('where how the liner was laid stands for bare ground already', () => {
    const ground = {
      cover: 'liner' as const,
      surface: 'dark-damp' as const,
      liner: { workmanship: 'torn-or-short' as const },
    };
    same({ ground }, { ground, findings: [finding('exposed-earth'), finding('liner-torn-or-thin')] });
  });

  it('where what was measured speaks against the finding', () => {
    const observations = [observation('freeWaterUnderLinerM', 0)];
    same({ observations }, { observations, findings: [finding('water-bed')] });
  });
});

describe('wet floor batts', () => {
  it('insulate nothing where they are down: half of R 3.3 m²K/W lets through half of a bare floor', () => {
    const house = { floorInsulationRsi: 3.3 };
    const share = { measured: { quantity: 'share', value: 0.5 } };
    const made = { house, findings: [finding('wet-floor-batts', share)] };
    const result = assessed(made);
    expect(result.defects.find((d) => d.key === 'wet-floor-batts')?.state).toBe('shown');
    // More heat comes down from the house of 24 °C into a space that is cooler.
    expect(result.budgets.designMonth.crawl.temperatureC).toBeGreaterThan(
      month({ house }).crawl.temperatureC,
    );
  });
});
