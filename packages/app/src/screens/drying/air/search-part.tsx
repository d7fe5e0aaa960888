import type { DistributionBand } from '@undercroft/assessment';
import { useEffect, useRef, useState } from 'react';
import type { JobView } from '../../../jobs/open-job.ts';
import { Button } from '../../../parts/button.tsx';
import { Notice } from '../../../parts/notice.tsx';
import { useTexts } from '../../../text/texts.ts';
import type { AirSearchOutcome } from '../../../worker/api.ts';
import { searchAir } from '../../../worker/computer.ts';
import { useRequest } from '../../../worker/use-assessment.ts';
import { airTexts } from './air-texts.ts';

type Found = Extract<AirSearchOutcome, { ok: true }>;

interface SearchPartProps {
  readonly view: JobView;
  readonly onFound: (placed: Pick<DistributionBand, 'machine' | 'fans'>) => void;
  readonly said: (found: Found) => string;
}

/** Looks for a better arrangement, in a worker that ends with it, and puts the best one on the plan. */
export function SearchPart({ view, onFound, said }: SearchPartProps) {
  const say = useTexts(airTexts);
  const request = useRequest(view);
  const running = useRef<{ cancel(): void } | null>(null);
  const [outcome, setOutcome] = useState<AirSearchOutcome | 'busy' | null>(null);
  useEffect(() => () => running.current?.cancel(), []);
  const start = () => {
    if (request === null) return;
    setOutcome('busy');
    const run = searchAir(request);
    running.current = run;
    run.outcome.then(
      (found) => {
        if (running.current !== run) return;
        running.current = null;
        setOutcome(found);
        if (found.ok && found.suggested !== null) onFound(found.suggested);
      },
      (error: Error) => {
        if (running.current === run) setOutcome({ ok: false, reason: error.message });
      },
    );
  };
  const stop = () => {
    running.current?.cancel();
    running.current = null;
    setOutcome(null);
  };
  return (
    <div>
      {outcome === 'busy' ? (
        <>
          <p role="status">{say('looking')}</p>
          <Button onPress={stop}>{say('cancel')}</Button>
        </>
      ) : (
        <Button look="main" onPress={start} isDisabled={request === null}>
          {say('better')}
        </Button>
      )}
      {outcome !== null && outcome !== 'busy' && outcome.ok && <p role="status">{said(outcome)}</p>}
      {outcome !== null && outcome !== 'busy' && !outcome.ok && (
        <Notice kind="wrong">{outcome.reason}</Notice>
      )}
    </div>
  );
}
