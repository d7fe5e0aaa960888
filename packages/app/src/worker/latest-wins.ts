/** Thrown to those whose question was overtaken by a newer one before it was asked. */
export class Overtaken extends Error {
  constructor() {
    super('a newer question took its place');
    this.name = 'Overtaken';
  }
}

interface Waiting<A, T> {
  readonly ask: A;
  resolve(answer: T): void;
  reject(reason: unknown): void;
}

/**
 * Asks one question at a time. While one is answered only the newest of those that come in waits; the others are
 * overtaken. So a worker never falls behind somebody who types.
 */
export function latestWins<A, T>(answer: (ask: A) => Promise<T>): (ask: A) => Promise<T> {
  let busy = false;
  let waiting: Waiting<A, T> | undefined;
  const next = () => {
    const one = waiting;
    waiting = undefined;
    busy = one !== undefined;
    if (one === undefined) return;
    answer(one.ask).then(one.resolve, one.reject).finally(next);
  };
  return (ask) =>
    new Promise<T>((resolve, reject) => {
      waiting?.reject(new Overtaken());
      waiting = { ask, resolve, reject };
      if (!busy) next();
    });
}

/** Answers that are asked for again are kept, the `size` last used. What failed is asked anew. */
export class Answers<T> {
  readonly #kept = new Map<string, Promise<T>>();
  readonly #size: number;

  constructor(size: number) {
    this.#size = size;
  }

  get(key: string, ask: () => Promise<T>): Promise<T> {
    const known = this.#kept.get(key);
    const answer = known ?? ask();
    this.#kept.delete(key);
    this.#kept.set(key, answer);
    if (known === undefined) {
      answer.catch(() => {
        if (this.#kept.get(key) === answer) this.#kept.delete(key);
      });
      for (const oldest of [...this.#kept.keys()].slice(0, Math.max(0, this.#kept.size - this.#size))) {
        this.#kept.delete(oldest);
      }
    }
    return answer;
  }
}
