import type { Item, Spot } from '../display-list.ts';
import { breakText, fitText } from '../text-width.ts';
import type { LegendEntry } from './legend.ts';
import { LETTERING, lettering, type PlanView } from './view.ts';

/** Height of a line of small lettering, in units. */
const NOTE = 9.2;

/** Entries shared out to columns of about the same height, in order. */
function inColumns(entries: readonly LegendEntry[], columns: number): LegendEntry[][] {
  const share = entries.reduce((sum, e) => sum + e.height, 0) / columns;
  const out: LegendEntry[][] = [[]];
  let height = 0;
  for (const entry of entries) {
    if (height + entry.height / 2 > share && out.length < columns) {
      out.push([]);
      height = 0;
    }
    out[out.length - 1].push(entry);
    height += entry.height;
  }
  return out;
}

/** Something laid out below a spot, and the height it took in drawing units. */
export interface Laid {
  readonly items: Item[];
  readonly height: number;
}

/** The legend in columns: only what is on the sheet. */
export function legendItems(view: PlanView, at: Spot, width: number, columns: number): Laid {
  const { unit } = view;
  const columnWidth = width / columns;
  const items: Item[] = [];
  let tallest = 0;
  for (const [i, column] of inColumns(view.legend.list(), columns).entries()) {
    const x = at.x + i * columnWidth;
    let y = 0;
    for (const entry of column) {
      const middle = at.y + (y + entry.height / 2) * unit;
      const words = fitText(entry.words, columnWidth - 31 * unit, LETTERING.ordinary * unit);
      items.push(
        ...entry.sample({ x: x + 12 * unit, y: middle }),
        lettering(view, { x: x + 28 * unit, y: middle + 2.6 * unit }, words),
      );
      y += entry.height;
    }
    tallest = Math.max(tallest, y);
  }
  return { items: [{ kind: 'layer', name: 'legend', items }], height: tallest * unit };
}

/** Height of the findings spelled out in columns, in units. */
export function findingsHeight(view: PlanView, width: number, columns: number): number {
  return (
    Math.max(0, ...findingColumns(view, width, columns).map((c) => c.reduce((n, f) => n + f.length, 0))) *
    NOTE
  );
}

function findingColumns(view: PlanView, width: number, columns: number): string[][][] {
  const { findings } = view.job;
  const room = width / columns - 18 * view.unit;
  const broken = findings.map((f) => breakText(f.title, room, LETTERING.small * view.unit));
  const each = Math.ceil(findings.length / columns);
  return Array.from({ length: columns }, (_, i) => broken.slice(i * each, (i + 1) * each));
}

/** The findings spelled out by number, as many as there is room for; the rest is counted. */
export function findingNotes(
  view: PlanView,
  at: Spot,
  room: { readonly width: number; readonly height: number; readonly columns: number },
): Laid {
  const { unit } = view;
  const items: Item[] = [];
  const small = { size: LETTERING.small };
  let number = 0;
  let tallest = 0;
  for (const [i, column] of findingColumns(view, room.width, room.columns).entries()) {
    const x = at.x + (i * room.width) / room.columns;
    let y = 0;
    for (const [j, lines] of column.entries()) {
      number += 1;
      const more = j < column.length - 1 ? 1 : 0;
      if ((y + (lines.length + more) * NOTE) * unit > room.height) {
        const rest = column.length - j;
        items.push(lettering(view, { x, y: at.y + (y + 7) * unit }, `and ${rest} more, see the list`, small));
        number += rest - 1;
        y += NOTE;
        break;
      }
      items.push(
        lettering(view, { x: x + 11 * unit, y: at.y + (y + 7) * unit }, String(number), {
          ...small,
          face: 'strong',
          align: 'end',
        }),
        ...lines.map((text, k) =>
          lettering(view, { x: x + 15 * unit, y: at.y + (y + 7 + k * NOTE) * unit }, text, small),
        ),
      );
      y += lines.length * NOTE;
    }
    tallest = Math.max(tallest, y);
  }
  return {
    items: items.length === 0 ? [] : [{ kind: 'layer', name: 'finding-notes', items }],
    height: tallest * unit,
  };
}

/** Short notes about the drawing, one a line. */
export function sheetNotes(view: PlanView, at: Spot, notes: readonly string[]): Laid {
  const { unit } = view;
  const items = notes.map((note, i) =>
    lettering(view, { x: at.x, y: at.y + (i * NOTE + 7) * unit }, note, {
      color: 'soft',
      size: LETTERING.small,
    }),
  );
  return {
    items: items.length === 0 ? [] : [{ kind: 'layer', name: 'notes', items }],
    height: notes.length * NOTE * unit,
  };
}
