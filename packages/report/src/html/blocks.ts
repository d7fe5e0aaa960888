import type {
  Block,
  Cell,
  Column,
  Figure,
  GalleryEntry,
  Inline,
  Rich,
  Table,
  Tally,
} from '../document/blocks.ts';
import { type MarkName, mark } from '../drawing/marks.ts';
import { escapeText } from '../svg/escape.ts';
import { drawingSvg, iconSvg, type SvgStyle } from '../svg/render.ts';
import { base64 } from './base64.ts';
import { colorProperty, FAMILIES } from './style.ts';

const style = (prefix: string): SvgStyle => ({ color: colorProperty, families: FAMILIES, prefix });

/** Side of the field that a mark is drawn in. */
const MARK_BOX = 24;

function markHtml(name: MarkName): string {
  const middle = { x: MARK_BOX / 2, y: MARK_BOX / 2 };
  return iconSvg(mark(name, middle, MARK_BOX - 3), MARK_BOX, style('mark'));
}

function inlineHtml(part: Inline): string {
  if ('mark' in part) return markHtml(part.mark);
  const text = escapeText(part.text);
  const classes = [
    part.look === 'figure' || part.look === 'soft' ? part.look : '',
    part.assumed ? 'assumed' : '',
  ];
  const names = classes.filter((c) => c !== '').join(' ');
  const inner = part.look === 'strong' ? `<strong>${text}</strong>` : text;
  return names === '' ? inner : `<span class="${names}">${inner}</span>`;
}

/** Paragraph text as HTML. */
export const richHtml = (rich: Rich): string => rich.map(inlineHtml).join('');

const cellHtml = (cell: Cell): string =>
  cell.length === 1 ? richHtml(cell[0]) : cell.map((p) => `<p>${richHtml(p)}</p>`).join('');

/** A column of at most this weight holds a word or two: on a phone its name and content share a line. */
const SHORT = 20;

function rowHtml(row: readonly Cell[], columns: readonly Column[], headless: boolean): string {
  const cells = row.map((content, i) => {
    const { align: side, weight } = columns[i];
    const names = [side === 'end' ? 'end' : '', side === 'end' || weight <= SHORT ? 'short' : ''].filter(
      Boolean,
    );
    const align = names.length === 0 ? '' : ` class="${names.join(' ')}"`;
    if (i === 0) return `<th scope="row" role="rowheader"${align}>${cellHtml(content)}</th>`;
    const head = headless ? '' : ` data-head="${escapeText(columns[i].title)}"`;
    return `<td role="cell"${align}${head}>${cellHtml(content)}</td>`;
  });
  return `<tr role="row">${cells.join('')}</tr>`;
}

// The roles say what the elements mean by themselves: on a phone their display changes, and with it some readers forget it.
function tableHtml(table: Table): string {
  const { caption, columns, rows, headless = false, compact = false } = table;
  const total = columns.reduce((sum, c) => sum + c.weight, 0);
  const widths = columns.map((c) => `<col style="width:${((100 * c.weight) / total).toFixed(1)}%">`).join('');
  const heads = columns.map((c) => {
    const align = c.align === 'end' ? ' class="end"' : '';
    return `<th scope="col" role="columnheader"${align}>${escapeText(c.title)}</th>`;
  });
  const head = headless ? '' : `<thead role="rowgroup"><tr role="row">${heads.join('')}</tr></thead>`;
  const body = rows.map((row) => rowHtml(row, columns, headless)).join('\n');
  return [
    `<table role="table"${headless || compact ? ' class="plain"' : ''}>`,
    `<caption>${escapeText(caption)}</caption>`,
    `<colgroup>${widths}</colgroup>`,
    `${head}<tbody role="rowgroup">`,
    body,
    '</tbody></table>',
  ].join('\n');
}

/** Widths that drawings are made for: the column of a desk, and a phone [px]. */
const DESK = { width: 960, textSize: 12.5 } as const;
const PHONE = { width: 340, textSize: 12 } as const;

function figureHtml(figure: Figure): string {
  const caption = `<figcaption>${escapeText(figure.caption)}</figcaption>`;
  if (figure.placement === 'sheet') {
    const svg = drawingSvg(figure.onScreen(DESK), style(figure.id));
    // The region takes the focus so that the keyboard can move a drawing that is wider than the screen.
    return `<figure><div class="sheet" role="region" aria-label="${escapeText(figure.caption)}" tabindex="0">${svg}</div>${caption}</figure>`;
  }
  const wide = drawingSvg(figure.onScreen(DESK), style(figure.id));
  const narrow = drawingSvg(figure.onScreen(PHONE), style(`${figure.id}-narrow`));
  return `<figure><div class="only-wide">${wide}</div><div class="only-narrow">${narrow}</div>${caption}</figure>`;
}

function tallyHtml({ entries }: Tally): string {
  const items = entries.map(
    (e) =>
      `<li>${markHtml(e.mark)}<span class="count">${e.count}</span> <span>${escapeText(e.words)}</span></li>`,
  );
  return `<ul class="tally">${items.join('')}</ul>`;
}

/** Room of a small plan beside a picture [px]. */
const THUMBNAIL = { width: 150, height: 90 } as const;

function pictureHtml(entry: GalleryEntry): string {
  const { id, description, picture, text } = entry;
  const words = text.map((rich) => `<p>${richHtml(rich)}</p>`).join('');
  const image =
    picture === undefined
      ? '<p class="no-picture">Not at hand</p>'
      : `<img src="data:${picture.mediaType};base64,${base64(picture.bytes)}" width="${picture.width}" height="${picture.height}" alt="${escapeText(description)}" loading="lazy">`;
  const plan = drawingSvg(entry.plan(THUMBNAIL), style(id));
  return `<li id="${escapeText(id)}">${image}<div>${plan}${words}</div></li>`;
}

/** One block as HTML. */
export function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level} id="${escapeText(block.id)}">${escapeText(block.text)}</h${block.level}>`;
    case 'paragraph': {
      const role = block.role === undefined ? '' : ` class="${block.role}"`;
      return `<p${role}>${richHtml(block.text)}</p>`;
    }
    case 'list':
      return `<ul class="sources">${block.items.map((i) => `<li>${richHtml(i)}</li>`).join('\n')}</ul>`;
    case 'table':
      return tableHtml(block);
    case 'figure':
      return figureHtml(block);
    case 'tally':
      return tallyHtml(block);
    case 'gallery':
      return `<ul class="gallery">${block.entries.map(pictureHtml).join('\n')}</ul>`;
  }
}
