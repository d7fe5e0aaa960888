import { useMemo, useState } from 'react';
import { Pick } from '../../parts/field.tsx';
import { monthNames } from '../../parts/measure.ts';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { useYearSeries } from '../../worker/use-assessment.ts';
import { beforeAndAfter } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';
import { Failures } from './failures.tsx';
import type { DryingState } from './use-drying.ts';
import { YearChart, type YearSpan } from './year-chart.tsx';
import { monthSeries, QUANTITIES } from './year-values.ts';

/** `months`, `days`, or the number of a month whose hours are shown. */
type Choice = 'months' | 'days' | `${number}`;

function spanOf(choice: Choice): YearSpan {
  if (choice === 'months') return 'months';
  return choice === 'days' ? { of: 'year' } : { of: 'month', month: Number(choice) };
}

/** The year as found and with the repairs, quantity by quantity, and what a failure does to it. */
export function YearView({
  view,
  state,
}: { readonly view: QuestionProps['view'] } & { readonly state: DryingState }) {
  const say = useTexts(dryingTexts);
  const { language } = useSettings();
  const [choice, setChoice] = useState<Choice>('months');
  const span = useMemo(() => spanOf(choice), [choice]);
  const fine = useYearSeries(view, span === 'months' ? null : span);
  const { assessment, season, cases, isOld } = state;
  const byMonth = useMemo(() => beforeAndAfter(season).map(monthSeries), [season]);
  // Until the days are there the months stand.
  const [series, shownSpan] =
    span === 'months' || fine === null ? [byMonth, 'months' as const] : [fine, span];
  const options: (readonly [Choice, string])[] = [
    ['months', say('byMonth')],
    ['days', say('byDay')],
    ...monthNames(language, 'long').map((month, i) => [`${i}` as Choice, say('byHour', { month })] as const),
  ];
  return (
    <>
      <Pick label={say('span')} value={choice} options={options} onChange={setChoice} />
      <div className="year-charts">
        {QUANTITIES.map((quantity) => (
          <YearChart
            key={quantity}
            assessment={assessment}
            season={season}
            quantity={quantity}
            span={shownSpan}
            series={series}
          />
        ))}
        {cases !== undefined && <Failures cases={cases} isOld={isOld} />}
      </div>
    </>
  );
}
