import { criteria } from '@undercroft/engine';
import type { Change, Finding, Job } from '@undercroft/record';
import { useRef } from 'react';
import { randomName } from '../../jobs/author.ts';
import type { FormDraft } from '../../jobs/use-form-draft.ts';
import { takenNow, useTaking } from '../../jobs/use-taking.ts';
import { Button } from '../../parts/button.tsx';
import { Field, Pick } from '../../parts/field.tsx';
import { Notice } from '../../parts/notice.tsx';
import { PlaceStep, usePlaceWords } from '../../parts/place/place-step.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { useTexts } from '../../text/texts.ts';
import { quantityTitle } from '../measure/find-quantity.ts';
import { QuantityInput } from '../measure/quantity-input.tsx';
import { quantityText, readTyped } from '../measure/quantity-unit.ts';
import { changesOf, type FindingForm } from './finding-form.ts';
import { FindingMedia } from './finding-media.tsx';
import { findingTexts } from './finding-texts.ts';
import { KINDS_OF_PARTS, partOf } from './parts-of-space.ts';
import { Prompts, RightToCure } from './prompts.tsx';

const SEVERITIES = ['4', '3', '2', '1', '0'] as const;

/** Grade of a finding in own words that nobody graded. */
const UNGRADED = 1;

type Measured = Finding['measured'];

/** What goes into the record for a form: the value as evidence of its own, since criteria judge it, and the finding. */
function changesFor(
  form: FindingForm,
  title: string,
  measured: Measured,
  before: Finding | undefined,
  item: string,
): Change[] {
  const isNew = measured !== undefined && JSON.stringify(before?.measured) !== JSON.stringify(measured);
  const observation = randomName(16);
  const earlier = before?.observationIds ?? [];
  const { when, who } = takenNow();
  const now = {
    defect: form.defect,
    title,
    place: form.place,
    photoIds: form.photoIds,
    observationIds: isNew ? [...earlier, observation] : earlier,
    ...(measured === undefined ? {} : { measured }),
    ...(form.severity === '' ? {} : { severity: Number(form.severity) }),
    ...(form.clipIds.length === 0 ? {} : { clipIds: form.clipIds }),
    ...(form.audioIds.length === 0 ? {} : { audioIds: form.audioIds }),
    ...(form.note.trim() === '' ? {} : { note: form.note.trim() }),
  };
  const value = { ...measured, place: form.place, photoIds: [...form.photoIds].slice(0, 100), when, who };
  return [
    ...(isNew ? [{ do: 'create', kind: 'observation', item: observation, value } as const] : []),
    ...(before === undefined
      ? [{ do: 'create', kind: 'finding', item, value: { ...now, when, who } } as const]
      : changesOf(before, now)),
  ];
}

interface FindingEditorProps {
  readonly props: QuestionProps;
  readonly job: Job;
  readonly draft: FormDraft<FindingForm>;
  readonly onSaved: (id: string) => void;
  readonly onRemove: () => void;
}

/** One finding: what it is, how bad, where, measured or not, with pictures and words. */
export function FindingEditor({ props, job, draft, onSaved, onRemove }: FindingEditorProps) {
  const say = useTexts(findingTexts);
  const { language, units: system } = useSettings();
  const placeWords = usePlaceWords();
  const { taking, take } = useTaking(props.openJob, props.view);
  const { form, change } = draft;
  const latest = useRef(form);
  latest.current = form;
  const defect = criteria.defectOf(form.defect);
  const quantity = defect?.quantity === undefined ? undefined : criteria.findQuantity(defect.quantity);
  const value = quantity === undefined ? null : readTyped(quantity, form.measured, system).value;
  const title = defect === undefined ? form.title.trim() : defect.name[language];

  if (form.view === 'place') {
    return (
      <PlaceStep
        props={props}
        place={form.place}
        kinds={defect === undefined ? undefined : KINDS_OF_PARTS[partOf(defect)]}
        onChange={(place) => change({ place })}
        onDone={() => change({ view: 'form' })}
      />
    );
  }
  if (form.view === 'measure' && quantity !== undefined) {
    const done = () => change({ view: 'form' });
    return (
      <div className="reading-form">
        <p lang="en" className="soft">
          {quantity.measured}
        </p>
        <QuantityInput
          quantity={quantity}
          typed={form.measured}
          onType={(measured) => change({ measured })}
          onDone={done}
        />
        <div className="reading-foot">
          <div className="reading-actions">
            <Button onPress={() => change({ measured: '', view: 'form' })}>{say('noValue')}</Button>
            <Button look="main" isDisabled={value === null} onPress={done}>
              {say('takeValue')}
            </Button>
          </div>
        </div>
      </div>
    );
  }

  const save = () => {
    if (taking.is === 'saving' || taking.is === 'waiting' || title === '') return;
    const before = job.findings.find(({ id }) => id === form.id);
    const item = before?.id ?? randomName(16);
    const measured = value === null || quantity === undefined ? undefined : { quantity: quantity.key, value };
    void take(changesFor(form, title, measured, before, item), () => onSaved(item));
  };
  const shownValue =
    quantity === undefined || value === null
      ? ''
      : typeof value === 'boolean'
        ? say(value ? 'yes' : 'no')
        : quantityText(quantity, value, system);
  return (
    <div className="reading-form">
      {defect === undefined ? (
        <Field label={say('ownTitle')} value={form.title} onChange={(text) => change({ title: text })} />
      ) : (
        <>
          <div>
            <h3>{title}</h3>
            <p className="soft">{say('seen', { what: defect.seen[language] })}</p>
          </div>
          <Prompts defect={defect} />
          <RightToCure defects={[defect]} />
        </>
      )}
      <Button wide onPress={() => change({ view: 'place' })}>
        <span className="place-button">
          {say('place')}
          <small>{placeWords(form.place) ?? say('placeNone')}</small>
        </span>
      </Button>
      {quantity !== undefined && (
        <Button wide onPress={() => change({ view: 'measure' })}>
          <span className="place-button">
            {value === null ? say('measure') : say('measured', { what: shownValue })}
            <small>{quantityTitle(quantity.key, language)}</small>
          </span>
        </Button>
      )}
      {defect !== undefined && (
        <details>
          <summary className="summary-link">{say('prove')}</summary>
          <p>{defect.proof[language]}</p>
        </details>
      )}
      <Pick
        label={say('severity')}
        value={form.severity === '' ? String(defect?.severity ?? UNGRADED) : form.severity}
        options={SEVERITIES.map((one) => [one as string, say(`severity${one}`)] as const)}
        onChange={(severity) => change({ severity })}
      />
      <FindingMedia
        props={props}
        job={job}
        form={form}
        name={title}
        onAttach={(list, id, isOn) => {
          const rest = latest.current[list].filter((one) => one !== id);
          change({ [list]: isOn ? [...rest, id] : rest });
        }}
      />
      <Field label={say('note')} value={form.note} onChange={(note) => change({ note })} />
      {form.id !== '' && <Button onPress={onRemove}>{say('remove')}</Button>}
      <div className="reading-foot">
        {taking.is === 'refused' && (
          <Notice kind="wrong">{say('notTaken', { expected: taking.expected })}</Notice>
        )}
        {taking.is === 'waiting' && <Notice kind="wrong">{say('notSaved')}</Notice>}
        <Button look="main" wide isDisabled={title === '' || taking.is === 'saving'} onPress={save}>
          {say(form.id === '' ? 'save' : 'saveChanges')}
        </Button>
      </div>
    </div>
  );
}
