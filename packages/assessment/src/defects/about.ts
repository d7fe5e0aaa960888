import type { criteria } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';
import type { Origin } from '../origin.ts';
import type { PlanItem } from './place-of-item.ts';

/** A finding within this distance of an item is about it [m]. */
const NEAR_M = 1.5;

/** What is said of a defect besides the drawing: which items, where, how far. */
export interface About {
  /** The first finding or sample that says so. */
  readonly origin: Origin;
  /** Extents that findings measured, added up; absent where none did. */
  readonly lengthM?: number;
  readonly areaM2?: number;
  readonly share?: number;
  /** Of some items those that are meant: named, else the ones near a finding, else as many as were counted, else all. */
  readonly meant: (ids: readonly string[]) => ReadonlySet<string>;
  /** The item nearest to where a finding was made; the first where none has a place. */
  readonly nearest: (ids: readonly string[]) => string | undefined;
}

const distanceM = (a: Point, b: Point) => Math.hypot(a.xM - b.xM, a.yM - b.yM);

function extent(findings: SurveyedJob['findings'], name: string): number | undefined {
  const values = findings.flatMap(({ measured }) =>
    measured?.quantity === name && typeof measured.value === 'number' ? [measured.value] : [],
  );
  return values.length === 0 ? undefined : values.reduce((sum, one) => sum + one, 0);
}

/** Gathers what is said of a defect that was shown or claimed. */
export function aboutDefect(
  found: criteria.DetectedDefect,
  job: SurveyedJob,
  items: ReadonlyMap<string, PlanItem>,
  origin: Origin,
): About {
  const findings = job.findings.filter((f) => found.claims.includes(f.id));
  const named = new Set([...found.items, ...findings.flatMap((f) => f.place.on?.id ?? [])]);
  const points = findings.flatMap((f) => f.place.at ?? []);
  const away = (id: string, from: Point) => {
    const at = items.get(id)?.at;
    return at === undefined ? Number.POSITIVE_INFINITY : distanceM(at, from);
  };
  const lengthM = extent(findings, 'lengthM');
  const areaM2 = extent(findings, 'areaM2');
  const share = extent(findings, 'share');
  const count = extent(findings, 'count');
  return {
    origin,
    ...(lengthM === undefined ? {} : { lengthM }),
    ...(areaM2 === undefined ? {} : { areaM2 }),
    ...(share === undefined ? {} : { share: Math.min(1, share) }),
    meant: (ids) => {
      const direct = ids.filter((id) => named.has(id));
      if (direct.length > 0) return new Set(direct);
      const near = ids.filter((id) => points.some((p) => away(id, p) <= NEAR_M));
      // What was named or counted is meant, and no more.
      if (near.length > 0 || named.size > 0) return new Set(near);
      return new Set(count === undefined ? ids : ids.slice(0, Math.round(count)));
    },
    nearest: (ids) => {
      const [first] = points;
      if (first === undefined) return ids.find((id) => named.has(id)) ?? ids[0];
      return ids.reduce<string | undefined>(
        (best, id) => (best === undefined || away(id, first) < away(best, first) ? id : best),
        undefined,
      );
    },
  };
}
