import type { JobInput } from '@undercroft/record';
import { DEMO_JOBS, type Job, readJob } from '@undercroft/record';
import { describe, expect, it } from 'vitest';
import { type Assessment, assess, type CausesAssessment } from '../../src/index.ts';

function jobOf(name: string, change: (job: JobInput) => void = () => {}): Job {
  const copy = structuredClone(DEMO_JOBS.find((d) => d.name === name)?.job) as JobInput;
  change(copy);
  const read = readJob(copy);
  if (!read.ok) throw new Error(JSON.stringify(read.issues, null, 1));
  return read.job;
}

function causesOf(job: Job, season: 'none' | 'cases' = 'none'): CausesAssessment {
  return assess(job, undefined, { season }).causes;
}

/** Explanations of a finding, heaviest first. */
const arrowsTo = (causes: CausesAssessment, to: string) => causes.arrows.filter((a) => a.to === to);
const leader = (causes: CausesAssessment, to: string) => arrowsTo(causes, to)[0]?.from;
const weight = (causes: CausesAssessment, from: string, to: string) =>
  causes.arrows.find((a) => a.from === from && a.to === to)?.weight ?? 0;

function observed(job: JobInput, quantity: string, value: number | boolean, assumed = false): void {
  job.readings?.observations?.push({
    id: `added-${quantity}`,
    quantity,
    value,
    assumed,
    when: '2026-07-21T10:15:00-04:00',
    who: 'Ines Okafor-Lund',
  });
}

describe('a neglected vented space', () => {
  const job = jobOf('neglected-vented');
  const causes = causesOf(job, 'cases');

  it('has what the survey shows as findings, each with what showed it', () => {
    const found = causes.observations.map((o) => o.key);
    expect(found).toEqual(
      expect.arrayContaining([
        'free-water',
        'damp-masonry',
        'humid-air',
        'sweating',
        'wet-wood',
        'mold',
        'smell',
      ]),
    );
    for (const o of causes.observations) expect(o.origins.length, o.key).toBeGreaterThan(0);
  });

  it('is humid from its bare earth, wet from the rain, and leads back to both', () => {
    expect(leader(causes, 'humid-air')).toBe('bare-ground');
    expect(leader(causes, 'free-water')).toBe('surface-water');
    expect(
      causes.mechanisms
        .slice(0, 2)
        .map((m) => m.key)
        .sort(),
    ).toEqual(['bare-ground', 'surface-water']);
  });

  it('keeps what speaks for the outdoor air beside what speaks against it', () => {
    const outdoor = arrowsTo(causes, 'humid-air').find((a) => a.from === 'outdoor-air');
    expect(outdoor?.standing).toBe('disputed');
    expect(outdoor?.supports).toContain('vents-open:outdoor-air');
    expect(outdoor?.contradicts).toContain('summer-over-winter:outdoor-air');
  });

  it('counts the water balance, and says what it brings', () => {
    const balance = causes.evidence.find((e) => e.id === 'balance-day:bare-ground');
    expect(balance?.says).toBe('for');
    expect(balance?.unit).toBe('kg/day');
    const kg = assess(job, undefined, { season: 'none' })
      .budgets.surveyDay?.paths.filter((p) => p.key.startsWith('open-ground:'))
      .reduce((sum, p) => sum + p.kgPerDay, 0);
    expect(balance?.value).toBeCloseTo(kg as number, 9);
  });

  it('rules out what cannot be: no machine, no liner', () => {
    expect(causes.ruledOut.map((r) => r.key)).toEqual(
      expect.arrayContaining(['machine-pocket', 'open-liner', 'old-liner']),
    );
    expect(causes.arrows.some((a) => a.from === 'machine-pocket')).toBe(false);
  });

  it('advises only what can be done there and was not done yet', () => {
    const next = causes.next.map((n) => n.key);
    expect(next.length).toBeGreaterThan(2);
    for (const key of ['smell-under-sheet', 'grade-falls-away', 'free-run']) expect(next).not.toContain(key);
  });
});

