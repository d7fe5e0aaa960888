import { expect, it, vi } from 'vitest';
import { Answers, latestWins, Overtaken } from '../../src/worker/latest-wins.ts';

it('answers the first and the newest question and overtakes those between', async () => {
  const releases: (() => void)[] = [];
  const asked: number[] = [];
  const ask = latestWins(async (n: number) => {
    asked.push(n);
    await new Promise<void>((resolve) => releases.push(resolve));
    return n * 10;
  });
  const answers = [1, 2, 3, 4].map((n) => ask(n).catch((error: unknown) => error));
  releases.shift()?.();
  expect(await answers[0]).toBe(10);
  await vi.waitFor(() => expect(releases).toHaveLength(1));
  releases.shift()?.();
  expect(await answers[1]).toBeInstanceOf(Overtaken);
  expect(await answers[2]).toBeInstanceOf(Overtaken);
  expect(await answers[3]).toBe(40);
  expect(asked).toEqual([1, 4]);
});

it('goes on after an answer that failed', async () => {
  const ask = latestWins(async (n: number) => {
    if (n === 1) throw new RangeError('no');
    return n;
  });
  await expect(ask(1)).rejects.toThrow('no');
  await expect(ask(2)).resolves.toBe(2);
});

it('keeps the last used answers, and none that failed', async () => {
  const answers = new Answers<string>(2);
  const ask = vi.fn(async (key: string) => {
    if (key === 'bad') throw new Error(key);
    return key;
  });
  const get = (key: string) => answers.get(key, () => ask(key));
  await get('a');
  await get('b');
  await get('a');
  await get('c');
  await get('a');
  expect(ask.mock.calls.flat()).toEqual(['a', 'b', 'c']);
  await get('b');
  expect(ask).toHaveBeenCalledTimes(4);
  await expect(get('bad')).rejects.toThrow('bad');
  await expect(get('bad')).rejects.toThrow('bad');
  expect(ask).toHaveBeenCalledTimes(6);
});
