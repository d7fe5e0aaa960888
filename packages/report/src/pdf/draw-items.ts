import type { Drawing, Item, Spot, Stroke } from '../drawing/display-list.ts';
import { GROUNDS } from '../look/tokens.ts';
import { FONTS } from './type-styles.ts';

type Doc = PDFKit.PDFDocument;

const color = GROUNDS.paper;

function trace(doc: Doc, points: readonly Spot[]): void {
  points.forEach(({ x, y }, i) => {
    if (i === 0) doc.moveTo(x, y);
    else doc.lineTo(x, y);
  });
}

function usePen(doc: Doc, stroke: Stroke): void {
  doc.lineWidth(stroke.width).strokeColor(color[stroke.color]);
  // The types leave the dash pattern out; the library takes a list of lengths.
  if (stroke.dash === undefined) doc.undash();
  else doc.dash(stroke.dash as unknown as number, {});
}

function paint(doc: Doc, fill: keyof typeof color | undefined, stroke: Stroke | undefined): void {
  if (stroke !== undefined) usePen(doc, stroke);
  if (fill !== undefined && stroke !== undefined) {
    doc.fillColor(color[fill]).fillAndStroke(color[fill], color[stroke.color], 'even-odd');
  } else if (fill !== undefined) doc.fill(color[fill], 'even-odd');
  else if (stroke !== undefined) doc.stroke();
}

function drawText(doc: Doc, item: Extract<Item, { kind: 'text' }>): void {
  doc.font(FONTS[item.face]).fontSize(item.size).fillColor(color[item.color]);
  const width = doc.widthOfString(item.text);
  const back = item.align === 'start' ? 0 : item.align === 'middle' ? width / 2 : width;
  const options = { lineBreak: false, baseline: 'alphabetic' } as const;
  if (item.turnDeg === undefined || item.turnDeg === 0) {
    doc.text(item.text, item.at.x - back, item.at.y, options);
    return;
  }
  doc.save();
  doc.rotate(item.turnDeg, { origin: [item.at.x, item.at.y] });
  doc.text(item.text, item.at.x - back, item.at.y, options);
  doc.restore();
}

/** Draws items where the document's origin is. */
export function drawItems(doc: Doc, items: readonly Item[]): void {
  for (const item of items) {
    switch (item.kind) {
      case 'line':
        trace(doc, item.points);
        paint(doc, undefined, item.stroke);
        break;
      case 'area':
        for (const outline of item.outlines) {
          trace(doc, outline);
          doc.closePath();
        }
        paint(doc, item.fill, item.stroke);
        break;
      case 'circle':
        doc.circle(item.at.x, item.at.y, item.radius);
        paint(doc, item.fill, item.stroke);
        break;
      case 'text':
        drawText(doc, item);
        break;
      case 'layer':
        doc.save();
        if (item.within !== undefined) {
          trace(doc, item.within);
          doc.closePath().clip('even-odd');
        }
        drawItems(doc, item.items);
        doc.restore();
        break;
    }
  }
}

/** Draws a drawing with its upper left corner at a spot. */
export function drawDrawing(doc: Doc, drawing: Drawing, x: number, y: number): void {
  doc.save();
  doc.translate(x, y);
  drawItems(doc, drawing.items);
  doc.restore();
}
