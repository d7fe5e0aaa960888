import { causes } from '@undercroft/engine';
import type { CauseShare, NextMeasurementShown } from './causes-assessment.ts';

/** More would be a list and not an advice. */
const MOST = 6;

/** A cause, or what is not listed, with its share. */
export function shareOf(key: causes.CauseKey | 'unlisted', weight: number): CauseShare {
  const title = key === 'unlisted' ? 'Something else' : causes.causeNode(key).title;
  return { key, title, weight: Math.min(1, weight) };
}

/**
 * The measurements that would tell the explanations apart best, of those that nobody has taken.
 * @param has what the space has or may have
 */
export function nextMeasurements(
  chain: causes.CauseChain,
  taken: ReadonlySet<string>,
  has: ReadonlySet<causes.SignNeed>,
): NextMeasurementShown[] {
  const open = causes.causeSigns.filter(
    (sign) => !taken.has(sign.key) && (sign.needs === undefined || has.has(sign.needs)),
  );
  return causes
    .whatToMeasureNext(chain, open)
    .slice(0, MOST)
    .map(({ sign, gainBits, effect, outcomes }) => ({
      key: sign.key,
      title: sign.title,
      ...(sign.quantity === undefined ? {} : { quantity: sign.quantity }),
      unit: causes.signUnit(sign),
      how: sign.how,
      tool: sign.tool,
      minutes: sign.minutes,
      ...(sign.waitDays === undefined ? {} : { waitDays: sign.waitDays }),
      reason: sign.reason,
      gainBits,
      about: effect,
      outcomes: outcomes.map(({ outcome, chance, leads, weight }) => ({
        ...outcome,
        chance: Math.min(1, chance),
        leads: shareOf(leads, weight),
      })),
    }));
}
