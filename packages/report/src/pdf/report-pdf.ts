import type { Assessment } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import type { Block, Figure } from '../document/blocks.ts';
import type { ReportExtras } from '../document/extras.ts';
import { reportDocument } from '../document/report.ts';
import type { ReportFonts } from '../fonts.ts';
import { drawDrawing } from './draw-items.ts';
import { collectBytes, openPdf } from './open-pdf.ts';
import { Pages } from './pages.ts';
import { TYPE } from './type-styles.ts';
import { galleryStart, writeGallery } from './write-gallery.ts';
import { tableStart, writeTable } from './write-table.ts';
import {
  paragraphHeight,
  paragraphStart,
  paragraphStyle,
  writeList,
  writeParagraph,
  writeTally,
} from './write-text.ts';

type Element = PDFKit.PDFStructureElement;

const SHEET_TEXT = 7.2;
const INLINE_TEXT = 7.6;

function writeFigure(pages: Pages, parent: Element, figure: Figure): void {
  const element = (alt: string) => {
    const made = pages.doc.struct('Figure', { alt });
    parent.add(made);
    return made;
  };
  if (figure.placement === 'sheet') {
    writeParagraph(
      pages,
      parent,
      [{ text: `${figure.caption} It stands on a sheet of its own.` }],
      TYPE.note,
      'P',
    );
    pages.queueSheet(({ x, y, width, height }) => {
      const drawing = figure.onPaper({ width, height, textSize: SHEET_TEXT });
      const made = element(drawing.description);
      made.add(() => drawDrawing(pages.doc, drawing, x, y));
      made.end();
    });
    return;
  }
  const drawing = figure.onPaper({ width: pages.width, height: pages.wholeRoom, textSize: INLINE_TEXT });
  pages.need(drawing.height + TYPE.caption.leading * 2);
  const made = element(drawing.description);
  made.add(() => drawDrawing(pages.doc, drawing, pages.left, pages.y));
  pages.y += drawing.height + 2;
  writeParagraph(pages, made, [{ text: figure.caption }], { ...TYPE.caption, after: 8 }, 'Caption');
  made.end();
}

/** Least room in which a block may begin, so that no heading stands alone at the foot of a page. */
function startOf(pages: Pages, blocks: readonly Block[], at: number): number {
  const block = blocks[at];
  if (block === undefined) return 0;
  switch (block.kind) {
    case 'heading': {
      const style = block.level === 2 ? TYPE.section : TYPE.part;
      return style.before + style.leading + style.after + startOf(pages, blocks, at + 1);
    }
    case 'paragraph': {
      const style = paragraphStyle(block.role);
      const next = blocks[at + 1];
      // A note introduces what follows it, and so does a paragraph before a table or chart: they stay together.
      const introduces =
        block.role === 'note' ||
        next?.kind === 'table' ||
        (next?.kind === 'figure' && next.placement === 'inline');
      if (!introduces) return paragraphStart(pages, block.text, style);
      return paragraphHeight(pages, block.text, style) + startOf(pages, blocks, at + 1);
    }
    case 'table':
      return tableStart(pages, block);
    case 'figure':
      return block.placement === 'sheet'
        ? TYPE.note.leading
        : block.onPaper({ width: pages.width, height: pages.wholeRoom, textSize: INLINE_TEXT }).height + 26;
    case 'list':
      return 3 * TYPE.note.leading;
    case 'tally':
      return 36;
    case 'gallery':
      return galleryStart;
  }
}

function writeBlock(pages: Pages, section: Element, blocks: readonly Block[], at: number): void {
  const block = blocks[at];
  pages.need(Math.min(startOf(pages, blocks, at), pages.wholeRoom));
  switch (block.kind) {
    case 'heading': {
      const style = block.level === 2 ? TYPE.section : TYPE.part;
      writeParagraph(pages, section, [{ text: block.text }], style, `H${block.level}`);
      if (block.level === 2) pages.doc.outline.addItem(block.text);
      break;
    }
    case 'paragraph':
      writeParagraph(pages, section, block.text, paragraphStyle(block.role), 'P');
      break;
    case 'list':
      writeList(pages, section, block);
      break;
    case 'table':
      writeTable(pages, section, block);
      break;
    case 'figure':
      writeFigure(pages, section, block);
      break;
    case 'tally':
      writeTally(pages, section, block);
      break;
    case 'gallery':
      writeGallery(pages, section, block);
      break;
  }
}

/**
 * The report as PDF on Letter paper, tagged, with its fonts inside. The same job, assessment, fonts and extras give the same bytes
 * on every machine: the file is dated with the day of the survey, and the clock is never read.
 */
export async function reportPdf(
  job: Job,
  assessment: Assessment,
  { fonts, ...extras }: ReportExtras & { readonly fonts: ReportFonts },
): Promise<Uint8Array> {
  const report = reportDocument(job, assessment, extras);
  const doc = openPdf(report, fonts);
  const bytes = collectBytes(doc);
  const pages = new Pages(doc);
  const root = doc.struct('Document');
  doc.addStructure(root);
  writeParagraph(pages, root, [{ text: report.title }], TYPE.title, 'H1');
  writeParagraph(pages, root, report.subtitle, TYPE.subtitle, 'P');
  for (const section of report.sections) {
    const element = doc.struct('Sect');
    root.add(element);
    for (const at of section.blocks.keys()) writeBlock(pages, element, section.blocks, at);
  }
  pages.finish({ ...report.running, foot: 'Defers to the local code and to licensed trades.' });
  doc.end();
  return bytes;
}
