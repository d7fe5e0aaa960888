import type { ValueAgainstCriterion } from '@undercroft/assessment';
import { criteria, units } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import { useEffect, useState } from 'react';
import { Choice } from '../../parts/field.tsx';
import { FigurePad } from '../../parts/figure-pad.tsx';
import { NumberPad } from '../../parts/number-pad.tsx';
import type { PlacedThing } from '../../parts/place/placed-things.ts';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { Why } from '../../parts/why.tsx';
import { type Settings, useSettings } from '../../settings/settings.ts';
import { useTexts } from '../../text/texts.ts';
import { computer } from '../../worker/computer.ts';
import { latestWins } from '../../worker/latest-wins.ts';
import { quantityTitle } from './find-quantity.ts';
import type { KindFormProps } from './kind-form.ts';
import { MeaningBox } from './meaning.tsx';
import type { MeasureForm } from './measure-form.ts';
import { measureTexts } from './measure-texts.ts';
import { QuantityList } from './quantity-list.tsx';
import { quantityText, readQuantity, typedAs, typedUnit } from './quantity-unit.ts';
import { ReadingForm } from './reading-form.tsx';

/** Things on the plan to which a quantity belongs. */
const KINDS: Readonly<Partial<Record<criteria.QuantityPlace, readonly PlacedThing['kind'][]>>> = {
  pier: ['pier'],
  wall: ['wall'],
  'liner-edge': ['wall', 'door'],
  vent: ['vent'],
  access: ['door'],
  duct: ['duct'],
  girder: ['girder'],
  sump: ['equipment'],
  dehumidifier: ['equipment'],
  equipment: ['equipment'],
  drain: ['drain'],
  floor: ['zone'],
  ground: ['zone'],
};

/** The value in the unit of the record; null where nothing, or nothing that can be real, was typed. */
function typedValue(
  quantity: criteria.Quantity,
  { typed, answer }: MeasureForm,
  system: Settings['units'],
): { readonly value: number | boolean | null; readonly isReal: boolean } {
  const kind = typedAs(quantity);
  if (kind.as === 'answer') return { value: answer === '' ? null : answer === 'yes', isReal: true };
  const text = typed.quantity ?? '';
  let value: number | null;
  if (kind.as === 'tape') {
    const isMinus = text.trim().startsWith('-');
    const read = units.parseLength(text.replace('-', ''), system === 'us' ? 'in' : 'mm');
    value = read.ok ? units.metersFromNanometers(read.nanometers) * (isMinus ? -1 : 1) : null;
  } else value = readQuantity(text, kind, system);
  const { range } = quantity;
  const isReal = value === null || range === undefined || (value >= range[0] && value <= range[1]);
  return { value: isReal ? value : null, isReal };
}

/** Any other quantity: searched for, typed in its unit or answered, and held against what asks for it. */
export function QuantityForm(given: KindFormProps) {
  const { draft } = given;
  const quantity = criteria.findQuantity(draft.form.quantity);
  if (quantity === undefined) {
    return (
      <QuantityList
        onChosen={(key) => draft.change({ quantity: key, typed: {}, answer: '', assumed: false, saved: [] })}
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
  const { typed, last, answer, assumed } = form;
  const kind = typedAs(quantity);
  const { value, isReal } = typedValue(quantity, form, system);
  const shown =
    value === null
      ? ''
      : typeof value === 'boolean'
        ? say(value ? 'yes' : 'no')
        : quantityText(quantity, value, system);
  const type = (text: string) => change({ typed: { ...typed, quantity: text } });
  const [low, high] = quantity.range ?? [0, 0];
  const problem = isReal
    ? undefined
    : say('outsideRange', {
        low: quantityText(quantity, low, system),
        high: quantityText(quantity, high, system),
      });
  return (
    <ReadingForm
      props={props}
      draft={draft}
      kind="observation"
      kinds={KINDS[quantity.place]}
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
      {(save) =>
        kind.as === 'answer' ? (
          <Choice
            label={quantityTitle(quantity.key, language)}
            value={answer}
            options={[
              ['yes', say('yes')],
              ['no', say('no')],
            ]}
            onChange={(chosen) => change({ answer: chosen })}
          />
        ) : kind.as === 'tape' ? (
          <>
            <FigurePad
              label={quantityTitle(quantity.key, language)}
              typed={typed.quantity ?? ''}
              onType={type}
              onDone={save}
              last={last.quantity}
              bareUnit={system === 'us' ? 'in' : 'mm'}
              signed={kind.signed}
              embedded
            />
            {problem !== undefined && <p className="problem">{problem}</p>}
          </>
        ) : (
          <NumberPad
            slots={[
              {
                name: 'quantity',
                label: quantityTitle(quantity.key, language),
                dimension: kind.dimension,
                typed: typed.quantity ?? '',
                last: last.quantity,
                signed: kind.signed,
                symbol: typedUnit(kind, system),
                problem,
                read: (text) => readQuantity(text, kind, system),
              },
            ]}
            onType={(_, text) => type(text)}
            onDone={save}
          />
        )
      }
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
