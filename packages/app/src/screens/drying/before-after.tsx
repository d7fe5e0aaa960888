import type { Assessment, SeasonAssessment } from '@undercroft/assessment';
import '../../parts/chart/bar-list.css';
import '../../parts/why.css';
import { useSettings } from '../../settings/settings.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { beforeAndAfter, figureText, YEAR_FIGURES } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';
import { YearWhy } from './year-why.tsx';

interface BeforeAfterProps {
  readonly assessment: Assessment;
  readonly season: SeasonAssessment;
}

/** What the year comes to as found and with the repairs, figure by figure; each can be asked why. */
export function BeforeAfter({ assessment, season }: BeforeAfterProps) {
  const say = useTexts(dryingTexts);
  const common = useTexts(commonTexts);
  const show = useSettings();
  const [found, repaired] = beforeAndAfter(season);
  return (
    <div className="before-after">
      <p className="before-after-head" aria-hidden="true">
        <span>{say('figure')}</span>
        <span>{say('asFound')}</span>
        <span>{repaired !== undefined && say('repaired')}</span>
      </p>
      <ul>
        {YEAR_FIGURES.map((figure) => (
          <li key={figure} data-figure={figure}>
            <details className="why">
              <summary>
                <span>
                  {say(figure)} <span className="bar-why">{common('why')}</span>
                </span>
                <span className="figure">
                  <span className="hidden-text">{say('asFound')}: </span>
                  {figureText(found, figure, show)}
                </span>
                <strong className="figure after">
                  {repaired !== undefined && (
                    <>
                      <span className="hidden-text">{say('repaired')}: </span>
                      {figureText(repaired, figure, show)}
                    </>
                  )}
                </strong>
              </summary>
              <div>
                <YearWhy assessment={assessment} figure={figure} of={repaired ?? found} />
              </div>
            </details>
          </li>
        ))}
      </ul>
    </div>
  );
}
