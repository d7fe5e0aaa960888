import type { coverage as engine } from '@undercroft/engine';
import { criteria } from '@undercroft/engine';
import type { ClaimSubject, Place, Point, SurveyedJob } from '@undercroft/record';
import type { SpaceScene } from './scene.ts';

type Subject = engine.ProofSubject;

/** What a criterion's quantity is about, where it is about something that a picture can show. */
const BY_QUANTITY: readonly (readonly [RegExp, 'floor' | 'walls' | 'piers' | 'vents' | 'bays'])[] = [
  [/^(pierWrap|hollowPier)/, 'piers'],
  [/^(linerEdge|linerReachesWalls|linerCoversHollowWall|edgeFastener|termiteStrip|crawlWall)/, 'walls'],
  [/^vent/, 'vents'],
  [/^(wetBatts|floorBatts)/, 'bays'],
  [/^(exposedEarth|seam|lap[A-Z]|patch|linerContinuous|linerPonding|oldLiner|stakesThrough)/, 'floor'],
  [/^(organicDebris|groundPrepared|freeWater|waterOnLiner|standingWater)/, 'floor'],
];

const EQUIPMENT: readonly (readonly [RegExp, SurveyedJob['plan']['equipment'][number]['kind']])[] = [
  [/^(sump|floorInlet|highWaterAlarm|dischargeCheckValve|drainEntersBasin)/, 'sump'],
  [/^(dehumidifier|filterService|coilService)/, 'dehumidifier'],
  [/^condensatePump/, 'condensate-pump'],
];

/** A place of the plan as something that a picture shows or not. */
const place = (at: Point | undefined): Subject[] => (at === undefined ? [] : [{ kind: 'place', at }]);

const middle = (points: readonly Point[]): Point => ({
  xM: points.reduce((sum, p) => sum + p.xM, 0) / points.length,
  yM: points.reduce((sum, p) => sum + p.yM, 0) / points.length,
});

/** Middle of an access door: on its wall, or where a hatch is. */
export function doorPlace(
  door: SurveyedJob['plan']['doors'][number],
  { scene: { outline }, edgeOf }: Pick<SpaceScene, 'scene' | 'edgeOf'>,
): Point | undefined {
  const edge = door.wallId === undefined ? undefined : edgeOf.get(door.wallId);
  if (door.at !== undefined || edge === undefined || door.offsetM === undefined) return door.at;
  const from = outline[edge];
  const to = outline[(edge + 1) % outline.length];
  const share = (door.offsetM + door.widthM / 2) / Math.hypot(to.xM - from.xM, to.yM - from.yM);
  return { xM: from.xM + share * (to.xM - from.xM), yM: from.yM + share * (to.yM - from.yM) };
}

type Reference = NonNullable<Place['on']>;

/** What must be in a picture to show one thing of the plan; nothing where the thing is not drawn. */
function subjectsOfThing({ plan }: SurveyedJob, scene: SpaceScene, { kind, id }: Reference): Subject[] {
  const path = (points: readonly Point[] | undefined): Subject[] =>
    points === undefined ? [] : points.flatMap((at) => place(at));
  switch (kind) {
    case 'wall': {
      // A wall is named by the corner it begins at, or by the facts that were taken of it.
      const edge =
        scene.edgeOf.get(id) ?? scene.edgeOf.get(plan.walls.find((w) => w.id === id)?.wallId ?? '');
      return edge === undefined ? [] : [{ kind: 'wall', edge }];
    }
    case 'pier':
    case 'vent':
    case 'interior-wall':
      return [{ kind, id }];
    case 'zone': {
      const zone = plan.zones.find((z) => z.id === id);
      return zone === undefined ? [] : [{ kind: 'floor', outline: zone.outline }];
    }
    case 'obstacle': {
      const obstacle = plan.obstacles.find((o) => o.id === id);
      return obstacle === undefined ? [] : place(middle(obstacle.outline));
    }
    case 'equipment':
      return place(plan.equipment.find((e) => e.id === id)?.at);
    case 'door': {
      const door = plan.doors.find((d) => d.id === id);
      return door === undefined ? [] : place(doorPlace(door, scene));
    }
    case 'duct':
      return path(plan.ducts.find((d) => d.id === id)?.path);
    case 'drain':
      return path(plan.drains.find((d) => d.id === id)?.path.map((p) => p.at));
    case 'girder': {
      const girder = plan.girders.find((g) => g.id === id);
      return girder === undefined ? [] : path([girder.from, girder.to]);
    }
  }
}

/** What a claim says that it is about. */
export function subjectsNamed(
  job: SurveyedJob,
  scene: SpaceScene,
  about: readonly ClaimSubject[],
): Subject[] {
  return about.flatMap((one) => ('all' in one ? [{ kind: one.all }] : subjectsOfThing(job, scene, one)));
}

/** What a criterion is about, by its id; nothing where no picture of the plan can show it. */
export function subjectsOfCriterion(job: SurveyedJob, scene: SpaceScene, criterionId: string): Subject[] {
  const quantity = criteria.criteria.find((c) => c.id === criterionId)?.quantity;
  if (quantity === undefined) return [];
  const kind = BY_QUANTITY.find(([pattern]) => pattern.test(quantity))?.[1];
  if (kind !== undefined) return [{ kind }];
  const machine = EQUIPMENT.find(([pattern]) => pattern.test(quantity))?.[1];
  if (machine !== undefined)
    return job.plan.equipment.filter((e) => e.kind === machine).flatMap((e) => place(e.at));
  if (!/^(accessDoor|accessOpening|linerDoorFrame)/.test(quantity)) return [];
  return job.plan.doors.flatMap((door) => place(doorPlace(door, scene)));
}

/** Where a finding is: its point on the plan, else the whole of what it belongs to. */
export function subjectsOfPlace(job: SurveyedJob, scene: SpaceScene, { at, on }: Place): Subject[] {
  if (at !== undefined) return place(at);
  return on === undefined ? [] : subjectsOfThing(job, scene, on);
}
