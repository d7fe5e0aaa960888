import type { Assessment } from './assessment.ts';
import { unseenHeadline } from './coverage/notices.ts';
import { percentWords } from './readings/words.ts';

type Parts = Pick<Assessment, 'budgets' | 'coverage' | 'criteria' | 'criteriaCount' | 'readings'>;

function mainPath(parts: Parts): string | undefined {
  const budget = parts.budgets.surveyDay ?? parts.budgets.designMonth;
  const wetting = budget.paths.filter((p) => p.kgPerDay > 0);
  const most = wetting.reduce<(typeof wetting)[number] | undefined>(
    (best, p) => (best === undefined || p.kgPerDay > best.kgPerDay ? p : best),
    undefined,
  );
  if (most === undefined || budget.totalInKgPerDay <= 0) return undefined;
  const share = percentWords(most.kgPerDay / budget.totalInKgPerDay);
  return `Most of its water (${share}, about ${most.kgPerDay.toFixed(1)} kg a day) comes by this path: ${most.title.toLowerCase()}.`;
}

/** The whole assessment in a few plain sentences. Only what was shown counts, and what nobody looked at is named. */
export function headlineOf(parts: Parts): string {
  const { met, notMet, notShown } = parts.criteriaCount;
  const codeBroken = parts.criteria.filter((c) => c.verdict === 'not-met' && c.kind === 'code').length;
  const alarms = parts.readings.filter((r) => r.state === 'alarm').length;
  const judged =
    notMet === 0
      ? `Nothing that was measured breaks a criterion: ${met} met, ${notShown} not shown yet.`
      : `${notMet} criteria are not met (${codeBroken} of them code), ${met} are met, ${notShown} are not shown yet.`;
  const read =
    parts.readings.length === 0
      ? 'No readings were taken.'
      : alarms === 0
        ? 'No reading is in alarm.'
        : `${alarms} of ${parts.readings.length} readings are in alarm.`;
  const unseen = parts.coverage === undefined ? undefined : unseenHeadline(parts.coverage);
  return [judged, read, mainPath(parts), unseen].filter((s) => s !== undefined).join(' ');
}
