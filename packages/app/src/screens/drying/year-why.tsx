import type { Assessment, SeasonCaseResult } from '@undercroft/assessment';
import { SourceList } from '../../parts/why/source-list.tsx';
import '../../parts/why/why-sheets.css';
import { moneyText } from '../../parts/measure.ts';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { energyText, SOURCES_OF, type YearFigure } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';

interface YearWhyProps {
  readonly assessment: Assessment;
  readonly figure: YearFigure;
  /** The case whose figure it is, for its calculation. */
  readonly of: SeasonCaseResult;
}

/** What a figure of the year is, how it was worked out, in which weather, and on which publications it rests. */
export function YearWhy({ assessment, figure, of }: YearWhyProps) {
  const say = useTexts(dryingTexts);
  const { language } = useSettings();
  const { season, sources } = assessment;
  if (season === undefined) return null;
  const books = Math.max(Math.abs(of.closure.water), Math.abs(of.closure.energy));
  const wanted = [...SOURCES_OF[figure], ...SOURCES_OF.year];
  const count = assessment.assumptions.length + season.assumptions.length;
  return (
    <>
      <p>
        {figure === 'cost'
          ? say('costWhy', {
              energy: energyText(of.energyKWh),
              tariff: `${season.tariffCentsPerKWh} ¢`,
              cost: moneyText(of.costCents, language),
            })
          : say(`${figure}Why`)}
      </p>
      <p>{say('yearWhy', { weather: season.weather.name, books: books.toExponential(0) })}</p>
      {!of.settled && <p>{say('notSettled')}</p>}
      <p className="soft">{say('restsOn', { count })}</p>
      <SourceList sources={sources.filter(({ id }) => wanted.includes(id))} />
    </>
  );
}
