import type { Assessment, SeasonAssessment, SeasonCaseResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { useMemo } from 'react';
import { ChartFigure } from '../../parts/chart/chart-figure.tsx';
import { type ChartTick, LineChart } from '../../parts/chart/line-chart.tsx';
import { LOOKS } from '../../parts/chart/line-look.tsx';
import { moneyText, monthNames } from '../../parts/measure.ts';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { sayIn, useTexts } from '../../text/texts.ts';
import type { SeriesSpan, YearSeries } from '../../worker/api.ts';
import {
  beforeAndAfter,
  energyText,
  percentText,
  type SayDrying,
  type Show,
  waterText,
  type YearFigure,
} from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';
import { MONTH_DAYS, QUANTITY_RULES, type Quantity } from './year-values.ts';
import { YearWhy } from './year-why.tsx';

/** Months, days, or the hours of a month. */
export type YearSpan = 'months' | SeriesSpan;

/** The figure whose sheet stands under a chart. */
const FIGURE_OF: Readonly<Record<Quantity, YearFigure>> = {
  humidity: 'highestDay',
  temperature: 'highestDay',
  wood: 'wood',
  mold: 'moldIndex',
  water: 'water',
  energy: 'energy',
};

function ticksOf(span: YearSpan, language: Show['language']): ChartTick[] {
  const names = monthNames(language, 'short');
  if (span === 'months') return names.map((label, at) => ({ at, label }));
  if (span.of === 'month') {
    return Array.from({ length: MONTH_DAYS[span.month] }, (_, day) => ({
      at: 24 * day + 12,
      label: String(day + 1),
    }));
  }
  let day = 0;
  return names.map((label, month) => {
    const at = day + MONTH_DAYS[month] / 2;
    day += MONTH_DAYS[month];
    return { at, label };
  });
}

/** What the rows of the table are called: months, days or hours. */
function rowNames(span: YearSpan, language: Show['language']): readonly string[] {
  if (span === 'months') return monthNames(language, 'long');
  const short = monthNames(language, 'short');
  const days = short.flatMap((name, month) =>
    Array.from({ length: MONTH_DAYS[month] }, (_, day) => `${name} ${day + 1}`),
  );
  if (span.of === 'year') return days;
  return Array.from({ length: 24 * MONTH_DAYS[span.month] }, (_, hour) => {
    const day = Math.floor(hour / 24) + 1;
    return `${short[span.month]} ${day}, ${hour % 24}:00–${(hour % 24) + 1}:00`;
  });
}

function sentence(quantity: Quantity, of: SeasonCaseResult, say: SayDrying, show: Show): string {
  const state = of.kind === 'as-found' ? say('asFound') : say('repaired');
  const months = (pick: (month: SeasonCaseResult['months'][number]) => number) => of.months.map(pick);
  const temperature = (value: number) => units.formatQuantity(value, 'temperature', show.units);
  if (quantity === 'humidity') {
    const highest = percentText(of.highestDayRelativeHumidity);
    return say('humiditySummary', { state, highest, days: of.daysAbove80 });
  }
  if (quantity === 'temperature') {
    const means = months((m) => m.temperatureC);
    const [lowest, highest] = [temperature(Math.min(...means)), temperature(Math.max(...means))];
    return say('temperatureSummary', { state, lowest, highest });
  }
  if (quantity === 'wood') {
    const highest = percentText(Math.max(...months((m) => m.woodMoistureSurface)), 1);
    return say('woodSummary', { state, highest });
  }
  if (quantity === 'mold') return say('moldSummary', { state, highest: of.peakMoldIndex.toFixed(1) });
  if (quantity === 'water') return say('waterSummary', { state, total: waterText(of.waterRemovedKg, show) });
  const cost = moneyText(of.costCents, show.language);
  return say('energySummary', { state, total: energyText(of.energyKWh), cost });
}

/** What a chart shows: a sentence for each state that has something to say, and what its limits mean. */
function sentences(
  quantity: Quantity,
  cases: readonly SeasonCaseResult[],
  say: SayDrying,
  show: Show,
): string {
  const moving = cases.filter((one) =>
    quantity === 'water' ? one.waterRemovedKg > 0 : quantity === 'energy' ? one.energyKWh > 0 : true,
  );
  if (moving.length === 0) return say(quantity === 'water' ? 'waterNone' : 'energyNone');
  const limits = quantity === 'wood' || quantity === 'mold' ? [say(`${quantity}Limits`)] : [];
  return [...moving.map((one) => sentence(quantity, one, say, show)), ...limits].join(' ');
}

interface YearChartProps {
  readonly assessment: Assessment;
  readonly season: SeasonAssessment;
  readonly quantity: Quantity;
  readonly span: YearSpan;
  /** The states of the space in the order of `beforeAndAfter`, by the span. */
  readonly series: readonly YearSeries[];
}

/** One quantity over the year, as found and with the repairs, with its sentence, its table and its sheet. */
export function YearChart({ assessment, season, quantity, span, series }: YearChartProps) {
  const say = useTexts(dryingTexts);
  const show = useSettings();
  const { units: system, language } = show;
  const rule = QUANTITY_RULES[quantity];
  const cases = beforeAndAfter(season);
  const lines = useMemo(() => {
    const words = sayIn(language, dryingTexts);
    return series.flatMap(({ kind, values }) => {
      const isFound = kind === 'as-found';
      const state = words(isFound ? 'asFound' : 'repaired');
      return rule.series.map((name, i) => ({
        label:
          rule.series.length === 1
            ? state
            : words(name === 'dewPointC' ? 'dewPointLine' : 'airLine', { state }),
        values: values[name].map((value) => rule.shown(value, system)),
        look: LOOKS[isFound ? (i === 0 ? 'found' : 'foundSecond') : i === 0 ? 'repaired' : 'repairedSecond'],
      }));
    });
  }, [series, rule, system, language]);
  const unit = rule.unit(system);
  const ofHour = span !== 'months' && span.of === 'month';
  const title = say(
    ofHour && (quantity === 'water' || quantity === 'energy') ? `${quantity}TitleHour` : `${quantity}Title`,
  );
  const summary = sentences(quantity, cases, say, show);
  const chart = useMemo(
    () => ({
      ticks: ticksOf(span, language),
      limits: rule.limits.map((value) => ({
        value,
        label: `${value}${unit}`,
      })),
      range: rule.range(system),
    }),
    [span, language, rule, unit, system],
  );
  const head = say(span === 'months' ? 'month' : span.of === 'year' ? 'day' : 'hour');
  return (
    <ChartFigure
      title={title}
      summary={summary}
      columns={[
        { title: head },
        ...lines.map(({ label }) => ({ title: unit === '' ? label : `${label}, ${unit}`, figure: true })),
      ]}
      rows={() =>
        rowNames(span, language).map((name, i) => [
          name,
          ...lines.map(({ values }) => values[i]?.toFixed(rule.digits)),
        ])
      }
      why={
        <Why about={title}>
          <YearWhy assessment={assessment} figure={FIGURE_OF[quantity]} of={cases.at(-1) ?? cases[0]} />
        </Why>
      }
    >
      <LineChart label={summary} lines={lines} unit={unit} tall={quantity === 'humidity'} {...chart} />
    </ChartFigure>
  );
}
