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
  ];
}

const inNanograms = (kgPerM2SPa: number | undefined) =>
  kgPerM2SPa === undefined ? undefined : kgPerM2SPa * 1e12;

function ofSpace({ plan, house }: SurveyedJob, geometry: GeometryResult): Drawn[] {
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
      geometry.bareEarthM2 / geometry.floorAreaM2,
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
    ...plan.equipment
      .filter((e) => e.kind === 'condensate-pump')
      .map((e): Drawn => ['condensatePumpAboveLinerM', e.id, e.raisedM, 'height of the condensate pump']),
  ];
}

/** Everything the drawing shows that a criterion asks for. */
export function samplesOfPlan(job: SurveyedJob, geometry: GeometryResult): Sample[] {
  return samples([...ofLiner(job), ...ofSpace(job, geometry), ...ofWater(job)]);
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
  };
}
