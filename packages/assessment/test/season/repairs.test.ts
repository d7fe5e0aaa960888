import { describe, expect, it } from 'vitest';
import { chosenRepairs, repaired } from '../../src/season/repairs.ts';
import { asFound } from '../../src/season/space-state.ts';
import { demoJob, plainJob } from './jobs.ts';

/** Every order of a short list. */
function orders<T>(list: readonly T[]): T[][] {
  if (list.length < 2) return [[...list]];
  return list.flatMap((one, i) =>
    orders([...list.slice(0, i), ...list.slice(i + 1)]).map((rest) => [one, ...rest]),
  );
}

describe('repairs of a job', () => {
  it.each(['neglected-vented', 'doubted-liner'])('of %s come to the same in any order', (name) => {
    const job = demoJob(name);
    const repairs = chosenRepairs(job).filter((r) => r.meaning.changesTheYear);
    const end = repaired(asFound(job), repairs, {}).job.plan;
    // Every order of each three that stand next to each other, and all of them backwards.
    for (let i = 0; i + 2 < repairs.length; i++) {
      for (const order of orders(repairs.slice(i, i + 3))) {
        const mixed = [...repairs.slice(0, i), ...order, ...repairs.slice(i + 3)];
        expect(repaired(asFound(job), mixed, {}).job.plan).toEqual(end);
      }
    }
    expect(repaired(asFound(job), [...repairs].reverse(), {}).job.plan).toEqual(end);
  });

  it('leave the record alone', () => {
    const job = demoJob('doubted-liner');
    const before = JSON.stringify(job);
    repaired(asFound(job), chosenRepairs(job), {});
    expect(JSON.stringify(job)).toBe(before);
  });

  it('count a kind that was chosen twice once, for both prices', () => {
    const job = plainJob({ cover: 'bare-earth' }, [
      { repair: 'drain', priceCents: 100 },
      { repair: 'regrade', priceCents: 7 },
      { repair: 'drain', priceCents: 30 },
    ]);
    const repairs = chosenRepairs(job).map((r) => r.meaning);
    expect(repairs.map((r) => [r.id, r.repair, r.priceCents])).toEqual([
      ['r1', 'drain', 130],
      ['r2', 'regrade', 7],
    ]);
  });

  it('leave out what was rejected', () => {
    const job = plainJob({ cover: 'bare-earth' }, ['drain', 'regrade']);
    job.design.repairs[0].chosen = false;
    expect(chosenRepairs(job).map((r) => r.meaning.repair)).toEqual(['regrade']);
  });

  it('cover bare zones but no slab with a liner', () => {
    const job = plainJob({ cover: 'bare-earth', surface: 'standing-water' }, ['ground-liner']);
    job.plan.zones = [
      { id: 'slab', name: 'Slab', outline: [], ground: { cover: 'slab' } },
      { id: 'gravel', name: 'Gravel', outline: [], ground: { cover: 'gravel' } },
    ];
    const { plan } = repaired(asFound(job), chosenRepairs(job), {}).job;
    expect(plan.ground).toMatchObject({
      cover: 'liner',
      liner: { workmanship: 'sealed', waterBeneath: 'free-water' },
    });
    expect(plan.zones.map((z) => z.ground.cover)).toEqual(['slab', 'liner']);
  });

  it('keep a loose edge loose until the edges are sealed', () => {
    const job = demoJob('doubted-liner');
    const only = (kind: string) => chosenRepairs(job).filter((r) => r.meaning.repair === kind);
    const lined = repaired(asFound(job), only('ground-liner'), {}).job.plan.walls;
    expect(lined.map((w) => w.linerLooseM)).toEqual([5.6, 2.1, 3.9, 0]);
    const sealed = repaired(asFound(job), only('seal-edges'), {}).job.plan.walls;
    expect(sealed.map((w) => w.linerLooseM)).toEqual([0, 0, 0, 0]);
    expect(sealed.every((w) => w.linerSealed)).toBe(true);
  });

  it('take an old dehumidifier out for the new one', () => {
    const job = demoJob('sound-closed');
    job.design.repairs = [{ id: 'r', repair: 'dehumidifier', chosen: true }];
    const machine = { id: 'new', kind: 'dehumidifier' as const, at: { xM: 1, yM: 1 }, running: true };
    const { equipment } = repaired(asFound(job), chosenRepairs(job), { machine }).job.plan;
    const machines = equipment.filter((e) => e.kind === 'dehumidifier');
    expect(machines.map((m) => [m.id, m.running])).toEqual([
      ['dh', false],
      ['new', true],
    ]);
  });
});
