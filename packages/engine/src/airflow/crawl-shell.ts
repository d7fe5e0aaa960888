import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Assumer } from './crawl-assumptions.ts';
import { usual } from './crawl-assumptions.ts';
import type { CrawlAccessDoor, CrawlFace, CrawlFacts, CrawlVent } from './crawl-facts.ts';
import { CRACK_EXPONENT, gapLeakageAreaM2, HOLE_EXPONENT, holeLeakageAreaM2 } from './opening.ts';
import { airflowSources } from './sources.ts';

/** A leak between the crawl space and outdoors, on one face. */
export interface ShellLeak {
  readonly name: string;
  readonly face: CrawlFace;
  readonly heightM: number;
  readonly leakageM2: number;
  readonly exponent: number;
}

/** The crawl space towards outdoors. */
export interface CrawlShell {
  readonly leaks: readonly ShellLeak[];
  /** Leakage with every vent shut by its own damper, as a fan-door test finds it, m2 at 4 Pa. */
  readonly ventsShutM2: number;
}

/** Faces as given, or four equal ones. */
export function crawlFaces(facts: CrawlFacts, { assume }: Assumer): readonly CrawlFace[] {
  if (facts.faces !== undefined) {
    if (facts.faces.length === 0) {
      throw new EngineError(
        'bad-geometry',
        'a crawl space needs at least one face; leave faces out for four equal ones',
      );
    }
    for (const face of facts.faces) {
      requireRange(`face ${face.name}: exposed length, m,`, face.exposedLengthM, 0, 1000);
      requireRange(`face ${face.name}: bearing, degrees,`, face.bearingDeg, -360, 360);
    }
    return facts.faces;
  }
  const square = 4 * Math.sqrt(facts.floorAreaM2);
  const perimeter =
    facts.exposedPerimeterM ??
    assume('exposedPerimeterM', {
      value: square,
      low: square,
      high: 1.25 * square,
      why: 'The exposed perimeter was not given; that of a square of the floor area is taken.',
      source: airflowSources.tradeHabit,
    });
  requireRange('exposed perimeter, m,', perimeter, 0, 1000);
  return ['north', 'east', 'south', 'west'].map((name, i) => ({
    name,
    bearingDeg: 90 * i,
    exposedLengthM: perimeter / 4,
  }));
}

/** The faces that an item sits on, with the share of it on each: its own, or all of them alike. */
function sharesByFace(
  faces: readonly CrawlFace[],
  name: string | undefined,
  what: string,
): readonly [CrawlFace, number][] {
  if (name === undefined) return faces.map((face) => [face, 1 / faces.length]);
  const face = faces.find((one) => one.name === name);
  if (face === undefined) {
    throw new EngineError(
      'bad-input',
      `${what} is on face ${name}, which is not among ${faces.map((one) => one.name).join(', ')}`,
    );
  }
  return [[face, 1]];
}

function shutShare(state: CrawlVent['state'], { assume }: Assumer): number {
  if (state === 'open') return 1;
  if (state === 'closed') return assume('closedVentLeakShare', usual.closedVentLeakShare);
  return assume('sealedVentLeakShare', usual.sealedVentLeakShare);
}

function ventLeaks(facts: CrawlFacts, faces: readonly CrawlFace[], assumer: Assumer): ShellLeak[] {
  const { crawlHeightM: h, measuredLeakageAreaM2 } = facts;
  const usualHeight = Math.max(h - 0.2, h / 2);
  return facts.vents.flatMap((vent, i) => {
    const name = vent.name ?? `vent ${i + 1}`;
    const open = holeLeakageAreaM2(requireRange(`${name}: net free area, m2,`, vent.netFreeAreaM2, 0, 100));
    // a fan-door test with the vents shut has already counted what they leak shut
    if (measuredLeakageAreaM2 !== undefined && vent.state !== 'open') return [];
    const heightM =
      vent.heightM ??
      assumer.assume('ventHeightM', {
        value: usualHeight,
        low: h / 2,
        high: h,
        why: 'The height of a vent was not recorded; a course below the sill is taken.',
        source: airflowSources.tradeHabit,
      });
    const leakage = open * shutShare(vent.state, assumer);
    return sharesByFace(faces, vent.face, name).map(([face, share]) => ({
      name: vent.face === undefined ? `${name}, ${face.name}` : name,
      face,
      heightM,
      leakageM2: leakage * share,
      exponent: vent.state === 'open' ? HOLE_EXPONENT : CRACK_EXPONENT,
    }));
  });
}

function doorLeaks(facts: CrawlFacts, faces: readonly CrawlFace[], { assume }: Assumer): ShellLeak[] {
  const doors: readonly CrawlAccessDoor[] =
    facts.accessDoors ??
    Array.from({ length: Math.round(assume('accessDoorCount', usual.accessDoorCount)) }, () => ({
      fit: 'plain',
    }));
  return doors.flatMap((door, i) => {
    const name = door.name ?? `access door ${i + 1}`;
    const leakage =
      door.fit === 'plain'
        ? assume('plainDoorLeakageM2', usual.plainDoor)
        : assume('weatherstrippedDoorLeakageM2', usual.strippedDoor);
    return sharesByFace(faces, door.face, name).map(([face, share]) => ({
      name: door.face === undefined ? `${name}, ${face.name}` : name,
      face,
      heightM: door.heightM ?? facts.crawlHeightM / 2,
      leakageM2: leakage * share,
      exponent: CRACK_EXPONENT,
    }));
  });
}

