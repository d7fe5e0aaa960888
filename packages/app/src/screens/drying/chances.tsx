import type { Assessment, ChancesResult } from '@undercroft/assessment';
import { BarList } from '../../parts/chart/bar-list.tsx';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { DataTable } from '../../parts/chart/data-table.tsx';
import { measureText } from '../../parts/measure.ts';
import { AssumptionList } from '../../parts/why/assumption-list.tsx';
import { SourceList } from '../../parts/why/source-list.tsx';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { energyText, percentText, SOURCES_OF, waterText } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';

/** So many unknowns are drawn; the others matter less. */
const DRAWN = 8;

interface ChancesProps {
  readonly assessment: Assessment;
  readonly chances: ChancesResult;
}

/** How sure the repaired year is, and which unknown has most to do with it. */
export function Chances({ assessment, chances }: ChancesProps) {
  const say = useTexts(dryingTexts);
  const rows = [
    ['below60', chances.staysBelow60],
    ['below70', chances.staysBelow70],
    ['below80', chances.staysBelow80],
    ['mold3', chances.moldAtMost3],
  ] as const;
  const range = ({ low, high }: (typeof rows)[number][1]) =>
    say('rangeOf', { low: percentText(low), high: percentText(high) });
  return (
    <>
      <ChartFigure
        title={say('chancesTitle')}
        summary={say('chancesSummary', {
          below70: percentText(chances.staysBelow70.value),
          mold: percentText(chances.moldAtMost3.value),
          count: chances.count,
        })}
        columns={[
          { title: say('state') },
          { title: say('chance'), figure: true },
          { title: say('range'), figure: true },
        ]}
        rows={() =>
          rows.map(([key, chance]) => [
            say(key),
            <span key="chance" className="assumed">
              {percentText(chance.value)}
            </span>,
            range(chance),
          ])
        }
        why={
          <Why about={say('chancesTitle')}>
            <p>{say('chancesWhy', { count: chances.count, seed: chances.seed })}</p>
            <AssumptionList assumptions={drawnOf(assessment, chances)} />
            <SourceList sources={assessment.sources.filter(({ id }) => SOURCES_OF.chances.includes(id))} />
          </Why>
        }
      >
        <BarList
          scale={[0, 1]}
          bars={rows.map(([key, { value, low, high }]) => ({
            key,
            title: say(key),
            shown: percentText(value),
            value,
            low,
            high,
            assumed: true,
            look: 'drying',
          }))}
        />
      </ChartFigure>
      <Influences chances={chances} />
      <Spreads chances={chances} />
      {chances.notices.map((notice) => (
        <p key={notice.code} className="soft">
          {notice.message}
        </p>
      ))}
    </>
  );
}

/** Assumptions that the years drew from. */
function drawnOf(assessment: Assessment, { influences }: ChancesResult): Assessment['assumptions'] {
  const keys = new Set(influences.map(({ key }) => key));
  const all = [...assessment.assumptions, ...(assessment.season?.assumptions ?? [])];
  return all.filter(({ key }, i) => keys.has(key) && all.findIndex((other) => other.key === key) === i);
}

function Influences({ chances }: Pick<ChancesProps, 'chances'>) {
  const say = useTexts(dryingTexts);
  const { units } = useSettings();
  const { influences } = chances;
  const [first] = influences;
  if (first === undefined) return null;
  const title = ({ key, title: words }: typeof first) => (key === 'weather' ? say('weatherUnknown') : words);
  return (
    <ChartFigure
      title={say('influencesTitle')}
      summary={say('influencesSummary', { first: title(first), share: percentText(first.share) })}
      columns={[
        { title: say('unknown') },
        { title: say('range'), figure: true },
        { title: say('share'), figure: true },
      ]}
      rows={() =>
        influences.map((one) => [
          title(one),
          say('rangeOf', {
            low: measureText(one.low, one.unit, units),
            high: measureText(one.high, one.unit, units),
          }),
          percentText(one.share),
        ])
      }
      why={
        <Why about={say('influencesTitle')}>
          <p>{say('influencesWhy')}</p>
        </Why>
      }
    >
      <BarList
        scale={[0, 1]}
        bars={influences.slice(0, DRAWN).map((one) => ({
          key: one.key,
          title: title(one),
          shown: percentText(one.share),
          value: one.share,
          look: 'wetting',
        }))}
      />
    </ChartFigure>
  );
}

function Spreads({ chances }: Pick<ChancesProps, 'chances'>) {
  const say = useTexts(dryingTexts);
  const show = useSettings();
  const rows = [
    ['highestDay', chances.highestDayRelativeHumidity, (value: number) => percentText(value)],
    ['daysAbove80', chances.daysAbove80, (value: number) => value.toFixed(0)],
    ['moldIndex', chances.peakMoldIndex, (value: number) => value.toFixed(1)],
    ['water', chances.waterRemovedKg, (value: number) => waterText(value, show)],
    ['energy', chances.energyKWh, energyText],
  ] as const;
  return (
    <section className="chart-figure" aria-label={say('spreadTitle')}>
      <h2>{say('spreadTitle')}</h2>
      <p>{say('spreadSummary', { days: chances.daysAbove80.high.toFixed(0) })}</p>
      <DataTable
        caption={say('spreadTitle')}
        columns={[
          { title: say('figure') },
          { title: say('low'), figure: true },
          { title: say('middle'), figure: true },
          { title: say('high'), figure: true },
        ]}
        rows={rows.map(([key, { low, middle, high }, text]) => [
          say(key),
          text(low),
          text(middle),
          text(high),
        ])}
      />
    </section>
  );
}
