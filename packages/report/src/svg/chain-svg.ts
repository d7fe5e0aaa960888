import type { CausesAssessment } from '@undercroft/assessment';
import { chainDrawing } from '../drawing/chain/chain-drawing.ts';
import { type ChainWords, ENGLISH_CHAIN_WORDS } from '../drawing/chain/chain-words.ts';
import type { Item, Spot } from '../drawing/display-list.ts';
import { GROUNDS, type GroundName } from '../look/tokens.ts';
import { drawingSvg, FAMILIES } from './render.ts';

/** How the chain of causes on a screen shall be drawn. */
export interface ChainSvgOptions {
  /** Room [px], 200 to 4000; the drawing is wider where it does not fit. */
  readonly widthPx: number;
  /** Ordinary lettering [px], 6 to 40. */
  readonly textPx: number;
  readonly ground: GroundName;
  /** English where absent. */
  readonly words?: ChainWords;
  /** Draws one finding only, with what explains it and what it leads to; all where absent. */
  readonly about?: string;
}

/** The chain of causes for a screen on which its arrows are tapped. */
export interface ChainSvg {
  /** Arrows and numbers stand in groups with `data-of="arrow <number>"`. */
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Where each arrow runs [px]. */
  readonly arrows: readonly { readonly number: number; readonly points: readonly Spot[] }[];
}

function arrowsIn(items: readonly Item[]): ChainSvg['arrows'] {
  return items.flatMap((item) => {
    if (item.kind !== 'layer') return [];
    if (item.name !== 'arrow') return arrowsIn(item.items);
    const shaft = item.items.find((part) => part.kind === 'line');
    return shaft === undefined ? [] : [{ number: Number(item.of?.id), points: shaft.points }];
  });
}

/**
 * The chain of causes as SVG with its arrows, for a screen.
 * @throws RangeError for a room or lettering outside its range
 */
export function chainSvg(causes: CausesAssessment, options: ChainSvgOptions): ChainSvg {
  const { widthPx, textPx, ground, words = ENGLISH_CHAIN_WORDS, about } = options;
  if (!(widthPx >= 200 && widthPx <= 4000))
    throw new RangeError(`the chain can be drawn 200 to 4000 px wide; got ${widthPx}`);
  if (!(textPx >= 6 && textPx <= 40)) throw new RangeError(`lettering can be 6 to 40 px high; got ${textPx}`);
  const colors = GROUNDS[ground];
  const drawing = chainDrawing(causes, { width: widthPx, textSize: textPx }, words, about);
  const size = ` width="${Math.ceil(drawing.width)}" height="${Math.ceil(drawing.height)}"`;
  const style = { color: (name: keyof typeof colors) => colors[name], families: FAMILIES, prefix: 'chain' };
  return {
    svg: drawingSvg(drawing, style, size),
    widthPx: drawing.width,
    heightPx: drawing.height,
    arrows: arrowsIn(drawing.items),
  };
}
