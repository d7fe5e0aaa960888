import { isSurveyed } from '@undercroft/record';
import { PlanView } from '../plan/plan-view.tsx';
import { useTexts } from '../text/texts.ts';
import type { QuestionProps } from './question.ts';
import { shellTexts } from './shell-texts.ts';

/** An outline with its door and piers: what will stand here, as a sketch. */
function ExampleSketch() {
  return (
    <svg viewBox="0 0 200 120" width="260" aria-hidden="true" className="example">
      <path d="M20 20h150v50h-40v34H20z" fill="none" stroke="currentColor" strokeWidth="4" />
      <path d="M60 104h24" stroke="var(--ground)" strokeWidth="6" />
      <path d="M60 104a24 24 0 0 1 24-24" fill="none" stroke="currentColor" strokeDasharray="4 3" />
      {[50, 80, 110, 140].map((x) => (
        <rect
          key={x}
          x={x - 4}
          y={46}
          width="8"
          height="8"
          fill="none"
          stroke="currentColor"
          strokeWidth="2"
        />
      ))}
    </svg>
  );
}

/** The plan of the space with all that was seen on it, or what a plan will show. */
export function PlanCenter({ view, result }: QuestionProps) {
  const say = useTexts(shellTexts);
  if (view.job !== null && isSurveyed(view.job)) {
    return <PlanView view={view} result={result} label={say('plan')} />;
  }
  return (
    <div className="empty">
      <ExampleSketch />
      <p>{say('emptyPlan')}</p>
      <p className="soft">{say('emptyPlanExample')}</p>
    </div>
  );
}
