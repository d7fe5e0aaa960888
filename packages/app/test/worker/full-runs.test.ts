import { beforeEach, expect, it, vi } from 'vitest';
import type { AssessmentOutcome, AssessRequest, Compute } from '../../src/worker/api.ts';
import { FullRuns } from '../../src/worker/full-runs.ts';

type Assess = Compute['assess'];

interface Started {
  readonly progress: Parameters<Assess>[2];
  ended: boolean;
  resolve(outcome: AssessmentOutcome): void;
  reject(error: Error): void;
}

let started: Started[];
let runs: FullRuns;
const request = (id: string) => ({ job: { id }, weather: null }) as unknown as AssessRequest;
const outcome = { ok: false, reason: 'no walls' } as const;

beforeEach(() => {
  started = [];
  runs = new FullRuns(() => {
    let worker: Started | undefined;
    return {
      compute: {
        assess: ((_request, depth, progress) => {
          expect(depth).toBe('full');
          return new Promise<AssessmentOutcome>((resolve, reject) => {
            worker = { progress, ended: false, resolve, reject };
            started.push(worker);
          });
        }) satisfies Assess,
      },
      end: () => {
        if (worker !== undefined) worker.ended = true;
      },
    };
  });
});

it('tells how far it is, gives the outcome, and ends its worker', async () => {
  const changed = vi.fn();
  runs.subscribe(changed);
  runs.start(request('a'), 'a:1:');
  started[0].progress?.(30, 600);
  expect(runs.of('a')).toMatchObject({ state: 'running', done: 30, total: 600, key: 'a:1:' });
  started[0].resolve(outcome);
  await vi.waitFor(() => expect(runs.of('a')).toMatchObject({ state: 'done', outcome }));
  expect(started[0].ended).toBe(true);
  expect(changed).toHaveBeenCalledTimes(3);
});

it('is stopped by a newer state of its job and by no other', () => {
  runs.start(request('a'), 'a:1:');
  runs.overtake('b', 'b:7:');
  runs.overtake('a', 'a:1:');
  expect(started[0].ended).toBe(false);
  runs.overtake('a', 'a:2:');
  expect(started[0].ended).toBe(true);
  expect(runs.of('a')).toBeUndefined();
});

it('comes back to the run before when it is stopped, and hears nothing from the stopped one', async () => {
  runs.start(request('a'), 'a:1:');
  started[0].resolve(outcome);
  await vi.waitFor(() => expect(runs.of('a')?.state).toBe('done'));
  runs.start(request('a'), 'a:2:');
  runs.cancel();
  expect(runs.of('a')).toMatchObject({ key: 'a:1:', state: 'done' });
  started[1].progress?.(5, 10);
  started[1].resolve(outcome);
  await Promise.resolve();
  expect(runs.of('a')).toMatchObject({ key: 'a:1:', state: 'done' });
});

it('runs one job at a time', () => {
  runs.start(request('a'), 'a:1:');
  runs.start(request('b'), 'b:1:');
  expect(started.map((one) => one.ended)).toEqual([true, false]);
  expect(runs.of('a')).toBeUndefined();
  expect(runs.of('b')?.state).toBe('running');
});

it('says why it failed', async () => {
  runs.start(request('a'), 'a:1:');
  started[0].reject(new Error('out of memory'));
  await vi.waitFor(() => expect(runs.of('a')).toMatchObject({ state: 'failed', reason: 'out of memory' }));
});
