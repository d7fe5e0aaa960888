import { criteria } from '@undercroft/engine';
import { useEffect, useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { ToolSheet, useSheets } from '../../shell/tool-sheet.tsx';
import { useTexts } from '../../text/texts.ts';
import { typedText } from '../measure/quantity-unit.ts';
import { DefectList } from './defect-list.tsx';
import { FindingEditor } from './finding-editor.tsx';
import { FIRST_FINDING, formOf, useFindingForm } from './finding-form.ts';
import { findingTexts } from './finding-texts.ts';
import '../../parts/form.css';
import '../../parts/results.css';
import './findings.css';

/** The sheet of a finding: the catalogue, then its form. */
export default function FindingSheet(props: QuestionProps) {
  const say = useTexts(findingTexts);
  const { units: system } = useSettings();
  const { open } = useSheets();
  const draft = useFindingForm(props.view.id);
  const [savedId, setSavedId] = useState<string | null>(null);
  const [removed, setRemoved] = useState<{ readonly id: string; readonly title: string } | null>(null);
  const { form, change } = draft;
  const { job } = props.view;
  const wish = open?.name === 'finding' ? open.wish : null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each wish counts once
  useEffect(() => {
    const finding = job?.findings.find(({ id }) => id === wish?.finding);
    if (finding === undefined) return;
    const { measured } = finding;
    const quantity = measured === undefined ? undefined : criteria.findQuantity(measured.quantity);
    const typed =
      measured === undefined || quantity === undefined ? '' : typedText(quantity, measured.value, system);
    change(formOf(finding, typed));
  }, [wish]);
  const number = savedId === null ? -1 : (job?.findings.findIndex(({ id }) => id === savedId) ?? -1);
  const { search, subject, part, place } = form;
  const back =
    form.view === 'pick'
      ? undefined
      : () => change(form.view === 'form' ? { ...FIRST_FINDING, search, subject, part } : { view: 'form' });
  const remove = async () => {
    const { id, title } = form;
    const result = await props.openJob.commit({ do: 'remove', kind: 'finding', item: id });
    if (!result.ok) return;
    setRemoved({ id, title });
    draft.drop();
  };
  const putBack = (id: string) => {
    void props.openJob.commit({ do: 'restore', kind: 'finding', item: id });
    setRemoved(null);
  };
  return (
    <ToolSheet name="finding" title={say(form.view === 'pick' ? 'whatSeen' : 'finding')} onBack={back}>
      {form.view === 'pick' && number >= 0 && (
        <Notice kind="plain">{say('saved', { number: number + 1 })}</Notice>
      )}
      {form.view === 'pick' && removed !== null && (
        <Notice kind="plain" actions={<Button onPress={() => putBack(removed.id)}>{say('undo')}</Button>}>
          {say('removed', { what: removed.title })}
        </Notice>
      )}
      {job !== null &&
        (form.view === 'pick' ? (
          <DefectList
            draft={draft}
            onChosen={(defect) => {
              setSavedId(null);
              change({ defect, view: 'form' });
            }}
          />
        ) : (
          <FindingEditor
            props={props}
            job={job}
            draft={draft}
            onSaved={(id) => {
              setSavedId(id);
              // The place stays: what is seen next is often seen beside it.
              change({ ...FIRST_FINDING, place, part, subject });
            }}
            onRemove={() => void remove()}
          />
        ))}
    </ToolSheet>
  );
}
