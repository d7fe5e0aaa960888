import { describe, expect, test } from 'vitest';
import { type Rich, textOf } from '../../src/document/blocks.ts';
import { reportDocument } from '../../src/document/report.ts';
import { ENGLISH_CHAIN_WORDS } from '../../src/drawing/chain/chain-words.ts';
import { demo } from '../jobs.ts';

function sectionOf(name: string) {
  const { job, assessment } = demo(name);
  const section = reportDocument(job, assessment).sections.find((s) => s.id === 'causes');
  if (section === undefined) throw new Error('no section of causes');
  return { causes: assessment.causes, section };
}

const text = (cell: readonly Rich[]) => cell.map(textOf).join(' | ');

describe.each(['neglected-vented', 'doubted-liner'])('why it is so, %s', (name) => {
  const { causes, section } = sectionOf(name);
  const tables = section.blocks.filter((b) => b.kind === 'table');
  const rows = tables
    .flatMap((t) => (t.columns[0].title === 'No.' ? t.rows : []))
    .filter((row) => text(row[0]) !== '\u2013');

  test('stands once for every arrow of the drawing, in its order', () => {
    const numbers = causes.arrows.flatMap((a) => (a.number === undefined ? [] : [String(a.number)]));
    expect(rows.map((row) => text(row[0]))).toEqual(numbers);
    const figure = section.blocks.find((b) => b.kind === 'figure');
    expect(figure?.onPaper({ width: 690, height: 500, textSize: 7.2 }).items.length).toBeGreaterThan(0);
  });

  test('lists all evidence of an arrow, what speaks against it included', () => {
    const found = new Set<string>(causes.observations.map((o) => o.key));
    for (const arrow of causes.arrows) {
      if (arrow.number === undefined || !found.has(arrow.to)) continue;
      const row = rows.find((r) => text(r[0]) === String(arrow.number));
      const lines = row?.[3].map(textOf) ?? [];
      expect(lines.filter((l) => l.startsWith('For: ')).length).toBe(arrow.supports.length);
      expect(lines.filter((l) => l.startsWith('Against: ')).length).toBe(arrow.contradicts.length);
      if (arrow.standing === 'not-shown') expect(lines.join()).toContain('Nothing was shown');
    }
  });

  test('says what to measure next, how, and what each outcome would tell', () => {
    const next = tables.find((t) => t.caption.startsWith('What to measure next'));
    expect(next?.rows.length).toBe(causes.next.length);
    const first = next?.rows[0] ?? [];
    expect(text(first[0])).toContain(causes.next[0].title);
    expect(first[2].length).toBe(causes.next[0].outcomes.length + 1);
  });

  test('names every explanation of a finding, those too light to draw and what is not listed included', () => {
    for (const { key, title } of causes.observations) {
      const table = tables.find((t) => t.caption.startsWith(`What explains it: ${title}.`));
      const last = text(table?.rows.at(-1)?.[3] ?? []);
      for (const arrow of causes.arrows) {
        if (arrow.to !== key || arrow.number !== undefined) continue;
        expect(last, key).toContain(ENGLISH_CHAIN_WORDS.nodes[arrow.from].toLowerCase());
      }
      expect(last, key).toContain('something not listed');
    }
  });

  test('prints no more digits than the figures bear', () => {
    expect(tables.flatMap((t) => t.rows.map((row) => row.map(text).join(' '))).join(' ')).not.toMatch(
      /\d\.\d{3,}/,
    );
  });

  test('prints no gaps of the program', () => {
    expect(JSON.stringify(section)).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });
});

test('a sound space has no chain, and says that nothing wants an explanation', () => {
  const { section } = sectionOf('sound-closed');
  expect(section.blocks.some((b) => b.kind === 'figure' || b.kind === 'table')).toBe(false);
  expect(JSON.stringify(section)).toContain('Nothing was found that wants an explanation.');
});
