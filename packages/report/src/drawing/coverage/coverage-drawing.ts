import type { Assessment, CoverageAssessment } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { area, type Drawing, drawnFor, type Item, type Room } from '../display-list.ts';
import { obstacleLabels, obstaclesLayer } from '../plan/equipment.ts';
import { zoneLabels } from '../plan/floor.ts';
import { ductsLayer } from '../plan/services.ts';
import { girdersLayer, interiorWallsLayer, piersLayer } from '../plan/structure.ts';
import { dashed, type PlanView } from '../plan/view.ts';
import { drawnWalls } from '../plan/wall-parts.ts';
import { wallsLayer } from '../plan/walls.ts';
import { type SheetContent, sidePicture, sideSheet } from './side-sheet.ts';
import { stationsLayer } from './stations.ts';
import { floorShownLayer, pierFacesLayer, wallsUnseenLayer } from './unseen-layers.ts';

/** An assessment of which the coverage was worked out. */
export type WithCoverage = Assessment & { readonly coverage: CoverageAssessment };

/** Outlines of zones, without their textures: light and dark tell what was seen. */
function zoneOutlines(view: PlanView): Item[] {
  const items = view.job.plan.zones.flatMap((z) =>
    drawnFor('zone', z.id, [area(z.outline.map(view.toSheet), { stroke: dashed(view, 'soft', 0.5, 3, 2) })]),
  );
  return items.length === 0 ? [] : [{ kind: 'layer', name: 'zones', within: view.outline, items }];
}

/** What stands in the space, over a floor that is drawn already. */
export function builtLayers(view: PlanView, floor: readonly Item[]): { items: Item[]; labels: () => Item[] } {
  const walls = drawnWalls(view);
  const wallItems = wallsLayer(view, walls);
  const { ducts } = ductsLayer(view);
  const items = [
    ...floor,
    ...zoneOutlines(view),
    ...ducts,
    ...girdersLayer(view),
    ...obstaclesLayer(view),
    ...interiorWallsLayer(view),
    ...piersLayer(view),
    ...wallItems,
  ];
  return { items, labels: () => [...zoneLabels(view), ...obstacleLabels(view)] };
}

function coverageItems(view: PlanView, coverage: CoverageAssessment): Item[] {
  const built = builtLayers(view, floorShownLayer(view, coverage));
  const hidden = wallsUnseenLayer(view, coverage, drawnWalls(view));
  const stations = stationsLayer(view, coverage);
  const numbers = stations.numbers();
  return [
    ...built.items,
    ...hidden,
    ...pierFacesLayer(view, coverage),
    ...stations.marks,
    ...numbers,
    ...built.labels(),
  ];
}

function describe({ floor, pictures, unseen }: CoverageAssessment): string {
  const left = units.formatQuantity(floor.areaM2 - floor.seenM2, 'area', 'us', 0);
  const parts = unseen.length === 1 ? 'one part' : `${unseen.length} parts`;
  return `Plan of the space with the places of ${pictures.length} pictures and where they look. Light floor is shown, dark hatched floor (${left} in ${parts}) is in no picture. The tables of this section give the same.`;
}

function content({ coverage }: WithCoverage): SheetContent {
  const { scatteredM2 } = coverage.floor;
  const small = units.formatQuantity(scatteredM2, 'area', 'us', 0);
  return {
    title: 'What the pictures show',
    description: describe(coverage),
    items: (view) => coverageItems(view, coverage),
    notes: [
      ...(scatteredM2 > 0.05 ? [`${small} more in small places, not drawn.`] : []),
      'A picture shows floor within its reach that',
      'nothing hides, drawn from place and direction.',
    ],
  };
}

/** The coverage plan for paper, on a sheet of its own. */
export const coverageSheet = (job: Job, assessment: WithCoverage, room: Required<Room>): Drawing =>
  sideSheet(job, assessment, room, content(assessment));

/** The coverage plan for a screen. */
export const coveragePicture = (job: Job, assessment: WithCoverage, room: Room): Drawing =>
  sidePicture(job, assessment, room, content(assessment));
