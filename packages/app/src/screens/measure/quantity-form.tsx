import type { ValueAgainstCriterion } from '@undercroft/assessment';
import { criteria } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { useEffect, useState } from 'react';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { Why } from '../../parts/why.tsx';
import { useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { computer } from '../../worker/computer.ts';
import { latestWins } from '../../worker/latest-wins.ts';
import { useMissing } from '../missing/use-missing.ts';
import { quantityTitle } from './find-quantity.ts';
import type { KindFormProps } from './kind-form.ts';
import { MeaningBox } from './meaning.tsx';
import { measureTexts } from './measure-texts.ts';
import { QuantityInput } from './quantity-input.tsx';
import { QuantityList } from './quantity-list.tsx';
import { KINDS_OF_PLACES, quantityText, readTyped } from './quantity-unit.ts';
import { ReadingForm } from './reading-form.tsx';

/** Any other quantity: searched for, typed in its unit or answered, and held against what asks for it. */
export function QuantityForm(given: KindFormProps) {
  const { draft, props } = given;
  const missing = useMissing(props.view, props.result);
  const quantity = criteria.findQuantity(draft.form.quantity);
  if (quantity === undefined) {
    return (
      <QuantityList
        wanted={(missing ?? []).flatMap((one) => (one.kind === 'quantity' ? [one.quantity] : []))}
        onChosen={(key) => draft.change({ quantity: key, typed: {}, assumed: false, saved: [] })}
      />
    );
  }
  return <OneQuantity {...given} quantity={quantity} />;
}

function OneQuantity({
  props,
  job,
  draft,
  quantity,
}: KindFormProps & { readonly quantity: criteria.Quantity }) {
  const say = useTexts(measureTexts);
  const { units: system, language } = useSettings();
  const { form, change } = draft;
  const { typed, last, assumed } = form;
  const { value } = readTyped(quantity, typed.quantity ?? '', system);
  const shown =
    value === null
      ? ''
      : typeof value === 'boolean'
        ? say(value ? 'yes' : 'no')
        : quantityText(quantity, value, system);
  return (
    <ReadingForm
      props={props}
      draft={draft}
      kind="observation"
      kinds={KINDS_OF_PLACES[quantity.place]}
      value={value === null ? null : { quantity: quantity.key, value, assumed }}
      shown={shown}
      summary={quantityTitle(quantity.key, language)}
      details={
        <>
          <p lang="en">{quantity.measured}</p>
          <label className="check">
            <input
              type="checkbox"
              checked={assumed}
              onChange={(event) => change({ assumed: event.target.checked })}
            />
            <span>{say('assumed')}</span>
          </label>
        </>
      }
      meaning={<Against job={job} quantity={quantity} value={value} />}
      next={() => ({ assumed: false })}
    >
      {(save) => (
        <QuantityInput
          quantity={quantity}
          typed={typed.quantity ?? ''}
          last={last.quantity}
          onType={(text) => change({ typed: { ...typed, quantity: text } })}
          onDone={save}
        />
      )}
    </ReadingForm>
  );
}

interface AgainstProps {
  readonly job: Job;
  readonly quantity: criteria.Quantity;
  readonly value: number | boolean | null;
}

/** How the typed value stands against the criteria that ask for it. */
function Against({ job, quantity, value }: AgainstProps) {
  const say = useTexts(measureTexts);
  const { units: system, language } = useSettings();
  const [rows, setRows] = useState<readonly ValueAgainstCriterion[] | null>(null);
  const [ask] = useState(() =>
    latestWins(([asked, key, typed]: readonly [Job, string, number | boolean]) =>
      computer().againstCriteria(asked, key, typed),
    ),
  );
  useEffect(() => {
    if (value === null) return setRows(null);
    let wanted = true;
    ask([job, quantity.key, value]).then(
      (given) => wanted && setRows(given),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [ask, job, quantity.key, value]);
  if (value === null || rows === null) return <MeaningBox>{say('typeOn')}</MeaningBox>;
  if (rows.length === 0) return <MeaningBox>{say('noLimit')}</MeaningBox>;
  const text = (row: ValueAgainstCriterion) =>
    say('against', { limit: system === 'us' ? row.limit : row.limitSi, kind: say(row.kind) });
  const [first, ...rest] = rows;
  return (
    <div className="meaning against" aria-live="polite">
      <AgainstRow row={first} text={text(first)} />
      {rest.length > 0 && (
        <Why about={quantityTitle(quantity.key, language)}>
          {rest.map((row) => (
            <AgainstRow key={row.id} row={row} text={text(row)} />
          ))}
        </Why>
      )}
    </div>
  );
}

function AgainstRow({ row, text }: { readonly row: ValueAgainstCriterion; readonly text: string }) {
  const say = useTexts(measureTexts);
  return (
    <p>
      <VerdictMark verdict={row.verdict} /> <span lang="en">{text}</span>
      {!row.applies && <span className="soft"> {say('mayApply')}</span>}
    </p>
  );
}
