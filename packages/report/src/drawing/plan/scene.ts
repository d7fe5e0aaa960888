import type { Job } from '@undercroft/record';
import type { Drawing, Item, Spot } from '../display-list.ts';
import type { PlanFacts } from './facts.ts';
import { extentOf, fitAt } from './fit.ts';
import { northArrow, scaleBar } from './frame.ts';
import type { LegendEntry } from './legend.ts';
import { planDescription, planItems } from './plan-items.ts';
import { type PlanStyle, wordIn } from './style.ts';
import { planView } from './view.ts';

/** A plan that is moved and zoomed on a screen: the drawing by itself, and its key for the screen to lay out. */
export interface PlanScene {
  readonly drawing: Drawing;
  /** Where the zero point of the plan lies on the drawing. */
  readonly origin: Spot;
  /** One unit of lettering, in drawing units. */
  readonly unit: number;
  readonly legend: readonly LegendEntry[];
  /** North arrow about (22, 26) units in a field of 44 by 48. */
  readonly north: Item;
  /** Scale bar from (10, 14) units in a field 30 units high. */
  readonly scaleBar: Item;
  /** What must be said about the drawing, one sentence each. */
  readonly notes: readonly string[];
}

/** Most that a scale bar takes, in units. */
const SCALE_BAR = 90;

/**
 * A plan at a scale that is asked for, as large as it comes out.
 * @param unitsPerMeter drawing units per meter
 * @param textSize size of ordinary lettering, in drawing units
 * @throws RangeError for a job without walls or ground
 */
export function planScene(
  job: Job,
  facts: PlanFacts,
  unitsPerMeter: number,
  textSize: number,
  style: PlanStyle,
): PlanScene {
  const unit = textSize / 7.2;
  const { width, height, ...fit } = fitAt(extentOf(job, facts), unitsPerMeter, unit);
  const frame = { left: 0, top: 0, right: width, bottom: height };
  const view = planView(job, facts, { ...fit, frame, unit }, style);
  const { items, notes } = planItems(view);
  return {
    drawing: {
      width,
      height,
      title: wordIn(style, 'Plan of the space'),
      description: planDescription(job, facts, undefined, style),
      items,
      unitsPerMeter,
    },
    origin: fit.origin,
    unit,
    legend: view.legend.list(),
    north: northArrow(view, { x: 22 * unit, y: 26 * unit }, job.plan.northDeg),
    scaleBar: scaleBar(view, { x: 10 * unit, y: 14 * unit }, SCALE_BAR * unit),
    notes,
  };
}
