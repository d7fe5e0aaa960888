import type { Aggravation, Defect, Severity } from './defect.ts';
import { type ClaimedDefect, claimedExtents, type DefectEvidence } from './evidence-of-defects.ts';
import { lookAt, type SortedJob } from './look-at-proof.ts';
import type { DefectRules } from './proof.ts';

/** How grave a defect is here, and why. */
export interface GradedDefect {
  readonly severity: Severity;
  /** The grade of the catalogue first, then what raised it. */
  readonly because: readonly string[];
}

/** From this moisture on wood counts as wet (Wood Handbook FPL-GTR-282 ch. 14: decay needs more than about 20 %). */
const WET_WOOD = 0.2;
/** A fault on more than this share of its length or count is widespread (common practice, no source). */
const WIDESPREAD = 0.25;
/** How wide a fault goes makes it defeat the system; it does not by itself put life or structure in danger. */
const WIDE_REACHES = 3;
/** A share of fewer items than this says nothing about how widespread a fault is. */
const ENOUGH_ITEMS = 4;

const percent = (share: number) => `${Math.round(share * 100)} %`;

/** The largest value that is sure: measured, less its doubt. */
function surelyReached({ sorted }: SortedJob, quantity: string): number {
  return sorted(quantity).measured.reduce(
    (most, { value, uncertainty = 0 }) =>
      typeof value === 'number' ? Math.max(most, value - uncertainty) : most,
    Number.NEGATIVE_INFINITY,
  );
}

/**
 * Share of the length, area or count that has the fault, of what the plan holds: what nobody looked at counts as sound, so
 * that a missing look never makes the share larger. Undefined where the plan does not say how much there is.
 * @param failing number of items that were shown to have it
 */
export function shareOfFault(
  { key, bill }: Defect,
  evidence: Pick<DefectEvidence, 'extents' | 'drawn'>,
  claims: readonly ClaimedDefect[],
  failing: number,
): number | undefined {
  const shares = [...claimedExtents(claims, 'fraction')];
  for (const { defect, amount, whole } of evidence.drawn ?? []) {
    if (defect === key && whole !== undefined && whole > 0) shares.push(amount / whole);
  }
  if (bill.by === 'items' && evidence.extents[bill.of] >= ENOUGH_ITEMS) {
    shares.push(failing / evidence.extents[bill.of]);
  }
  return shares.length === 0 ? undefined : Math.min(1, Math.max(...shares));
}

function aggravation(kind: Aggravation, job: SortedJob, share: number | undefined): string | undefined {
  if (kind === 'wet-wood') {
    const wettest = surelyReached(job, 'woodMoistureContent');
    return wettest >= WET_WOOD ? `wood was measured at ${percent(wettest)} or more` : undefined;
  }
  if (kind === 'standing-water') {
    const stands = surelyReached(job, 'standingWaterDepthM') > 0 || job.evidence.facts.standingWater === true;
    return stands ? 'water was seen standing' : undefined;
  }
  return share !== undefined && share > WIDESPREAD ? `${percent(share)} of it has the fault` : undefined;
}

/**
 * The grade of a defect: that of the catalogue or the higher one that its rules name for what was shown, and one step more
 * where wood is wet, water stands or, up to 3, the fault is widespread; 4 at most. What nobody measured never raises it.
 * @param share of length, area or count that has the fault; see `shareOfFault`
 */
export function gradeDefect(
  defect: Defect,
  rules: DefectRules,
  job: SortedJob,
  share: number | undefined,
): GradedDefect {
  const because = [defect.gradedBecause];
  if (defect.severity === 0) return { severity: 0, because };
  let severity: Severity = defect.severity;
  let byShare = false;
  for (const worse of rules.worse ?? []) {
    if (worse.severity <= severity) continue;
    const holds =
      'shareAbove' in worse.when
        ? share !== undefined && share > worse.when.shareAbove
        : lookAt(worse.when, job).outcome === 'shows';
    if (!holds) continue;
    severity = worse.severity;
    because.push(worse.because);
    byShare ||= 'shareAbove' in worse.when;
  }
  const spreads = !byShare && severity < WIDE_REACHES;
  const kinds = defect.aggravatedBy.filter((kind) => kind !== 'widespread' || spreads);
  const reasons = kinds.flatMap((kind) => aggravation(kind, job, share) ?? []);
  if (reasons.length === 0 || severity >= 4) return { severity, because };
  return { severity: (severity + 1) as Severity, because: [...because, ...reasons] };
}
