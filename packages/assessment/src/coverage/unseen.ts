import type { coverage as engine } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import type { HiddenItem, UnseenPart } from './coverage-assessment.ts';

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

/** What a thing of the plan is called: by its own name where it has one. */
function nameOf(job: SurveyedJob, edges: GeometryResult['edges'], kind: string, id: string): string {
  const { plan, findings } = job;
  switch (kind) {
    case 'obstacle':
      return plan.obstacles.find((o) => o.id === id)?.what ?? id;
    case 'zone':
      return plan.zones.find((z) => z.id === id)?.name ?? id;
    case 'finding':
      return findings.find((f) => f.id === id)?.title ?? id;
    case 'equipment':
      return plan.equipment.find((e) => e.id === id)?.kind.replaceAll('-', ' ') ?? id;
    case 'wall':
      return `wall ${edges[Number(id)]?.id ?? id}`;
    default:
      return `${kind.replaceAll('-', ' ')} ${id}`;
  }
}

/** Parts of the floor that nobody saw, with what is drawn there by name. */
export function unseenParts(
  job: SurveyedJob,
  edges: GeometryResult['edges'],
  regions: readonly engine.UnseenRegion[],
): UnseenPart[] {
  return regions.map(({ areaM2, within, rings, standsIn }) => {
    const items = standsIn.map(({ kind, id }): HiddenItem => {
      const wall = kind === 'wall' ? (edges[Number(id)]?.id ?? id) : id;
      return { kind, id: wall, name: nameOf(job, edges, kind, id) };
    });
    const zones = standsIn.filter((s) => s.kind === 'zone').map((s) => s.id);
    const drawn = job.plan.zones.filter((z) => zones.includes(z.id)).map((z) => z.ground.cover);
    return {
      areaM2,
      at: within,
      rings,
      standsIn: items.sort((a, b) => WEIGHT.indexOf(a.kind) - WEIGHT.indexOf(b.kind)),
      covers: [...new Set(drawn.length > 0 ? drawn : [job.plan.ground.cover])],
    };
  });
}
