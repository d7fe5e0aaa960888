import type { List, Paragraph, Rich, Tally } from '../document/blocks.ts';
import { mark } from '../drawing/marks.ts';
import { GROUNDS } from '../look/tokens.ts';
import { drawItems } from './draw-items.ts';
import type { Pages } from './pages.ts';
import { type Line, setLines } from './set-lines.ts';
import { FONTS, TYPE, type TypeStyle } from './type-styles.ts';

type Element = PDFKit.PDFStructureElement;

/** Fewest lines of a paragraph that stand alone at the foot or the top of a page. */
const TOGETHER = 2;

/** Writes set lines down the page and over page breaks, as one element. */
function writeLines(
  pages: Pages,
  element: Element,
  lines: readonly Line[],
  style: TypeStyle,
  x: number,
): void {
  let at = 0;
  while (at < lines.length) {
    const left = lines.length - at;
    let fits = Math.min(left, Math.max(0, Math.floor(pages.room / style.leading)));
    if (fits < left && left - fits < TOGETHER) fits = Math.max(0, left - TOGETHER);
    if (fits < Math.min(TOGETHER, left) && !pages.atTop) fits = 0;
    if (fits === 0) {
      pages.newPage();
      continue;
    }
    const part = lines.slice(at, at + fits);
    element.add(() => {
      for (const [i, line] of part.entries()) pages.line(line, style, x, pages.y + i * style.leading);
    });
    pages.y += fits * style.leading;
    at += fits;
  }
}

/** Writes one paragraph under a parent, as an element of the given type. */
export function writeParagraph(
  pages: Pages,
  parent: Element,
  text: Rich,
  style: TypeStyle,
  type: string,
  indent = 0,
): void {
  const lines = setLines(text, style, pages.width - indent, pages.measure);
  if (lines.length === 0) return;
  pages.space(style.before);
  const element = pages.doc.struct(type);
  parent.add(element);
  writeLines(pages, element, lines, style, pages.left + indent);
  element.end();
  pages.y += style.after;
}

export function paragraphStyle(role: Paragraph['role']): TypeStyle {
  return role === 'lead' ? TYPE.lead : role === 'note' ? TYPE.note : TYPE.body;
}

/** Least height in which a paragraph may begin [points]. */
export function paragraphStart(pages: Pages, text: Rich, style: TypeStyle): number {
  const lines = setLines(text, style, pages.width, pages.measure).length;
  return style.before + style.leading * Math.min(lines, lines === TOGETHER + 1 ? lines : TOGETHER);
}

/** Height of a whole paragraph with its spaces [points]. */
export function paragraphHeight(pages: Pages, text: Rich, style: TypeStyle): number {
  const lines = setLines(text, style, pages.width, pages.measure).length;
  return lines === 0 ? 0 : style.before + lines * style.leading + style.after;
}

/** A list with a small square before each item. */
export function writeList(pages: Pages, parent: Element, { items }: List): void {
  const style = { ...TYPE.note, color: 'ink' as const, after: 2.5 };
  const list = pages.doc.struct('L');
  parent.add(list);
  for (const item of items) {
    const lines = setLines(item, style, pages.width - 10, pages.measure);
    if (lines.length === 0) continue;
    pages.need(style.leading * Math.min(lines.length, TOGETHER));
    const entry = pages.doc.struct('LI');
    list.add(entry);
    const body = pages.doc.struct('LBody');
    entry.add(body);
    pages.artifact('Layout', () => {
      const side = 2.2;
      pages.doc
        .rect(pages.left + 1, pages.y + style.leading / 2 - side / 2, side, side)
        .fill(GROUNDS.paper.soft);
    });
    writeLines(pages, body, lines, style, pages.left + 10);
    pages.y += style.after;
  }
  list.end();
  pages.y += 4;
}

/** Counts in large figures, each behind its mark and before its word. */
export function writeTally(pages: Pages, parent: Element, { entries }: Tally): void {
  const { doc } = pages;
  const height = 30;
  pages.need(height);
  let x = pages.left;
  for (const entry of entries) {
    const element = doc.struct('P');
    parent.add(element);
    const count = String(entry.count);
    const countWidth = pages.measure(count, 'figures', 24);
    const options = { lineBreak: false, baseline: 'alphabetic' } as const;
    const base = pages.y + 22;
    element.add(() => {
      drawItems(doc, mark(entry.mark, { x: x + 8, y: base - 8.5 }, 16));
      doc.font(FONTS.figures).fontSize(24).fillColor(GROUNDS.paper.ink);
      doc.text(count, x + 21, base, options);
      doc.font(FONTS.text).fontSize(TYPE.body.size);
      doc.text(entry.words, x + 26 + countWidth, base, options);
    });
    element.end();
    x += 26 + countWidth + pages.measure(entry.words, 'text', TYPE.body.size) + 32;
  }
  pages.y += height + 6;
}
