import { airflow } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { SpaceGeometry } from '../geometry.ts';

const SHELTER = { open: 1, light: 2, moderate: 3, heavy: 4, 'very-heavy': 5 } as const;

/** Share of a vent's opening that mesh and louver leave, where the net free area was not read (common practice). */
const NET_SHARE = 0.6;

const VENT_STATE = {
  open: 'open',
  screened: 'open',
  'louver-shut': 'closed',
  'loose-board': 'closed',
  sealed: 'sealed',
} as const;

function vents(job: SurveyedJob): airflow.CrawlVent[] {
  return job.plan.vents.map((v) => {
    const gross = v.widthM * v.heightM * NET_SHARE;
    const state = v.state === undefined ? 'open' : VENT_STATE[v.state];
    // The share that a shut vent leaks counts from the opening as it was built, not from what was left of it.
    const area = state === 'open' ? (v.netFreeAreaM2 ?? gross) : gross;
    return {
      name: v.id,
      face: v.wallId,
      netFreeAreaM2: area,
      state,
      ...(v.sillHeightM === undefined ? {} : { heightM: v.sillHeightM + v.heightM / 2 }),
    };
  });
}

/** True where the walls were air-sealed on purpose: a closed space whose vents are all sealed and whose door closes tight. */
function isAirSealed(job: SurveyedJob): boolean {
  const { plan, house } = job;
  const ventsShut = plan.vents.every((v) => v.state === 'sealed');
  const doorsTight = plan.doors.length > 0 && plan.doors.every((d) => d.weatherstripped === true);
  return house.spaceType === 'closed' && ventsShut && doorsTight;
}

function houseFacts(job: SurveyedJob): airflow.HouseFacts {
  const { stories, heatedVolumeM3, yearBuilt, blowerDoorM3PerH50 } = job.house;
  return {
    ...(stories === undefined ? {} : { stories: Math.min(stories, 3) as airflow.Stories }),
    ...(heatedVolumeM3 === undefined ? {} : { volumeM3: heatedVolumeM3 }),
    ...(yearBuilt === undefined ? {} : { builtYear: yearBuilt }),
    ...(blowerDoorM3PerH50 === undefined || blowerDoorM3PerH50 === 0
      ? {}
      : { leakageAreaM2: airflow.leakageAreaM2(airflow.lawFromBlowerDoor(blowerDoorM3PerH50 / 3600)) }),
  };
}

/** Height of the outside walls that stands above outside grade, averaged over their length [m]; undefined where unknown. */
function exposedHeightM(job: SurveyedJob, space: SpaceGeometry): number | undefined {
  const known = job.plan.walls.filter(
    (w) => w.outdoors && w.heightM !== undefined && w.gradeAboveFloorM !== undefined,
  );
  let length = 0;
  let area = 0;
  for (const wall of known) {
    const edge = space.result.edges.find((e) => e.id === wall.wallId);
    if (edge === undefined) continue;
    length += edge.lengthM;
    area +=
      edge.lengthM * Math.max(0, (wall.heightM as number) - Math.max(0, wall.gradeAboveFloorM as number));
  }
  return length === 0 ? undefined : area / length;
}

/** Facts of the space from which the engine makes its pressure network. */
export function crawlFacts(job: SurveyedJob, space: SpaceGeometry): airflow.CrawlFacts {
  const outdoors = new Set(space.engine.walls.filter((w) => w.outdoors).map((w) => w.edge.id));
  const faces = space.engine.outline.edges
    .filter((e) => outdoors.has(e.id))
    .map((e) => ({
      name: e.id ?? String(e.index),
      bearingDeg: e.outwardNormalDeg,
      exposedLengthM: e.lengthM,
    }));
  const exposedWallHeightM = exposedHeightM(job, space);
  const shelter = job.house.shelter;
  const known = new Set(faces.map((f) => f.name));
  const onFace = <T extends { readonly face?: string }>(one: T): T => {
    if (one.face === undefined || known.has(one.face)) return one;
    const { face, ...rest } = one;
    return rest as T;
  };
  const doors = job.plan.doors.filter((d) => d.kind === 'wall');
  return {
    floorAreaM2: space.result.floorAreaM2,
    crawlHeightM: space.heightM.value,
    ...(faces.length === 0 ? { exposedPerimeterM: 0 } : { faces }),
    ...(exposedWallHeightM === undefined ? {} : { exposedWallHeightM }),
    vents: vents(job).map(onFace),
    ...(job.plan.doors.length === 0
      ? {}
      : {
          accessDoors: doors.map((d) =>
            onFace({
              name: d.id,
              ...(d.wallId === undefined ? {} : { face: d.wallId }),
              fit: d.weatherstripped === true ? ('weatherstripped' as const) : ('plain' as const),
            }),
          ),
        }),
    walls: isAirSealed(job) ? 'sealed' : 'as-built',
    floor: 'as-built',
    house: houseFacts(job),
    ...(shelter === undefined ? {} : { shelterClass: SHELTER[shelter] }),
  };
}
