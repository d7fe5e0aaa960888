import { findQuantity } from '../quantities.ts';
import type { BillRule } from './bill-rule.ts';
import type { Defect } from './defect.ts';
import type { ClaimedDefect, DefectEvidence } from './evidence-of-defects.ts';

/** How much of a remedy there is to do. */
export interface BillQuantity {
  /** In `unit`; undefined where nothing was measured that it could follow from. */
  readonly value?: number;
  /** Least and most, where part of it was not looked at. */
  readonly range?: readonly [number, number];
  readonly unit: BillRule['unit'];
  /** How it follows from the plan, one sentence. */
  readonly from: string;
  /** True where the whole extent stands for a share that nobody measured. */
  readonly assumed: boolean;
}

const EXTENT_WORDS = {
  floorM2: 'floor area',
  bareEarthM2: 'bare area of the plan',
  perimeterM: 'perimeter',
  seamM: 'length of the seams',
  drainM: 'length of the drains',
  ductM: 'length of the ducts',
  doorFrameM: 'frames of the access doors',
  girderM: 'length of the girders',
} as const;

const DIMENSION = { m: 'm', m2: 'm²', m3: undefined } as const;

function sharesOf(claims: readonly ClaimedDefect[]): number[] {
  return claims.flatMap(({ measured }) =>
    measured !== undefined &&
    typeof measured.value === 'number' &&
    measured.value >= 0 &&
    measured.value <= 1 &&
    findQuantity(measured.quantity)?.unit === 'fraction'
      ? [measured.value]
      : [],
  );
}

function byExtent(
  rule: Extract<BillRule, { by: 'extent' }>,
  { extents }: DefectEvidence,
  claims: readonly ClaimedDefect[],
): BillQuantity {
  const extent = extents[rule.of];
  const words = EXTENT_WORDS[rule.of];
  const shares = sharesOf(claims);
  if (rule.of === 'bareEarthM2') {
    return { value: extent, unit: rule.unit, from: `${words}`, assumed: false };
  }
  if (shares.length === 0) {
    return {
      value: extent,
      range: [0, extent],
      unit: rule.unit,
      from: `${words}; no share was measured`,
      assumed: true,
    };
  }
  // Claims of different places add up, to the whole at most.
  const share = Math.min(
    1,
    shares.reduce((sum, one) => sum + one, 0),
  );
  return { value: extent * share, unit: rule.unit, from: `${words} x measured share`, assumed: false };
}

/**
 * The quantity to bill for mending a defect. It follows from the plan and what was measured, never from a typed figure.
 * @param items items of the plan that failed, and those that were looked at
 */
export function billOfDefect(
  defect: Defect,
  evidence: DefectEvidence,
  claims: readonly ClaimedDefect[],
  items: { readonly failing: number; readonly seen: number },
): BillQuantity {
  const { bill } = defect;
  if (bill.by === 'nothing') return { value: 0, unit: bill.unit, from: 'nothing to mend', assumed: false };
  if (bill.by === 'once') return { value: 1, unit: bill.unit, from: 'one of it', assumed: false };
  if (bill.by === 'extent') return byExtent(bill, evidence, claims);
  if (bill.by === 'items') {
    const all = evidence.extents[bill.of];
    const claimed = items.failing === 0 ? Math.min(claims.length, all) : 0;
    const least = Math.min(all, Math.max(items.failing, claimed));
    const most = Math.max(least, all - (items.seen - items.failing));
    return {
      value: least,
      ...(most > least ? { range: [least, most] as const } : {}),
      unit: bill.unit,
      from: `${least} of ${all} shown to fail${most > least ? `, ${most - least} not looked at` : ''}`,
      assumed: false,
    };
  }
  const unit = DIMENSION[bill.unit];
  const values = claims.flatMap(({ measured }) =>
    measured !== undefined &&
    typeof measured.value === 'number' &&
    unit !== undefined &&
    findQuantity(measured.quantity)?.unit === unit
      ? [measured.value]
      : [],
  );
  if (values.length === 0) return { unit: bill.unit, from: 'its extent was not measured', assumed: false };
  const total = values.reduce((sum, one) => sum + one, 0);
  return { value: total, unit: bill.unit, from: 'as measured', assumed: false };
}
