import { crawlPlanOf } from '@undercroft/assessment';
import { DEMO_JOBS, demoPictures } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { type Block, type Gallery, type Table, textOf } from '../../src/document/blocks.ts';
import type { ReportExtras } from '../../src/document/extras.ts';
import { reportDocument } from '../../src/document/report.ts';
import { reportHtml } from '../../src/index.ts';
import { demo, packageFonts } from '../jobs.ts';

const { job, assessment } = demo('doubted-liner');
const pictures = demoPictures(DEMO_JOBS.find((d) => d.name === 'doubted-liner')!);

function blocksOf(extras: ReportExtras = {}): readonly Block[] {
  return reportDocument(job, assessment, extras).sections.find((s) => s.id === 'shown')?.blocks ?? [];
}
const tables = (blocks: readonly Block[]) => blocks.filter((b): b is Table => b.kind === 'table');
const rowTexts = (table: Table) =>
  table.rows.map((row) => row.map((cell) => cell.map(textOf).join(' ')).join(' | '));
const galleryOf = (blocks: readonly Block[]) => blocks.find((b): b is Gallery => b.kind === 'gallery')!;

describe('what was shown of the doubted liner', () => {
  const blocks = blocksOf();

  test('begins with what nobody looked at', () => {
    const first = blocks.find((b) => b.kind === 'paragraph');
    expect(first?.kind === 'paragraph' && textOf(first.text)).toMatch(
      /^No picture shows .* Old batts and cans/,
    );
  });

  test('names what hides in the corner, with its area and its place by tape', () => {
    const table = tables(blocks).find((t) => t.caption.startsWith('Floor in no picture'))!;
    expect(table.rows).toHaveLength(assessment.coverage!.unseen.length);
    const [corner] = rowTexts(table);
    expect(corner).toMatch(/ft²\s\(3\.\d\sm²\)/);
    expect(corner).toContain('from the east wall');
    expect(corner).toContain('bare earth');
    expect(corner).toContain('Old batts and cans, Far right corner, liner stops short');
  });

  test('says which claim is proved and which lacks a face, each with its mark', () => {
    const table = tables(blocks).find((t) => t.caption === 'Claimed as done')!;
    const [piers, vents] = rowTexts(table);
    expect(piers).toContain('Piers wrapped Installer of 2024, June 21, 2024 | Partly');
    expect(piers).toContain('north face of pier 14 (3 of 4 faces are shown)');
    expect(vents).toContain('| Shown');
    expect(table.rows[0][1][0][0]).toEqual({ mark: 'watch' });
    const findings = tables(blocks).find((t) => t.caption === 'Findings')!;
    expect(findings.rows).toHaveLength(job.findings.length);
  });

  test('has every picture once, in order, and says where it was taken', () => {
    const { entries } = galleryOf(blocks);
    expect(entries.map((e) => textOf(e.text[0]).split(' ')[0])).toEqual(
      assessment.coverage!.pictures.map((p) => String(p.number)),
    );
    for (const entry of entries) {
      expect(entry.picture).toBeUndefined();
      expect(entry.description.length).toBeGreaterThan(40);
      const { width, height } = entry.plan({ width: 100, height: 60 });
      expect(width).toBeLessThanOrEqual(100.01);
      expect(height).toBeLessThanOrEqual(60.01);
    }
    expect(blocks.map((b) => (b.kind === 'paragraph' ? textOf(b.text) : '')).join(' ')).toContain(
      'None of the pictures is at hand here',
    );
  });

  test('has the pictures themselves where they are at hand, and counts those that are not', () => {
    const all = galleryOf(blocksOf({ pictures })).entries;
    expect(all.every((e) => e.picture?.width === 240)).toBe(true);
    const some = new Map([...pictures].slice(1));
    const text = blocksOf({ pictures: some })
      .map((b) => (b.kind === 'paragraph' ? textOf(b.text) : ''))
      .join(' ');
    expect(text).toContain('1 of 32 pictures are not at hand');
  });

  test('has no crawl unless one is asked for, and then stops, tape and bearings', () => {
    expect(blocks.some((b) => b.kind === 'figure' && b.id === 'crawl-plan')).toBe(false);
    const crawl = crawlPlanOf(job, assessment);
    const planned = blocksOf({ crawl });
    expect(planned.some((b) => b.kind === 'figure' && b.id === 'crawl-plan')).toBe(true);
    const table = tables(planned).find((t) => t.caption.startsWith('Stand here'))!;
    expect(table.rows).toHaveLength(crawl.stops.length);
    expect(rowTexts(table)[0]).toMatch(/^1 \| .* from the \w+ wall, .* from the \w+ wall \| 1a {2}\w+, \d+°/);
    const said = planned.map((b) => (b.kind === 'paragraph' ? textOf(b.text) : '')).join(' ');
    expect(said).toContain('never that it is safe to enter');
  });
});

test('a job without pictures says so, and draws no plan of them', () => {
  const sound = demo('sound-closed');
  const section = reportDocument(sound.job, sound.assessment).sections.find((s) => s.id === 'shown')!;
  expect(section.blocks.some((b) => b.kind === 'figure' || b.kind === 'gallery')).toBe(false);
  const text = section.blocks.map((b) => (b.kind === 'paragraph' ? textOf(b.text) : '')).join(' ');
  expect(text).toContain('nothing of the space is shown');
});

test('an assessment without coverage has no such section', () => {
  const { coverage: _, ...without } = assessment;
  expect(reportDocument(job, without).sections.some((s) => s.id === 'shown')).toBe(false);
});

test('the page holds each picture, with words for those who do not see it', () => {
  const html = reportHtml(job, assessment, { fonts: packageFonts(), pictures });
  const images = [
    ...html.matchAll(/<img src="data:image\/png;base64,[^"]+" width="240" height="160" alt="([^"]+)"/g),
  ];
  // Each of the 32 as taken, and again beside each of the 9 findings that one shows.
  const found = images.filter(([, words]) => words.startsWith('Finding '));
  expect([found.length, images.length - found.length]).toEqual([9, 32]);
  expect(images[3][1]).toContain('Machine in the back left corner');
  expect(reportHtml(job, assessment, { fonts: packageFonts() })).not.toContain('<img');
});
