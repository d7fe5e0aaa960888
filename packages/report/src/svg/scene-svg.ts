import type { Job } from '@undercroft/record';
import type { Item } from '../drawing/display-list.ts';
import type { PlanFacts } from '../drawing/plan/facts.ts';
import { planScene } from '../drawing/plan/scene.ts';
import type { PlanStyle } from '../drawing/plan/style.ts';
import { GROUNDS, type GroundName } from '../look/tokens.ts';
import { drawingSvg, FAMILIES, pictureSvg } from './render.ts';

/** How a plan on a screen shall be drawn. */
export interface PlanSceneOptions extends PlanStyle {
  /** Scale [px per meter], 1 to 2000. */
  readonly pxPerM: number;
  /** Ordinary lettering [px], 6 to 40. */
  readonly textPx: number;
  readonly ground: GroundName;
  /** Begins the ids within the drawing; two drawings of one page need two, or one is cut as the other. Default `plan`. */
  readonly prefix?: string;
}

/** A plan for a screen that moves and zooms it. */
export interface PlanSceneSvg {
  /** The drawing without a background; what it draws of a thing of the record stands in groups with `data-of`. */
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pxPerM: number;
  /** Where the zero point of the plan lies [px]. The plan's y axis points up. */
  readonly originPx: { readonly x: number; readonly y: number };
  /** What each symbol on the drawing stands for, with a sample as SVG. */
  readonly legend: readonly { readonly key: string; readonly words: string; readonly sample: string }[];
  readonly notes: readonly string[];
  /** North arrow and scale bar as SVG, without width and height of their own. */
  readonly north: string;
  readonly scaleBar: string;
}

/**
 * The plan of a job as SVG at a scale, with its legend apart, for a screen.
 * @throws RangeError for a scale or lettering outside its range, and for a job without walls or ground
 */
export function planSceneSvg(job: Job, facts: PlanFacts, options: PlanSceneOptions): PlanSceneSvg {
  const { pxPerM, textPx, ground, prefix: ids = 'plan' } = options;
  if (!(pxPerM >= 1 && pxPerM <= 2000))
    throw new RangeError(`a plan can be drawn at 1 to 2000 px per meter; got ${pxPerM}`);
  if (!(textPx >= 6 && textPx <= 40)) throw new RangeError(`lettering can be 6 to 40 px high; got ${textPx}`);
  const colors = GROUNDS[ground];
  const style = { color: (name: keyof typeof colors) => colors[name], families: FAMILIES, prefix: ids };
  const scene = planScene(job, facts, pxPerM, textPx, options);
  const { drawing, unit } = scene;
  const size = ` width="${Math.ceil(drawing.width)}" height="${Math.ceil(drawing.height)}"`;
  const picture = (items: readonly Item[], prefix: string, width: number, height: number) =>
    pictureSvg(items, { width: width * unit, height: height * unit }, { ...style, prefix });
  return {
    svg: drawingSvg(drawing, style, size),
    widthPx: drawing.width,
    heightPx: drawing.height,
    pxPerM,
    originPx: scene.origin,
    legend: scene.legend.map(({ key, words, sample }, i) => ({
      key,
      words,
      sample: picture(sample({ x: 14 * unit, y: 10 * unit }), `${ids}-key-${i}`, 28, 20),
    })),
    notes: scene.notes,
    north: picture([scene.north], `${ids}-north`, 44, 48),
    scaleBar: picture([scene.scaleBar], `${ids}-scale-bar`, 110, 30),
  };
}
