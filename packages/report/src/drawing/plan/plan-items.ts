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
import { ON_PAPER, type PlanStyle, wordIn } from './style.ts';
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
  const seen = view.style.layers === 'all' ? seenLayers(view) : NOTHING_SEEN;
  const dimensions = dimensionsLayer(view, walls);
  // Lettering from here on: what must stand comes first and finds the best places.
  const values = seen.values();
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
    ...seen.items,
    ...zones,
    ...names,
    ...clear,
    ...values,
    ...dimensions.items,
  ];
  return { items, notes: notesOf(view, dimensions.leftOut) };
}

function seenLayers(view: PlanView): { readonly items: readonly Item[]; readonly values: () => Item[] } {
  const { dots, values } = readingsLayer(view);
  const photos = photosLayer(view);
  const findings = findingsLayer(view);
  return { items: [...photos, ...dots, ...findings], values };
}

const NOTHING_SEEN = { items: [], values: () => [] } as const;

function notesOf(view: PlanView, leftOut: number): string[] {
  const { plan } = view.job;
  const known = new Set(plan.walls.filter((w) => w.thicknessM !== undefined).map((w) => w.wallId));
  const thin = view.facts.geometry.edges.some((e) => !known.has(e.id));
  return [
    ...(plan.outline.kind === 'traverse' ? [wordIn(view.style, 'Walls are dimensioned as taped.')] : []),
    ...(thin ? [wordIn(view.style, 'Wall thickness not recorded: drawn as 8".')] : []),
    ...(leftOut > 0
      ? [`${leftOut} ${wordIn(view.style, `short wall${leftOut === 1 ? '' : 's'} not dimensioned.`)}`]
      : []),
  ];
}

/** Things counted in the description of a plan, one and several. */
const COUNTED = {
  en: {
    wall: ['wall', 'walls'],
    pier: ['pier', 'piers'],
    girder: ['girder', 'girders'],
    duct: ['duct', 'ducts'],
    vent: ['vent', 'vents'],
    door: ['access door', 'access doors'],
    drain: ['drain', 'drains'],
    reading: ['reading', 'readings'],
    finding: ['numbered finding', 'numbered findings'],
  },
  es: {
    wall: ['muro', 'muros'],
    pier: ['pilar', 'pilares'],
    girder: ['viga maestra', 'vigas maestras'],
    duct: ['ducto', 'ductos'],
    vent: ['rejilla de ventilación', 'rejillas de ventilación'],
    door: ['puerta de acceso', 'puertas de acceso'],
    drain: ['drenaje', 'drenajes'],
    reading: ['lectura', 'lecturas'],
    finding: ['hallazgo numerado', 'hallazgos numerados'],
  },
} as const;

/** What the plan shows, in words. */
export function planDescription(
  job: Job,
  facts: PlanFacts,
  scale: string | undefined,
  { language, system }: PlanStyle = ON_PAPER,
): string {
  const { plan } = job;
  const counts = {
    wall: facts.geometry.edges.length,
    pier: plan.piers.length,
    girder: plan.girders.length,
    duct: plan.ducts.length,
    vent: plan.vents.length,
    door: plan.doors.length,
    drain: plan.drains.length,
    reading: facts.readings.filter((r) => r.at !== undefined).length,
    finding: job.findings.filter((f) => f.place.at !== undefined).length,
  } as const;
  const names = COUNTED[language];
  const list = (Object.keys(counts) as (keyof typeof counts)[])
    .filter((thing) => counts[thing] > 0)
    .map((thing) => `${counts[thing]} ${names[thing][counts[thing] === 1 ? 0 : 1]}`)
    .join(', ');
  const size = units.formatQuantity(facts.geometry.floorAreaM2, 'area', system, 0);
  if (language === 'es') {
    const drawn = scale === undefined ? '' : ` Escala ${scale}.`;
    return `Plano del espacio, piso ${size}: ${list}.${drawn} Las tablas dan las mismas cifras.`;
  }
  const drawn = scale === undefined ? '' : ` Scale ${scale}.`;
  return `Plan of the space, floor ${size}: ${list}.${drawn} The tables of this report give the same figures.`;
}
