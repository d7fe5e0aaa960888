import { criteria } from '@undercroft/engine';
import { describe, expect, it } from 'vitest';
import { assess, type DefectResult } from '../../src/index.ts';
import { demoJob, finding, madeJob, observation } from './made.ts';

const of = (defects: readonly DefectResult[], key: string): DefectResult => {
  const found = defects.find((d) => d.key === key);
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
};

describe('the defects of a doubted liner', () => {
  const job = demoJob('doubted-liner');
  const result = assess(job, undefined, { season: 'none', coverage: false });
  const { defects } = result;

  it('hold every finding of the surveyor, each shown by what was measured as well', () => {
    for (const { id, defect } of job.findings) {
      const found = of(defects, defect);
      expect(
        found.findings.map((f) => f.id),
        defect,
      ).toContain(id);
      expect(found, defect).toMatchObject({ state: 'shown', certainty: 'measured', source: 'both' });
    }
  });

  it('hold faults that no finding names, from readings and drawing alone', () => {
    for (const key of ['old-liner-below', 'drain-disconnected', 'sweating-ducts', 'condensate-pump-loose']) {
      expect(of(defects, key), key).toMatchObject({ state: 'shown', source: 'measured', findings: [] });
    }
  });

  it('bill the five piers without a wrap and the one without a seal of fourteen', () => {
    const piers = of(defects, 'piers-not-wrapped');
    expect(piers.bill).toMatchObject({ unit: 'each', assumed: false });
    const open = job.plan.piers.filter((p) => p.wrapHeightM === 0 || p.wrapSealed === false);
    expect(piers.bill.value).toBe(open.length);
    expect([...piers.items].sort()).toEqual(open.map((p) => p.id).sort());
  });

  it('bill the loose edge of 5.6 + 2.1 + 3.9 m and the seam of 15.85 - 9.4 m without tape', () => {
    expect(of(defects, 'glued-edge-letting-go').bill.value).toBeCloseTo(11.6, 9);
    expect(of(defects, 'seams-not-sealed').bill.value).toBeCloseTo(52 * 0.3048 - 9.4, 6);
  });

  it('bill bare ground under the duct there and not twice', () => {
    // 28 ft by 1.2 ft under the trunk, 7 ft by 5 ft in the corner, and 1.9 m² counted through the liner.
    const squareFoot = 0.3048 ** 2;
    expect(of(defects, 'bare-strip-under-ducts').bill.value).toBeCloseTo(28 * 1.2 * squareFoot, 6);
    expect(of(defects, 'exposed-earth').bill.value).toBeCloseTo(35 * squareFoot + 1.9, 6);
  });

  it('stand surest and gravest first, and know where they are', () => {
    const shown = defects.filter((d) => d.state === 'shown').map((d) => d.severity);
    expect(shown).toEqual([...shown].sort((a, b) => b - a));
    const places = of(defects, 'piers-not-wrapped').places;
    expect(places.some((p) => p.from === 'finding' && p.at !== undefined)).toBe(true);
    expect(places.filter((p) => p.from === 'item')).toHaveLength(6);
  });

  it('count to the whole catalogue', () => {
    const total = Object.values(result.defectsCount).reduce((sum, n) => sum + n, 0);
    expect(total).toBe(criteria.defects.length);
    expect(result.defectsNotShown).toHaveLength(result.defectsCount.notShown);
    const named = new Set([...defects, ...result.defectsNotShown].map((d) => d.key));
    expect(named.size).toBe(criteria.defects.length - result.defectsCount.absent);
  });

  it('lead only to defects that are there too', () => {
    const there = new Set(defects.map((d) => d.key));
    for (const d of defects)
      for (const key of [...d.leadsTo, ...d.causedBy]) expect(there.has(key)).toBe(true);
  });
});

describe('the defects of a sound space', () => {
  it('are none; droplets under the liner are no defect', () => {
    const { defects } = assess(demoJob('sound-closed'), undefined, { season: 'none', coverage: false });
    expect(defects.filter((d) => d.severity > 0).map((d) => d.key)).toEqual([]);
    expect(of(defects, 'damp-under-liner').severity).toBe(0);
  });
});

describe('a finding', () => {
  const assessed = (made: Parameters<typeof madeJob>[0]) =>
    assess(madeJob(made), undefined, { season: 'none', coverage: false }).defects;

  it('without picture or reading is claimed, with one it is seen', () => {
    const bare = of(assessed({ findings: [finding('dead-zones')] }), 'dead-zones');
    expect(bare).toMatchObject({ state: 'claimed', certainty: 'suspected', source: 'finding' });
    const observations = [observation('airRelativeHumidityMean7Day', 0.7)];
    const cited = {
      findings: [finding('dead-zones', { observationIds: [observations[0].id] })],
      observations,
    };
    expect(of(assessed(cited), 'dead-zones')).toMatchObject({ state: 'shown', certainty: 'seen' });
  });

  it('that measured the quantity of its defect is evidence itself', () => {
    const measured = { quantity: 'humiditySpread', value: 0.15 };
    const found = of(assessed({ findings: [finding('dead-zones', { measured })] }), 'dead-zones');
    expect(found).toMatchObject({ state: 'shown', certainty: 'measured', source: 'both' });
    expect(found.evidence[0].origin).toMatchObject({ kind: 'finding', id: 'f-dead-zones' });
  });

  it('against what was measured is contradicted, and both are kept', () => {
    const made = {
      findings: [finding('dead-zones')],
      observations: [observation('humiditySpread', 0.04)],
    };
    const found = of(assessed(made), 'dead-zones');
    expect(found.state).toBe('contradicted');
    expect(found.findings).toHaveLength(1);
    expect(found.against).toHaveLength(1);
    expect(found.mendedNot).toBeDefined();
  });

  it('of bare ground is not refuted by a drawing without a bare zone', () => {
    expect(of(assessed({ findings: [finding('exposed-earth')] }), 'exposed-earth').state).toBe('claimed');
  });

  it('that the catalogue does not have is shown as it was written, with its own grade', () => {
    const found = of(
      assessed({ findings: [finding('other', { title: 'A bees’ nest', severity: 3 })] }),
      'other',
    );
    expect(found).toMatchObject({ name: 'A bees’ nest', severity: 3, state: 'claimed', subject: 'other' });
  });
});
