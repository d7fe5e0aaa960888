import type { SeasonAssessment } from '@undercroft/assessment';
import { type Bar, BarList } from '../../parts/chart/bar-list.tsx';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { midSentence } from '../../parts/measure.ts';
import { useTexts } from '../../text/texts.ts';
import { percentText } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';

/** How the repaired space bears a fortnight without power or without its machine. */
export function Failures({ cases, isOld }: { readonly cases: SeasonAssessment; readonly isOld: boolean }) {
  const say = useTexts(dryingTexts);
  const failures = cases.cases.flatMap(({ failure }) => (failure === undefined ? [] : [failure]));
  if (failures.length === 0) return <p>{say('noFailures')}</p>;
  const bars = failures.flatMap((failure): Bar[] => {
    const what = say(failure.what);
    const bar = (name: 'start' | 'highest' | 'usual', value: number, look: Bar['look']): Bar => ({
      key: `${failure.what} ${name}`,
      title: `${what}: ${midSentence(say(name))}`,
      shown: percentText(value),
      value,
      look,
    });
    return [
      bar('start', failure.startRelativeHumidity, 'open'),
      bar('usual', failure.usualRelativeHumidity, 'drying'),
      bar('highest', failure.highestRelativeHumidity, 'wetting'),
    ];
  });
  const highest = failures
    .map((failure) => `${say(failure.what)} ${percentText(failure.highestRelativeHumidity)}`)
    .join('; ');
  const hours = (value: number | undefined) => (value === undefined ? say('never') : String(value));
  return (
    <ChartFigure
      title={say('failures')}
      summary={say('failuresSummary', { highest })}
      columns={[
        { title: say('state') },
        ...(['start', 'highest', 'usual', 'hours60', 'hours70', 'hours80', 'recover'] as const).map(
          (key) => ({
            title: say(key),
            figure: true,
          }),
        ),
      ]}
      rows={() =>
        failures.map((failure) => [
          say(failure.what),
          percentText(failure.startRelativeHumidity),
          percentText(failure.highestRelativeHumidity),
          percentText(failure.usualRelativeHumidity),
          hours(failure.hoursUntilAbove60),
          hours(failure.hoursUntilAbove70),
          hours(failure.hoursUntilAbove80),
          failure.daysToRecover === undefined ? say('never') : failure.daysToRecover.toFixed(0),
        ])
      }
    >
      {isOld && <p className="soft">{say('stale')}</p>}
      <BarList bars={bars} scale={[0, 1]} />
    </ChartFigure>
  );
}
