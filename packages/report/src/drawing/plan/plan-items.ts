import { units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import type { Item } from '../display-list.ts';
import { dimensionsLayer } from './dimensions.ts';
import { equipmentLayer, obstacleLabels, obstaclesLayer } from './equipment.ts';
import type { PlanFacts } from './facts.ts';
import { floorLayer, zoneLabels } from './floor.ts';
import { findingsLayer, heightsLayer, photosLayer, readingsLayer } from './seen.ts';
import { drainsLayer, ductsLayer, seamsLayer } from './services.ts';
import { girdersLayer, interiorWallsLayer, joistsLayer, piersLayer } from './structure.ts';
import type { PlanView } from './view.ts';
import { drawnWalls } from './wall-parts.ts';
import { wallsLayer } from './walls.ts';

/** The plan with everything seen on it, and what must be said about the drawing. */
export function planItems(view: PlanView): {
  readonly items: readonly Item[];
  readonly notes: readonly string[];
} {
  const walls = drawnWalls(view);
  const floor = floorLayer(view);
  const wallItems = wallsLayer(view, walls);
  const piers = piersLayer(view);
  const interior = interiorWallsLayer(view);
  const girders = girdersLayer(view);
  const { ducts, clearances } = ductsLayer(view);
  const { seams, laps } = seamsLayer(view);
  const obstacles = obstaclesLayer(view);
  const equipment = equipmentLayer(view);
  const readings = readingsLayer(view);
  const photos = photosLayer(view);
  const findings = findingsLayer(view);
  const dimensions = dimensionsLayer(view, walls);
  // Lettering from here on: what must stand comes first and finds the best places.
  const values = readings.values();
  const clear = clearances();
  const drains = drainsLayer(view);
  const heights = heightsLayer(view);
  const zones = zoneLabels(view);
  const names = obstacleLabels(view);
  const lapItems = laps();
  const joists = joistsLayer(view);
  const items = [
    ...floor,
    ...seams,
    ...lapItems,
    ...ducts,
    ...girders,
    ...obstacles,
    ...drains,
    ...interior,
    ...piers,
    ...wallItems,
    ...equipment,
    ...joists,
    ...heights,
    ...photos,
    ...readings.dots,
    ...findings,
    ...zones,
    ...names,
    ...clear,
    ...values,
    ...dimensions.items,
  ];
  return { items, notes: notesOf(view, dimensions.leftOut) };
}

function notesOf(view: PlanView, leftOut: number): string[] {
  const { plan } = view.job;
  const known = new Set(plan.walls.filter((w) => w.thicknessM !== undefined).map((w) => w.wallId));
  const thin = view.facts.geometry.edges.some((e) => !known.has(e.id));
  return [
    ...(plan.outline.kind === 'traverse' ? ['Walls are dimensioned as taped.'] : []),
    ...(thin ? [`Wall thickness not recorded: drawn as 8".`] : []),
    ...(leftOut > 0 ? [`${leftOut} short wall${leftOut === 1 ? '' : 's'} not dimensioned.`] : []),
  ];
}

/** What the plan shows, in words. */
export function planDescription(job: Job, facts: PlanFacts, scale: string | undefined): string {
  const { geometry } = facts;
  const count = (n: number, one: string, many = `${one}s`) =>
    n === 0 ? [] : [`${n} ${n === 1 ? one : many}`];
  const parts = [
    ...count(geometry.edges.length, 'wall'),
    ...count(job.plan.piers.length, 'pier'),
    ...count(job.plan.girders.length, 'girder'),
    ...count(job.plan.ducts.length, 'duct'),
    ...count(job.plan.vents.length, 'vent'),
    ...count(job.plan.doors.length, 'access door'),
    ...count(job.plan.drains.length, 'drain'),
    ...count(facts.readings.filter((r) => r.at !== undefined).length, 'reading'),
    ...count(job.findings.filter((f) => f.place.at !== undefined).length, 'numbered finding'),
  ];
  const size = units.formatQuantity(geometry.floorAreaM2, 'area', 'us', 0);
  const drawn = scale === undefined ? '' : ` Scale ${scale}.`;
  return `Plan of the space, floor ${size}: ${parts.join(', ')}.${drawn} The tables of this report give the same figures.`;
}
