import type { ReadingMeaning } from '@undercroft/assessment';
import '../../parts/chart/bar-list.css';
import { measureText, shownDay } from '../../parts/measure.ts';
import '../../parts/why.css';
import { useSettings } from '../../settings/settings.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { causesTexts } from './causes-texts.ts';

const WORST_FIRST = ['alarm', 'watch', 'fine'] as const;
const SHAPES = { alarm: '◆', watch: '△', fine: '■' } as const;

/** Figures behind a reading that are shown, with the unit that they have in the assessment. */
const FIGURES = {
  temperatureC: '°C',
  relativeHumidity: 'fraction',
  dewPointC: '°C',
  humidityRatio: 'kg/kg',
  vaporPressurePa: 'Pa',
  surfaceRelativeHumidity: 'fraction',
  moistureContent: 'fraction',
  low: 'fraction',
  high: 'fraction',
} as const;

/** What each reading says about the water, those in alarm first; each can be asked what its sentence rests on. */
export function ReadingsMean({ readings }: { readonly readings: readonly ReadingMeaning[] }) {
  const say = useTexts(causesTexts);
  if (readings.length === 0) return <p>{say('noReadings')}</p>;
  const sorted = [...readings].sort((a, b) => WORST_FIRST.indexOf(a.state) - WORST_FIRST.indexOf(b.state));
  return (
    <ul className="readings-mean">
      {sorted.map((reading) => (
        <li key={`${reading.kind} ${reading.id}`} className={reading.state}>
          <Reading reading={reading} />
        </li>
      ))}
    </ul>
  );
}

function Reading({ reading }: { readonly reading: ReadingMeaning }) {
  const say = useTexts(causesTexts);
  const common = useTexts(commonTexts);
  const { units, language } = useSettings();
  const { figures, state, who, when, place } = reading;
  const shown = (Object.keys(FIGURES) as (keyof typeof FIGURES)[]).filter((name) => name in figures);
  return (
    <details className="why">
      <summary>
        <strong className="figure">{reading.shown}</strong>
        <span className="reading-state">
          {SHAPES[state]} {say(state)}
        </span>
        <span>{reading.means}</span>
        <span className="bar-why">{common('why')}</span>
      </summary>
      <div>
        <p className="soft">
          {place} · {say('takenBy', { who, when: shownDay(when, language) })}
        </p>
        <ul className="why-list">
          {shown.map((name) => (
            <li key={name}>
              {say(name)}: <span className="figure">{measureText(figures[name], FIGURES[name], units)}</span>
            </li>
          ))}
        </ul>
        {reading.notices.map((notice) => (
          <p key={notice.code + notice.message}>{notice.message}</p>
        ))}
      </div>
    </details>
  );
}
