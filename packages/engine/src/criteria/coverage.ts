import type { Evidence } from './evidence.ts';
import type { Finding } from './judgement.ts';
import type { QuantityKey } from './quantities.ts';

/**
 * Ids of the items that each need a sample of a quantity, e.g. every pier of the plan for `pierWrapHeightM`. A quantity
 * that is not named needs no more samples than its criterion says.
 */
export type ItemsToCover = { readonly [K in QuantityKey]?: readonly string[] };

const NAMED = 5;

/**
 * Takes back a finding of `met` while items stand unseen: one wrapped pier does not speak for eleven others. A number
 * covers the item that it was measured at; an answer without an item speaks for all of them.
 */
export function withCoverage(
  finding: Finding,
  measured: readonly Evidence[],
  items: readonly string[] | undefined,
): Finding {
  if (finding.verdict !== 'met' || !items || items.length === 0) return finding;
  const covered = new Set<string>();
  for (const { item, value } of measured) {
    if (item !== undefined) covered.add(item);
    else if (typeof value === 'boolean') return finding;
  }
  const unseen = [...new Set(items)].filter((item) => !covered.has(item)).sort();
  if (unseen.length === 0) return finding;
  const more = unseen.length > NAMED ? ` and ${unseen.length - NAMED} more` : '';
  return {
    ...finding,
    verdict: 'not-shown',
    reason: `${finding.reason} Not looked at yet: ${unseen.slice(0, NAMED).join(', ')}${more}.`,
  };
}
