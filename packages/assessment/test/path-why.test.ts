import { describe, expect, it } from 'vitest';
import { assess, type BudgetPath } from '../src/index.ts';
import { demoJob, plainJob } from './season/jobs.ts';

const flooded = plainJob({ cover: 'liner', liner: { workmanship: 'sealed', waterOnTop: 'pond' } });
flooded.plan.piers = [
  { id: 'p', at: { xM: 3, yM: 3 }, widthM: 0.4, depthM: 0.4, turnDeg: 0, wrapSealed: false },
];
flooded.plan.seams = [
  {
    id: 's',
    path: [
      { xM: 0, yM: 4 },
      { xM: 9, yM: 4 },
    ],
    lapM: 0.2,
  },
];

const JOBS = [
  demoJob('neglected-vented'),
  demoJob('doubted-liner'),
  demoJob('sound-closed'),
  plainJob({ cover: 'bare-earth', surface: 'standing-water' }),
  flooded,
];

const paths = JOBS.flatMap((job) => {
  const { budgets, season } = assess(job, undefined, { season: 'quick' });
  return [...(budgets.surveyDay?.paths ?? []), ...budgets.designMonth.paths, ...(season?.sizing.paths ?? [])];
});

/** The formula of each kind of path in figures, written out from its words. */
const BY_HAND: Readonly<Record<string, (at: (name: string) => number) => number>> = {
  'open-ground': (at) => at('area') * fromGround(at),
  'liner-sheet': (at) => (1 - at('open share')) * at('area') * at('sheet permeance') * pressure(at),
  'liner-open': (at) => at('open share') * at('area') * fromGround(at),
  seam: (at) =>
    at('length') *
    at('pumping factor') *
    at('vapor diffusivity') *
    (at('gap') / at('lap')) *
    (at('saturated vapor density there') - at('vapor density of the air')),
  edge: (at) => at('length') * at('gap') * fromGround(at),
  pier: (at) => at('length') * at('gap') * fromGround(at),
  'standing-water': (at) =>
    at('area') *
    at('vapor transfer coefficient') *
    (at('saturated vapor density there') - at('vapor density of the air')),
  'damp-masonry': (at) => at('area') * at('permeance') * pressure(at),
  'wicking-masonry': (at) => {
    const evaporation = at('evaporation, as a layer of water');
    const height =
      at('sorptivity') * Math.sqrt(at('thickness') / (2 * Math.max(0, evaporation) * at('wet porosity')));
    return evaporation <= 0
      ? 0
      : 1000 * at('length') * evaporation * Math.min(at('face height'), Number.isNaN(height) ? 0 : height);
  },
  'cold-surface': (at) =>
    -at('area') *
    at('vapor transfer coefficient') *
    Math.max(0, at('vapor density of the air') - at('saturated vapor density there')),
  'outside-air': carried,
  'house-air': carried,
  entered: (at) => at('water') / 86_400,
  dehumidifier: (at) =>
    (-at('capacity at 80 °F/60 %') * at('relative capacity at the air') * at('share of time running')) /
    86_400,
};

function fromGround(at: (name: string) => number): number {
  const difference = at('saturated vapor density there') - at('vapor density of the air');
  return difference / (1 / at('vapor transfer coefficient') + at('resistance of the dry layer'));
}

function pressure(at: (name: string) => number): number {
  return at('saturation pressure there') - at('vapor pressure of the air');
}

function carried(at: (name: string) => number): number {
  const difference = at('humidity ratio') - at('humidity ratio of the crawl air');
  return at('air density') * Math.max(0, at('flow')) * difference;
}

function kindOf(path: BudgetPath): string {
  return path.key.split(':')[0];
}

/** Paths that carry what the others leave have no figures of their own. */
const own = paths.filter((p) => p.inputs.length > 0);

describe('why a path carries what it carries', () => {
  it.each([...new Set(own.map(kindOf))])('%s comes out of its inputs and steps by its formula', (kind) => {
    for (const path of own.filter((p) => kindOf(p) === kind)) {
      const figures = new Map([...path.steps, ...path.inputs].map(({ name, value }) => [name, value]));
      const at = (name: string) => {
        const value = figures.get(name);
        if (value === undefined) throw new Error(`${path.key} has no ${name}`);
        return value;
      };
      // Rounding of the engine's tables of saturation against its closed formula.
      const byHand = 86_400 * BY_HAND[kind](at);
      expect(Math.abs(byHand - path.kgPerDay), path.key).toBeLessThan(1e-6 + 1e-6 * Math.abs(byHand));
    }
  });

  it('covers every kind of path of a space', () => {
    const seen = new Set(own.map(kindOf));
    for (const kind of Object.keys(BY_HAND)) expect(seen, kind).toContain(kind);
  });

  it('names a source and says where each input came from', () => {
    for (const path of paths) {
      expect(path.source.citation, path.key).not.toBe('');
      for (const { name, assumed, origin } of path.inputs) {
        if (assumed) expect(origin.note, `${path.key}, ${name}`).toBeDefined();
        if (origin.kind === 'reading' && origin.id !== undefined) expect(origin.who).toBeDefined();
      }
    }
  });

  it('says who read the air and when', () => {
    const { budgets } = assess(demoJob('neglected-vented'), undefined, { season: 'none' });
    const outside = budgets.surveyDay?.paths.find((p) => p.key === 'outside-air');
    const humidity = outside?.inputs.find((i) => i.name === 'humidity ratio');
    expect(humidity?.origin).toMatchObject({ kind: 'reading', who: 'Ines Okafor-Lund' });
    expect(humidity?.assumed).toBe(false);
  });
});
