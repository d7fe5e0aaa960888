import type { CauseArrow, CauseEvidenceShown, NextMeasurementShown } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { measureText, typeset } from '../../parts/measure.ts';
import type { Settings } from '../../settings/settings.ts';
import type { Say } from '../../text/texts.ts';
import type { chainTexts } from './chain-texts.ts';
import { nodeTitle } from './chain-titles.ts';
import { SIGN_SPANISH } from './sign-spanish.ts';

type Words = Say<typeof chainTexts.en>;

/** A share as whole percent. */
export const shareText = (share: number): string =>
  units.formatQuantity(share, 'relativeHumidity', 'us').replace(' ', '');

/** What was looked at, in the language that is set. What has no translation stays English. */
export function evidenceTitle(e: CauseEvidenceShown, say: Words, language: Settings['language']): string {
  if (e.basis === 'seen') return nodeTitle(e.explains, language);
  if (e.id.startsWith('balance-day:')) return say('balanceDay');
  if (e.id.startsWith('balance-month:')) return say('balanceMonth');
  const [sign = ''] = e.id.split(':');
  return language === 'es' ? (SIGN_SPANISH[sign]?.[0] ?? e.title) : e.title;
}

/** A number with no more digits than its doubt leaves. */
function valueText(value: number, unit: string, system: Settings['units']): string {
  if (unit !== 'fraction') return typeset(measureText(value, unit, system));
  const percents = 100 * value;
  return typeset(`${Number(Math.abs(percents) >= 1 ? percents.toPrecision(2) : percents.toFixed(2))}%`);
}

/** What it showed; nothing where the title says it all. */
export function evidenceValue(e: CauseEvidenceShown, say: Words, system: Settings['units']): string {
  if (e.basis === 'seen') return say(e.value === true ? 'wasFound' : 'wasNotFound');
  if (e.value === undefined) return '';
  if (typeof e.value === 'boolean') return say(e.value ? 'yes' : 'no');
  return valueText(e.value, e.unit ?? '', system);
}

/** How much it counts. */
export function timesText(e: CauseEvidenceShown, say: Words): string {
  const times = e.times < 3 ? e.times.toFixed(1) : e.times.toFixed(0);
  return say(e.says === 'for' ? 'likelier' : 'lessLikely', { times });
}

/** Title and way of a measurement, in the language that is set. */
export function measurementWords(
  n: NextMeasurementShown,
  language: Settings['language'],
): { readonly title: string; readonly how: string } {
  const spanish = language === 'es' ? SIGN_SPANISH[n.key] : undefined;
  return spanish === undefined ? { title: n.title, how: n.how } : { title: spanish[0], how: spanish[1] };
}

/** What one outcome would make of it. */
export function outcomeText(
  n: NextMeasurementShown,
  outcome: NextMeasurementShown['outcomes'][number],
  say: Words,
  { language, units: system }: Settings,
): string {
  const { key, weight } = outcome.leads;
  const lead = {
    title: key === 'unlisted' ? say('unlisted') : nodeTitle(key, language),
    share: shareText(weight),
  };
  if (outcome.answer !== undefined) return say(outcome.answer ? 'ifYes' : 'ifNo', lead);
  const value = (v: number) => valueText(v, n.unit, system);
  if (outcome.from === undefined) return say('ifBelow', { ...lead, value: value(outcome.below ?? 0) });
  if (outcome.below === undefined) return say('ifFrom', { ...lead, value: value(outcome.from) });
  return say('ifBetween', { ...lead, low: value(outcome.from), high: value(outcome.below) });
}

/** An arrow by its ends. */
export function arrowTitle({ from, to }: CauseArrow, say: Words, language: Settings['language']): string {
  return say('arrow', { from: nodeTitle(from, language), to: nodeTitle(to, language) });
}
