import type { AirQuantity } from '@undercroft/report';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { JobView } from '../../../jobs/open-job.ts';
import type { AirOutcome } from '../../../worker/api.ts';
import { airComputer, stateKey } from '../../../worker/computer.ts';
import { latestWins, Overtaken } from '../../../worker/latest-wins.ts';
import { useRequest } from '../../../worker/use-assessment.ts';
import { type Arranged, askedOf } from './arranged.ts';

interface Ask {
  readonly arranged: Arranged;
  readonly quantity: AirQuantity;
  readonly whole: boolean;
}

/** The air of an arrangement, the newest that is there. */
export interface AirState {
  readonly outcome: AirOutcome | null;
  readonly busy: boolean;
}

/** Nobody moved anything for so long [ms]: the range is worked out as well. */
const REST_MS = 250;

/** The air on the plan of a job for the arrangement that is tried, worked out in a worker of its own. */
export function useAir(view: JobView, arranged: Arranged, quantity: AirQuantity): AirState {
  const request = useRequest(view);
  const key = request === null ? null : stateKey(request, view.version);
  const [state, setState] = useState<AirState>({ outcome: null, busy: true });
  const now = useRef({ request, key });
  now.current = { request, key };
  const ask = useMemo(
    () =>
      latestWins(async ({ arranged: asked, whole, quantity: drawn }: Ask) => {
        const { request: of, key: named } = now.current;
        if (of === null || named === null) throw new Overtaken();
        return airComputer().air(of, named, askedOf(asked), whole, drawn);
      }),
    [],
  );
  useEffect(() => {
    if (key === null) return;
    let wanted = true;
    setState((before) => ({ ...before, busy: true }));
    const failed = (error: Error) => {
      if (wanted && !(error instanceof Overtaken))
        setState({ outcome: { ok: false, reason: error.message }, busy: false });
    };
    ask({ arranged, quantity, whole: false }).then(
      (outcome) => wanted && setState({ outcome, busy: true }),
      failed,
    );
    const rest = setTimeout(() => {
      ask({ arranged, quantity, whole: true }).then(
        (outcome) => wanted && setState({ outcome, busy: false }),
        failed,
      );
    }, REST_MS);
    return () => {
      wanted = false;
      clearTimeout(rest);
    };
  }, [ask, key, arranged, quantity]);
  return state;
}
