import { DEMO_JOBS, type DemoJob, demoPictures } from '@undercroft/record';
import { zlibSync } from 'fflate';
import { beforeAll, describe, expect, test } from 'vitest';
import { reportDocument } from '../../src/document/report.ts';
import { reportPdf } from '../../src/index.ts';
import { assessed, bareJob, demo, largeJob, packageFonts } from '../jobs.ts';
import { pageTexts, type ReadPdf, readPdf, structure } from './read-pdf.ts';

const fonts = packageFonts();
const run = (text: string) => text.replace(/\s+/g, '');

describe('the PDF of doubted-liner', () => {
  const { job, assessment } = demo('doubted-liner');
  let bytes: Uint8Array;
  let pdf: ReadPdf;
  let pages: string[];

  beforeAll(async () => {
    bytes = await reportPdf(job, assessment, { fonts });
    pdf = readPdf(bytes);
    pages = pageTexts(pdf);
  }, 60_000);

  test('has the same bytes when made again', { timeout: 60_000 }, async () => {
    const again = await reportPdf(job, assessment, { fonts });
    expect(Buffer.from(again).equals(Buffer.from(bytes))).toBe(true);
  });

  test('is packed by the compressor that is the same on every platform, not by that of this one', () => {
    const packed = [...pdf.objects.values()].flatMap((o) => (o.packed === undefined ? [] : [o]));
    expect(packed.length).toBeGreaterThan(20);
    for (const { stream, packed: raw } of packed) {
      const again = zlibSync(Uint8Array.from(Buffer.from(stream as string, 'latin1')));
      expect(Buffer.from(again).toString('latin1') === raw).toBe(true);
    }
  });

  test('is dated with the day of the survey, not with today', () => {
    expect(pdf.source).toContain('(D:20260812000000Z)');
    expect(pdf.source).toContain('<xmp:CreateDate>2026-08-12T00:00:00Z</xmp:CreateDate>');
  });

  test('is tagged, in English, and shows its title', () => {
    expect(pdf.source).toContain('/StructTreeRoot');
    expect(pdf.source).toContain('/Lang (en-US)');
    expect(pdf.source).toMatch(/\/Marked true/);
    expect(pdf.source).toContain('/DisplayDocTitle true');
  });

  test('has the structure of the document', () => {
    const kinds = structure(pdf);
    const blocks = reportDocument(job, assessment).sections.flatMap((s) => s.blocks);
    const tables = blocks.flatMap((b) => (b.kind === 'table' ? [b] : []));
    expect(kinds.get('H1')).toBe(1);
    expect(kinds.get('H2')).toBe(blocks.filter((b) => b.kind === 'heading' && b.level === 2).length);
    expect(kinds.get('H3')).toBe(blocks.filter((b) => b.kind === 'heading' && b.level === 3).length);
    expect(kinds.get('Table')).toBe(tables.length);
    const pictures = blocks.reduce((n, b) => n + (b.kind === 'gallery' ? b.entries.length : 0), 0);
    expect(kinds.get('Figure')).toBe(blocks.filter((b) => b.kind === 'figure').length + pictures);
    const rows = tables.reduce((n, t) => n + t.rows.length, 0);
    const heads = tables.filter((t) => t.headless !== true);
    expect(kinds.get('TR')).toBe(rows + heads.length);
    expect(kinds.get('TH')).toBe(rows + heads.reduce((n, t) => n + t.columns.length, 0));
    expect(pdf.source.match(/\/Scope \/Column/g)?.length).toBe(
      heads.reduce((n, t) => n + t.columns.length, 0),
    );
    expect(pdf.source.match(/\/Scope \/Row/g)?.length).toBe(rows);
  });

  test('describes each figure', () => {
    const figures = [...pdf.objects.values()].filter((o) => o.head.startsWith('<<\n/S /Figure'));
    for (const f of figures) expect(f.head).toMatch(/\/Alt \(.{40,}/s);
  });

  test('has everything on its pages inside a mark, as content or as decoration', () => {
    for (const { head, stream } of pdf.objects.values()) {
      if (stream === undefined || !stream.includes(' Tf') || head.includes('/FontFile')) continue;
      let depth = 0;
      for (const line of stream.split('\n')) {
        if (/ BDC$| BMC$/.test(line)) depth += 1;
        else if (line === 'EMC') depth -= 1;
        else if (/ TJ$/.test(line)) expect(depth).toBe(1);
      }
      expect(depth).toBe(0);
    }
  });

  test('counts its pages on each of them, beside job and date', () => {
    expect(pages.length).toBeGreaterThan(10);
    expect(pages.length).toBeLessThan(60);
    for (const [i, text] of pages.entries()) {
      expect(text).toContain(`Page ${i + 1} of ${pages.length}`);
      expect(text).toContain('Weir Street 212');
      expect(text).toContain('August 12, 2026');
    }
  });

  test('has text that can be taken out again: headline, criteria, assumptions', () => {
    const all = run(pages.join('\n'));
    expect(all).toContain(run(assessment.headline.replace(/(\d) %/g, '$1%')));
    for (const c of assessment.criteria) expect(all, c.id).toContain(run(c.title));
    for (const a of assessment.assumptions) expect(all, a.key).toContain(run(a.title));
    expect(all).toContain(run('authority having jurisdiction'));
  });

  test('has the plan, what pictures show, the air as found and the chain of causes on sheets of their own, wide side level', () => {
    const sheets = [...pdf.objects.values()].filter((o) => o.head.includes('/MediaBox [0 0 792 612]'));
    expect(sheets.length).toBe(4);
    const sheet = pages.find((text) => text.includes('Scale on Letter')) as string;
    expect(sheet).toMatch(/1:\d+/);
    expect(sheet).toContain('Ruth Castellane');
  });

  test('carries its fonts, and only the glyphs it uses', () => {
    expect(pdf.source.match(/\/FontFile2/g)?.length).toBe(3);
    expect(bytes.length).toBeLessThan(800_000);
  });
});

test('pictures are in the PDF as they are, each described', { timeout: 60_000 }, async () => {
  const { job, assessment } = demo('doubted-liner');
  const pictures = demoPictures(DEMO_JOBS.find((d) => d.name === 'doubted-liner') as DemoJob);
  const pdf = readPdf(await reportPdf(job, assessment, { fonts, pictures }));
  const images = [...pdf.objects.values()].filter((o) => o.head.includes('/Subtype /Image'));
  expect(images.length).toBe(32);
  for (const image of images) {
    expect(image.head).toContain('/Width 240');
    expect(image.head).toContain('/Indexed');
  }
  expect(pdf.source).toContain('Machine in the back left corner');
});

test('a hostile title stays text and keeps the metadata whole', async () => {
  const title = 'A <script> & "B" (C) \\ D';
  const { job, assessment } = assessed({ ...bareJob, header: { title } });
  const pdf = readPdf(await reportPdf(job, assessment, { fonts }));
  expect(pdf.source).toContain('A &lt;script&gt; &amp; &quot;B&quot; (C) \\ D</rdf:li>');
  expect(pdf.source).toContain('(A <script> & "B" \\(C\\) \\\\ D)');
  expect(pageTexts(pdf)[0]).toContain(title);
});

test('a job of which hardly anything is known makes a PDF', async () => {
  const { job, assessment } = assessed(bareJob);
  const pages = pageTexts(readPdf(await reportPdf(job, assessment, { fonts })));
  expect(pages.length).toBeGreaterThan(2);
  expect(run(pages.join())).toContain(run('No readings were taken.'));
});

test('five hundred corners, sixty piers and words without an end fit', { timeout: 60_000 }, async () => {
  const large = largeJob(500, 60);
  const long = 'unbroken'.repeat(900);
  const { job, assessment } = assessed({
    ...large,
    header: { title: 'Large', complaint: long, notes: 'word '.repeat(3000) },
  });
  const pages = pageTexts(readPdf(await reportPdf(job, assessment, { fonts })));
  expect(run(pages.join('\n')).match(/unbroken/g)?.length).toBeGreaterThan(800);
  expect(pages.join(' ').match(/word/g)?.length).toBeGreaterThanOrEqual(3000);
});
