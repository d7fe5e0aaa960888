import { isSurveyed } from '@undercroft/record';
import { Suspense, use } from 'react';
import { useJob, useJobView } from '../jobs/hooks.ts';
import type { OpenJob } from '../jobs/open-job.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import { useAssessment } from '../worker/use-assessment.ts';
import { Boundary } from './boundary.tsx';
import { Disagreements } from './disagreements.tsx';
import { PlanCenter } from './plan-center.tsx';
import type { QuestionProps } from './question.ts';
import type { QuestionKey } from './question-keys.ts';
import { ANSWERED, partsOf } from './questions.ts';
import { hrefOf } from './route.ts';
import { SaveLine, UnsavedNotice } from './save-line.tsx';
import { shellTexts } from './shell-texts.ts';
import { SheetPlace, SheetsOfJob, useSheets } from './tool-sheet.tsx';
import { useIsDesk } from './use-is-desk.ts';
import { WipeLock } from './wipe-lock.tsx';
import './job-screen.css';

interface JobScreenProps {
  readonly id: string;
  readonly question: QuestionKey;
  readonly place?: string | undefined;
}

/** One job: its questions, the plan, and the answer to the question that is asked. */
export default function JobScreen({ id, question, place }: JobScreenProps) {
  const say = useTexts(shellTexts);
  const common = useTexts(commonTexts);
  const opening = useJob(id);
  if (opening.is === 'open') {
    return <Job key={id} openJob={opening.openJob} question={question} place={place} />;
  }
  return (
    <main className="page">
      {opening.is === 'opening' ? (
        <p>{common('loading')}</p>
      ) : (
        <>
          <h1>{say('jobFailed')}</h1>
          <Notice kind="wrong">
            <p>{opening.is === 'missing' ? say('jobMissing') : common(`${opening.fault}Fault`)}</p>
            <a href={hrefOf({ screen: 'jobs' })}>{say('toJobs')}</a>
          </Notice>
        </>
      )}
    </main>
  );
}

type OpenedProps = Omit<JobScreenProps, 'id'> & { readonly openJob: OpenJob };

function Job(props: OpenedProps) {
  return (
    <Boundary>
      <SheetsOfJob>
        <JobInFrame {...props} />
      </SheetsOfJob>
    </Boundary>
  );
}

function JobInFrame({ openJob, question, place }: OpenedProps) {
  const view = useJobView(openJob);
  const { open } = useSheets();
  const result = useAssessment(view, question === 'proof' || open?.name === 'picture');
  const props: QuestionProps = { openJob, view, result, place };
  const Frame = useIsDesk() ? DeskFrame : PhoneFrame;
  return <Frame {...props} question={question} />;
}

type FrameProps = QuestionProps & { readonly question: QuestionKey };

function Strip({ view, openJob, result, place }: QuestionProps) {
  const say = useTexts(shellTexts);
  const common = useTexts(commonTexts);
  const notShown = result.assessment?.criteriaCount.notShown;
  return (
    <header className="strip" data-place={place}>
      <a className="button quiet" href={hrefOf({ screen: 'jobs' })} aria-label={say('toJobs')}>
        ←
      </a>
      <div>
        <h1>{view.title}</h1>
        <p>
          <SaveLine view={view} />
          <span className="soft">
            {view.job === null || !isSurveyed(view.job)
              ? say('noPlan')
              : notShown === undefined
                ? ''
                : notShown === 0
                  ? say('allShown')
                  : say('missing', { count: notShown })}
          </span>
        </p>
      </div>
      <Button
        look="quiet"
        label={common('undo')}
        isDisabled={!view.canUndo}
        onPress={() => void openJob.undo()}
      >
        ↶
      </Button>
      <Button
        look="quiet"
        label={common('redo')}
        isDisabled={!view.canRedo}
        onPress={() => void openJob.redo()}
      >
        ↷
      </Button>
      {!useIsDesk() && <WipeLock />}
    </header>
  );
}

