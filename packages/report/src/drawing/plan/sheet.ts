import type { Job } from '@undercroft/record';
import { day } from '../../words/dates.ts';
import type { Drawing, Item, Room } from '../display-list.ts';
import type { PlanFacts } from './facts.ts';
import { extentOf, type Fit, fitStandard } from './fit.ts';
import { northArrow, scaleBar, TITLE_HEIGHT, titleBlock } from './frame.ts';
import { findingNotes, findingsHeight, legendItems, sheetNotes } from './key.ts';
import { planDescription, planItems } from './plan-items.ts';
import { type PlanView, planView } from './view.ts';

/** Width of the key beside the plan, in units, and the gap between the two. */
const SIDE = 138;
const GAP = 8;
/** Height of north arrow and scale bar, in units. */
const COMPASS = 50;

/** Where plan and key go on a sheet. */
interface Arrangement {
  readonly key: 'beside' | 'below';
  readonly field: { readonly width: number; readonly height: number };
  readonly fit: Fit;
}

/** Columns of a key below the plan: north and scale, legend, findings. */
const BELOW = { compass: 112, legendColumns: 3, legend: 400 } as const;

/** The arrangement that lets the plan be drawn larger; beside where both come out alike. */
function arrange(job: Job, facts: PlanFacts, room: Required<Room>, unit: number): Arrangement {
  const extent = extentOf(job, facts);
  const height = room.height - (TITLE_HEIGHT + GAP) * unit;
  const beside = { width: room.width - (SIDE + GAP) * unit, height };
  const fit = fitStandard(extent, beside, unit);
  const trial = planView(job, facts, { ...fit, unit, frame: frameOf(beside) });
  planItems(trial);
  const legend = legendItems(trial, { x: 0, y: 0 }, BELOW.legend * unit, BELOW.legendColumns);
  const findings = findingsHeight(trial, room.width - (BELOW.compass + BELOW.legend) * unit, 1) * unit;
  const keyHeight = Math.max(COMPASS * unit, legend.height, Math.min(findings, legend.height + 40 * unit));
  const below = { width: room.width, height: height - keyHeight - GAP * unit };
  const other = below.height > 0 ? fitStandard(extent, below, unit) : fit;
  return other.scale > fit.scale * 1.001
    ? { key: 'below', field: below, fit: other }
    : { key: 'beside', field: beside, fit };
}

const frameOf = ({ width, height }: { readonly width: number; readonly height: number }) => ({
  left: 0,
  top: 0,
  right: width,
  bottom: height,
});

function keyBeside(view: PlanView, x: number, height: number, notes: readonly string[]): Item[] {
  const { unit, job } = view;
  const width = SIDE * unit;
  const legend = legendItems(view, { x, y: COMPASS * unit }, width, 1);
  let y = COMPASS * unit + legend.height + 8 * unit;
  const notesHeight = (notes.length * 9.2 + 6) * unit;
  const findings = findingNotes(view, { x, y }, { width, height: height - y - notesHeight, columns: 1 });
  y += findings.height + 6 * unit;
  return [
    northArrow(view, { x: x + 20 * unit, y: 22 * unit }, job.plan.northDeg),
    scaleBar(view, { x: x + 48 * unit, y: 20 * unit }, width - 62 * unit),
    ...legend.items,
    ...findings.items,
    ...sheetNotes(view, { x, y }, notes).items,
  ];
}

function keyBelow(view: PlanView, y: number, room: Required<Room>, notes: readonly string[]): Item[] {
  const { unit, job } = view;
  const left = BELOW.compass * unit;
  const right = left + BELOW.legend * unit;
  const height = room.height - (TITLE_HEIGHT + 4) * unit - y;
  return [
    northArrow(view, { x: 20 * unit, y: y + 22 * unit }, job.plan.northDeg),
    scaleBar(view, { x: 46 * unit, y: y + 20 * unit }, left - 58 * unit),
    ...sheetNotes(view, { x: 0, y: y + 48 * unit }, notes).items,
    ...legendItems(view, { x: left, y }, BELOW.legend * unit, BELOW.legendColumns).items,
    ...findingNotes(view, { x: right + 4 * unit, y }, { width: room.width - right, height, columns: 1 })
      .items,
  ];
}

/**
 * A plan sheet for paper, in points: drawn to the largest standard scale that fits, with legend, findings by number, north
 * arrow and scale bar, and a title block at the foot.
 */
export function planSheet(job: Job, facts: PlanFacts, room: Required<Room>): Drawing {
  const unit = room.textSize / 7.2;
  const { key, field, fit } = arrange(job, facts, room, unit);
  const frame = frameOf(field);
  const view = planView(job, facts, { ...fit, frame, unit });
  const plan = planItems(view);
  const keyItems =
    key === 'beside'
      ? keyBeside(view, field.width + GAP * unit, field.height, plan.notes)
      : keyBelow(view, field.height + 4 * unit, room, plan.notes);
  const { header } = job;
  const outline = [
    { x: 0, y: 0 },
    { x: frame.right, y: 0 },
    { x: frame.right, y: frame.bottom },
    { x: 0, y: frame.bottom },
  ];
  return {
    width: room.width,
    height: room.height,
    title: 'Plan of the space',
    description: planDescription(job, facts, fit.words),
    items: [
      { kind: 'layer', name: 'plan', within: outline, items: plan.items },
      ...keyItems,
      titleBlock(view, { x: 0, y: room.height - TITLE_HEIGHT * unit }, room.width, [
        { label: 'Drawing', value: 'Plan of the space as surveyed', share: 24 },
        { label: 'Job', value: header.title, share: 33 },
        { label: 'Scale on Letter', value: fit.words, share: 19 },
        {
          label: 'Surveyed',
          value: header.surveyedOn === undefined ? 'no date' : day(header.surveyedOn),
          share: 15,
        },
        { label: 'By', value: header.surveyedBy.join(', ') || 'not named', share: 23 },
        { label: 'Rev.', value: '0', share: 5 },
      ]),
    ],
    unitsPerMeter: fit.scale,
  };
}
