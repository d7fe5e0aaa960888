import { type calculators, units } from '@undercroft/engine';
import { useEffect, useMemo, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Choice, Field } from '../../parts/field.tsx';
import { FigurePad } from '../../parts/figure-pad.tsx';
import { Figures } from '../../parts/figures.tsx';
import { Notice } from '../../parts/notice.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import type { CalculatorForm } from '../../worker/api.ts';
import { computer } from '../../worker/computer.ts';
import { latestWins } from '../../worker/latest-wins.ts';
import { calculatorsTexts } from './calculators-texts.ts';

/** More unit names than these do not help to type one. */
const SHOWN_UNITS = 5;

/** Inputs as typed, from the defaults of the calculator. */
function firstInputs(form: CalculatorForm, system: units.UnitSystem): Record<string, string> {
  return Object.fromEntries(
    form.inputs.map((input) => {
      if (input.dimension === 'text' || input.default === undefined) return [input.key, ''];
      if (input.dimension === 'choice') return [input.key, input.default];
      return [input.key, units.formatQuantity(input.default, input.dimension, system)];
    }),
  );
}

/** What an input that is left empty gets: nothing, so that its default or its absence counts. */
function given(inputs: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(inputs).filter(([, text]) => text.trim() !== ''));
}

/** One calculation: its inputs with their units, the result as one types, and where it comes from. */
export function Calculator({ form }: { readonly form: CalculatorForm }) {
  const say = useTexts(calculatorsTexts);
  const { units: system } = useSettings();
  const [inputs, setInputs] = useState(() => firstInputs(form, system));
  const [run, setRun] = useState<calculators.CalculatorRun | null>(null);
  const [pad, setPad] = useState<string | null>(null);
  const [last, setLast] = useState<string | undefined>();
  const ask = useMemo(
    () => latestWins((raw: calculators.RawInputs) => computer().calculate(form.name, raw)),
    [form],
  );
  useEffect(() => {
    let wanted = true;
    ask(given(inputs)).then(
      (answer) => wanted && setRun(answer),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [ask, inputs]);
  const set = (key: string, text: string) => setInputs((before) => ({ ...before, [key]: text }));
  const issues = run === null || run.ok ? [] : run.issues;
  const problemOf = (key: string) => {
    const issue = issues.find((one) => one.path === key);
    return issue === undefined || inputs[key].trim() === ''
      ? undefined
      : say('issue', { expected: issue.expected });
  };
  return (
    <>
      <h1>{form.title}</h1>
      <p>{form.answers}</p>
      {form.inputs.map((input) =>
        input.dimension === 'choice' ? (
          <Choice
            key={input.key}
            label={input.title}
            value={inputs[input.key]}
            options={input.choices.map((choice) => [choice, choice] as const)}
            onChange={(value) => set(input.key, value)}
          />
        ) : (
          <div key={input.key} className="calculator-input">
            <Field
              label={input.title}
              value={inputs[input.key]}
              onChange={(text) => set(input.key, text)}
              problem={problemOf(input.key)}
              hint={
                input.dimension === 'text'
                  ? undefined
                  : say('unitHint', {
                      units: units.unitNames(input.dimension).slice(0, SHOWN_UNITS).join(', '),
                    })
              }
            />
            {input.dimension === 'length' && (
              <Button look="quiet" label={`${say('pad')}: ${input.title}`} onPress={() => setPad(input.key)}>
                {say('pad')}
              </Button>
            )}
          </div>
        ),
      )}
      {issues
        .filter((one) => one.path === 'inputs')
        .map((one) => (
          <Notice key={one.expected} kind="plain">
            {one.expected}
          </Notice>
        ))}
      <section aria-live="polite" className="calculator-result">
        <h2>{say('result')}</h2>
        {run?.ok === true ? <Result form={form} answer={run.answer} /> : <p>{say('waiting')}</p>}
      </section>
      {pad !== null && (
        <div className="calculator-pad">
          <Sheet title={form.inputs.find((one) => one.key === pad)?.title ?? ''} onClose={() => setPad(null)}>
            <FigurePad
              label={form.inputs.find((one) => one.key === pad)?.title ?? ''}
              typed={inputs[pad]}
              onType={(typed) => set(pad, typed)}
              last={last}
              onDone={({ typed }) => {
                setLast(typed);
                setPad(null);
              }}
            />
          </Sheet>
        </div>
      )}
    </>
  );
}

function Result({
  form,
  answer,
}: {
  readonly form: CalculatorForm;
  readonly answer: calculators.CalculatorAnswer;
}) {
  const say = useTexts(calculatorsTexts);
  const { units: system } = useSettings();
  const shown = (result: calculators.CalculatorResult): string => {
    const { value, unit } = answer.results[result.key];
    if (typeof value === 'boolean') return say(value ? 'yes' : 'no');
    if (typeof value === 'string') return value;
    if (result.dimension === 'flag' || result.dimension === 'any') return `${value} ${unit}`;
    return units.formatQuantity(value, result.dimension, system);
  };
  return (
    <>
      <Figures rows={form.results.map((result) => [result.title, shown(result)] as const)} />
      {answer.notices.map((notice) => (
        <Notice key={notice.code + notice.message} kind="plain">
          {notice.message}
        </Notice>
      ))}
      <Why about={form.title}>
        <p>{say('sources')}:</p>
        <ul>
          {answer.sources.map((source) => (
            <li key={source.id}>
              {source.citation} <span className="soft">({source.provenance})</span>
            </li>
          ))}
        </ul>
      </Why>
    </>
  );
}
