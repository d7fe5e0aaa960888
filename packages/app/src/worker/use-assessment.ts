import type { Assessment } from '@undercroft/assessment';
import { isSurveyed } from '@undercroft/record';
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { JobView } from '../jobs/open-job.ts';
import { useWeatherFile } from '../jobs/weather-files.ts';
import type { AssessmentOutcome, AssessRequest, SeriesSpan, YearSeries } from './api.ts';
import { assessCases, assessJob, fullRuns, stateKey, yearSeries } from './computer.ts';
import type { FullRun } from './full-runs.ts';
import { Overtaken } from './latest-wins.ts';

/** What is known of a job's assessment while it is computed anew. */
export interface AssessmentState {
  /** The newest that is there; of an older state of the job while `busy`. */
  readonly assessment: Assessment | null;
  readonly busy: boolean;
  /** Why there is none, in words. */
  readonly reason?: string;
}

/** A job with walls and its weather, as it is sent to a worker; null until both are there. */
export function useRequest({ id, job: held }: JobView): AssessRequest | null {
  const weather = useWeatherFile(id);
  const job = held !== null && isSurveyed(held) ? held : null;
  return useMemo(() => (job === null || weather === undefined ? null : { job, weather }), [job, weather]);
}

interface Answered<T> {
  readonly id: string;
  readonly key: string;
  readonly answer: T;
}

/** The newest answer to a question about a job, asked anew for each state of it; null until the first. */
function useNewest<T>(
  view: JobView,
  request: AssessRequest | null,
  ask: (request: AssessRequest, version: number) => Promise<T>,
  failed: (error: Error) => T,
): { readonly answer: T | null; readonly busy: boolean } {
  const { id, version } = view;
  const [answered, setAnswered] = useState<Answered<T> | null>(null);
  const key = request === null ? null : stateKey(request, version);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for job, version and weather
  useEffect(() => {
    if (request === null || key === null) return;
    let wanted = true;
    const take = (answer: T) => wanted && setAnswered({ id, key, answer });
    ask(request, version).then(take, (error: Error) => {
      if (!(error instanceof Overtaken)) take(failed(error));
    });
    return () => {
      wanted = false;
    };
  }, [id, key, ask]);
  const mine = answered?.id === id && request !== null ? answered : null;
  return { answer: mine?.answer ?? null, busy: request !== null && mine?.key !== key };
}

const failedOutcome = (error: Error): AssessmentOutcome => ({ ok: false, reason: error.message });

function stateOf(answer: AssessmentOutcome | null, busy: boolean): AssessmentState {
  if (answer === null) return { assessment: null, busy };
  return answer.ok
    ? { assessment: answer.assessment, busy }
    : { assessment: null, busy, reason: answer.reason };
}

const withCoverage = (request: AssessRequest, version: number) =>
  assessJob({ ...request, coverage: true }, version);

/**
 * The assessment of an open job with walls, with its year as found and with all repairs, computed in the worker, always
 * of the newest state.
 * @param coverage whether what the pictures show is worked out as well, which takes longer
 */
export function useAssessment(view: JobView, coverage: boolean): AssessmentState {
  const request = useRequest(view);
  const waiting = request === null && view.job !== null && isSurveyed(view.job);
  const { answer, busy } = useNewest(view, request, coverage ? withCoverage : assessJob, failedOutcome);
  return stateOf(answer, busy || waiting);
}

/** The same with each repair alone and the failures, once the quick one is there. */
export function useCases(view: JobView, quick: AssessmentState): AssessmentState {
  const request = useRequest(view);
  const { answer, busy } = useNewest(view, quick.busy ? null : request, assessCases, failedOutcome);
  const [kept, setKept] = useState<AssessmentOutcome | null>(null);
  if (answer !== null && answer !== kept) setKept(answer);
  return stateOf(answer ?? kept, busy || quick.busy);
}

const noSeries = () => [];

/** The year of a job by the day or one month by the hour; null until it is there, and while it is not asked for. */
export function useYearSeries(view: JobView, span: SeriesSpan | null): readonly YearSeries[] | null {
  const request = useRequest(view);
  const month = span === null ? null : span.of === 'month' ? span.month : -1;
  const ask = useMemo(
    () => (asked: AssessRequest, version: number) =>
      yearSeries(asked, version, month === null || month < 0 ? { of: 'year' } : { of: 'month', month }),
    [month],
  );
  return useNewest<readonly YearSeries[]>(view, month === null ? null : request, ask, noSeries).answer;
}

/** The long run of a job, and what starts and stops it. */
export interface FullRunState {
  readonly run: FullRun | undefined;
  /** True where the job has changed since. */
  readonly isOld: boolean;
  /** Absent while nothing can be run. */
  readonly start?: () => void;
  readonly cancel: () => void;
}

export function useFullRun(view: JobView): FullRunState {
  const request = useRequest(view);
  const run = useSyncExternalStore(
    (changed) => fullRuns.subscribe(changed),
    () => fullRuns.of(view.id),
  );
  const key = request === null ? null : stateKey(request, view.version);
  return {
    run,
    isOld: run !== undefined && run.key !== key,
    ...(request === null || key === null ? {} : { start: () => fullRuns.start(request, key) }),
    cancel: () => fullRuns.cancel(),
  };
}
