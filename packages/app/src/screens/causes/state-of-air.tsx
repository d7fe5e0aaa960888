import type { Assessment, BudgetResult, Origin } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { Figures } from '../../parts/figures.tsx';
import { AssumptionList } from '../../parts/why/assumption-list.tsx';
import { OriginWords } from '../../parts/why/origin-words.tsx';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { budgetTime } from './budget-words.ts';
import { causesTexts } from './causes-texts.ts';

/** Guesses that the state of the day and of the month rest on. */
const GUESSES = {
  surveyDay: /^(outdoorOnDay|groundOnDay|windOnDay|houseTemperature|houseHumidity)$/,
  designMonth: /^(crawlTemperature|groundTemperature|houseTemperature|houseHumidity)$/,
} as const;

interface StateOfAirProps {
  readonly assessment: Assessment;
  readonly of: keyof typeof GUESSES;
  readonly budget: BudgetResult;
}

/** Air, ground and outdoors of one balance, and whose word that is. */
export function StateOfAir({ assessment, of, budget }: StateOfAirProps) {
  const say = useTexts(causesTexts);
  const { units: system, language } = useSettings();
  const temperature = (value: number) => units.formatQuantity(value, 'temperature', system);
  const percent = (value: number) => units.formatQuantity(value, 'relativeHumidity', system);
  const state = ({ temperatureC, relativeHumidity, dewPointC }: BudgetResult['crawl']) =>
    say('airState', {
      temperature: temperature(temperatureC),
      humidity: percent(relativeHumidity),
      dewPoint: temperature(dewPointC),
    });
  const time = budgetTime(budget, language);
  const title = of === 'surveyDay' ? say('surveyDay', { day: time }) : say('designMonth', { month: time });
  const { relativeHumidityRange: range, origins } = budget;
  const marked = (origin: Origin, text: string) => (
    <span key={text} className={origin.kind === 'assumption' ? 'assumed' : ''}>
      {text}
    </span>
  );
  const whose = [
    ['air', origins.crawl],
    ['outdoors', origins.outdoor],
    ['house', origins.house],
    ['ground', origins.ground],
  ] as const;
  return (
    <>
      <h3>{title}</h3>
      <Figures
        rows={[
          [say('air'), marked(origins.crawl, state(budget.crawl))],
          [say('outdoors'), marked(origins.outdoor, state(budget.outdoor))],
          [say('ground'), marked(origins.ground, temperature(budget.groundTemperatureC))],
          [say('exchange'), marked({ kind: 'assumption' }, budget.airChangesPerHour.toFixed(2))],
        ]}
      />
      {range !== undefined && (
        <p className="soft">{say('humidityRange', { low: percent(range.low), high: percent(range.high) })}</p>
      )}
      <Why about={title}>
        <ul className="why-list">
          {whose.map(([name, origin]) => (
            <li key={name}>
              {say(name)}: <OriginWords origin={origin} />
            </li>
          ))}
        </ul>
        <AssumptionList assumptions={assessment.assumptions.filter((a) => GUESSES[of].test(a.key))} />
        <p className="soft">{assessment.climate.source}</p>
      </Why>
    </>
  );
}
