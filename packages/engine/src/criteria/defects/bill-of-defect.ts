import type { BillRule } from './bill-rule.ts';
import type { Defect } from './defect.ts';
import {
  type ClaimedDefect,
  claimedExtents,
  type DefectEvidence,
  measuredExtents,
} from './evidence-of-defects.ts';

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

const DIMENSION = { m: 'm', m2: 'm²', m3: 'm³' } as const;

const sum = (values: readonly number[]) => values.reduce((total, one) => total + one, 0);

/** What the drawing says of the extent of a defect, added up; undefined where it says nothing. */
function drawnOf({ key }: Defect, { drawn = [] }: DefectEvidence): number | undefined {
  const amounts = drawn.filter((one) => one.defect === key).map(({ amount }) => amount);
  return amounts.length === 0 ? undefined : sum(amounts);
}

function byExtent(
  defect: Defect,
  rule: Extract<BillRule, { by: 'extent' }>,
  evidence: DefectEvidence,
  claims: readonly ClaimedDefect[],
): BillQuantity {
  const extent = evidence.extents[rule.of];
  const words = EXTENT_WORDS[rule.of];
  const unit = rule.unit;
  const drawn = drawnOf(defect, evidence);
  if (drawn !== undefined) {
    return { value: drawn, unit, from: `as drawn, of ${words}`, assumed: false };
  }
  if (rule.of === 'bareEarthM2' && extent > 0) return { value: extent, unit, from: words, assumed: false };
  // Claims of different places add up, to the whole at most.
  const taped = measuredExtents(defect, evidence, claims, DIMENSION[unit]);
  if (taped.length > 0) {
    const value = extent > 0 ? Math.min(extent, sum(taped)) : sum(taped);
    return { value, unit, from: 'as measured', assumed: false };
  }
  const shares = measuredExtents(defect, evidence, claims, 'fraction');
  const whole = rule.of === 'bareEarthM2' ? evidence.extents.floorM2 : extent;
  if (shares.length > 0 && whole > 0) {
    const value = whole * Math.min(1, sum(shares));
    const of = rule.of === 'bareEarthM2' ? EXTENT_WORDS.floorM2 : words;
    return { value, unit, from: `${of} x measured share`, assumed: false };
  }
  if (extent === 0) return { unit, from: `the plan has no ${words}; draw it`, assumed: false };
  return { value: extent, range: [0, extent], unit, from: `${words}; no share was measured`, assumed: true };
}

function byItems(
  defect: Defect,
  of: Extract<BillRule, { by: 'items' }>['of'],
  evidence: DefectEvidence,
  claims: readonly ClaimedDefect[],
  items: { readonly failing: number; readonly seen: number },
): BillQuantity {
  const all = evidence.extents[of];
  const counted = drawnOf(defect, evidence) ?? sum(claimedExtents(claims, 'count'));
  const claimed = items.failing === 0 && counted === 0 ? claims.length : counted;
  const found = Math.max(items.failing, claimed);
  if (all === 0) {
    const from = `${found} claimed; the plan has no ${of}, draw them`;
    return { ...(found === 0 ? {} : { value: found }), unit: 'each', from, assumed: found > 0 };
  }
  const least = Math.min(all, found);
  const most = Math.max(least, all - Math.max(0, items.seen - items.failing));
  return {
    value: least,
    ...(most > least ? { range: [least, most] as const } : {}),
    unit: 'each',
    from: `${least} of ${all} shown to fail${most > least ? `, ${most - least} not looked at` : ''}`,
    assumed: false,
  };
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
  if (bill.by === 'extent') return byExtent(defect, bill, evidence, claims);
  if (bill.by === 'items') return byItems(defect, bill.of, evidence, claims, items);
  const drawn = drawnOf(defect, evidence);
  if (drawn !== undefined) return { value: drawn, unit: bill.unit, from: 'as drawn', assumed: false };
  const values = measuredExtents(defect, evidence, claims, DIMENSION[bill.unit]);
  if (values.length === 0) return { unit: bill.unit, from: 'its extent was not measured', assumed: false };
  return { value: sum(values), unit: bill.unit, from: 'as measured', assumed: false };
}
