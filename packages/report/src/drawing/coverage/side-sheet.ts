import type { Job } from '@undercroft/record';
import { day } from '../../words/dates.ts';
import type { Drawing, Item, Room } from '../display-list.ts';
import type { PlanFacts } from '../plan/facts.ts';
import { extentOf, type Fit, fitStandard, fitWidth } from '../plan/fit.ts';
import { northArrow, scaleBar, TITLE_HEIGHT, titleBlock } from '../plan/frame.ts';
import { legendItems, sheetNotes } from '../plan/key.ts';
import { type PlanView, planView } from '../plan/view.ts';

/** What is drawn on a sheet over the plan of a space, and what stands beside it. */
export interface SheetContent {
  readonly title: string;
  readonly description: string;
  readonly items: (view: PlanView) => readonly Item[];
  /** One short line each. */
  readonly notes: readonly string[];
}

/** Width of the key beside the plan, height of north arrow and scale bar, and gaps, in units. */
const SIDE = 150;
const COMPASS = 50;
const GAP = 8;
const NOTE = 9.2;
/** Highest drawing on a screen for its width; a longer one is drawn narrower. */
const HIGHEST = 1.1;

interface Placed {
  readonly keyBelow: boolean;
  readonly field: { readonly width: number; readonly height: number };
  readonly fit: Fit;
}

const frameOf = (field: Placed['field']) => ({
  left: 0,
  top: 0,
  right: field.width,
  bottom: field.height,
});

/** Height of a key below the plan, in drawing units. */
function keyHeight(view: PlanView, width: number, notes: readonly string[]): number {
  const { unit } = view;
  const legend = legendItems(view, { x: 0, y: 0 }, width - 130 * unit, 3).height;
  return Math.max(COMPASS * unit, legend) + (notes.length * NOTE + 4) * unit;
}

/** The key beside the plan or below it, whichever lets the plan be drawn larger. */
function place(
  job: Job,
  facts: PlanFacts,
  room: Required<Room>,
  unit: number,
  content: SheetContent,
): Placed {
  const extent = extentOf(job, facts);
  const height = room.height - (TITLE_HEIGHT + GAP) * unit;
  const beside = { width: room.width - (SIDE + GAP) * unit, height };
  const fit = fitStandard(extent, beside, unit);
  const trial = planView(job, facts, { ...fit, unit, frame: frameOf(beside) });
  content.items(trial);
  const below = {
    width: room.width,
    height: height - keyHeight(trial, room.width, content.notes) - GAP * unit,
  };
  const other = below.height > 0 ? fitStandard(extent, below, unit) : fit;
  return other.scale > fit.scale * 1.001
    ? { keyBelow: true, field: below, fit: other }
    : { keyBelow: false, field: beside, fit };
}

function keyItems(
  view: PlanView,
  { keyBelow, field }: Placed,
  room: Required<Room>,
  notes: readonly string[],
): Item[] {
  const { unit, job } = view;
  const x = keyBelow ? 0 : field.width + GAP * unit;
  const y = keyBelow ? field.height + GAP * unit : 0;
  const frame = [
    northArrow(view, { x: x + 20 * unit, y: y + 22 * unit }, job.plan.northDeg),
    scaleBar(view, { x: x + 48 * unit, y: y + 20 * unit }, (keyBelow ? 70 : SIDE - 62) * unit),
  ];
  if (keyBelow) {
    const legend = legendItems(view, { x: 130 * unit, y }, room.width - 130 * unit, 3);
    const below = y + Math.max(COMPASS * unit, legend.height) + 2 * unit;
    return [...frame, ...legend.items, ...sheetNotes(view, { x: 0, y: below }, notes).items];
  }
  const legend = legendItems(view, { x, y: COMPASS * unit }, SIDE * unit, 1);
  const below = COMPASS * unit + legend.height + 8 * unit;
  return [...frame, ...legend.items, ...sheetNotes(view, { x, y: below }, notes).items];
}

/** A sheet for paper, in points: the plan to the largest standard scale that fits, its key, and a title block. */
export function sideSheet(job: Job, facts: PlanFacts, room: Required<Room>, content: SheetContent): Drawing {
  const unit = room.textSize / 7.2;
  const placed = place(job, facts, room, unit, content);
  const { fit, field } = placed;
  const view = planView(job, facts, { ...fit, frame: frameOf(field), unit });
  const items = content.items(view);
  const { header } = job;
  const within = [
    { x: 0, y: 0 },
    { x: field.width, y: 0 },
    { x: field.width, y: field.height },
    { x: 0, y: field.height },
  ];
  return {
    width: room.width,
    height: room.height,
    title: content.title,
    description: content.description,
    items: [
      { kind: 'layer', name: 'plan', within, items },
      ...keyItems(view, placed, room, content.notes),
      titleBlock(view, { x: 0, y: room.height - TITLE_HEIGHT * unit }, room.width, [
        { label: 'Drawing', value: content.title, share: 26 },
        { label: 'Job', value: header.title, share: 33 },
        { label: 'Scale on Letter', value: fit.words, share: 19 },
        {
          label: 'Surveyed',
          value: header.surveyedOn === undefined ? 'no date' : day(header.surveyedOn),
          share: 15,
        },
        { label: 'By', value: header.surveyedBy.join(', ') || 'not named', share: 21 },
        { label: 'Rev.', value: '0', share: 5 },
      ]),
    ],
    unitsPerMeter: fit.scale,
  };
}

/** The same for a screen: as large as the width allows, key below, as high as it needs to be. */
export function sidePicture(job: Job, facts: PlanFacts, room: Room, content: SheetContent): Drawing {
  const unit = room.textSize / 7.2;
  const fit = fitWidth(extentOf(job, facts), room.width, HIGHEST, unit);
  const frame = { left: 0, top: 0, right: room.width, bottom: fit.height };
  const view = planView(job, facts, { ...fit, frame, unit });
  const items = content.items(view);
  const top = fit.height + 10 * unit;
  const legendTop = top + COMPASS * unit;
  const columns = Math.max(1, Math.floor(room.width / (160 * unit)));
  const legend = legendItems(view, { x: 0, y: legendTop }, room.width, columns);
  const notesTop = legendTop + legend.height + 6 * unit;
  const notes = sheetNotes(view, { x: 0, y: notesTop }, content.notes);
  return {
    width: room.width,
    height: notesTop + notes.height + 4 * unit,
    title: content.title,
    description: content.description,
    items: [
      { kind: 'layer', name: 'plan', items },
      northArrow(view, { x: 20 * unit, y: top + 22 * unit }, job.plan.northDeg),
      scaleBar(view, { x: 50 * unit, y: top + 20 * unit }, Math.min(room.width - 80 * unit, 220 * unit)),
      ...legend.items,
      ...notes.items,
    ],
    unitsPerMeter: fit.scale,
  };
}
