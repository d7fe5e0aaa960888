import type { Point } from '../geometry/point.ts';
import type { HeightSample } from '../plan/clear-height.ts';
import type { PierInput } from '../plan/floor-areas.ts';

/**
 * What stands in a crawl space as far as it hides things from a camera, in plan coordinates [m]. The floor is taken as
 * flat: heights are over the floor at their own place.
 */
export interface CoverageScene {
  /** Corners of the outside walls, either way round. Wall i runs from corner i to the next. */
  readonly outline: readonly Point[];
  readonly interiorWalls?: readonly SceneWall[];
  readonly piers?: readonly ScenePier[];
  readonly obstacles?: readonly SceneObstacle[];
  readonly ducts?: readonly SceneDuct[];
  readonly girders?: readonly SceneGirder[];
  readonly vents?: readonly SceneVent[];
  readonly bays?: readonly JoistBay[];
  /** Clear heights taken here and there; where the joists come down to the ground nothing is seen or passed. */
  readonly clearHeights?: readonly HeightSample[];
  /** Other things that an unseen place may hold: debris, machines, wet ground. They hide nothing. */
  readonly things?: readonly SceneThing[];
}

/** A wall inside the space, from floor to joists; an opening is a gap in it. */
export interface SceneWall {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  /** 0 by default [m]. */
  readonly thicknessM?: number;
  /** `offsetM` from the wall's start to the opening's near side; without a height the opening has no lintel. */
  readonly openings?: readonly {
    readonly offsetM: number;
    readonly widthM: number;
    readonly heightM?: number;
  }[];
}

/** A pier, from floor to girder. Faces 0 to 3: before it is turned, toward −y, +x, +y and −x. */
export interface ScenePier extends PierInput {
  readonly id: string;
}

/** Something that stands on the floor. Without a height it is taken to reach the joists. */
export interface SceneObstacle {
  readonly id: string;
  readonly outline: readonly Point[];
  readonly heightM?: number;
}

/**
 * A duct or pipe that hangs or lies across the space. Without a clearance it is taken to lie on the floor, without a
 * height of its own to reach the joists, because nobody has shown that one can look past it.
 */
export interface SceneDuct {
  readonly id: string;
  readonly path: readonly Point[];
  readonly widthM: number;
  readonly heightM?: number;
  /** Underside over the floor [m]. */
  readonly clearanceM?: number;
}

/** A girder under the joists. Without a clearance it is taken to hide nothing. */
export interface SceneGirder {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  readonly widthM: number;
  /** Underside over the floor [m]. */
  readonly clearanceM?: number;
}

/** A vent in an outside wall. */
export interface SceneVent {
  readonly id: string;
  /** Index of its wall in the outline. */
  readonly edge: number;
  /** From the wall's first corner to the vent's near side [m]. */
  readonly offsetM: number;
  readonly widthM: number;
  /** Its middle over the floor [m]; at the lamp's height by default. */
  readonly middleM?: number;
}

/** The space between two joists, by its center line. */
export interface JoistBay {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  /** Clear width between the joists [m]. */
  readonly widthM: number;
  /** Depth of the joists [m]. */
  readonly depthM: number;
  /** Underside of the joists over the floor [m]. */
  readonly undersideM: number;
}

/** Something worth naming when nobody saw the place where it lies: a place, or an outline. */
export interface SceneThing {
  readonly id: string;
  /** What it is, in one word of the caller: `debris`, `equipment`, `zone`. */
  readonly kind: string;
  readonly at?: Point;
  readonly outline?: readonly Point[];
}

/** A place from which a picture was or will be taken. */
export interface Station {
  readonly id: string;
  readonly at: Point;
  /** Middle of the picture, degrees clockwise from the plan's +y axis. Of no account at a full turn. */
  readonly bearingDeg: number;
  /** Horizontal angle that the picture takes in, degrees, more than 0 up to 360. */
  readonly fieldOfViewDeg: number;
  /** How far the lamp shows detail [m], more than 0. */
  readonly rangeM: number;
  /** Lamp and camera over the floor [m]; `USUAL_VIEW.heightM` by default. */
  readonly heightM?: number;
}

/**
 * What is assumed of a picture when nobody wrote it down. Common practice, no source: a phone held on its side at its
 * main lens takes in some 65°, a head lamp shows seams and cracks to about 4 m, and someone lying on an elbow holds
 * both about 0.3 m over the floor (0.25 to 0.4 m).
 */
export const USUAL_VIEW = { fieldOfViewDeg: 65, rangeM: 4, heightM: 0.3 } as const;
