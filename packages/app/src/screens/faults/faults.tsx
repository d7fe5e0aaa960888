import type { CriterionResult, Verdict } from '@undercroft/assessment';
import { isSurveyed } from '@undercroft/record';
import { useState } from 'react';
import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { PlanView } from '../../plan/plan-view.tsx';
import { At } from '../../plan/projection.tsx';
import { PlanCenter } from '../../shell/plan-center.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { MeasureTool } from '../measure/measure-tool.tsx';
import { PictureTool } from '../pictures/picture-tool.tsx';
import { Board } from './board.tsx';
import { boardTexts } from './board-texts.ts';
import { Criterion } from './criterion.tsx';
import { faultsTexts } from './faults-texts.ts';
import { findingTexts } from './finding-texts.ts';
import { FindingTool } from './finding-tool.tsx';
import { Headline } from './headline.tsx';
import { ReadingList } from './reading-list.tsx';
import './faults.css';
import './findings.css';

const VERDICTS: readonly Verdict[] = ['not-met', 'not-shown', 'met'];

/** The plan; where the address names a finding that has a place, with a ring around that place. */
export function Center(props: QuestionProps) {
  const say = useTexts(boardTexts);
  const { view, result, place } = props;
  const index = view.job?.findings.findIndex(({ id }) => id === place) ?? -1;
  const at = view.job?.findings[index]?.place.at;
  if (at === undefined || view.job === null || !isSurveyed(view.job)) return <PlanCenter {...props} />;
  return (
    <PlanView view={view} result={result} label={say('placeOnPlan', { number: index + 1 })} focus={at}>
      <At point={at}>
        <circle r="22" className="finding-ring-halo" />
        <circle r="22" className="finding-ring" />
      </At>
    </PlanView>
  );
}

/** What is wrong: the finding in a sentence, what each reading says, and every criterion with its proof. */
export function Answer({ view, result, place }: QuestionProps) {
  const say = useTexts(faultsTexts);
  const common = useTexts(commonTexts);
  const finding = useTexts(findingTexts);
  const { assessment } = result;
  if (view.job === null || !isSurveyed(view.job)) {
    return (
      <div className="faults">
        <p>{say('noJob')}</p>
        {view.job !== null && <Board job={view.job} />}
      </div>
    );
  }
  if (assessment === null) {
    return result.reason === undefined ? (
      <p className="soft">{common('computing')}</p>
    ) : (
      <Notice kind="wrong">{result.reason}</Notice>
    );
  }
  return (
    <div className="faults">
      <Headline assessment={assessment} />
      <h3>{finding('findings')}</h3>
      <Board job={view.job} assessment={assessment} />
      <h3>{say('readings')}</h3>
      <ReadingList readings={assessment.readings} />
      <h3>{say('criteria')}</h3>
      {VERDICTS.map((verdict) => (
        <OfVerdict
          key={verdict}
          verdict={verdict}
          criteria={assessment.criteria.filter((one) => one.verdict === verdict)}
          place={place}
        />
      ))}
    </div>
  );
}

export function Tools(props: QuestionProps) {
  return (
    <>
      <FindingTool {...props} />
      <MeasureTool {...props} />
      <PictureTool {...props} />
    </>
  );
}

/** So many stand there at once; a phone under the house should not build two hundred. */
const FIRST = 8;

interface OfVerdictProps {
  readonly verdict: Verdict;
  readonly criteria: readonly CriterionResult[];
  readonly place?: string | undefined;
}

function OfVerdict({ verdict, criteria, place }: OfVerdictProps) {
  const say = useTexts(faultsTexts);
  const common = useTexts(commonTexts);
  const [all, setAll] = useState(false);
  const sorted = [...criteria].sort((a, b) => Number(b.governs) - Number(a.governs));
  const shown = all ? sorted : sorted.filter((one, index) => index < FIRST || one.id === place);
  const word = common(verdict === 'met' ? 'met' : verdict === 'not-met' ? 'notMet' : 'notShown');
  return (
    <>
      <ul className="criteria">
        {shown.map((one) => (
          <Criterion key={one.id} criterion={one} isPlace={one.id === place} />
        ))}
      </ul>
      {shown.length < sorted.length && (
        <Button onPress={() => setAll(true)}>
          <VerdictMark verdict={verdict} wordless />
          {say('moreOf', { count: sorted.length - shown.length, verdict: word })}
        </Button>
      )}
    </>
  );
}
