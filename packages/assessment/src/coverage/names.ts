import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import { compassWord } from './compass.ts';

/** What a thing of the plan is called where people read it, by its kind and id. */
export type NameOf = (kind: string, id: string) => string;

type Walls = Pick<GeometryResult, 'corners' | 'edges'>;

/** Twice the area that a ring encloses, positive where it runs counter-clockwise. */
function turnOf(corners: Walls['corners']): number {
  return corners.reduce((sum, a, i) => {
    const b = corners[(i + 1) % corners.length];
    return sum + a.xM * b.yM - b.xM * a.yM;
  }, 0);
}

/** Words with a number behind where several would read alike. */
function numbered(ids: readonly string[], words: readonly string[]): [string, string][] {
  const counts = new Map<string, number>();
  return ids.map((id, i) => {
    const word = words[i];
    const many = words.filter((w) => w === word).length > 1;
    const number = (counts.get(word) ?? 0) + 1;
    counts.set(word, number);
    return [id, many ? `${word} ${number}` : word];
  });
}

/** Outside walls by the way they look from the house: `north wall`, or `north wall 2` where several do. */
function wallNames({ corners, edges }: Walls): [string, string][] {
  const outward = turnOf(corners) > 0 ? 90 : -90;
  return numbered(
    edges.map((e) => e.id),
    edges.map((e) => `${compassWord(e.bearingDeg + outward)} wall`),
  );
}

const inOrder = (word: string, list: readonly { readonly id: string }[]): [string, string][] =>
  list.map(({ id }, i) => [id, `${word} ${i + 1}`]);

/**
 * Names for people: walls by the side they are on, what was named by its own name, the rest by its kind and its number in
 * the plan. Ids in a record are random and mean nothing to anyone.
 */
export function namesOf({ plan, findings }: SurveyedJob, walls: Walls): NameOf {
  const byKind: Readonly<Record<string, ReadonlyMap<string, string>>> = {
    wall: new Map(wallNames(walls)),
    pier: new Map(inOrder('pier', plan.piers)),
    vent: new Map(inOrder('vent', plan.vents)),
    'interior-wall': new Map(inOrder('inside wall', plan.interiorWalls)),
    girder: new Map(inOrder('girder', plan.girders)),
    duct: new Map(inOrder('duct', plan.ducts)),
    drain: new Map(inOrder('drain', plan.drains)),
    seam: new Map(inOrder('seam', plan.seams)),
    door: new Map(
      numbered(
        plan.doors.map((d) => d.id),
        plan.doors.map(() => 'access door'),
      ),
    ),
    equipment: new Map(
      numbered(
        plan.equipment.map((e) => e.id),
        plan.equipment.map((e) => e.kind.replaceAll('-', ' ')),
      ),
    ),
    obstacle: new Map(plan.obstacles.map((o) => [o.id, o.what])),
    zone: new Map(plan.zones.map((z) => [z.id, z.name])),
    finding: new Map(findings.map((f) => [f.id, f.title])),
  };
  // Bays are numbered by the engine: the run and the place in it.
  return (kind, id) =>
    kind === 'bay'
      ? `joist bay ${id.slice(id.lastIndexOf('-') + 1)}`
      : (byKind[kind]?.get(id) ?? `${kind} ${id}`);
}
