import { type CrawlPlanShown, crawlPlanOf } from '@undercroft/assessment';
import { describe, expect, test } from 'vitest';
import {
  coveragePicture,
  coverageSheet,
  type WithCoverage,
} from '../../src/drawing/coverage/coverage-drawing.ts';
import { crawlSheet } from '../../src/drawing/coverage/crawl-drawing.ts';
import { ranges } from '../../src/drawing/coverage/stations.ts';
import { thumbnail } from '../../src/drawing/coverage/thumbnail.ts';
import { flatten, type Item, type LayerItem } from '../../src/drawing/display-list.ts';
import { isInside } from '../../src/drawing/polygon.ts';
import { demo } from '../jobs.ts';

const { job, assessment } = demo('doubted-liner');
const covered = assessment as WithCoverage;
const ROOM = { width: 690, height: 500, textSize: 7.2 };

function layer(items: readonly Item[], name: string): LayerItem | undefined {
  for (const item of items) {
    if (item.kind !== 'layer') continue;
    if (item.name === name) return item;
    const found = layer(item.items, name);
    if (found !== undefined) return found;
  }
  return undefined;
}
const texts = (items: readonly Item[]) => flatten(items).flatMap((i) => (i.kind === 'text' ? [i.text] : []));

test('numbers are told as people list them', () => {
  expect(ranges([])).toBe('');
  expect(ranges([3])).toBe('3');
  expect(ranges([4, 3])).toBe('3, 4');
  expect(ranges([1, 2, 3, 7, 9, 8, 12, 14])).toBe('1–3, 7–9, 12, 14');
});

describe('the coverage plan', () => {
  const sheet = coverageSheet(job, covered, ROOM);

  test('draws every unseen part dark and hatched', () => {
    const floor = layer(sheet.items, 'floor-shown')!;
    const dark = floor.items.filter((i) => i.kind === 'area' && i.fill === 'rule');
    expect(dark.length).toBe(assessment.coverage!.unseen.length + job.plan.obstacles.length);
    const hatch = floor.items.filter((i) => i.kind === 'line');
    expect(hatch.length).toBeGreaterThan(20);
    const rings = dark.flatMap((i) => (i.kind === 'area' ? i.outlines : []));
    for (const line of hatch) {
      if (line.kind !== 'line') continue;
      const [a, b] = line.points;
      const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      expect(rings.some((r) => isInside(middle, r))).toBe(true);
    }
  });

  test('numbers every picture, those of one place together', () => {
    const numbers = texts(sheet.items).filter((t) => /^\d+(–\d+)?(, \d+(–\d+)?)*$/.test(t));
    for (const expected of ['1–4', '5, 6', '7–10', '22', '23']) expect(numbers).toContain(expected);
    const eyes = layer(sheet.items, 'stations')!.items.filter((i) => i.kind === 'circle');
    expect(eyes).toHaveLength(11);
    const cones = layer(sheet.items, 'stations')!.items.filter((i) => i.kind === 'area');
    expect(cones).toHaveLength(32);
  });

  test('marks faces of piers and stretches of walls that no picture shows', () => {
    const piers = layer(sheet.items, 'pier-faces-unseen')!;
    expect(piers.items.map((i) => (i.kind === 'layer' ? i.of?.id : ''))).toEqual(['pa6', 'pb7']);
    expect(texts(piers.items)).toEqual(['P6', 'P14']);
    const [bar] = flatten((piers.items[1] as LayerItem).items);
    // The north face of the last pier of the rear row: level, above its middle.
    if (bar.kind !== 'line') throw new Error('no bar');
    expect(bar.points[0].y).toBeCloseTo(bar.points[1].y, 6);
    const pier = layer(sheet.items, 'piers')!.items.find((i) => i.kind === 'layer' && i.of?.id === 'pb7');
    const body = flatten((pier as LayerItem).items)[0];
    if (body.kind !== 'area') throw new Error('no pier');
    expect(bar.points[0].y).toBeLessThanOrEqual(Math.min(...body.outlines[0].map((p) => p.y)));
    expect(layer(sheet.items, 'walls-unseen')!.items.length).toBeGreaterThan(1);
  });

  test('explains its symbols and nothing else', () => {
    const legend = texts(layer(sheet.items, 'legend')!.items).join(' | ');
    for (const words of [
      'Floor that pictures show',
      'Floor in no picture',
      'Wall or pier face in no picture',
    ])
      expect(legend).toContain(words);
    expect(legend).not.toContain('Reading');
    expect(legend).not.toContain('Stop of the crawl');
  });

  test('is described in words, to scale on paper, and drawn for a screen too', () => {
    expect(sheet.description).toContain('32 pictures');
    expect(texts(sheet.items).join(' ')).toMatch(/1:\d+/);
    const narrow = coveragePicture(job, covered, { width: 340, textSize: 12 });
    expect(narrow.width).toBe(340);
    expect(narrow.height).toBeGreaterThan(300);
    expect(JSON.stringify(sheet)).toBe(JSON.stringify(coverageSheet(job, covered, ROOM)));
    expect(JSON.stringify([sheet, narrow])).not.toMatch(/null|NaN/);
  });
});

describe('the sheet of a crawl', () => {
  const plan = crawlPlanOf(job, assessment);
  const sheet = crawlSheet(job, assessment, plan, ROOM);

  test('has the stops by number and an arrow for each picture', () => {
    const stops = layer(sheet.items, 'crawl-stops')!;
    expect(texts(stops.items)).toEqual(plan.stops.map((s) => String(s.number)));
    const arrows = stops.items.filter((i) => i.kind === 'area');
    expect(arrows).toHaveLength(plan.stops.reduce((sum, s) => sum + s.shots.length, 0));
  });

  test('leads from the door through all stops and back', () => {
    const ways = layer(sheet.items, 'crawl-way')!.items.filter((i) => i.kind === 'line');
    expect(ways).toHaveLength(plan.stops.length + 1);
    const ends = ways.map((w) => (w.kind === 'line' ? [w.points[0], w.points.at(-1)!] : []));
    for (let i = 1; i < ends.length; i += 1) expect(ends[i][0]).toEqual(ends[i - 1][1]);
    expect(ends[0][0]).toEqual(ends.at(-1)![1]);
  });

  test('shows what is dark where the crawl is for the rest, and a plain floor where it is for all', () => {
    expect(layer(sheet.items, 'floor-shown')).toBeDefined();
    const all: CrawlPlanShown = { ...plan, what: 'all' };
    expect(layer(crawlSheet(job, assessment, all, ROOM).items, 'floor-shown')).toBeUndefined();
  });
});

test('a thumbnail fits its room and cuts the view at the walls', () => {
  const picture = assessment.coverage!.pictures[2];
  const drawing = thumbnail(job, assessment, picture, { width: 74, height: 40 });
  expect(drawing.width).toBeLessThanOrEqual(74.01);
  expect(drawing.height).toBeLessThanOrEqual(40.01);
  const view = layer(drawing.items, 'view')!;
  expect(view.within).toHaveLength(4);
  expect(drawing.items.filter((i) => i.kind === 'circle')).toHaveLength(job.plan.piers.length + 1);
});
