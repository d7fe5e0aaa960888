import type { Drawing, Item, LineItem, Spot, Stroke } from '../drawing/display-list.ts';
import type { ColorName } from '../look/tokens.ts';
import { escapeText } from './escape.ts';

/** How a drawing turns into SVG text. */
export interface SvgStyle {
  /** Value of a color, e.g. a hex value or a custom property. */
  readonly color: (name: ColorName) => string;
  /** Font families for the lettering, as CSS writes them. */
  readonly families: { readonly text: string; readonly figures: string };
  /** Set before every id of the drawing, so that several can stand in one page. */
  readonly prefix: string;
}

/** The fonts of the package by name; without them another sans serif stands in. */
export const FAMILIES = {
  text: "'Undercroft Text', 'Noto Sans', 'Open Sans', system-ui, sans-serif",
  figures: "'Undercroft Figures', 'Noto Sans', 'Open Sans', system-ui, sans-serif",
};

/** Coordinates to a hundredth of a unit, without trailing zeros or negative zero. */
export function number(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}

const pathOf = (points: readonly Spot[]) =>
  points.map((p, i) => `${i === 0 ? 'M' : 'L'}${number(p.x)} ${number(p.y)}`).join('');

function strokeAttributes(stroke: Stroke | undefined, style: SvgStyle): string {
  if (stroke === undefined) return '';
  const dash = stroke.dash === undefined ? '' : ` stroke-dasharray="${stroke.dash.map(number).join(' ')}"`;
  return ` stroke="${style.color(stroke.color)}" stroke-width="${number(stroke.width)}"${dash}`;
}

class Clips {
  readonly #prefix: string;
  readonly definitions: string[] = [];

  constructor(prefix: string) {
    this.#prefix = prefix;
  }

  add(outline: readonly Spot[]): string {
    const id = `${this.#prefix}-cut-${this.definitions.length + 1}`;
    this.definitions.push(
      `<clipPath id="${id}"><path clip-rule="evenodd" d="${pathOf(outline)}Z"/></clipPath>`,
    );
    return id;
  }
}

function itemSvg(item: Exclude<Item, LineItem>, style: SvgStyle, clips: Clips): string {
  switch (item.kind) {
    case 'area': {
      const d = item.outlines.map((o) => `${pathOf(o)}Z`).join('');
      const fill = item.fill === undefined ? 'none' : style.color(item.fill);
      return `<path fill="${fill}" fill-rule="evenodd" d="${d}"${strokeAttributes(item.stroke, style)}/>`;
    }
    case 'circle': {
      const fill = item.fill === undefined ? 'none' : style.color(item.fill);
      const place = `cx="${number(item.at.x)}" cy="${number(item.at.y)}" r="${number(item.radius)}"`;
      return `<circle fill="${fill}" ${place}${strokeAttributes(item.stroke, style)}/>`;
    }
    case 'text': {
      const { at, align, face, size, turnDeg } = item;
      const anchor = align === 'start' ? '' : ` text-anchor="${align}"`;
      const turn = turnDeg ? ` transform="rotate(${number(turnDeg)} ${number(at.x)} ${number(at.y)})"` : '';
      const weight = face === 'strong' ? ' font-weight="700"' : '';
      const family = face === 'figures' ? style.families.figures : style.families.text;
      const font = `font-family="${escapeText(family)}" font-size="${number(size)}"${weight}`;
      return `<text x="${number(at.x)}" y="${number(at.y)}" fill="${style.color(item.color)}" ${font}${anchor}${turn}>${escapeText(item.text)}</text>`;
    }
    case 'layer': {
      const cut = item.within === undefined ? '' : ` clip-path="url(#${clips.add(item.within)})"`;
      const of = item.of === undefined ? '' : ` data-of="${escapeText(`${item.of.kind} ${item.of.id}`)}"`;
      return `<g data-layer="${escapeText(item.name)}"${of}${cut}>${itemsSvg(item.items, style, clips)}</g>`;
    }
  }
}

const isSameStroke = (a: Stroke, b: Stroke) =>
  a.color === b.color && a.width === b.width && a.dash?.join() === b.dash?.join();

/** Items one after the other; lines that follow each other with the same stroke, such as a hatch, are one path. */
function itemsSvg(items: readonly Item[], style: SvgStyle, clips: Clips): string {
  const parts: string[] = [];
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item.kind !== 'line') {
      parts.push(itemSvg(item, style, clips));
      continue;
    }
    let d = pathOf(item.points);
    for (let next = items[i + 1]; next?.kind === 'line' && isSameStroke(next.stroke, item.stroke); ) {
      d += pathOf(next.points);
      i += 1;
      next = items[i + 1];
    }
    parts.push(`<path fill="none" d="${d}"${strokeAttributes(item.stroke, style)}/>`);
  }
  return parts.join('\n');
}

/**
 * A drawing as SVG text, with title and description for those who do not see it.
 * @param size attributes of width and height, where the drawing shall not take those of its surroundings
 */
export function drawingSvg(drawing: Drawing, style: SvgStyle, size = ''): string {
  const clips = new Clips(style.prefix);
  const body = itemsSvg(drawing.items, style, clips);
  const { prefix } = style;
  const defs = clips.definitions.length === 0 ? '' : `<defs>${clips.definitions.join('')}</defs>`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${number(drawing.width)} ${number(drawing.height)}"${size} role="img" aria-labelledby="${prefix}-title ${prefix}-about">`,
    `<title id="${prefix}-title">${escapeText(drawing.title)}</title>`,
    `<desc id="${prefix}-about">${escapeText(drawing.description)}</desc>`,
    `${defs}${body}`,
    '</svg>',
  ].join('\n');
}

/** Bare items as a small picture beside words that say the same, hidden from those who hear the page. */
export function iconSvg(items: readonly Item[], box: number, style: SvgStyle): string {
  return pictureSvg(items, { width: box, height: box }, style);
}

/** The same, in a field that is not square. */
export function pictureSvg(
  items: readonly Item[],
  { width, height }: { readonly width: number; readonly height: number },
  style: SvgStyle,
): string {
  const body = itemsSvg(items, style, new Clips(style.prefix));
  return `<svg class="mark" viewBox="0 0 ${number(width)} ${number(height)}" aria-hidden="true" focusable="false">${body}</svg>`;
}
