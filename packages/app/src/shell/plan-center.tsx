import { isSurveyed } from '@undercroft/record';
import { useEffect, useRef, useState } from 'react';
import { Notice } from '../parts/notice.tsx';
import { useSettings } from '../settings/settings.ts';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import { usePlanSvg } from '../worker/use-assessment.ts';
import type { QuestionProps } from './question.ts';
import { shellTexts } from './shell-texts.ts';

/** Width of an element [px], to the nearest 16, so that a scroll bar does not draw the plan anew. */
function useWidth(): readonly [React.RefObject<HTMLDivElement | null>, number] {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry.contentRect.width / 16) * 16));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [place, width];
}

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
  const common = useTexts(commonTexts);
  const { ground } = useSettings();
  const [place, width] = useWidth();
  const paper = ground === 'sun' ? 'paper' : ground;
  const { svg, failed } = usePlanSvg(view.job, result.assessment, width, paper);
  return (
    <div ref={place} className="plan">
      {view.job === null || !isSurveyed(view.job) ? (
        <div className="empty">
          <ExampleSketch />
          <p>{say('emptyPlan')}</p>
          <p className="soft">{say('emptyPlanExample')}</p>
        </div>
      ) : svg !== null ? (
        // The text is drawn by our own worker, which escapes what people wrote.
        // biome-ignore lint/security/noDangerouslySetInnerHtml: SVG of our own making
        <div className="drawing" dangerouslySetInnerHTML={{ __html: svg }} />
      ) : failed || result.reason !== undefined ? (
        <Notice kind="wrong" title={say('planFailed')}>
          {result.reason ?? common('failedScreen')}
        </Notice>
      ) : (
        <p className="soft empty">{common('computing')}</p>
      )}
    </div>
  );
}
