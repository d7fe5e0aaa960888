import type { Job } from '@undercroft/record';
import type { Drawing, Room } from '../display-list.ts';
import type { PlanFacts } from './facts.ts';
import { extentOf, fitWidth } from './fit.ts';
import { northArrow, scaleBar } from './frame.ts';
import { legendItems, sheetNotes } from './key.ts';
import { planDescription, planItems } from './plan-items.ts';
import { planView } from './view.ts';

/** Highest plan for its width; a longer one is drawn narrower. */
const HIGHEST = 1.1;

/** A plan for a screen: as large as the width allows, key below, as high as it needs to be. */
export function planPicture(job: Job, facts: PlanFacts, room: Room): Drawing {
  const unit = room.textSize / 7.2;
  const fit = fitWidth(extentOf(job, facts), room.width, HIGHEST, unit);
  const frame = { left: 0, top: 0, right: room.width, bottom: fit.height };
  const view = planView(job, facts, { ...fit, frame, unit });
  const plan = planItems(view);
  const top = fit.height + 10 * unit;
  const columns = Math.max(1, Math.floor(room.width / (150 * unit)));
  const legendTop = top + 50 * unit;
  const legend = legendItems(view, { x: 0, y: legendTop }, room.width, columns);
  const notesTop = legendTop + legend.height + 6 * unit;
  const notes = sheetNotes(view, { x: 0, y: notesTop }, plan.notes);
  return {
    width: room.width,
    height: notesTop + notes.height + 4 * unit,
    title: 'Plan of the space',
    description: planDescription(job, facts, undefined),
    items: [
      { kind: 'layer', name: 'plan', items: plan.items },
      northArrow(view, { x: 20 * unit, y: top + 22 * unit }, job.plan.northDeg),
      scaleBar(view, { x: 50 * unit, y: top + 20 * unit }, Math.min(room.width - 80 * unit, 220 * unit)),
      ...legend.items,
      ...notes.items,
    ],
    unitsPerMeter: fit.scale,
  };
}
