import { describe, expect, test } from 'vitest';
import { planSceneSvg } from '../../src/index.ts';
import { assessed, bareJob, DEMO_NAMES, demo } from '../jobs.ts';
import { allOf, readTags } from '../tags.ts';

const options = {
  pxPerM: 50,
  textPx: 14,
  ground: 'under',
  language: 'en',
  system: 'us',
  lettering: 'all',
  layers: 'all',
} as const;

describe.each(DEMO_NAMES)('the plan of %s for a screen', (name) => {
  const { job, assessment } = demo(name);
  const scene = planSceneSvg(job, assessment, options);
  const drawn = new Set(allOf(readTags(scene.svg, 'xml')).flatMap((tag) => tag.attributes['data-of'] ?? []));

  test('has a group for every thing that a person drew', () => {
    const { plan } = job;
    for (const [kind, things] of [
      ['pier', plan.piers],
      ['girder', plan.girders],
      ['duct', plan.ducts],
      ['vent', plan.vents],
      ['door', plan.doors],
      ['equipment', plan.equipment],
      ['obstacle', plan.obstacles],
      ['zone', plan.zones],
      ['drain', plan.drains],
      ['seam', plan.seams],
      ['height', plan.heights],
      ['interior-wall', plan.interiorWalls],
    ] as const) {
      for (const { id } of things) expect(drawn).toContain(`${kind} ${id}`);
    }
  });

  test('explains each symbol once and has finite coordinates only', () => {
    const keys = scene.legend.map((entry) => entry.key);
    expect(keys.length).toBeGreaterThan(3);
    expect(new Set(keys).size).toBe(keys.length);
    for (const text of [scene.svg, ...scene.legend.map((entry) => entry.sample)]) {
      expect(text).not.toMatch(/NaN|Infinity|undefined/);
    }
  });
});

test('the zero point and the scale place a pier where it is drawn', () => {
  const at = { xM: 3.25, yM: 2.5 };
  const { job, assessment } = assessed({
    ...bareJob,
    plan: { ...bareJob.plan, piers: [{ id: 'p', at, widthM: 0.4, depthM: 0.6 }] },
  });
  const scene = planSceneSvg(job, assessment, options);
  const pier = allOf(readTags(scene.svg, 'xml')).find((tag) => tag.attributes['data-of'] === 'pier p');
  const corners = [
    ...(allOf(pier as never).find((tag) => tag.name === 'path')?.attributes.d ?? '').matchAll(
      /[ML](\S+) ([\d.]+)/g,
    ),
  ];
  const middle = (axis: number) =>
    corners.reduce((sum, corner) => sum + Number(corner[axis]), 0) / corners.length;
  expect(corners).toHaveLength(4);
  expect(middle(1)).toBeCloseTo(scene.originPx.x + at.xM * scene.pxPerM, 1);
  expect(middle(2)).toBeCloseTo(scene.originPx.y - at.yM * scene.pxPerM, 1);
});

test('refuses scales and lettering that no screen shows', () => {
  const { job, assessment } = demo(DEMO_NAMES[0]);
  expect(() => planSceneSvg(job, assessment, { ...options, pxPerM: 0.99 })).toThrow(
    /1 to 2000 px per meter; got 0.99/,
  );
  expect(() => planSceneSvg(job, assessment, { ...options, pxPerM: 1 })).not.toThrow();
  expect(() => planSceneSvg(job, assessment, { ...options, textPx: 41 })).toThrow(/6 to 40 px high; got 41/);
});

test('speaks Spanish and metric, leaves lettering out where it would cover something, and readings where asked', () => {
  const { job, assessment } = demo('doubted-liner');
  const words = (style: Partial<typeof options> | object) => {
    const scene = planSceneSvg(job, assessment, { ...options, ...style });
    return { texts: allOf(readTags(scene.svg, 'xml')).filter((tag) => tag.name === 'text').length, scene };
  };
  const spanish = words({ language: 'es', system: 'si' }).scene;
  expect(spanish.svg).toContain('Plano del espacio');
  expect(spanish.svg).toContain('15.850 m');
  expect(spanish.svg).not.toContain('52&#39; 0');
  expect(spanish.legend.map((entry) => entry.words)).toContain('Pilar');
  const small = { pxPerM: 18 };
  expect(words({ ...small, lettering: 'free' }).texts).toBeLessThan(words(small).texts);
  const built = words({ layers: 'built' }).scene;
  expect(built.legend.map((entry) => entry.key)).not.toContain('reading-alarm');
  expect(built.svg).not.toContain('% MC');
});
