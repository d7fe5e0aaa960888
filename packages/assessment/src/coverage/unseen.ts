import type { coverage as engine } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import type { HiddenItem, UnseenPart } from './coverage-assessment.ts';
import { fromWalls } from './from-walls.ts';
import type { NameOf } from './names.ts';

/** What an owner asks about first. */
const WEIGHT = [
  'obstacle',
  'zone',
  'finding',
  'equipment',
  'vent',
  'pier',
  'wall',
  'interior-wall',
  'duct',
  'girder',
];

/** Parts of the floor that nobody saw, with what is drawn there by name. */
export function unseenParts(
  job: SurveyedJob,
  edges: GeometryResult['edges'],
  regions: readonly engine.UnseenRegion[],
  nameOf: NameOf,
): UnseenPart[] {
  return regions.map(({ areaM2, within, rings, standsIn }) => {
    const items = standsIn.map(({ kind, id }): HiddenItem => {
      // The engine knows an outside wall by its place in the outline.
      const own = kind === 'wall' ? edges[Number(id)].id : id;
      return { kind, id: own, name: nameOf(kind, own) };
    });
    const zones = standsIn.filter((s) => s.kind === 'zone').map((s) => s.id);
    const drawn = job.plan.zones.filter((z) => zones.includes(z.id)).map((z) => z.ground.cover);
    return {
      areaM2,
      at: within,
      fromWalls: fromWalls(within, { edges }, nameOf),
      rings,
      standsIn: items.sort((a, b) => WEIGHT.indexOf(a.kind) - WEIGHT.indexOf(b.kind)),
      covers: [...new Set(drawn.length > 0 ? drawn : [job.plan.ground.cover])],
    };
  });
}
