import { DEMO_JOBS, type DemoJob, demoPictures } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { type Cell, type Gallery, type Section, type Table, textOf } from '../../src/document/blocks.ts';
import { reportDocument } from '../../src/document/report.ts';
import { assessed, bareJob, DEMO_NAMES, demo } from '../jobs.ts';

const cellText = (cell: Cell) => cell.map(textOf).join(' ');
const rowText = (row: readonly Cell[]) => row.map(cellText).join(' | ');

function defectsOf({ sections }: { readonly sections: readonly Section[] }): Section {
  const found = sections.find((s) => s.id === 'defects');
  if (found === undefined) throw new Error('the report has no section of defects');
  return found;
}

const tables = (section: Section) => section.blocks.filter((b): b is Table => b.kind === 'table');
const galleries = (section: Section) => section.blocks.filter((b): b is Gallery => b.kind === 'gallery');

describe.each(DEMO_NAMES)('defects in the report of %s', (name) => {
  const { job, assessment } = demo(name);
  const section = defectsOf(reportDocument(job, assessment));
  const rows = tables(section).flatMap((t) =>
    t.rows.map((row, i) => ({ caption: t.caption, row, from: t.rowsFrom?.[i] })),
  );

  test('each stands once under its grade, with place, proof, criteria and remedy', () => {
    for (const d of assessment.defects) {
      const own = rows.filter((r) => r.from === `defects/${d.key}` && rowText(r.row).includes(d.name));
      expect(own.length, d.key).toBe(1);
      const text = rowText(own[0].row);
      for (const id of d.broken) expect(text).toContain(id);
      for (const place of new Set(d.places.slice(0, 1).map((p) => p.words))) expect(text).toContain(place);
      expect(text).toContain(d.remedy);
      for (const why of d.severityBecause) expect(text).toContain(why);
    }
    const grades = rows.filter((r) => r.from !== undefined).map((r) => r.caption);
    expect(new Set(grades).size).toBe(new Set(assessment.defects.map((d) => d.severity)).size);
  });

  test('a rule of practice is never told as code', () => {
    for (const { row } of rows.filter((r) => r.from !== undefined)) {
      for (const line of row[2].map(textOf)) {
        const criterion = assessment.criteria.find((c) => line.startsWith(`${c.id} `));
        if (criterion?.sourceKnown === 'practice') expect(line).toBe(`${criterion.id} practice`);
      }
    }
  });

  test('what nobody looked for has no grade, and what would tell beside it', () => {
    const open = rows.filter((r) => r.from === undefined);
    expect(open).toHaveLength(assessment.defectsNotShown.length);
    for (const d of assessment.defectsNotShown) {
      expect(open.some(({ row }) => cellText(row[0]).startsWith(d.name))).toBe(true);
    }
  });
});

test('each finding with a place stands on a small plan, beside the picture that shows it', () => {
  const { job, assessment } = demo('doubted-liner');
  const pictures = demoPictures(DEMO_JOBS.find((d) => d.name === 'doubted-liner') as DemoJob);
  const [gallery] = galleries(defectsOf(reportDocument(job, assessment, { pictures })));
  const claims = assessment.defects.flatMap((d) => d.findings);
  expect(gallery.entries).toHaveLength(claims.filter((c) => c.at !== undefined).length);
  const drain = gallery.entries.find((e) => cellText(e.text).includes('Drain lies on the ground'));
  const finding = claims.find((c) => c.title.startsWith('Drain lies on the ground'));
  const proof = assessment.coverage?.proofs.find((p) => p.id === finding?.id);
  const first = assessment.coverage?.pictures.find((p) => p.id === proof?.pictures[0]);
  expect(cellText(drain?.text ?? [])).toContain(`In picture ${first?.number}`);
  expect(drain?.picture?.mediaType).toBe('image/png');
  expect(drain?.plan({ width: 74, height: 40 }).description).toContain('Drain lies on the ground');
});

test('a job of which hardly anything is known says that no defect was shown', () => {
  const { job, assessment } = assessed(bareJob);
  const section = defectsOf(reportDocument(job, assessment));
  const bare = assessment.defects.length === 0;
  expect(section.blocks.some((b) => b.kind === 'paragraph' && textOf(b.text).startsWith('No defect'))).toBe(
    bare,
  );
  expect(tables(section).at(-1)?.rows.length).toBe(assessment.defectsNotShown.length);
});
