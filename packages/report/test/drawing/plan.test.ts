import { units } from '@undercroft/engine';
import { describe, expect, test } from 'vitest';
import { type Drawing, flatten, type Item, type LayerItem } from '../../src/drawing/display-list.ts';
import { planPicture } from '../../src/drawing/plan/picture.ts';
import { planSheet } from '../../src/drawing/plan/sheet.ts';
import { assessed, bareJob, DEMO_NAMES, demo, largeJob } from '../jobs.ts';

/** What is left of a Letter sheet inside its margins, wide side level. */
const SHEET = { width: 690, height: 500, textSize: 7.2 };

function layers(items: readonly Item[]): LayerItem[] {
  return items.flatMap((i) => (i.kind === 'layer' ? [i, ...layers(i.items)] : []));
}

function layer(drawing: Drawing, name: string): Exclude<Item, LayerItem>[] {
  return layers(drawing.items)
    .filter((l) => l.name === name)
    .flatMap((l) => flatten(l.items));
}

const textsIn = (items: readonly Item[]) =>
  flatten(items).flatMap((i) => (i.kind === 'text' ? [i.text] : []));

const sheetOf = (name: string) => {
  const { job, assessment } = demo(name);
  return planSheet(job, assessment, SHEET);
};

describe.each(DEMO_NAMES)('the plan of %s', (name) => {
  const { job, assessment } = demo(name);
  const sheet = sheetOf(name);

  test('is to a standard scale, named in the title block', () => {
    const ratio = 72 / 0.0254 / (sheet.unitsPerMeter as number);
    expect(textsIn(layer(sheet, 'title-block')).join(' | ')).toContain(`(1:${Math.round(ratio)})`);
    expect(Math.abs(ratio - Math.round(ratio))).toBeLessThan(1e-9);
  });

  test('gives every wall its length in feet and inches', () => {
    const written = textsIn(layer(sheet, 'dimensions'));
    const { outline } = job.plan;
    const expected =
      outline?.kind === 'traverse'
        ? outline.legs.map((l) => units.formatFeetInches(l.length.nm * 1e-9))
        : assessment.geometry.edges.map((e) => units.formatFeetInches(e.lengthM));
    expect([...written].sort()).toEqual([...expected].sort());
  });

  test('has dimension lines as long as the walls at scale', () => {
    const lengths = layer(sheet, 'dimensions')
      .flatMap((i) => (i.kind === 'line' && i.stroke.color === 'soft' ? [i.points] : []))
      .map(([a, b]) => Math.hypot(b.x - a.x, b.y - a.y) / (sheet.unitsPerMeter as number));
    for (const edge of assessment.geometry.edges)
      expect(
        lengths.some((l) => Math.abs(l - edge.lengthM) < 1e-6),
        edge.id,
      ).toBe(true);
  });

  test('has no lettering under 6.5 points', () => {
    for (const item of flatten(sheet.items))
      if (item.kind === 'text') expect(item.size).toBeGreaterThanOrEqual(6.5);
  });

  test('stays on its sheet', () => {
    for (const item of flatten(sheet.items)) {
      if (item.kind !== 'text') continue;
      expect(item.at.x).toBeGreaterThanOrEqual(-1);
      expect(item.at.x).toBeLessThanOrEqual(sheet.width + 1);
      expect(item.at.y).toBeGreaterThanOrEqual(0);
      expect(item.at.y).toBeLessThanOrEqual(sheet.height + 1);
    }
  });

  test('flags every finding that has a place, by its number, and spells each out', () => {
    const flags = textsIn(layer(sheet, 'findings'));
    const expected = job.findings.flatMap((f, i) => (f.place.at === undefined ? [] : [String(i + 1)]));
    expect(flags).toEqual(expected);
    const notes = textsIn(layer(sheet, 'finding-notes')).join(' ').replace(/\s+/g, ' ');
    for (const f of job.findings) expect(notes).toContain(f.title.split(' ').slice(0, 4).join(' '));
  });

  test('writes the value of every reading that has a place', () => {
    const values = textsIn(layer(sheet, 'reading-values'));
    expect(values.length).toBe(assessment.readings.filter((r) => r.at !== undefined).length);
    for (const wood of job.readings.wood)
      expect(values).toContain(`${units.formatQuantity(wood.shown, 'moistureContent', 'us')} MC`);
  });

  test('has piers in true size', () => {
    const outlines = layer(sheet, 'piers').flatMap((i) => (i.kind === 'area' && i.stroke ? i.outlines : []));
    expect(outlines.length).toBe(job.plan.piers.length);
    const [a, b] = outlines[0];
    expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(
      job.plan.piers[0].widthM * (sheet.unitsPerMeter as number),
      6,
    );
  });

  test('is the same for the same job', () => {
    expect(sheetOf(name)).toEqual(sheet);
  });
});

describe('legend', () => {
  const words = (name: string) => textsIn(layer(sheetOf(name), 'legend'));

  test('has only what is on the sheet', () => {
    expect(words('neglected-vented')).not.toContain('Sump');
    expect(words('neglected-vented')).not.toContain('Ground liner');
    expect(words('neglected-vented')).toContain('Standing water');
    expect(words('sound-closed')).toContain('Sump');
    expect(words('sound-closed')).not.toContain('Finding, by number');
    expect(words('sound-closed')).not.toContain('Bare earth');
  });

  test('has each thing once', () => {
    for (const name of DEMO_NAMES) expect(new Set(words(name)).size).toBe(words(name).length);
  });
});