function gapLeaks(facts: CrawlFacts, faces: readonly CrawlFace[]): ShellLeak[] {
  return (facts.gaps ?? []).flatMap((gap, i) => {
    const name = gap.name ?? `gap ${i + 1}`;
    const leakage = gapLeakageAreaM2(gap.lengthM, gap.widthM);
    return sharesByFace(faces, gap.face, name).map(([face, share]) => ({
      name: gap.face === undefined ? `${name}, ${face.name}` : name,
      face,
      heightM: gap.heightM,
      leakageM2: leakage * share,
      exponent: CRACK_EXPONENT,
    }));
  });
}

function total(leaks: readonly ShellLeak[]): number {
  return leaks.reduce((sum, leak) => sum + leak.leakageM2, 0);
}

/** Spreads a leakage over the faces by their exposed length. */
function spread(
  name: string,
  leakageM2: number,
  heightM: number,
  faces: readonly CrawlFace[],
): readonly ShellLeak[] {
  const length = faces.reduce((sum, face) => sum + face.exposedLengthM, 0);
  if (!(leakageM2 > 0) || !(length > 0)) return [];
  return faces.map((face) => ({
    name: `${name}, ${face.name}`,
    face,
    heightM,
    leakageM2: (leakageM2 * face.exposedLengthM) / length,
    exponent: CRACK_EXPONENT,
  }));
}

/** Leakage of vents that a fan-door test with all of them shut would still find, m2. */
function shutVentsM2(facts: CrawlFacts, { assume }: Assumer): number {
  return facts.vents.reduce((sum, vent) => {
    const share =
      vent.state === 'sealed'
        ? assume('sealedVentLeakShare', usual.sealedVentLeakShare)
        : assume('closedVentLeakShare', usual.closedVentLeakShare);
    return sum + share * holeLeakageAreaM2(vent.netFreeAreaM2);
  }, 0);
}

/**
 * Leaks between crawl space and outdoors: vents as they stand, and the rest of the shell. An as-built shell that
 * nobody measured is never taken tighter than the house above: fan-door tests of nine crawl spaces found them leakier
 * even with the vents shut. What its known parts lack of that is laid in the rim as leaks that were not seen.
 * @param houseM2 leakage area of the whole house, m2
 */
export function crawlShell(
  facts: CrawlFacts,
  faces: readonly CrawlFace[],
  houseM2: number,
  assumer: Assumer,
): CrawlShell {
  const vents = ventLeaks(facts, faces, assumer);
  const h = facts.crawlHeightM;
  if (facts.measuredLeakageAreaM2 !== undefined) {
    const measured = requireRange('measured crawl leakage area, m2,', facts.measuredLeakageAreaM2, 0, 100);
    return { leaks: [...vents, ...spread('crawl wall and rim', measured, h, faces)], ventsShutM2: measured };
  }
  const { assume } = assumer;
  const doorsAndGaps = [...doorLeaks(facts, faces, assumer), ...gapLeaks(facts, faces)];
  const wallHeight =
    facts.exposedWallHeightM ??
    assume('exposedWallHeightM', {
      value: h,
      low: 0.3 * h,
      high: h,
      why: 'The height of wall above grade was not recorded; the whole crawl height is taken.',
      source: airflowSources.tradeHabit,
    });
  requireRange('exposed wall height, m,', wallHeight, 0, 20);
  const sealed = facts.walls === 'sealed';
  const length = faces.reduce((sum, face) => sum + face.exposedLengthM, 0);
  const wall =
    length * wallHeight * assume('crawlWallLeakageM2PerM2', sealed ? usual.sealedWall : usual.asBuiltWall);
  const sill = length * assume('sillLeakageM2PerM', sealed ? usual.sealedSill : usual.asBuiltSill);
  const known = wall + sill + total(doorsAndGaps);
  const shut = shutVentsM2(facts, assumer);
  const lacking = Math.max(0, houseM2 - known - shut);
  let unseen = 0;
  if (!sealed && lacking > 0) {
    unseen = assume('unseenCrawlLeakageM2', {
      value: lacking,
      low: 0,
      high: lacking + houseM2,
      why: 'The crawl space was not tested; its known leaks are fewer than those of the house above, and tested crawl spaces with closed vents were leakier than the house, so leaks that were not seen are added at the rim.',
      source: airflowSources.tennesseeFanDoor,
    });
  }
  const rim = sill + unseen;
  const heightM = wall + rim > 0 ? (wall * Math.max(0, h - wallHeight / 2) + rim * h) / (wall + rim) : h;
  return {
    leaks: [...vents, ...doorsAndGaps, ...spread('crawl wall and rim', wall + rim, heightM, faces)],
    ventsShutM2: known + unseen + shut,
  };
}
