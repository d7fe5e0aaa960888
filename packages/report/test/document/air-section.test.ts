import { assess } from '@undercroft/assessment';
import { describe, expect, test } from 'vitest';
import type { Cell, Figure, List, Table } from '../../src/document/blocks.ts';
import { textOf } from '../../src/document/blocks.ts';
import { reportDocument } from '../../src/document/report.ts';
import { flatten } from '../../src/drawing/display-list.ts';
import { demo } from '../jobs.ts';

const { job } = demo('doubted-liner');
const assessment = assess(job, undefined, { season: 'quick', coverage: false, distribution: 'search' });
const section = reportDocument(job, assessment).sections.find((s) => s.id === 'air');
const cellText = (cell: Cell) => cell.map(textOf).join(' ');
const tables = section?.blocks.filter((b): b is Table => b.kind === 'table') ?? [];
const figures = section?.blocks.filter((b): b is Figure => b.kind === 'figure') ?? [];
const room = { width: 690, height: 500, textSize: 7.2 };

describe('where the dry air goes', () => {
  test('sets intake and far end side by side, as found and as suggested, each with its range', () => {
    const rows = new Map(tables[0].rows.map((r) => [cellText(r[0]), r.slice(1).map(cellText)]));
    expect(rows.get('Humidity at the intake')?.[0]).toBe('55%');
    const [found, next] = rows.get('Humidity at the far end') ?? [];
    expect(found).toMatch(/^9\d% \(\d\d% to \d\d%\)$/);
    expect(Number.parseInt(next, 10)).toBeLessThan(75);
    expect(rows.get('Floor above 80%')?.[1]).toBe('0%');
  });

  test('draws both on one scale, with the lines that decide and those that mixing leaves open', () => {
    expect(figures.map((f) => f.id)).toEqual(['air-found', 'air-suggested-map']);
    const [before, after] = figures.map((f) => f.onPaper(room));
    const fills = ({ items }: typeof before) =>
      new Set(
        flatten(items).flatMap((i) => ('fill' in i && String(i.fill).startsWith('field') ? [i.fill] : [])),
      );
    expect(fills(before).has('field9')).toBe(true);
    const texts = (drawing: typeof before) =>
      flatten(drawing.items).flatMap((i) => (i.kind === 'text' ? [i.text] : []));
    for (const drawing of [before, after]) {
      expect(texts(drawing)).toContain('RH below 50%');
      expect(texts(drawing)).toContain('95% and more');
      expect(texts(drawing).join(' ')).toContain('It does not hold close to the');
    }
    expect(texts(before)).toEqual(expect.arrayContaining(['60%', '70%', '80%']));
    const dashed = flatten(before.items).filter((i) => i.kind === 'line' && i.stroke.dash !== undefined);
    expect(dashed.length).toBeGreaterThan(2);
    expect(before.description).toContain('intake reads 55%');
  });

  test('says what to do, where it ranks, and what the maps cannot say', () => {
    const lists = section?.blocks.filter((b): b is List => b.kind === 'list') ?? [];
    const said = lists.flatMap((l) => l.items.map(textOf)).join(' ');
    expect(said).toMatch(/Duct its outlet to|Move the dehumidifier|Set a fan/);
    expect(said).toContain('known to a factor of three');
    const text = section?.blocks.flatMap((b) => (b.kind === 'paragraph' ? [textOf(b.text)] : [])).join(' ');
    expect(text).toMatch(/As found it ranks \d+ of \d+ arrangements/);
    expect(text).toContain('Places left out by rules');
  });

  test('a space without a machine gets the reason', () => {
    const bare = demo('neglected-vented');
    const none = reportDocument(bare.job, bare.assessment).sections.find((s) => s.id === 'air');
    expect(none?.blocks).toHaveLength(2);
    expect(none?.blocks.some((b) => b.kind === 'paragraph' && /dehumidifier/.test(textOf(b.text)))).toBe(
      true,
    );
  });
});
