import type { CriterionResult } from '@undercroft/assessment';
import { useEffect, useRef } from 'react';
import { VerdictMark } from '../../parts/verdict-mark.tsx';
import { Why } from '../../parts/why.tsx';
import { commonTexts } from '../../text/common.ts';
import { shownTime, useTexts } from '../../text/texts.ts';
import { faultsTexts } from './faults-texts.ts';

interface CriterionProps {
  readonly criterion: CriterionResult;
  /** True when the address names it. */
  readonly isPlace: boolean;
}

/** One criterion: whether it is met, why, by which source and on whose word. */
export function Criterion({ criterion, isPlace }: CriterionProps) {
  const say = useTexts(faultsTexts);
  const common = useTexts(commonTexts);
  const item = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isPlace) item.current?.scrollIntoView({ block: 'nearest' });
  }, [isPlace]);
  const {
    verdict,
    title,
    reason,
    limit,
    limitSi,
    source,
    sourceKnown,
    evidence,
    consequence,
    licensedTrade,
  } = criterion;
  return (
    <li ref={item} className={isPlace ? 'is-place' : ''}>
      <VerdictMark verdict={verdict} />
      <strong>{title}</strong>
      <p>{reason}</p>
      {licensedTrade !== undefined && <p className="soft">{say('licensed', { trade: licensedTrade })}</p>}
      <Why about={title}>
        <p>{say('limit', { limit, si: limitSi })}</p>
        <p>
          {say('source')}: {source} <span className="soft">({sourceKnown})</span>
        </p>
        {consequence !== undefined && (
          <p>
            {say('consequence')}: {consequence}
          </p>
        )}
        {evidence.length === 0 ? (
          <p>{say('noEvidence')}</p>
        ) : (
          <>
            <p>{say('evidence')}:</p>
            <ul>
              {evidence.map(({ value, unit, assumed, origin }, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: evidence has no id of its own and never moves
                <li key={index}>
                  <span className={`figure${assumed ? ' assumed' : ''}`}>
                    {String(value)} {unit}
                  </span>{' '}
                  {assumed && <span className="soft">{common('assumed')} </span>}
                  <span className="soft">
                    {origin.note ?? origin.kind}
                    {origin.who !== undefined &&
                      ` · ${say('takenBy', { who: origin.who, when: origin.when === undefined ? '' : shownTime(origin.when) })}`}
                  </span>
                </li>
              ))}
            </ul>
          </>
        )}
      </Why>
    </li>
  );
}
