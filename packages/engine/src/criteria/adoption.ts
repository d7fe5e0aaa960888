import { criteria } from './catalogue.ts';
import type { Criterion, CriterionSource } from './criterion.ts';
import { criteriaOf } from './criterion-row.ts';
import type { CriteriaIssue } from './issue.ts';
import type { Overlay, OverlayChange } from './overlay.ts';
import { overlayProblem } from './overlay-problem.ts';

/** What an overlay did to one row, kept so that a reader can see what held before and why it changed. */
export interface Amendment {
  readonly overlayId: string;
  readonly place: string;
  readonly criterionId: string;
  readonly change: OverlayChange['change'];
  /** The row before; absent where it was added. */
  readonly before?: Criterion;
  /** The row after; absent where it was struck out. */
  readonly after?: Criterion;
  readonly why: string;
  readonly source: CriterionSource;
}

/** Criteria that hold in a place, and how they came about. */
export interface Catalogue {
  readonly criteria: readonly Criterion[];
  /** In the order in which they were made. */
  readonly amendments: readonly Amendment[];
  /** Changes that were refused. */
  readonly issues: readonly CriteriaIssue[];
}

/** The built-in criteria without any amendment. */
export const baseCatalogue: Catalogue = { criteria, amendments: [], issues: [] };

function after(change: OverlayChange, before: Criterion | undefined): Criterion | undefined {
  if (change.change === 'add') return criteriaOf(change.subject, [change.row])[0];
  if (change.change === 'strike-out' || !before) return undefined;
  const { limit, ...rest } = { ...before, ...change.fields };
  const answered = rest.comparison === 'yes' || rest.comparison === 'no';
  return { ...rest, ...(answered || !limit ? {} : { limit }), source: change.source };
}

/**
 * Lays overlays over a catalogue, in their order. What each changed is kept in `amendments`. A change that cannot be
 * made (unknown or taken id, unregistered quantity, limit that does not fit, an own standard that would change a code
 * or standard row) is left out and listed in `issues`; the others are made.
 */
export function adopt(catalogue: Catalogue, overlays: readonly Overlay[]): Catalogue {
  const rows = new Map(catalogue.criteria.map((criterion) => [criterion.id, criterion]));
  const amendments: Amendment[] = [...catalogue.amendments];
  const issues: CriteriaIssue[] = [...catalogue.issues];
  for (const overlay of overlays) {
    overlay.changes.forEach((change, index) => {
      const criterionId = change.change === 'add' ? change.row.id : change.criterionId;
      const before = rows.get(criterionId);
      const problem = overlayProblem(overlay, change, before);
      if (problem) {
        issues.push({ ...problem, path: `overlay ${overlay.id}, change ${index + 1}, ${problem.path}` });
        return;
      }
      const now = after(change, before);
      if (now) rows.set(criterionId, now);
      else rows.delete(criterionId);
      amendments.push({
        overlayId: overlay.id,
        place: overlay.place,
        criterionId,
        change: change.change,
        ...(before ? { before } : {}),
        ...(now ? { after: now } : {}),
        why: change.why,
        source: change.change === 'add' ? change.row.source : change.source,
      });
    });
  }
  return { criteria: [...rows.values()], amendments, issues };
}