describe('a doubted liner', () => {
  const causes = causesOf(jobOf('doubted-liner'));

  it('is damp at its far end because of its machine and wet because of its drain', () => {
    expect(leader(causes, 'damp-far-end')).toBe('machine-pocket');
    expect(leader(causes, 'free-water')).toBe('drain-fails');
    expect(leader(causes, 'smell')).toBe('old-liner');
  });

  it('has the bare corner on the list of what may explain its damp end', () => {
    const liner = arrowsTo(causes, 'damp-far-end').find((a) => a.from === 'open-liner');
    expect(liner?.standing).toBe('supported');
    expect(liner?.supports).toContain('open-ground-at-damp-end:open-liner');
  });

  it('shows the machine as too big rather than too small for how it runs', () => {
    const small = arrowsTo(causes, 'humid-air').find((a) => a.from === 'machine-small');
    expect(small?.standing).toBe('contradicted');
  });
});

describe('a sound closed space', () => {
  const causes = causesOf(jobOf('sound-closed'));

  it('has nothing to explain, and says so', () => {
    expect(causes.headline).toBe('Nothing was found that wants an explanation.');
    expect(causes.observations).toEqual([]);
    expect(causes.mechanisms).toEqual([]);
    expect(causes.arrows).toEqual([]);
    expect(causes.next).toEqual([]);
  });

  it('still says what nobody looked for', () => {
    expect(causes.notShown.map((n) => n.key)).toContain('smell');
  });
});

/** Ids of everything in a record that evidence may point at, by kind of origin. */
function idsOf(job: Job): Readonly<Record<string, ReadonlySet<string>>> {
  const { readings, plan } = job;
  const plans = Object.values(plan).flatMap((list): { readonly id?: string }[] =>
    Array.isArray(list) ? list : [],
  );
  return {
    reading: new Set([...readings.air, ...readings.surface, ...readings.wood].map((r) => r.id)),
    observation: new Set(readings.observations.map((o) => o.id)),
    finding: new Set(job.findings.map((f) => f.id)),
    // What was drawn as a whole has the name of the whole.
    plan: new Set([
      ...plans.flatMap((item) => (item.id === undefined ? [] : [item.id])),
      'floor',
      'ground',
      'vents',
    ]),
  };
}

describe.each(DEMO_JOBS.map((d) => d.name))('the causes of %s', (name) => {
  const job = jobOf(name);
  const assessment: Assessment = assess(job, undefined, { season: 'none' });
  const { causes } = assessment;

  it('lead to the entries of the record that they rest on', () => {
    const known = idsOf(job);
    for (const { id, origins } of [
      ...causes.evidence,
      ...causes.observations.map((o) => ({ id: o.key, origins: o.origins })),
    ]) {
      expect(origins.length, id).toBeGreaterThan(0);
      for (const origin of origins) {
        if (origin.id !== undefined)
          expect(known[origin.kind]?.has(origin.id), `${id} ${origin.id}`).toBe(true);
        if (origin.kind === 'reading' || origin.kind === 'observation') {
          expect(origin.who, id).toBeDefined();
          expect(origin.when, id).toBeDefined();
        }
      }
    }
  });

  it('use every piece of evidence that they list, and list every piece that they use', () => {
    const listed = causes.evidence.map((e) => e.id).sort();
    const used = [...new Set(causes.arrows.flatMap((a) => [...a.supports, ...a.contradicts]))].sort();
    expect(listed).toEqual(used);
    const says = new Map(causes.evidence.map((e) => [e.id, e.says]));
    for (const arrow of causes.arrows) {
      for (const id of arrow.supports) expect(says.get(id), id).toBe('for');
      for (const id of arrow.contradicts) expect(says.get(id), id).toBe('against');
    }
    for (const e of causes.evidence) expect(e.times, e.id).toBeLessThanOrEqual(20 + 1e-9);
  });

  it('name criteria that were judged', () => {
    const judged = new Set(assessment.criteria.filter((c) => c.verdict !== 'not-shown').map((c) => c.id));
    for (const { id, criteria } of causes.evidence)
      for (const c of criteria) expect(judged.has(c), `${id} ${c}`).toBe(true);
  });

  it('number the arrows that are drawn from 1 on, and draw the heaviest into every finding', () => {
    const numbers = causes.arrows.flatMap((a) => (a.number === undefined ? [] : [a.number]));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    for (const o of causes.observations) expect(arrowsTo(causes, o.key)[0].number, o.key).toBeDefined();
  });

  it('have shares that sum to 1 for every finding', () => {
    for (const o of causes.observations) {
      const sum = arrowsTo(causes, o.key).reduce((all, a) => all + a.weight, o.unlisted);
      expect(sum, o.key).toBeCloseTo(1, 9);
      expect(
        o.roots.reduce((all, r) => all + r.weight, 0),
        o.key,
      ).toBeCloseTo(1, 9);
    }
  });
});

