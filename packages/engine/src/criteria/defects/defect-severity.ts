import { findQuantity } from '../quantities.ts';
import type { Aggravation, Defect, Severity } from './defect.ts';
import type { ClaimedDefect, DefectEvidence } from './evidence-of-defects.ts';

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
/** Fewer items than this say nothing about how widespread a fault is. */
const ENOUGH_ITEMS = 4;

const percent = (share: number) => `${Math.round(share * 100)} %`;

function largestMeasured({ samples }: DefectEvidence, quantity: string): number | undefined {
  const values = samples.flatMap((s) =>
    s.quantity === quantity && s.assumed !== true && typeof s.value === 'number' ? [s.value] : [],
  );
  return values.length === 0 ? undefined : Math.max(...values);
}

function shareOf(claims: readonly ClaimedDefect[]): number | undefined {
  const shares = claims.flatMap(({ measured }) =>
    measured !== undefined &&
    typeof measured.value === 'number' &&
    findQuantity(measured.quantity)?.unit === 'fraction'
      ? [measured.value]
      : [],
  );
  return shares.length === 0 ? undefined : Math.max(...shares);
}

function aggravation(
  kind: Aggravation,
  evidence: DefectEvidence,
  claims: readonly ClaimedDefect[],
  items: { readonly failing: number; readonly seen: number },
): string | undefined {
  if (kind === 'wet-wood') {
    const wettest = largestMeasured(evidence, 'woodMoistureContent') ?? 0;
    return wettest >= WET_WOOD ? `wood was measured at ${percent(wettest)}` : undefined;
  }
  if (kind === 'standing-water') {
    return (largestMeasured(evidence, 'standingWaterDepthM') ?? 0) > 0
      ? 'water was measured standing'
      : undefined;
  }
  const share = items.seen >= ENOUGH_ITEMS ? items.failing / items.seen : shareOf(claims);
  return share !== undefined && share > WIDESPREAD
    ? `${percent(share)} of what was looked at has it`
    : undefined;
}

/**
 * The grade of a defect: that of the catalogue, one step more where something that was measured makes it worse, 4 at most.
 * What nobody measured never raises it.
 */
export function gradeDefect(
  defect: Defect,
  evidence: DefectEvidence,
  claims: readonly ClaimedDefect[],
  items: { readonly failing: number; readonly seen: number },
): GradedDefect {
  const because = [defect.gradedBecause];
  if (defect.severity === 0) return { severity: 0, because };
  const { heavyAbove } = defect;
  const reasons = defect.aggravatedBy.flatMap((kind) => aggravation(kind, evidence, claims, items) ?? []);
  if (heavyAbove !== undefined) {
    const claimed = claims.flatMap(({ measured }) =>
      measured?.quantity === heavyAbove.quantity && typeof measured.value === 'number'
        ? [measured.value]
        : [],
    );
    const largest = Math.max(largestMeasured(evidence, heavyAbove.quantity) ?? 0, ...claimed);
    if (largest > heavyAbove.value) reasons.push(heavyAbove.because);
  }
  const raised = reasons.length > 0 && defect.severity < 4;
  return {
    severity: (raised ? defect.severity + 1 : defect.severity) as Severity,
    because: raised ? [...because, ...reasons] : because,
  };
}