function Notices({ view, openJob }: QuestionProps) {
  const say = useTexts(shellTexts);
  return (
    <>
      <UnsavedNotice view={view} openJob={openJob} />
      {view.outdated && <Notice kind="wrong">{say('outdated')}</Notice>}
      <Disagreements view={view} openJob={openJob} />
    </>
  );
}

/** The questions that can be answered, each with the short label that a narrow screen shows. */
function QuestionList({
  id,
  question,
  onChosen,
}: {
  id: string;
  question: QuestionKey;
  onChosen?: () => void;
}) {
  const say = useTexts(shellTexts);
  return (
    <nav aria-label={say('questions')}>
      <ul className="questions">
        {ANSWERED.map((key) => (
          <li key={key}>
            <a
              href={hrefOf({ screen: 'job', id, question: key })}
              aria-current={key === question ? 'page' : undefined}
              onClick={onChosen}
            >
              <strong>{say(key)}</strong>
              <span>{say(`${key}Question`)}</span>
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function Part({ question, part, ...props }: FrameProps & { readonly part: 'Answer' | 'Center' | 'Tools' }) {
  const parts = use(partsOf(question));
  const Shown = parts[part] ?? (part === 'Center' ? PlanCenter : null);
  return Shown === null ? null : <Shown {...props} />;
}

function DeskFrame(props: FrameProps) {
  const say = useTexts(shellTexts);
  const common = useTexts(commonTexts);
  const { question, view } = props;
  return (
    <div className="desk">
      <Strip {...props} />
      <div className="desk-questions">
        <QuestionList id={view.id} question={question} />
      </div>
      <main className="desk-center" aria-label={say('plan')}>
        <Suspense fallback={<p className="page soft">{common('loading')}</p>}>
          <Part {...props} part="Center" />
          <div className="actions desk-tools">
            <Part {...props} part="Tools" />
          </div>
        </Suspense>
      </main>
      <section className="desk-answer" aria-label={say(`${question}Question`)}>
        <Notices {...props} />
        <SheetPlace />
        <Suspense fallback={<p className="soft">{common('loading')}</p>}>
          <h2>{say(`${question}Question`)}</h2>
          <Part {...props} part="Answer" />
        </Suspense>
      </section>
    </div>
  );
}

function PhoneFrame(props: FrameProps) {
  const say = useTexts(shellTexts);
  const common = useTexts(commonTexts);
  const { question, view } = props;
  const { open, show, close } = useSheets();
  const toggle = (sheet: 'questions' | 'answer') => (open?.name === sheet ? close() : show(sheet));
  return (
    <div className="phone">
      <Strip {...props} />
      <div className="phone-notices">
        <Notices {...props} />
      </div>
      <main className="phone-center" aria-label={say('plan')}>
        <Suspense fallback={<p className="page soft">{common('loading')}</p>}>
          <Part {...props} part="Center" />
        </Suspense>
      </main>
      {open?.name === 'questions' && (
        <Sheet title={say('questions')} onClose={close}>
          <QuestionList id={view.id} question={question} onChosen={() => show('answer')} />
        </Sheet>
      )}
      {open?.name === 'answer' && (
        <Sheet key={question} title={say(`${question}Question`)} onClose={close}>
          <Suspense fallback={<p className="soft">{common('loading')}</p>}>
            <Part {...props} part="Answer" />
          </Suspense>
        </Sheet>
      )}
      <SheetPlace />
      <div className="tools">
        <Button expanded={open?.name === 'questions'} onPress={() => toggle('questions')}>
          {say('questions')}
        </Button>
        <Button look="main" expanded={open?.name === 'answer'} onPress={() => toggle('answer')}>
          {say(question)}
        </Button>
        <Suspense fallback={null}>
          <Part {...props} part="Tools" />
        </Suspense>
      </div>
    </div>
  );
}
