import { use } from 'react';
import { hrefOf } from '../../shell/route.ts';
import { shellTexts } from '../../shell/shell-texts.ts';
import { useTexts } from '../../text/texts.ts';
import type { CalculatorForm } from '../../worker/api.ts';
import { computer } from '../../worker/computer.ts';
import { Calculator } from './calculator.tsx';
import { calculatorsTexts } from './calculators-texts.ts';
import './calculators.css';

let forms: Promise<readonly CalculatorForm[]> | undefined;

function loadForms(): Promise<readonly CalculatorForm[]> {
  if (forms === undefined) {
    forms = computer().calculatorForms();
    forms.catch(() => {
      forms = undefined;
    });
  }
  return forms;
}

/** Small calculations of the trade, each by the question that it answers. */
export default function CalculatorsScreen({ name }: { readonly name?: string | undefined }) {
  const say = useTexts(calculatorsTexts);
  const shell = useTexts(shellTexts);
  const all = use(loadForms());
  const form = all.find((one) => one.name === name);
  if (form !== undefined) {
    return (
      <>
        <a href={hrefOf({ screen: 'calculators' })}>{say('all')}</a>
        <Calculator key={form.name} form={form} />
      </>
    );
  }
  return (
    <>
      <h1>{shell('calculators')}</h1>
      <p>{say('choose')}</p>
      <ul className="calculators">
        {all.map((one) => (
          <li key={one.name}>
            <a href={hrefOf({ screen: 'calculators', name: one.name })}>
              <strong>{one.title}</strong>
              <span>{one.answers}</span>
            </a>
          </li>
        ))}
      </ul>
    </>
  );
}
