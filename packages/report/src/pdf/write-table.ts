import type { Cell, Column, Table } from '../document/blocks.ts';
import type { Pages } from './pages.ts';
import { type Line, setLines } from './set-lines.ts';
import { TYPE, type TypeStyle } from './type-styles.ts';
import { writeParagraph } from './write-text.ts';

type Element = PDFKit.PDFStructureElement;

/** Space between columns, and above and below the lines of a row [points]. */
const GUTTER = 11;
const ROW_SPACE = 3.4;

interface Place {
  readonly x: number;
  readonly width: number;
  readonly end: boolean;
}

function placesOf(columns: readonly Column[], left: number, width: number): Place[] {
  const total = columns.reduce((sum, c) => sum + c.weight, 0);
  const room = width - GUTTER * (columns.length - 1);
  let x = left;
  return columns.map((c) => {
    const place = { x, width: (room * c.weight) / total, end: c.align === 'end' };
    x += place.width + GUTTER;
    return place;
  });
}

/** A line of a cell with the space before it, which parts the paragraphs of the cell. */
interface CellLine {
  readonly line: Line;
  readonly gap: number;
}

function cellLines(cell: Cell, style: TypeStyle, width: number, pages: Pages): CellLine[] {
  return cell.flatMap((rich, i) =>
    setLines(rich, style, width, pages.measure).map((line, j) => ({
      line,
      gap: i > 0 && j === 0 ? style.after : 0,
    })),
  );
}

const heightOf = (lines: readonly CellLine[], style: TypeStyle): number =>
  lines.reduce((sum, l) => sum + l.gap + style.leading, 0);

function drawCell(
  pages: Pages,
  lines: readonly CellLine[],
  style: TypeStyle,
  place: Place,
  top: number,
): void {
  let y = top;
  for (const { line, gap } of lines) {
    y += gap;
    const x = place.end ? place.x + place.width - line.width : place.x;
    pages.line(line, style, x, y);
    y += style.leading;
  }
}

// The types of the library do not know the scope of a head cell; the library itself does.
function headCell(pages: Pages, scope: 'Column' | 'Row'): Element {
  const options = { scope } as PDFKit.Mixins.StructureElementOptions;
  return pages.doc.struct('TH', options);
}

interface Head {
  readonly lines: readonly CellLine[][];
  readonly height: number;
}

function headOf(table: Table, places: readonly Place[], pages: Pages): Head | undefined {
  if (table.headless === true) return undefined;
  const lines = table.columns.map((c, i) =>
    cellLines([[{ text: c.title }]], TYPE.head, places[i].width, pages),
  );
  return { lines, height: Math.max(...lines.map((l) => heightOf(l, TYPE.head))) + 6 };
}

/** Column heads: told once to readers, drawn again on each page that the table runs on to. */
function drawHead(pages: Pages, head: Head, places: readonly Place[], parent: Element | undefined): void {
  const top = pages.y + 3;
  const cell = (i: number) => () => drawCell(pages, head.lines[i], TYPE.head, places[i], top);
  if (parent === undefined) {
    pages.artifact('Pagination', () => {
      for (const i of places.keys()) cell(i)();
    });
  } else {
    const group = pages.doc.struct('THead');
    parent.add(group);
    const row = pages.doc.struct('TR');
    group.add(row);
    for (const i of places.keys()) {
      const th = headCell(pages, 'Column');
      row.add(th);
      th.add(cell(i));
    }
    group.end();
  }
  pages.y += head.height;
  pages.rule(pages.y, 0.4, 'rule');
  pages.y += 1;
}

/** How many lines of a cell fit into a height; at least one, so that a table always gets on. */
function fitting(lines: readonly CellLine[], style: TypeStyle, height: number): number {
  let used = 0;
  let count = 0;
  for (const { gap } of lines) {
    used += gap + style.leading;
    if (used > height) break;
    count += 1;
  }
  return Math.max(count, Math.min(1, lines.length));
}

interface Layout {
  readonly pages: Pages;
  readonly places: readonly Place[];
  readonly head: Head | undefined;
}

function turnPage({ pages, places, head }: Layout): void {
  pages.rule(pages.y, 0.4, 'rule');
  pages.newPage();
  pages.rule(pages.y, 0.7);
  if (head !== undefined) drawHead(pages, head, places, undefined);
}

function writeRow(layout: Layout, body: Element, row: readonly Cell[]): void {
  const { pages, places } = layout;
  const style = TYPE.cell;
  let rest = row.map((c, i) => cellLines(c, style, places[i].width, pages));
  const whole = Math.max(style.leading, ...rest.map((l) => heightOf(l, style)));
  // A row that fits on a page of its own is not torn.
  if (whole + 2 * ROW_SPACE > pages.room && whole < pages.wholeRoom - 60) turnPage(layout);
  const element = pages.doc.struct('TR');
  body.add(element);
  const cells = row.map((_, i) => {
    const cell = i === 0 ? headCell(pages, 'Row') : pages.doc.struct('TD');
    element.add(cell);
    return cell;
  });
  do {
    const room = pages.room - 2 * ROW_SPACE;
    const counts = rest.map((lines) => fitting(lines, style, room));
    const parts = rest.map((lines, i) => lines.slice(0, counts[i]));
    const top = pages.y + ROW_SPACE;
    for (const [i, cell] of cells.entries()) {
      if (parts[i].length > 0) cell.add(() => drawCell(pages, parts[i], style, places[i], top));
    }
    pages.y = top + Math.max(style.leading, ...parts.map((l) => heightOf(l, style))) + ROW_SPACE;
    rest = rest.map((lines, i) => lines.slice(counts[i]));
    if (rest.some((l) => l.length > 0)) turnPage(layout);
  } while (rest.some((l) => l.length > 0));
  element.end();
}

/** Height of what must not be torn at the start of a table: caption, head and two rows [points]. */
export function tableStart(pages: Pages, table: Table): number {
  const places = placesOf(table.columns, pages.left, pages.width);
  const head = headOf(table, places, pages);
  const rows = table.rows.slice(0, 2).map((row) => {
    const heights = row.map((c, i) => heightOf(cellLines(c, TYPE.cell, places[i].width, pages), TYPE.cell));
    return Math.max(...heights) + 2 * ROW_SPACE;
  });
  const caption = TYPE.caption.before + TYPE.caption.leading + TYPE.caption.after;
  return Math.min(260, caption + (head?.height ?? 0) + rows.reduce((sum, h) => sum + h, 4));
}

/** Writes a table with rules above and below only; its head comes again on every page. */
export function writeTable(pages: Pages, parent: Element, table: Table): void {
  const places = placesOf(table.columns, pages.left, pages.width);
  const head = headOf(table, places, pages);
  const element = pages.doc.struct('Table');
  parent.add(element);
  writeParagraph(pages, element, [{ text: table.caption }], TYPE.caption, 'Caption');
  pages.rule(pages.y, 0.7);
  if (head !== undefined) drawHead(pages, head, places, element);
  const body = pages.doc.struct('TBody');
  element.add(body);
  for (const row of table.rows) writeRow({ pages, places, head }, body, row);
  element.end();
  pages.rule(pages.y, 0.7);
  pages.y += 12;
}
