import { type Remote, wrap } from 'comlink';
import type {
  AirSearchOutcome,
  AssessmentOutcome,
  AssessRequest,
  Compute,
  SeriesSpan,
  YearSeries,
} from './api.ts';
import { FullRuns } from './full-runs.ts';
import { Answers, latestWins } from './latest-wins.ts';

/** A worker of its own, and what ends it. */
function startWorker(name: string): { readonly compute: Remote<Compute>; end(): void } {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module', name });
  return { compute: wrap<Compute>(worker), end: () => worker.terminate() };
}

let compute: Compute | undefined;
let cases: Compute | undefined;
let air: Compute | undefined;

/** The compute worker of this tab, for what somebody waits for; it starts when something is first asked. */
export function computer(): Compute {
  compute ??= startWorker('compute').compute as unknown as Compute;
  return compute;
}

/** The worker that works out what comes after, so that a keystroke never waits behind it. */
function caseComputer(): Compute {
  cases ??= startWorker('cases').compute as unknown as Compute;
  return cases;
}

/** The worker of the air on the plan: who drags the machine does not wait for the year. */
export function airComputer(): Compute {
  air ??= startWorker('air').compute as unknown as Compute;
  return air;
}

/** Looks for a better arrangement in a worker that ends with it. */
export function searchAir(request: AssessRequest): {
  readonly outcome: Promise<AirSearchOutcome>;
  cancel(): void;
} {
  const worker = startWorker('air-search');
  const outcome = worker.compute.betterAir(request);
  return { outcome: outcome.finally(() => worker.end()), cancel: () => worker.end() };
}

/** Names a state of a job and its weather: what has the same name has the same results. */
export function stateKey({ job, weather }: AssessRequest, version: number): string {
  return `${job.id}:${version}:${weather?.sha256 ?? ''}`;
}

/** The long runs of this tab, at most one at a time, each in a worker that ends with it. */
export const fullRuns = new FullRuns(() => startWorker('full'));

const quick = new Answers<AssessmentOutcome>(8);
const askQuick = latestWins((request: AssessRequest) => computer().assess(request, 'quick'));
const deeper = new Answers<AssessmentOutcome>(4);
const askCases = latestWins((request: AssessRequest) => caseComputer().assess(request, 'cases'));
const series = new Answers<readonly YearSeries[]>(6);

/**
 * What follows from a job, with the year as found and with all repairs. Stops a long run of an older state.
 * @param version distinguishes the states of one job: the same version is not computed twice
 * @throws Overtaken when a newer state was asked for meanwhile
 */
export function assessJob(request: AssessRequest, version: number): Promise<AssessmentOutcome> {
  const key = stateKey(request, version);
  fullRuns.overtake(request.job.id, key);
  return quick.get(`${key}:${request.coverage === true}`, () => askQuick(request));
}

/** The same with each repair alone and the failures: what follows once there is time. Throws as `assessJob`. */
export function assessCases(request: AssessRequest, version: number): Promise<AssessmentOutcome> {
  return deeper.get(stateKey(request, version), () => askCases(request));
}

/** The year of a job by the day, or one month of it by the hour. */
export function yearSeries(
  request: AssessRequest,
  version: number,
  span: SeriesSpan,
): Promise<readonly YearSeries[]> {
  const key = `${stateKey(request, version)}:${span.of === 'month' ? span.month : 'year'}`;
  return series.get(key, () => computer().yearSeries(request, span));
}
