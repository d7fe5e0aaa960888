import type { Notice } from '@undercroft/engine';
import type { Point } from '@undercroft/record';

/** A photo or clip that shows part of the space. */
export interface PictureShown {
  /** Id of the photo or clip in the record. */
  readonly id: string;
  readonly kind: 'photo' | 'clip';
  /** From 1, in the order in which they were taken. */
  readonly number: number;
  readonly takenAt: string;
  readonly who: string;
  /** Where it was taken; of a clip, where it begins. */
  readonly at: Point;
  /** Middle of the picture [degrees clockwise from the plan's y axis]; of a clip, as it begins. */
  readonly bearingDeg: number;
  readonly fieldOfViewDeg: number;
  readonly rangeM: number;
  /** Which of these nobody noted. */
  readonly assumed: readonly ('fieldOfViewDeg' | 'rangeM')[];
  /** Floor that it shows [m²]. */
  readonly floorM2: number;
  /** Floor that no picture before it showed [m²]. */
  readonly newM2: number;
  /** Walls, piers, vents and bays of which it shows something, each once. */
  readonly shows: readonly SeenThing[];
  readonly caption?: string;
}

/** A thing of the plan, for a pier with the faces. */
export interface SeenThing {
  readonly kind: 'wall' | 'interior-wall' | 'pier' | 'vent' | 'bay';
  readonly id: string;
  /** Of a pier, the faces 0 to 3: before it is turned, toward −y, +x, +y and −x of the plan. */
  readonly faces?: readonly number[];
}

/** A photo or clip that shows nothing for certain. */
export interface PictureUnplaced {
  readonly id: string;
  readonly kind: 'photo' | 'clip';
  /** One plain sentence. */
  readonly why: string;
}

/** Something of the plan that stands where nobody looked. */
export interface HiddenItem {
  /** Kind as in the record: `obstacle`, `zone`, `equipment`, `finding`, `pier`, ... */
  readonly kind: string;
  readonly id: string;
  readonly name: string;
}

/** How far a place is from a wall, by tape. */
export interface FromWall {
  readonly wallId: string;
  /** For people: `north wall`. */
  readonly name: string;
  readonly distanceM: number;
}

/** A part of the floor that no picture shows. */
export interface UnseenPart {
  readonly areaM2: number;
  /** A place in it. */
  readonly at: Point;
  /** Where that place is by tape: the two nearest walls that do not run alike. */
  readonly fromWalls: readonly FromWall[];
  /** Outer rings counter-clockwise, holes clockwise. */
  readonly rings: readonly (readonly Point[])[];
  /** What is drawn there, in the order of weight: obstacles, zones, findings, machines, the rest. */
  readonly standsIn: readonly HiddenItem[];
  /** What the floor is made of there, as drawn. */
  readonly covers: readonly string[];
}

/** How much of a wall, vent or bay is shown. */
export interface LineShown {
  readonly id: string;
  /** For people: `north wall`, `vent 2`. */
  readonly name: string;
  /** Length that anybody could see [m]. */
  readonly openM: number;
  /** Share of it, 0..1; absent where nothing of it is open. */
  readonly share?: number;
  /** Stretches that no picture shows, from its start [m]. */
  readonly unseen: readonly { readonly fromM: number; readonly toM: number }[];
  /** Ids of the pictures that show some of it. */
  readonly pictures: readonly string[];
}

/** An interior wall has two sides. */
export interface InteriorWallShown extends LineShown {
  readonly side: 'left' | 'right';
}

/** One face of a pier. */
export interface PierFaceShown {
  readonly face: 0 | 1 | 2 | 3;
  /** Where it looks [degrees clockwise from true north]. */
  readonly facingDeg: number;
  /** Share of its width, 0..1; absent where it stands flush against something. */
  readonly share?: number;
  readonly pictures: readonly string[];
}

export interface PierShown {
  readonly id: string;
  /** For people: `pier 3`, by its place in the plan. */
  readonly name: string;
  readonly at: Point;
  readonly faces: readonly PierFaceShown[];
  /** Faces that are shown enough, of those that anybody could see. */
  readonly facesShown: number;
  readonly facesOpen: number;
}

/** Something that a claim is about and that its pictures do not show enough of. */
export interface MissingPart {
  readonly kind: 'floor' | 'wall' | 'interior-wall' | 'pier' | 'vent' | 'bay' | 'place';
  readonly id?: string;
  /** For people; absent for the floor and for a place. */
  readonly name?: string;
  readonly face?: number;
  /** Of a pier face [degrees clockwise from true north]. */
  readonly facingDeg?: number;
  readonly side?: 'left' | 'right';
  /** Share that is shown, 0..1. */
  readonly share: number;
  /** A place to look at. */
  readonly at?: Point;
}

/** Whether the pictures show what a finding or a claim of "done" is about. */
export interface ProofShown {
  /** Id of the item in the record. */
  readonly id: string;
  readonly of: 'finding' | 'acceptance' | 'build-step';
  readonly title: string;
  readonly who?: string;
  readonly when?: string;
  /**
   * `proved`: enough of every part is shown. `partly`: some of it. `no-picture`: nothing of it. `unplaced`: nothing says
   * where to look. That a picture shows it does not say that it is right: someone looks.
   */
  readonly verdict: 'proved' | 'partly' | 'no-picture' | 'unplaced';
  /** Share of the whole that is shown, 0..1. */
  readonly share: number;
  readonly missing: readonly MissingPart[];
  /** Ids of the pictures that show some of it. */
  readonly pictures: readonly string[];
  /** True where its author named the pictures; only those count then. */
  readonly named: boolean;
  /** Pictures that show some of it and were not named. */
  readonly others: readonly string[];
  /** One or two plain sentences. */
  readonly says: string;
}

/** What the pictures of a job show of its space, and what they do not. */
export interface CoverageAssessment {
  readonly floor: {
    /** Floor that can be seen in principle [m²]: within the walls, off piers, walls and obstacles. */
    readonly areaM2: number;
    readonly seenM2: number;
    /** 0..1. */
    readonly share: number;
    /** How far `seenM2` may be off [m²]. */
    readonly errorM2: number;
    /** Floor under obstacles, which no picture shows [m²]; not part of `areaM2`. */
    readonly coveredM2: number;
    /** Unseen floor in parts too small to list [m²]. */
    readonly scatteredM2: number;
  };
  readonly pictures: readonly PictureShown[];
  readonly unplaced: readonly PictureUnplaced[];
  /** Largest first. */
  readonly unseen: readonly UnseenPart[];
  readonly walls: readonly LineShown[];
  readonly interiorWalls: readonly InteriorWallShown[];
  readonly piers: readonly PierShown[];
  readonly vents: readonly LineShown[];
  readonly bays: readonly LineShown[];
  readonly proofs: readonly ProofShown[];
  /** What an owner must know, weightiest first. Never a severity: what nobody looked at is not known to be bad. */
  readonly notices: readonly Notice[];
}
