import { describe, expect, it } from 'vitest';
import { machineAt, middleOfMachine } from '../../src/distribution/arrangement-candidates.ts';
import type { ArrangementOptions } from '../../src/distribution/arrangement-options.ts';
import { arrangementOrder, type RankedArrangement } from '../../src/distribution/arrangement-rank.ts';
import { searchArrangements } from '../../src/distribution/arrangement-search.ts';
import { fieldModel } from '../../src/distribution/field-model.ts';
import type { PlacingRule, PlacingSite } from '../../src/distribution/placing-rules.ts';
import { placingRules } from '../../src/distribution/placing-rules.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';
import { machineAlone, workedMachine, workedSite } from './worked-plan.ts';

const model = fieldModel(workedSite(), 0.5);
const door = { xM: 0.4, yM: 3 };
const machine = workedMachine({ intake: { xM: 1.1, yM: 1.1 }, outlet: { xM: 1.85, yM: 1.1 } });

describe('rules for a place', () => {
  const tall = { ...workedSite(), plan: { ...workedSite().plan, heightM: 0.8 } };
  const judge = (at: { xM: number; yM: number }, more: Partial<PlacingSite> = {}) =>
    placingRules(fieldModel(tall, 0.5), { door, ...more }).place(at);
  const broken = (verdict: ReturnType<typeof judge>): PlacingRule | 'none' =>
    verdict.ok ? 'none' : verdict.rule;
  const open = { xM: 3, yM: 3 };

  it('allows open floor and tells the way from the door', () => {
    const verdict = judge(open);
    if (!verdict.ok) throw new Error(verdict.why);
    expect(verdict.wayM).toBeCloseTo(2.6, 0);
    expect(verdict.pumped).toBe(false);
  });

  it('names the first rule that is broken', () => {
    expect(broken(judge({ xM: -1, yM: 3 }))).toBe('no-floor');
    expect(broken(judge(open, { body: { lengthM: 0.7, widthM: 0.35, heightM: 0.56 } }))).toBe('clear-height');
    expect(broken(judge(open, { body: { lengthM: 0.7, widthM: 0.35, heightM: 0.55 } }))).toBe('none');
    // Half of 0.35 m and a hand's breadth.
    expect(broken(judge({ xM: 0.27, yM: 3 }))).toBe('clearance');
    expect(broken(judge({ xM: 0.28, yM: 3 }))).toBe('none');
    // The duct leaves 0.16 m; under it nothing stands.
    expect(broken(judge({ xM: 3, yM: 6.7 }))).toBe('clearance');
    expect(broken(judge(open, { serviceReachM: 2 }))).toBe('service-reach');
    expect(broken(judge(open, { drains: [] }))).toBe('drain');
    expect(broken(judge(open, { power: [] }))).toBe('power');
    expect(broken(judge(open, { power: [{ xM: 3, yM: 4.81 }] }))).toBe('power');
    expect(broken(judge(open, { power: [{ xM: 3, yM: 4.79 }] }))).toBe('none');
  });

  it('lets water off by fall, by pump, or not at all', () => {
    const at = (inletM: number, xM: number, pump?: PlacingSite['pump']) =>
      judge(open, { drains: [{ at: { xM, yM: 3 }, inletM }], ...(pump === undefined ? {} : { pump }) });
    // On a block of 0.2 m, 5 m of hose fall 0.1 m.
    expect(at(0.1, 8, null)).toMatchObject({ ok: true, pumped: false });
    expect(broken(at(0.11, 8, null))).toBe('drain');
    expect(at(0.11, 8)).toMatchObject({ ok: true, pumped: true });
    expect(broken(at(0.11, 8, { liftM: 3, reachM: 4.9 }))).toBe('drain');
    expect(broken(at(3.21, 8, { liftM: 3, reachM: 5.1 }))).toBe('drain');
    expect(at(3.19, 8, { liftM: 3, reachM: 5.1 })).toMatchObject({ ok: true, pumped: true });
  });

  it('knows where nobody can crawl', () => {
    // Behind the cross wall, whose opening is too low to pass.
    const low = workedSite();
    const shut = fieldModel(
      {
        ...low,
        plan: {
          ...low.plan,
          ducts: [],
          interiorWalls: [
            { ...low.plan.interiorWalls![0]!, openings: [{ offsetM: 4.5, widthM: 1, heightM: 0.3 }] },
          ],
        },
      },
      0.5,
    );
    expect(broken(placingRules(shut, { door }).place({ xM: 9, yM: 3 }))).toBe('no-way');
    expect(() => placingRules(model, { door: { xM: -9, yM: 3 } })).toThrow(EngineError);
    expect(() => placingRules(model, { door: { xM: -9, yM: 3 } })).toThrow(/access door/);
  });

  it('measures the free run ahead of an outlet', () => {
    const { run } = placingRules(model, { door, freeRunM: 1.2 });
    expect(run({ xM: 4.7, yM: 3 }, 90)).toMatchObject({ ok: true });
    expect(run({ xM: 4.9, yM: 3 }, 90)).toMatchObject({ ok: false });
  });
});

