import { geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import type { Sample } from './sample.ts';

/** What the drawing itself shows. Values that the surveyor left out give no sample. */
type Drawn = readonly [quantity: string, id: string, value: number | boolean | undefined, note: string];

function samples(drawn: readonly Drawn[]): Sample[] {
  return drawn.flatMap(([quantity, id, value, note]) =>
    value === undefined
      ? []
      : [
          {
            id: `plan-${quantity}-${id}`,
            quantity,
            item: id,
            value,
            assumed: false,
            origin: { kind: 'plan' as const, id, note },
          },
        ],
  );
}

function ofLiner({ plan }: SurveyedJob): Drawn[] {
  const walls = plan.walls.filter((w) => w.outdoors || w.linerHeightM !== undefined);
  return [
    ...plan.seams.map((s): Drawn => ['seamLapWidthM', s.id, s.lapM, 'lap of a drawn seam']),
    ...walls.map((w): Drawn => ['linerEdgeHeightM', w.id, w.linerHeightM, 'liner height on a wall']),
    ...walls.map((w): Drawn => ['linerEdgeSealed', w.id, w.linerSealed, 'liner edge on a wall']),
    ...walls.map(
      (w): Drawn => [
        'linerEdgeMechanicallyFixed',
        w.id,
        w.linerFixing === undefined ? undefined : w.linerFixing === 'mechanical',
        'liner edge on a wall',
      ],
    ),
    ...plan.piers.map((p): Drawn => ['pierWrapHeightM', p.id, p.wrapHeightM, 'wrap of a pier']),
    ...plan.piers.map((p): Drawn => ['pierWrapSealed', p.id, p.wrapSealed, 'wrap of a pier']),
    ...plan.ducts.map(
      (d): Drawn => ['linerContinuousUnderDucts', d.id, d.linerBeneath, 'liner under a duct'],
    ),
    ['linerThicknessM', 'ground', plan.ground.liner?.thicknessM, 'liner of the floor'],
    ['linerPermeanceNg', 'ground', inNanograms(plan.ground.liner?.permeanceKgPerM2SPa), 'liner of the floor'],
    ['oldLinerLeft', 'ground', plan.ground.liner?.oldLinerBelow, 'liner of the floor'],
    ...plan.doors.map(
      (d): Drawn => ['linerDoorFrameSealed', d.id, d.linerSealedToFrame, 'liner at the door frame'],
    ),
    ...plan.seams.map((s): Drawn => ['seamsSealed', s.id, tapedAllAlong(s), 'tape of a drawn seam']),
    ...walls.map(
      (w): Drawn => [
        'linerEdgeAttached',
        w.id,
        w.linerLooseM === undefined ? undefined : w.linerLooseM === 0,
        'loose length on a wall',
      ],
    ),
    ...plan.piers.map((p): Drawn => ['pierCarriesWood', p.id, bearsGirder(plan, p), 'girder over a pier']),
    ['waterLyingOnLiner', 'ground', waterSeen(plan.ground.liner?.waterOnTop, 'pond'), 'liner of the floor'],
    [
      'waterMovesUnderLiner',
      'ground',
      waterSeen(plan.ground.liner?.waterBeneath, 'free-water'),
      'liner of the floor',
    ],
    [
      'dropletsUnderLiner',
      'ground',
      waterSeen(plan.ground.liner?.waterBeneath, 'droplets'),
      'liner of the floor',
    ],
  ];
}

/** A run of tape is not read closer than this [m]. */
const TAPE_DOUBT_M = 0.05;

function tapedAllAlong({ path, tapedM }: SurveyedJob['plan']['seams'][number]): boolean | undefined {
  return tapedM === undefined ? undefined : shapes.pathLengthM(path) - tapedM < TAPE_DOUBT_M;
}

/** A yes where it was seen; a girder that was not drawn says nothing. */
function bearsGirder(
  { girders }: SurveyedJob['plan'],
  pier: SurveyedJob['plan']['piers'][number],
): true | undefined {
  const reachM = Math.max(pier.widthM, pier.depthM) / 2;
  return girders.some((g) => shapes.distanceToSegmentM(pier.at, g.from, g.to) <= reachM) || undefined;
}

const waterSeen = (seen: string | undefined, what: string) =>
  seen === undefined ? undefined : seen === what;

const inNanograms = (kgPerM2SPa: number | undefined) =>
  kgPerM2SPa === undefined ? undefined : kgPerM2SPa * 1e12;

function ofSpace({ plan, house, findings }: SurveyedJob, geometry: GeometryResult): Drawn[] {
  // A finding of bare ground that was not drawn is not refuted by the drawing.
  const saysBare = findings.some((f) => f.defect === 'exposed-earth');
  const vented = house.spaceType === 'vented';
  const knownVents =
    plan.vents.length > 0 && plan.vents.every((v) => v.netFreeAreaM2 !== undefined || v.state === 'sealed');
  const open = plan.vents.map(
    (v): Drawn => [
      'ventsOpen',
      v.id,
      v.state === undefined ? undefined : v.state === 'open' || v.state === 'screened',
      'state of a vent',
    ],
  );
  const flood = plan.vents.filter((v) => v.floodOpening === true);
  return [
    [
      'exposedEarthFraction',
      'floor',
      saysBare && geometry.bareEarthM2 === 0 ? undefined : geometry.bareEarthM2 / geometry.floorAreaM2,
      'bare zones over the floor area',
    ],
    ...(knownVents && vented
      ? [
          [
            'ventAreaRatio',
            'vents',
            geometry.openVentAreaM2 / geometry.floorAreaM2,
            'net free area over the floor area',
          ] as Drawn,
        ]
      : []),
    ...(house.spaceType === 'closed' ? open : []),
    ...(flood.length > 0
      ? [['floodOpeningCount', 'vents', flood.length, 'flood openings drawn'] as Drawn]
      : []),
    ...plan.joists.map((j): Drawn => ['joistClearanceM', j.id, j.clearanceM, 'clearance under the joists']),
    ...plan.girders.map((g): Drawn => ['girderClearanceM', g.id, g.clearanceM, 'clearance under a girder']),
    ...plan.ducts.map((d): Drawn => ['ductToEarthM', d.id, d.clearanceM, 'clearance under a duct']),
    ...plan.doors.map(
      (d): Drawn => ['accessOpeningShortSideM', d.id, Math.min(d.widthM, d.heightM), 'access opening'],
    ),
    ...plan.doors.map(
      (d): Drawn => ['accessOpeningLongSideM', d.id, Math.max(d.widthM, d.heightM), 'access opening'],
    ),
    ...plan.doors.map(
      (d): Drawn => [
        'accessDoorSealed',
        d.id,
        (d.gapM ?? 0) > DOOR_GAP_M ? false : undefined,
        'gap of the door',
      ],
    ),
    ...plan.vents.map(
      (v): Drawn => [
        'ventFillerLoose',
        v.id,
        v.state === undefined ? undefined : v.state === 'loose-board',
        'state of a vent',
      ],
    ),
    ...plan.walls.map(
      (w): Drawn => [
        'wallDamp',
        w.id,
        w.dampness === undefined ? undefined : w.dampness !== 'dry',
        'dampness of a wall',
      ],
    ),
    ...plan.ducts.map((d): Drawn => ['ductLeaksAir', d.id, d.leaks, 'leaks of a duct']),
  ];
}

/** A gap of more than 1/16 in is a leak (common practice, no source) [m]. */
const DOOR_GAP_M = 0.0015875;

function ofMachines({ plan }: SurveyedJob): Drawn[] {
  const machines = plan.equipment.filter((e) => e.kind === 'dehumidifier');
  return [
    ...machines.map((e): Drawn => ['dehumidifierRunShare', e.id, e.runShare, 'run hours of the machine']),
    ...machines.map(
      (e): Drawn => ['humidistatSetting', e.id, e.setRelativeHumidity, 'setting of the machine'],
    ),
  ];
}

function ofWater({ plan }: SurveyedJob): Drawn[] {
  const sumps = plan.equipment.filter((e) => e.kind === 'sump');
  return [
    ...sumps.map((s): Drawn => ['sumpDiameterM', s.id, s.diameterM, 'basin']),
    ...sumps.map((s): Drawn => ['sumpDepthM', s.id, s.depthM, 'basin']),
    ...sumps.map(
      (s): Drawn => [
        'sumpLidSealed',
        s.id,
        s.lid === undefined ? undefined : s.lid === 'sealed',
        'basin lid',
      ],
    ),
    ...plan.drains.map((d): Drawn => ['subsoilDrainDiameterM', d.id, d.diameterM, 'drain']),
    ...plan.drains.map((d): Drawn => ['drainFilterPresent', d.id, d.sock, 'drain sock']),
    ...plan.drains.map((d): Drawn => ['drainJointsCoupled', d.id, d.joined, 'drain joints']),
    ...plan.drains.map((d): Drawn => ['drainStoneWashed', d.id, d.aggregate, 'stone of the drain']),
    ...plan.drains.map((d): Drawn => ['drainEntersBasin', d.id, entersBasin(d.endsIn), 'end of the drain']),
    ...sumps.map((s): Drawn => ['floorInletRimAboveLinerM', s.id, s.rimAboveFloorM, 'rim of the basin']),
    ...plan.equipment
      .filter((e) => e.kind === 'condensate-pump')
      .map((e): Drawn => ['condensatePumpAboveLinerM', e.id, e.raisedM, 'height of the condensate pump']),
  ];
}

const entersBasin = (end: SurveyedJob['plan']['drains'][number]['endsIn']) =>
  end === 'sump' ? true : end === 'soil' ? false : undefined;

/** Everything the drawing shows that a criterion or the proof of a defect asks for. */
export function samplesOfPlan(job: SurveyedJob, geometry: GeometryResult): Sample[] {
  return samples([...ofLiner(job), ...ofSpace(job, geometry), ...ofWater(job), ...ofMachines(job)]);
}

/** Items of which each needs a sample of its own before a criterion about them can be met: one wrapped pier is not all. */
export function itemsToShow({ plan }: SurveyedJob): Readonly<Record<string, readonly string[]>> {
  const piers = plan.piers.map((p) => p.id);
  const walls = plan.walls.filter((w) => w.outdoors).map((w) => w.id);
  const sumps = plan.equipment.filter((e) => e.kind === 'sump').map((e) => e.id);
  const ducts = plan.ducts.map((d) => d.id);
  return {
    pierWrapHeightM: piers,
    pierWrapSealed: piers,
    linerEdgeHeightM: walls,
    linerEdgeSealed: walls,
    linerEdgeMechanicallyFixed: walls,
    linerContinuousUnderDucts: ducts,
    ductToEarthM: ducts,
    sumpLidSealed: sumps,
    linerDoorFrameSealed: plan.doors.map((d) => d.id),
    seamsSealed: plan.seams.map((s) => s.id),
    linerEdgeAttached: walls,
    wallDamp: walls,
    ventFillerLoose: plan.vents.map((v) => v.id),
  };
}
