import type { Gallery, GalleryEntry } from '../document/blocks.ts';
import { GROUNDS } from '../look/tokens.ts';
import { drawDrawing } from './draw-items.ts';
import type { Pages } from './pages.ts';
import { type Line, setLines } from './set-lines.ts';
import { TYPE, type TypeStyle } from './type-styles.ts';

type Element = PDFKit.PDFStructureElement;

/** Two cards side by side: picture, and beside it the small plan over the text. */
const CARDS = 2;
const GUTTER = 16;
const PICTURE = { width: 112, height: 76 } as const;
const PLAN = { width: 74, height: 40 } as const;
const SPACE = 9;

const STYLE: TypeStyle = { ...TYPE.cell, size: 7.6, leading: 9.6, after: 1.5 };

interface Card {
  readonly entry: GalleryEntry;
  readonly lines: readonly (readonly Line[])[];
  readonly height: number;
}

function cardOf(pages: Pages, entry: GalleryEntry, width: number): Card {
  const room = width - PICTURE.width - 8;
  const lines = entry.text.map((rich) => setLines(rich, STYLE, room, pages.measure));
  const text = lines.reduce((sum, l) => sum + l.length * STYLE.leading + STYLE.after, 0);
  const plan = entry.plan(PLAN).height + 3;
  return { entry, lines, height: Math.max(PICTURE.height, plan + text) };
}

/** The picture within its field, as large as fits; a field with words where it is not at hand. */
function drawPicture(pages: Pages, { picture }: GalleryEntry, x: number, y: number): void {
  const { doc } = pages;
  if (picture === undefined) {
    doc.lineWidth(0.5).strokeColor(GROUNDS.paper.rule).undash();
    doc.rect(x, y, PICTURE.width, PICTURE.height).stroke();
    const [line] = setLines([{ text: 'Not at hand', look: 'soft' }], STYLE, PICTURE.width, pages.measure);
    if (line !== undefined)
      pages.line(line, STYLE, x + (PICTURE.width - line.width) / 2, y + PICTURE.height / 2 - 5);
    return;
  }
  const scale = Math.min(PICTURE.width / picture.width, PICTURE.height / picture.height);
  const [width, height] = [picture.width * scale, picture.height * scale];
  doc.image(pages.picture(picture.bytes), x, y, { width, height });
  doc.lineWidth(0.4).strokeColor(GROUNDS.paper.soft).undash().rect(x, y, width, height).stroke();
}

function writeCard(pages: Pages, parent: Element, { entry, lines }: Card, x: number, y: number): void {
  const { doc } = pages;
  const figure = doc.struct('Figure', { alt: entry.description });
  parent.add(figure);
  const right = x + PICTURE.width + 8;
  const plan = entry.plan(PLAN);
  figure.add(() => {
    drawPicture(pages, entry, x, y);
    drawDrawing(doc, plan, right, y);
  });
  figure.end();
  let at = y + plan.height + 3;
  for (const paragraph of lines) {
    const element = doc.struct('P');
    parent.add(element);
    const top = at;
    element.add(() => {
      for (const [i, line] of paragraph.entries()) pages.line(line, STYLE, right, top + i * STYLE.leading);
    });
    element.end();
    at += paragraph.length * STYLE.leading + STYLE.after;
  }
}

/** Least room in which a gallery may begin [points]. */
export const galleryStart = PICTURE.height + SPACE;

/** Pictures two in a row, each with its small plan and words. */
export function writeGallery(pages: Pages, parent: Element, { entries }: Gallery): void {
  const width = (pages.width - GUTTER * (CARDS - 1)) / CARDS;
  for (let at = 0; at < entries.length; at += CARDS) {
    const cards = entries.slice(at, at + CARDS).map((entry) => cardOf(pages, entry, width));
    const height = Math.max(...cards.map((c) => c.height));
    pages.need(height);
    for (const [i, card] of cards.entries())
      writeCard(pages, parent, card, pages.left + i * (width + GUTTER), pages.y);
    pages.y += height + SPACE;
  }
}
