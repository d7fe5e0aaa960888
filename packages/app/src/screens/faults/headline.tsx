import type { Assessment } from '@undercroft/assessment';
import { flowText, midSentence } from '../../parts/measure.ts';
import { pathTitle } from '../../parts/why/path-words.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { mainPath } from '../causes/budget-words.ts';
import { faultsTexts } from './faults-texts.ts';

/** The finding in a few sentences: what is shown and what is not, what the readings say, where the water comes from. */
export function Headline({ assessment }: { readonly assessment: Assessment }) {
  const say = useTexts(faultsTexts);
  const { units: system, language } = useSettings();
  const { met, notMet, notShown } = assessment.criteriaCount;
  const code = assessment.criteria.filter((c) => c.verdict === 'not-met' && c.kind === 'code').length;
  const count = assessment.readings.length;
  const alarms = assessment.readings.filter(({ state }) => state === 'alarm').length;
  const budget = assessment.budgets.surveyDay ?? assessment.budgets.designMonth;
  const main = budget.totalInKgPerDay > 0 ? mainPath(budget) : undefined;
  return (
    <p className="headline">
      {notMet === 0
        ? say('headAllMet', { met, notShown })
        : say('headNotMet', { count: notMet, code, met, notShown })}{' '}
      {count === 0
        ? say('noReadings')
        : alarms === 0
          ? say('headCalm')
          : say('headAlarms', { alarms, count })}
      {main !== undefined &&
        ` ${say('headPath', {
          share: `${Math.round((100 * main.kgPerDay) / budget.totalInKgPerDay)}%`,
          flow: flowText(main.kgPerDay, system),
          path: midSentence(pathTitle(main, language)),
        })}`}
    </p>
  );
}
