import type { SizingResult } from '@undercroft/assessment';
import { isSurveyed } from '@undercroft/record';
import { Button } from '../../parts/button.tsx';
import { flowText, typeset } from '../../parts/measure.ts';
import { Notice } from '../../parts/notice.tsx';
import '../../parts/results.css';
import { AssumptionList } from '../../parts/why/assumption-list.tsx';
import { useSettings } from '../../settings/settings.ts';
import { PlanCenter } from '../../shell/plan-center.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { go, hrefOf } from '../../shell/route.ts';
import { useIsDesk } from '../../shell/use-is-desk.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { AirView } from './air/air-view.tsx';
import { BeforeAfter } from './before-after.tsx';
import { beforeAndAfter, percentText } from './case-words.ts';
import { dryingTexts } from './drying-texts.ts';
import { MachineList } from './machine-list.tsx';
import { MachineView } from './machine-view.tsx';
import { RankingView } from './ranking-view.tsx';
import { RepairList } from './repair-list.tsx';
import { Targets } from './targets.tsx';
import { type DryingState, useDrying } from './use-drying.ts';
import { VIEW_KEYS, viewOf } from './view-keys.ts';
import { WeatherPart } from './weather-part.tsx';
import { YearView } from './year-view.tsx';
import './drying.css';

/** What is computed: the year before and after, the machine that it takes, or which repairs buy dryness. */
export function Center(props: QuestionProps) {
  const isDesk = useIsDesk();
  const state = useDrying(props);
  const { view, place } = props;
  if (state === null) return <PlanCenter {...props} />;
  const shown = viewOf(place);
  return (
    <div className="results-center">
      {isDesk && <Views id={view.id} place={place} />}
      {shown === 'year' && <YearView view={view} state={state} />}
      {shown === 'air' && <AirView view={view} result={props.result} assessment={state.assessment} />}
      {shown === 'machine' && <MachineView assessment={state.assessment} sizing={state.season.sizing} />}
      {shown === 'ranking' && <RankingView view={view} state={state} />}
    </div>
  );
}

/** The views of the middle as links, on a desk. */
function Views({ id, place }: { readonly id: string; readonly place: string | undefined }) {
  const say = useTexts(dryingTexts);
  return (
    <nav aria-label={say('views')}>
      <ul className="views">
        {VIEW_KEYS.map((key) => (
          <li key={key}>
            <a
              href={hrefOf({ screen: 'job', id, question: 'drying', place: key })}
              aria-current={viewOf(place) === key ? 'page' : undefined}
            >
              {say(key)}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** The views of the middle under the thumb, on a phone: those that are not shown. */
export function Tools({ view, place }: QuestionProps) {
  const say = useTexts(dryingTexts);
  if (useIsDesk()) return null;
  return VIEW_KEYS.filter((key) => key !== viewOf(place)).map((key) => (
    <Button key={key} onPress={() => go({ screen: 'job', id: view.id, question: 'drying', place: key })}>
      {say(key)}
    </Button>
  ));
}

/** What will dry it: the choices, and what the year comes to with them. */
export function Answer(props: QuestionProps) {
  const say = useTexts(dryingTexts);
  const common = useTexts(commonTexts);
  const { view, result, openJob } = props;
  const state = useDrying(props);
  if (view.job === null || !isSurveyed(view.job)) return <p>{say('noJob')}</p>;
  if (result.reason !== undefined) return <Notice kind="wrong">{result.reason}</Notice>;
  if (result.assessment === null) return <p className="soft">{common('computing')}</p>;
  if (state === null) return <Notice kind="wrong">{say('noYear')}</Notice>;
  const { season, assessment } = state;
  const { design } = view.job;
  // What the balance and the year both take for granted stands once, as the year has it.
  const assumptions = [
    ...new Map([...assessment.assumptions, ...season.assumptions].map((one) => [one.key, one])).values(),
  ];
  return (
    <div className="results">
      <Verdict state={state} />
      <BeforeAfter assessment={assessment} season={season} />
      <RepairList openJob={openJob} repairs={design.repairs} cases={state.cases} season={season} />
      <Needed sizing={season.sizing} />
      <MachineList openJob={openJob} machines={design.machines} />
      <Targets openJob={openJob} job={view.job} season={season} />
      <WeatherPart jobId={view.id} season={season} />
      <details className="fold">
        <summary>{say('assumptions', { count: assumptions.length })}</summary>
        <AssumptionList assumptions={assumptions} />
      </details>
      {season.notices.length > 0 && (
        <>
          <h3>{say('notices')}</h3>
          {season.notices.map((notice) => (
            <p key={notice.code + notice.message}>{typeset(notice.message)}</p>
          ))}
        </>
      )}
    </div>
  );
}

/** The whole answer in a sentence, which is said again when it changes. */
function Verdict({ state: { season } }: { readonly state: DryingState }) {
  const say = useTexts(dryingTexts);
  const [found, repaired] = beforeAndAfter(season);
  return (
    <p className="headline" role="status">
      {repaired === undefined
        ? say('verdictFound', { found: found.daysAbove80 })
        : say('verdict', { found: found.daysAbove80, repaired: repaired.daysAbove80 })}
    </p>
  );
}

function Needed({ sizing }: { readonly sizing: SizingResult }) {
  const say = useTexts(dryingTexts);
  const { units: system } = useSettings();
  const flow = (kgPerDay: number) => flowText(kgPerDay, system);
  const label = sizing.labels.find(({ ratingPoint }) => ratingPoint === '80F-60');
  const { chosen } = sizing;
  const isOwn = sizing.machines.some(({ id, from }) => id === chosen?.id && from === 'list');
  return (
    <>
      <h3>{say('needed')}</h3>
      <p className="assumed-sentence">
        {say('neededSentence', {
          target: percentText(sizing.targetRelativeHumidity),
          steady: flow(sizing.steadyKgPerDay),
          low: flow(sizing.steadyLowKgPerDay),
          high: flow(sizing.steadyHighKgPerDay),
          pullDown: flow(sizing.withPullDownKgPerDay),
          label: label === undefined ? say('notKnown') : flow(label.steadyKgPerDay),
        })}
      </p>
      <p>
        {chosen === undefined
          ? say('noMachine')
          : say('yearsRunWith', {
              name: isOwn ? chosen.name : say('justLargeEnough'),
              why: say(isOwn ? 'chosenOwn' : 'chosenLarge'),
            })}
      </p>
    </>
  );
}