describe('order of arrangements', () => {
  const row = (
    dampestRelativeHumidity: number,
    energyKWhPerDay: number,
    wayM: number,
    costCents: number,
  ): RankedArrangement => ({
    dampestRelativeHumidity,
    energyKWhPerDay,
    wayM,
    costCents,
    meanRelativeHumidity: 0.5,
    duty: 0.3,
    holds: true,
    arrangement: {},
    what: '',
    pumped: false,
  });

  it('dampest floor, energy, way, cost; nothing is gained below dry enough', () => {
    const order = arrangementOrder(0.65);
    expect(order(row(0.7, 9, 9, 900), row(0.72, 1, 1, 1))).toBeLessThan(0);
    expect(order(row(0.702, 3, 9, 900), row(0.698, 2, 1, 1))).toBeGreaterThan(0);
    expect(order(row(0.702, 3, 4, 900), row(0.698, 3.05, 7, 1))).toBeLessThan(0);
    expect(order(row(0.702, 3, 4, 900), row(0.698, 3.05, 4.2, 1))).toBeGreaterThan(0);
    expect(order(row(0.55, 9, 9, 900), row(0.65, 1, 1, 1))).toBeGreaterThan(0);
    expect(order(row(0.55, 1, Number.NaN, 0), row(0.55, 1, 30, 0))).toBeGreaterThan(0);
  });
});

describe('search', () => {
  const options: ArrangementOptions = {
    mixingM2PerS: 0.009,
    site: { door, drains: [{ at: { xM: 6.5, yM: 0.2 }, inletM: 0.5 }], serviceReachM: 12 },
    machine,
    present: machineAlone(machine),
    fan: { flowM3PerS: 0.1, outletM2: 0.05, throwConstant: 5, powerW: 25 },
    mostFans: 1,
    setPoints: [0.5],
    remoteSetPoint: 0.65,
    spacingM: 2.4,
    refined: 6,
    screeningCellM: 0.5,
  };
  const search = searchArrangements(model, options);

  it('finds a better one than as found, in the order that it states', () => {
    expect(search.screened).toBeGreaterThan(60);
    const [best] = search.ranked;
    expect(best!.dampestRelativeHumidity).toBeLessThan(search.present!.dampestRelativeHumidity - 0.1);
    expect(search.present!.rank).toBeGreaterThan(10);
    const order = arrangementOrder();
    for (let k = 1; k < search.ranked.length; k += 1) {
      expect(order(search.ranked[k - 1]!, search.ranked[k]!)).toBeLessThanOrEqual(0);
    }
  });

  it('says what each single change would do, and each does what it says', () => {
    const kinds = search.changes.map(({ kind }) => kind);
    expect(kinds).toEqual(expect.arrayContaining(['move', 'fan', 'set-point 50 %', 'remote humidistat']));
    expect(new Set(kinds).size).toBe(kinds.length);
    const move = search.changes.find(({ kind }) => kind === 'move')!;
    expect(move.dampestRelativeHumidity).toBeLessThan(search.present!.dampestRelativeHumidity);
    expect(move.costCents).toBeGreaterThan(0);
    const set = search.changes.find(({ kind }) => kind === 'set-point 50 %')!;
    expect(set.energyKWhPerDay).toBeGreaterThan(search.present!.energyKWhPerDay);
    expect(set.costCents).toBe(0);
  });

  it('says of each place that was left out which rule did it', () => {
    expect(search.excluded.length).toBeGreaterThan(0);
    for (const { rule, why, at, bearingDeg } of search.excluded) {
      expect(why.length).toBeGreaterThan(10);
      const verdict = placingRules(model, options.site).place(at);
      if (bearingDeg === null) expect(verdict).toMatchObject({ ok: false, rule });
      else expect(['outlet-run', 'no-return-path']).toContain(rule);
    }
    expect(search.notices.map(({ code }) => code)).toEqual(['power-unknown']);
  });

  it('gives the same answer each time', () => {
    const again = searchArrangements(model, options);
    expect(again.ranked.map(({ what }) => what)).toEqual(search.ranked.map(({ what }) => what));
    expect(again.present).toEqual(search.present);
  });

  it('tells when no place is allowed, and what the present one breaks', () => {
    const none = searchArrangements(model, {
      ...options,
      site: { door, drains: [] },
      setPoints: [],
    });
    expect(none.notices.map(({ code }) => code)).toEqual([
      'present-breaks-rule',
      'power-unknown',
      'no-place',
    ]);
    expect(none.excluded.every(({ rule }) => rule !== 'outlet-run')).toBe(true);
  });

  it('turns a machine about its middle', () => {
    const turned = machineAt(machine, middleOfMachine(machine), 0);
    expect(middleOfMachine(turned)).toEqual({
      xM: expect.closeTo(1.475, 12),
      yM: expect.closeTo(1.1, 12),
    });
    expect(turned.outlet.yM - turned.intake.yM).toBeCloseTo(0.75, 12);
  });
});
