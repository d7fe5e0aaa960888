import { proxy } from 'comlink';
import type { AssessmentOutcome, AssessRequest, Compute } from './api.ts';

/** A worker for one long run. */
export interface RunWorker {
  readonly compute: Pick<Compute, 'assess'> | object;
  end(): void;
}

/** A long run of one state of a job. */
export interface FullRun {
  readonly jobId: string;
  /** Names the state: see `stateKey`. */
  readonly key: string;
  readonly state: 'running' | 'done' | 'failed';
  readonly done: number;
  readonly total: number;
  readonly outcome?: AssessmentOutcome;
  /** Why it failed, in the words of the browser. */
  readonly reason?: string;
}

/**
 * Long runs: at most one at a time, each in a worker of its own that ends with it, so that stopping one is at once. The
 * last run of each job is kept, also where the job has changed since.
 */
export class FullRuns {
  readonly #startWorker: () => RunWorker;
  readonly #listeners = new Set<() => void>();
  readonly #runs = new Map<string, FullRun>();
  #running: { readonly jobId: string; readonly before: FullRun | undefined; end(): void } | null = null;

  constructor(startWorker: () => RunWorker) {
    this.#startWorker = startWorker;
  }

  subscribe(changed: () => void): () => void {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  }

  /** The run of a job: the one that goes on, else the last that was not stopped. */
  of(jobId: string): FullRun | undefined {
    return this.#runs.get(jobId);
  }

  /** Starts a run; one that goes on is stopped first. */
  start(request: AssessRequest, key: string): void {
    this.cancel();
    const { id: jobId } = request.job;
    const worker = this.#startWorker();
    const running = { jobId, before: this.#runs.get(jobId), end: () => worker.end() };
    this.#running = running;
    const show = (run: Omit<FullRun, 'jobId' | 'key'>) => {
      // What a stopped worker had said on its way.
      if (this.#running !== running) return;
      if (run.state !== 'running') {
        this.#running = null;
        worker.end();
      }
      this.#show(jobId, { jobId, key, ...run });
    };
    show({ state: 'running', done: 0, total: 0 });
    const progress = proxy((done: number, total: number) => show({ state: 'running', done, total }));
    (worker.compute as Pick<Compute, 'assess'>).assess(request, 'full', progress).then(
      (outcome) => show({ state: 'done', done: 1, total: 1, outcome }),
      (error: Error) => show({ state: 'failed', done: 0, total: 0, reason: error.message }),
    );
  }

  /** Stops the run that goes on; what was there before it comes back. */
  cancel(): void {
    const running = this.#running;
    if (running === null) return;
    this.#running = null;
    running.end();
    this.#show(running.jobId, running.before);
  }

  /** Stops a run of a state of this job that is no longer the newest. */
  overtake(jobId: string, key: string): void {
    if (this.#running?.jobId === jobId && this.#runs.get(jobId)?.key !== key) this.cancel();
  }

  #show(jobId: string, run: FullRun | undefined): void {
    if (run === undefined) this.#runs.delete(jobId);
    else this.#runs.set(jobId, run);
    for (const changed of this.#listeners) changed();
  }
}
