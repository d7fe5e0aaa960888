import type { BudgetPath } from '@undercroft/assessment';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { measureText } from '../measure.ts';
import { OriginWords } from './origin-words.tsx';
import { inputName } from './path-words.ts';
import { SourceList } from './source-list.tsx';
import { whyTexts } from './why-texts.ts';
import './why-sheets.css';

/** The calculation sheet of one path of water: formula, what goes in and whose it is, steps, result, source. */
export function PathWhy({ path }: { readonly path: BudgetPath }) {
  const say = useTexts(whyTexts);
  const { units, language } = useSettings();
  const { formula, inputs, steps, source, kgPerDay, low, high } = path;
  return (
    <>
      <p>{formula.replaceAll(' x ', ' × ')}</p>
      {inputs.length > 0 && (
        <>
          <p className="why-head">{say('inputs')}</p>
          <ul className="why-list">
            {inputs.map((input) => (
              <li key={input.name}>
                {inputName(input.name, language)}:{' '}
                <span className={`figure${input.assumed ? ' assumed' : ''}`}>
                  {measureText(input.value, input.unit, units)}
                </span>{' '}
                {input.low < input.high && (
                  <span className="soft figure">
                    (
                    {say('range', {
                      low: measureText(input.low, input.unit, units),
                      high: measureText(input.high, input.unit, units),
                    })}
                    ){' '}
                  </span>
                )}
                <OriginWords origin={input.origin} />
              </li>
            ))}
          </ul>
        </>
      )}
      {steps.length > 0 && (
        <>
          <p className="why-head">{say('steps')}</p>
          <ul className="why-list">
            {steps.map((step) => (
              <li key={step.name}>
                {inputName(step.name, language)}:{' '}
                <span className="figure">{measureText(step.value, step.unit, units)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      <p>
        {say('result')}: <strong className="figure">{measureText(kgPerDay, 'kg/day', units)}</strong>{' '}
        <span className="figure soft">
          (
          {say('range', {
            low: measureText(low, 'kg/day', units),
            high: measureText(high, 'kg/day', units),
          })}
          )
        </span>
      </p>
      <SourceList sources={[source]} />
    </>
  );
}