describe('evidence', () => {
  it('that nobody measured changes nothing', () => {
    const plain = causesOf(jobOf('neglected-vented'));
    const assumed = causesOf(
      jobOf('neglected-vented', (job) => observed(job, 'insideGradeBelowOutsideM', 1.2, true)),
    );
    expect(assumed).toEqual(plain);
  });

  it('that was measured moves the weight of what it speaks for, and is named', () => {
    const plain = causesOf(jobOf('neglected-vented'));
    const measured = causesOf(
      jobOf('neglected-vented', (job) => observed(job, 'insideGradeBelowOutsideM', 1.2)),
    );
    expect(weight(measured, 'ground-water', 'free-water')).toBeGreaterThan(
      weight(plain, 'ground-water', 'free-water'),
    );
    const arrow = measured.arrows.find((a) => a.from === 'ground-water' && a.to === 'free-water');
    expect(arrow?.supports).toEqual(['inside-below-outside:ground-water']);
  });

  it('turns the explanation when the survey had found the ground outside in order', () => {
    const causes = causesOf(
      jobOf('neglected-vented', (job) => {
        for (const o of job.readings?.observations ?? []) {
          if (o.quantity === 'outsideGradeFallRatio') o.value = 0.06;
          if (o.quantity === 'roofWaterDischargeM') o.value = 3;
        }
        job.findings = job.findings?.filter((f) => f.defect !== 'outside-water-let-in');
      }),
    );
    const rain = arrowsTo(causes, 'free-water').find((a) => a.from === 'surface-water');
    expect(['contradicted', 'disputed']).toContain(rain?.standing);
    expect(rain?.contradicts).toEqual(
      expect.arrayContaining(['grade-falls-away:surface-water', 'spout-distance:surface-water']),
    );
    expect(leader(causes, 'free-water')).not.toBe('surface-water');
  });

  it('is missing where nobody read the air: humid air is not shown, and how to show it is told', () => {
    const causes = causesOf(
      jobOf('neglected-vented', ({ readings }) => {
        if (readings !== undefined) readings.air = [];
      }),
    );
    expect(causes.observations.map((o) => o.key)).not.toContain('humid-air');
    expect(causes.notShown.find((n) => n.key === 'humid-air')?.how).toContain(
      'Read temperature and humidity',
    );
  });
});

describe('a complaint', () => {
  const smells = (complaint: string) =>
    causesOf(
      jobOf('sound-closed', ({ header }) => {
        header.complaint = complaint;
      }),
    ).observations.some((o) => o.key === 'smell');

  it.each([
    ['Musty in the hall', true],
    ['Mal olor en la sala', true],
    ['The smell came back', true],
    ['Sale huele mal', true],
    ['No smell, yearly visit', false],
    ['Cold floor', false],
    ['A mustard-colored stain', false],
  ])('"%s" is of a smell: %s', (complaint, expected) => {
    expect(smells(complaint)).toBe(expected);
  });
});
