import { type ReactNode, useEffect, useRef } from 'react';
import { randomName } from '../../jobs/author.ts';
import type { FormDraft } from '../../jobs/use-form-draft.ts';
import { takenNow, useTaking } from '../../jobs/use-taking.ts';
import { Button } from '../../parts/button.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Notice } from '../../parts/notice.tsx';
import { PlaceStep, usePlaceWords } from '../../parts/place/place-step.tsx';
import type { PlacedThing } from '../../parts/place/placed-things.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { afterSaving, type MeasureForm } from './measure-form.ts';
import { measureTexts } from './measure-texts.ts';

interface ReadingFormProps {
  readonly props: QuestionProps;
  readonly draft: FormDraft<MeasureForm>;
  /** Kind of the record. */
  readonly kind: 'air' | 'surface' | 'wood' | 'observation';
  /** What was measured, without place, time and person; null while something is missing. */
  readonly value: Readonly<Record<string, unknown>> | null;
  /** The value as it will be saved, for the button. */
  readonly shown: string;
  /** What is measured, in a line; a tap on it opens `details`. */
  readonly summary: string;
  readonly details: ReactNode;
  /** True where a person should look at the details first. */
  readonly opened?: boolean;
  readonly meaning: ReactNode;
  /** What changes in the form once it is saved, beside what always does. */
  readonly next?: () => Partial<MeasureForm>;
  /** Kinds of things on the plan that it can belong to. */
  readonly kinds?: readonly PlacedThing['kind'][] | undefined;
  /** The pad or the answers; `save` is for the Enter key. */
  readonly children: (save: () => void) => ReactNode;
}

/** The form of one reading: what, the value, what it means, where, and the button that saves it. */
export function ReadingForm({ props, draft, kind, value, ...form }: ReadingFormProps) {
  const { summary, details, opened, children, meaning, shown, next, kinds } = form;
  const say = useTexts(measureTexts);
  const placeWords = usePlaceWords();
  const { taking, take } = useTaking(props.openJob, props.view);
  const whole = useRef<HTMLDivElement>(null);
  const { isPlacing, place, saved, note, instrument } = draft.form;
  // Opens with the keys in sight, unless the details come first.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each step
  useEffect(() => {
    if (!opened) whole.current?.querySelector('.pad')?.scrollIntoView({ block: 'start' });
  }, [isPlacing]);
  if (isPlacing) {
    return (
      <PlaceStep
        props={props}
        place={place}
        kinds={kinds}
        onChange={(changed) => draft.change({ place: changed })}
        onDone={() => draft.change({ isPlacing: false })}
      />
    );
  }
  const where = placeWords(place);
  const save = () => {
    if (value === null || taking.is === 'saving' || taking.is === 'waiting') return;
    const item = randomName(16);
    const record = { ...value, place, ...takenNow(instrument), ...(note === '' ? {} : { note }) };
    void take([{ do: 'create', kind, item, value: record }], () =>
      draft.change({ ...afterSaving(draft.form, item), ...next?.() }),
    );
  };
  return (
    <div className="reading-form" ref={whole}>
      <details className="fold" open={opened}>
        <summary>{summary}</summary>
        <div className="reading-details">
          {details}
          <InstrumentPick view={props.view} draft={draft} />
          <Field label={say('note')} value={note} onChange={(text) => draft.change({ note: text })} />
        </div>
      </details>
      {children(save)}
      <div className="reading-foot">
        {taking.is === 'refused' && (
          <Notice kind="wrong">{say('notTaken', { expected: taking.expected })}</Notice>
        )}
        {taking.is === 'waiting' && <Notice kind="wrong">{say('notSaved')}</Notice>}
        {meaning}
        <p role="status" className="saved-line soft">
          {saved.length === 0 ? '' : say('savedCount', { count: saved.length })}
        </p>
        <div className="reading-actions">
          <Button onPress={() => draft.change({ isPlacing: true })}>
            <span className="place-button">
              {say('placeShort')}
              <small>{where ?? say('placeNone')}</small>
            </span>
          </Button>
          <Button look="main" isDisabled={value === null || taking.is === 'saving'} onPress={save}>
            {shown === '' ? say('save') : say('saveMeasured', { value: shown })}
          </Button>
        </div>
      </div>
    </div>
  );
}

interface InstrumentPickProps {
  readonly view: QuestionProps['view'];
  readonly draft: FormDraft<MeasureForm>;
}

function InstrumentPick({ view, draft }: InstrumentPickProps) {
  const say = useTexts(measureTexts);
  const instruments = view.job?.readings.instruments ?? [];
  if (instruments.length === 0) return null;
  return (
    <Pick
      label={say('instrument')}
      value={draft.form.instrument}
      options={[['', say('noInstrument')], ...instruments.map(({ id, name }) => [id, name] as const)]}
      onChange={(instrument) => draft.change({ instrument })}
    />
  );
}
