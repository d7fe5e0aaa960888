import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, it } from 'vitest';
import { assess } from '../../src/assess.ts';
import { assessmentJsonSchema } from '../../src/results-schema/assessment-schema.ts';
import { plainJob } from '../season/jobs.ts';

/** A space of 6 by 5 m over bare ground, with a door and a wall across, whose repairs end with a dehumidifier. */
function smallJob(repairs: Parameters<typeof plainJob>[1]) {
  const job = plainJob({ cover: 'bare-earth' }, repairs, { vents: 0 });
  const corners = [
    ['s', 0, 0],
    ['e', 6, 0],
    ['n', 6, 5],
    ['w', 0, 5],
  ] as const;
  const outline = {
    kind: 'corners' as const,
    corners: corners.map(([id, xM, yM]) => ({ id, at: { xM, yM } })),
  };
  const [door] = [{ id: 'door', kind: 'wall' as const, wallId: 's', offsetM: 1, widthM: 0.8, heightM: 0.7 }];
  return { ...job, plan: { ...job.plan, outline, doors: [door], heights: [], vents: [] } };
}

const search = (repairs: Parameters<typeof plainJob>[1]) =>
  assess(smallJob(repairs), undefined, { season: 'quick', coverage: false, distribution: 'search' });

it('looks for the place of a machine that the repairs set, in the repaired space', () => {
  const assessment = search(['ground-liner', 'close-vents', 'dehumidifier']);
  const air = assessment.distribution;
  if (air?.outcome !== 'missing' || air.placing === undefined) throw new Error('no place was looked for');
  const { placing } = air;
  expect(air.code).toBe('no-machine');
  expect(placing.machine).toBe(assessment.season?.sizing.chosen?.name);
  const { machine, value } = placing.suggested!;
  expect(machine.ratedKgPerDay).toBe(assessment.season?.sizing.chosen?.ratedKgPerDay);
  expect(machine.setRelativeHumidity).toBeGreaterThan(0.39);
  expect(value.outcome).toBe('holds');
  // On the floor, and with room around it.
  const middle = {
    x: (machine.intake.xM + machine.outlet.xM) / 2,
    y: (machine.intake.yM + machine.outlet.yM) / 2,
  };
  expect(middle.x).toBeGreaterThan(0.2);
  expect(middle.x).toBeLessThan(5.8);
  expect(middle.y).toBeGreaterThan(0.2);
  expect(middle.y).toBeLessThan(4.8);
  expect(placing.ranked[0].machine.intake).toEqual(machine.intake);
  expect(placing.excludedByRule.reduce((sum, r) => sum + r.count, 0)).toBe(placing.excluded.length);
  const valid = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(assessmentJsonSchema());
  valid(JSON.parse(JSON.stringify(assessment)));
  expect(valid.errors ?? []).toEqual([]);
});

it('looks for none where the repairs set no machine', () => {
  const air = search(['ground-liner']).distribution;
  expect(air).toMatchObject({ outcome: 'missing', code: 'no-machine' });
  expect(air).not.toHaveProperty('placing');
});