test('findings that do not fit beside a low plan are counted', () => {
  const { job, assessment } = demo('doubted-liner');
  const low = planSheet(job, assessment, { ...SHEET, height: 450 });
  const notes = textsIn(layer(low, 'finding-notes'));
  const spelled = notes.filter((t) => /^\d+$/.test(t)).length;
  expect(notes.at(-1)).toBe(`and ${job.findings.length - spelled} more, see the list`);
});

describe('north arrow', () => {
  /** Bearing of the plan's y axis from true north, and where true north then points on the sheet (right, up). */
  const rows = [
    { northDeg: 0, right: 0, up: 1 },
    { northDeg: 90, right: -1, up: 0 },
    { northDeg: 18, right: -Math.sin((18 * Math.PI) / 180), up: Math.cos((18 * Math.PI) / 180) },
    { northDeg: 270, right: 1, up: 0 },
  ];

  test.each(rows)('with the y axis at $northDeg degrees', ({ northDeg, right, up }) => {
    const { job, assessment } = assessed({ ...bareJob, plan: { ...bareJob.plan, northDeg } });
    const items = layer(planSheet(job, assessment, SHEET), 'north');
    const shaft = items.find((i) => i.kind === 'line');
    if (shaft?.kind !== 'line') throw new Error('no shaft');
    const [tail, tip] = shaft.points;
    const length = Math.hypot(tip.x - tail.x, tip.y - tail.y);
    expect((tip.x - tail.x) / length).toBeCloseTo(right, 9);
    expect(-(tip.y - tail.y) / length).toBeCloseTo(up, 9);
  });
});

describe('scale bar', () => {
  test.each(DEMO_NAMES)('of %s is as long as it says, with a meter tick', (name) => {
    const sheet = sheetOf(name);
    const items = layer(sheet, 'scale-bar');
    const boxes = items.flatMap((i) => (i.kind === 'area' ? i.outlines[0] : []));
    const xs = boxes.map((p) => p.x);
    const feet = Number(/^(\d+) ft$/.exec(textsIn(items).find((t) => t.endsWith(' ft')) as string)?.[1]);
    expect((Math.max(...xs) - Math.min(...xs)) / (sheet.unitsPerMeter as number)).toBeCloseTo(
      feet * 0.3048,
      9,
    );
    const tick = items.find((i) => i.kind === 'line');
    const meters = Number(/^([\d.]+) m$/.exec(textsIn(items).find((t) => t.endsWith(' m')) as string)?.[1]);
    if (tick?.kind !== 'line') throw new Error('no tick');
    expect((tick.points[0].x - Math.min(...xs)) / (sheet.unitsPerMeter as number)).toBeCloseTo(meters, 9);
  });
});

describe('drains', () => {
  test('have their arrow heads in the direction of flow', () => {
    const { job, assessment } = demo('sound-closed');
    const drain = job.plan.drains[0].path;
    expect(drain[1].at.xM).toBeGreaterThan(drain[0].at.xM);
    const items = layer(planSheet(job, assessment, SHEET), 'drains');
    const heads = items.flatMap((i) => (i.kind === 'area' && i.fill === 'water' ? [i.outlines[0]] : []));
    expect(heads.length).toBe(2);
    for (const [tip, left, right] of heads) expect(tip.x).toBeGreaterThan((left.x + right.x) / 2);
  });

  test('have their inverts beside them', () => {
    expect(textsIn(layer(sheetOf('sound-closed'), 'drains'))).toEqual([
      'inv -7 1/2"',
      'inv -9 7/8"',
      `inv -1' 1/4"`,
    ]);
  });
});

describe('other plans', () => {
  test('a job of which hardly anything is known', () => {
    const { job, assessment } = assessed(bareJob);
    const sheet = planSheet(job, assessment, SHEET);
    expect(textsIn(layer(sheet, 'dimensions')).length).toBe(3);
    expect(layer(sheet, 'findings')).toEqual([]);
    expect(textsIn(layer(sheet, 'notes'))).toContain('Wall thickness not recorded: drawn as 8".');
  });

  test('sixty piers and five hundred corners in reasonable time', { timeout: 10_000 }, () => {
    const { job, assessment } = assessed(largeJob(500, 60));
    const picture = planPicture(job, assessment, { width: 960, textSize: 12 });
    expect(layer(picture, 'piers').flatMap((i) => (i.kind === 'area' && i.stroke ? [i] : [])).length).toBe(
      60,
    );
    const dimensioned = textsIn(layer(picture, 'dimensions')).length;
    const left = textsIn(layer(picture, 'notes')).find((t) => t.includes('not dimensioned'));
    expect(Number(/^\d+/.exec(left ?? '0')?.[0]) + dimensioned).toBe(500);
  });

  test('a wall shorter than its vent, an opening past its end and a reading far outside do no harm', () => {
    const { job, assessment } = assessed({
      ...bareJob,
      plan: {
        ...bareJob.plan,
        vents: [
          { id: 'v1', wallId: 'a', offsetM: 7.9, widthM: 0.4, heightM: 0.2 },
          { id: 'v2', wallId: 'c', offsetM: 0.1, widthM: 90, heightM: 0.2, state: 'open' },
        ],
      },
      readings: {
        air: [
          {
            id: 'r',
            where: 'crawl',
            place: { at: { xM: 300, yM: -200 } },
            temperatureC: 21,
            relativeHumidity: 0.7,
            when: '2031-05-14T09:20:00-04:00',
            who: 'A',
          },
        ],
      },
    });
    const sheet = planSheet(job, assessment, SHEET);
    for (const item of flatten(sheet.items)) {
      const points =
        item.kind === 'line' ? item.points : item.kind === 'area' ? item.outlines.flat() : [item.at];
      for (const p of points) expect(Number.isFinite(p.x) && Number.isFinite(p.y)).toBe(true);
    }
  });
});
