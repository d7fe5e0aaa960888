import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { useSettings } from '../../settings/settings.ts';
import type { QuestionProps } from '../../shell/question.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { useAnswering } from './answering.ts';
import { missingTexts } from './missing-texts.ts';
import { answerText, questionText } from './question-words.ts';
import { useMissing } from './use-missing.ts';
import { WantedRow } from './wanted-row.tsx';
import '../../parts/form.css';
import '../../parts/results.css';
import './missing.css';

/** So many stand there at once. */
const FIRST = 5;

/** What the assessment needs next, what matters most first; a tap opens the form for it or answers it. */
export function StillMissing(props: QuestionProps) {
  const say = useTexts(missingTexts);
  const common = useTexts(commonTexts);
  const [all, setAll] = useState(false);
  const wanted = useMissing(props.view, props.result);
  const { taking, answer } = useAnswering(props.openJob, props.view);
  if (props.view.job === null) return null;
  const count = wanted?.length ?? 0;
  const shown = wanted === null ? [] : all ? wanted : wanted.slice(0, FIRST);
  return (
    <section className="missing" aria-label={say('title')}>
      <h3>{say('title')}</h3>
      <p className="soft">
        {wanted === null ? common('computing') : count === 0 ? say('nothing') : say('count', { count })}
      </p>
      {taking.is === 'refused' && (
        <Notice kind="wrong">{say('notTaken', { expected: taking.expected })}</Notice>
      )}
      {taking.is === 'waiting' && <Notice kind="wrong">{say('notSaved')}</Notice>}
      <ol>
        {shown.map((one) => (
          <WantedRow key={one.key} wanted={one} onAnswer={answer} />
        ))}
      </ol>
      {count > FIRST && (
        <Button onPress={() => setAll(!all)}>
          {all ? say('fewer') : say('more', { count: count - FIRST })}
        </Button>
      )}
      <Given {...props} />
    </section>
  );
}

/** Answers that were given, each to be taken back. */
function Given({ openJob, view }: QuestionProps) {
  const say = useTexts(missingTexts);
  const { language } = useSettings();
  const answers = view.job?.readings.answers ?? [];
  if (answers.length === 0) return null;
  return (
    <details className="fold">
      <summary>{say('answered', { count: answers.length })}</summary>
      <ul className="plain-list">
        {answers.map(({ id, question, answer }) => {
          const text = questionText(question, language);
          const said = answerText(typeof answer === 'boolean' ? (answer ? 'yes' : 'no') : answer, language);
          return (
            <li key={id}>
              <span>
                {text} <strong>{said}</strong>
              </span>
              <Button
                look="quiet"
                label={say('takeBack', { question: text })}
                onPress={() => void openJob.commit({ do: 'remove', kind: 'answer', item: id })}
              >
                {say('takeBackShort')}
              </Button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
