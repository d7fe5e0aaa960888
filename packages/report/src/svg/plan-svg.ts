import type { Assessment } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { planPicture } from '../drawing/plan/picture.ts';
import { GROUNDS, type GroundName } from '../look/tokens.ts';
import { drawingSvg, FAMILIES } from './render.ts';

/** How wide the plan shall be and what it lies on. */
export interface PlanSvgOptions {
  /** Width [px], 240 to 8000; the height follows from the plan. */
  readonly widthPx: number;
  readonly ground: GroundName;
}

/**
 * The plan of a job as one SVG file, to scale, with legend, north arrow and scale bar. The fonts of the package are named,
 * not embedded; without them another sans serif stands in.
 * @throws RangeError for a width outside 240 to 8000 px
 */
export function planSvg(job: Job, assessment: Assessment, options: PlanSvgOptions): string {
  const { widthPx, ground } = options;
  if (!(widthPx >= 240 && widthPx <= 8000))
    throw new RangeError(`a plan can be 240 to 8000 px wide; got ${widthPx}`);
  const colors = GROUNDS[ground];
  // Lettering grows with the width between 9 and 13 px, so that small pictures stay legible and large ones airy.
  const textSize = Math.min(13, Math.max(9, widthPx / 76));
  const drawing = planPicture(job, assessment, { width: widthPx, textSize });
  const svg = drawingSvg(
    drawing,
    { color: (name) => colors[name], families: FAMILIES, prefix: 'plan' },
    ` width="${widthPx}" height="${Math.ceil(drawing.height)}"`,
  );
  const back = `<rect width="100%" height="100%" fill="${colors.sheet}"/>`;
  return svg.replace('</desc>\n', `</desc>\n${back}`);
}
