import type { Assessment, BudgetResult } from '@undercroft/assessment';
import { isSurveyed } from '@undercroft/record';
import { flowText, midSentence } from '../../parts/measure.ts';
import { Notice } from '../../parts/notice.tsx';
import { AssumptionList } from '../../parts/why/assumption-list.tsx';
import { pathTitle } from '../../parts/why/path-words.ts';
import { useSettings } from '../../settings/settings.ts';
import { PlanCenter } from '../../shell/plan-center.tsx';
import type { QuestionProps } from '../../shell/question.ts';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import { Balance } from './balance.tsx';
import { budgetTime, mainPath } from './budget-words.ts';
import { causesTexts } from './causes-texts.ts';
import { ChainPart } from './chain.tsx';
import { FloorAir } from './floor-air.tsx';
import { ReadingsMean } from './readings-mean.tsx';
import { StateOfAir } from './state-of-air.tsx';
import '../../parts/results.css';
import './causes.css';

/**
 * Where the water comes from: the balance of the survey day and of the most humid month, path by path. Drawings that
 * explain the space stand here in the order in which they are read.
 */
export function Center(props: QuestionProps) {
  const say = useTexts(causesTexts);
  const { language } = useSettings();
  const { assessment } = props.result;
  if (assessment === null) return <PlanCenter {...props} />;
  const { surveyDay, designMonth } = assessment.budgets;
  return (
    <div className="results-center">
      {surveyDay === undefined ? (
        <Notice kind="plain">{say('notRead')}</Notice>
      ) : (
        <Balance title={say('surveyDay', { day: budgetTime(surveyDay, language) })} budget={surveyDay} />
      )}
      <Balance
        title={say('designMonth', { month: budgetTime(designMonth, language) })}
        budget={designMonth}
      />
      <p className="soft">{say('how')}</p>
      <ChainPart assessment={assessment} />
    </div>
  );
}

/** Why it is wet: the main path in a sentence, the state of the air, what goes up into the house, what readings mean. */
export function Answer({ view, result }: QuestionProps) {
  const say = useTexts(causesTexts);
  const common = useTexts(commonTexts);
  const { assessment } = result;
  if (view.job === null || !isSurveyed(view.job)) return <p>{say('noJob')}</p>;
  if (assessment === null) {
    return result.reason === undefined ? (
      <p className="soft">{common('computing')}</p>
    ) : (
      <Notice kind="wrong">{result.reason}</Notice>
    );
  }
  const { surveyDay, designMonth } = assessment.budgets;
  return (
    <div className="results">
      <MainPaths assessment={assessment} />
      {surveyDay !== undefined && <StateOfAir assessment={assessment} of="surveyDay" budget={surveyDay} />}
      <StateOfAir assessment={assessment} of="designMonth" budget={designMonth} />
      <FloorAir assessment={assessment} />
      <h3>{say('readings')}</h3>
      <ReadingsMean readings={assessment.readings} />
      <details className="fold">
        <summary>{say('assumptions', { count: assessment.assumptions.length })}</summary>
        <AssumptionList assumptions={assessment.assumptions} />
      </details>
    </div>
  );
}

function MainPaths({ assessment }: { readonly assessment: Assessment }) {
  const say = useTexts(causesTexts);
  const { units: system, language } = useSettings();
  const { surveyDay, designMonth } = assessment.budgets;
  const values = (budget: BudgetResult) => {
    const main = mainPath(budget);
    if (main === undefined) return undefined;
    return {
      path: midSentence(pathTitle(main, language)),
      most: flowText(main.kgPerDay, system, 'bare'),
      total: flowText(budget.totalInKgPerDay, system, 'bare'),
    };
  };
  const day = surveyDay === undefined ? undefined : values(surveyDay);
  const month = values(designMonth);
  return (
    <p className="headline">
      {day !== undefined && `${say('mainDay', day)} `}
      {month !== undefined && say('mainMonth', { ...month, month: budgetTime(designMonth, language) })}
      {day === undefined && month === undefined && say('balanceNone')}
    </p>
  );
}
