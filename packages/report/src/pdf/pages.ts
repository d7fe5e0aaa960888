import { mark } from '../drawing/marks.ts';
import { fitText } from '../drawing/text-width.ts';
import { GROUNDS } from '../look/tokens.ts';
import { drawItems } from './draw-items.ts';
import type { Line, Measure } from './set-lines.ts';
import { FONTS, PAPER, TYPE, type TypeStyle } from './type-styles.ts';

type Doc = PDFKit.PDFDocument;

/** What runs along the top and foot of every page. */
export interface Running {
  readonly job: string;
  readonly date: string;
  readonly foot: string;
}

/** Space between the running head and what stands below it [points]. */
const HEAD_GAP = 8;

/**
 * The pages of a report as they fill: where the next line goes, page breaks, drawings that wait for a sheet of their own,
 * running heads. Knows nothing of what the lines say.
 */
export class Pages {
  readonly doc: Doc;
  readonly left = PAPER.margin;
  readonly width = PAPER.width - 2 * PAPER.margin;
  readonly measure: Measure;
  y: number;
  readonly #bottom = PAPER.height - PAPER.margin;
  readonly #top = PAPER.margin + HEAD_GAP;
  #sheets: (() => void)[] = [];
  readonly #widths = new Map<string, number>();
  readonly #pictures = new Map<Uint8Array, string>();

  constructor(doc: Doc) {
    this.doc = doc;
    this.measure = (text, face, size) => {
      const key = `${face} ${text}`;
      const known = this.#widths.get(key);
      if (known !== undefined) return (known * size) / 1000;
      const width = doc.font(FONTS[face]).fontSize(1000).widthOfString(text);
      this.#widths.set(key, width);
      return (width * size) / 1000;
    };
    doc.addPage({ size: [PAPER.width, PAPER.height], margin: PAPER.margin });
    this.y = this.#top;
  }

  /** A picture as the library draws it; the file holds the same bytes once. */
  picture(bytes: Uint8Array): string {
    const known = this.#pictures.get(bytes);
    if (known !== undefined) return known;
    // The library opens bytes and draws what it opened; its types tell neither.
    const opened = (this.doc as unknown as { openImage(bytes: Uint8Array): string }).openImage(bytes);
    this.#pictures.set(bytes, opened);
    return opened;
  }

  /** Room left on the page [points]. */
  get room(): number {
    return this.#bottom - this.y;
  }

  /** Room of a whole page. */
  get wholeRoom(): number {
    return this.#bottom - this.#top;
  }

  get atTop(): boolean {
    return this.y <= this.#top + 0.01;
  }

  /** Begins a page; sheets that wait come first. */
  newPage(): void {
    this.flushSheets();
    this.doc.addPage({ size: [PAPER.width, PAPER.height], margin: PAPER.margin });
    this.y = this.#top;
  }

  /** Begins a page unless this much room is left. */
  need(height: number): void {
    if (height > this.room && !this.atTop) this.newPage();
  }

  /** Space between blocks; none at the top of a page. */
  space(height: number): void {
    if (!this.atTop) this.y += height;
  }

  /** Puts a drawing on a sheet of its own, wide side level, as soon as the present page is full. */
  queueSheet(draw: (room: { x: number; y: number; width: number; height: number }) => void): void {
    this.#sheets.push(() => {
      this.doc.addPage({ size: [PAPER.height, PAPER.width], margin: PAPER.margin });
      draw({
        x: PAPER.margin,
        y: this.#top,
        width: PAPER.height - 2 * PAPER.margin,
        height: PAPER.width - PAPER.margin - this.#top,
      });
    });
  }

  flushSheets(): void {
    const sheets = this.#sheets;
    this.#sheets = [];
    for (const sheet of sheets) sheet();
  }

  /** Draws a set line with its top at `y`. */
  line(line: Line, style: TypeStyle, x: number, y: number): void {
    const { doc } = this;
    const base = y + style.leading * 0.5 + style.size * 0.35;
    for (const { x: at, mark: name } of line.marks) {
      drawItems(
        doc,
        mark(name, { x: x + at + style.size * 0.55, y: base - style.size * 0.34 }, style.size * 1.1),
      );
    }
    for (const run of line.runs) {
      doc.font(FONTS[run.face]).fontSize(style.size).fillColor(GROUNDS.paper[run.color]);
      doc.text(run.text, x + run.x, base, { lineBreak: false, baseline: 'alphabetic' });
      if (!run.assumed) continue;
      doc.lineWidth(0.6).strokeColor(GROUNDS.paper.ink).dash(2, { space: 1.4 });
      doc
        .moveTo(x + run.x, base + 2.1)
        .lineTo(x + run.x + run.width, base + 2.1)
        .stroke();
      doc.undash();
    }
  }

  /** A level rule across the column, which readers of the page need not hear of. */
  rule(y: number, weight: number, tone: 'ink' | 'rule' = 'ink'): void {
    this.artifact('Layout', () => {
      this.doc
        .undash()
        .lineWidth(weight)
        .strokeColor(GROUNDS.paper[tone])
        .moveTo(this.left, y)
        .lineTo(this.left + this.width, y)
        .stroke();
    });
  }

  /** Something that is no part of what the report says. */
  artifact(type: 'Layout' | 'Pagination', draw: () => void): void {
    this.doc.markContent('Artifact', { type });
    draw();
    this.doc.endMarkedContent();
  }

  /** Writes head and foot on every page, once their number is known. */
  finish(running: Running): void {
    this.flushSheets();
    const { doc } = this;
    const { start, count } = doc.bufferedPageRange();
    for (let i = 0; i < count; i++) {
      doc.switchToPage(start + i);
      this.artifact('Pagination', () => {
        this.#runningHead(running, `Page ${i + 1} of ${count}`);
      });
    }
  }

  #runningHead({ job, date, foot }: Running, page: string): void {
    const { doc } = this;
    const { size } = TYPE.running;
    const { width, height } = doc.page;
    const right = width - PAPER.margin;
    const options = { lineBreak: false, baseline: 'alphabetic' } as const;
    doc.font(FONTS.text).fontSize(size).fillColor(GROUNDS.paper.soft);
    const pageWidth = doc.widthOfString(page);
    const dateWidth = doc.widthOfString(date);
    const jobRoom = right - PAPER.margin - pageWidth - dateWidth - 48;
    doc.text(
      fitText(job.replace(/\s+/g, ' '), jobRoom, size, 'text'),
      PAPER.margin,
      PAPER.margin - 11,
      options,
    );
    doc.text(date, right - pageWidth - 24 - dateWidth, PAPER.margin - 11, options);
    doc.text(page, right - pageWidth, PAPER.margin - 11, options);
    doc.undash().lineWidth(0.5).strokeColor(GROUNDS.paper.rule);
    doc
      .moveTo(PAPER.margin, PAPER.margin - 5)
      .lineTo(right, PAPER.margin - 5)
      .stroke();
    doc.text(foot, PAPER.margin, height - PAPER.margin + 18, options);
  }
}
