import type { plan } from '@undercroft/engine';
import type { Job, Outline, Point } from '@undercroft/record';
import type { Storage } from '../../../storage/storage.ts';
import { cornersWalked, type Leg, legsOf, outlineOfLegs } from './tape.ts';

/** Walls that are being drawn and are not closed yet. Kept on the disk with each wall. */
export type OutlineDraft =
  | {
      readonly by: 'tape' | 'rectangle';
      readonly legs: readonly Leg[];
      readonly adjustment: plan.AdjustmentRule;
    }
  | { readonly by: 'grid'; readonly corners: readonly Corner[] };

export interface Corner {
  readonly id: string;
  readonly at: Point;
}

export const EMPTY_DRAFTS = {
  tape: { by: 'tape', legs: [], adjustment: 'transit' },
  rectangle: { by: 'rectangle', legs: [], adjustment: 'transit' },
  grid: { by: 'grid', corners: [] },
} as const satisfies Readonly<Record<OutlineDraft['by'], OutlineDraft>>;

const keyOf = (jobId: string) => `${jobId}/outline`;

/** The walls that were being drawn when the page was left; null where none were. */
export async function readOutlineDraft(storage: Storage, jobId: string): Promise<OutlineDraft | null> {
  try {
    const text = await storage.draft(keyOf(jobId));
    return text === undefined ? null : (JSON.parse(text) as OutlineDraft);
  } catch {
    // A draft that cannot be read is lost; the record is not.
    return null;
  }
}

/** Keeps the walls as they are being drawn, or forgets them. */
export function keepOutlineDraft(storage: Storage, jobId: string, draft: OutlineDraft | null): Promise<void> {
  return storage.putDraft(keyOf(jobId), draft === null ? null : JSON.stringify(draft));
}

/** The walls of the record, to be changed. */
export function draftOf(outline: Outline): OutlineDraft {
  return outline.kind === 'traverse'
    ? { by: 'tape', legs: legsOf(outline), adjustment: outline.adjustment }
    : { by: 'grid', corners: outline.corners };
}

/** The corners drawn so far, in their order, the last one not yet joined to the first. */
export function cornersOf(draft: OutlineDraft): readonly Point[] {
  return draft.by === 'grid' ? draft.corners.map(({ at }) => at) : cornersWalked(draft.legs);
}

/** Whether anything of the walls is drawn yet. */
export const hasWalls = (draft: OutlineDraft): boolean =>
  draft.by === 'grid' ? draft.corners.length > 0 : draft.legs.length > 0;

/** The outline that the record would hold; null of fewer than three walls. */
export function outlineOf(draft: OutlineDraft): Outline | null {
  if (draft.by === 'grid') {
    return draft.corners.length < 3 ? null : { kind: 'corners', corners: [...draft.corners] };
  }
  return draft.legs.length < 3 ? null : outlineOfLegs(draft.legs, draft.adjustment);
}

/** Things of the job that hang on a wall which an outline no longer has. */
export function orphansOf(job: Job, outline: Outline): number {
  const walls = new Set((outline.kind === 'traverse' ? outline.legs : outline.corners).map(({ id }) => id));
  const { vents, doors, walls: facts } = job.plan;
  const hung = [...vents, ...facts, ...doors.filter((door) => door.kind === 'wall')];
  return hung.filter(({ wallId }) => wallId === undefined || !walls.has(wallId)).length;
}
