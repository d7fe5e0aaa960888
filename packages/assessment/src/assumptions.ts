import type { moisture } from '@undercroft/engine';
import type { Assumption } from './assumption.ts';

/** Collects what nobody measured, each with its range and the reason, while an assessment is made. */
export class Assumptions {
  #list = new Map<string, Assumption>();
  #chosen: Readonly<Record<string, number>>;

  /** @param chosen values by key that take the place of the usual ones, each within its range */
  constructor(chosen: Readonly<Record<string, number>> = {}) {
    this.#chosen = chosen;
  }

  /** Notes an assumption and gives its band. The same key twice is one assumption. */
  band(
    key: string,
    title: string,
    figures: { readonly value: number; readonly low: number; readonly high: number; readonly unit: string },
    why: string,
  ): moisture.Band {
    const { low, high, unit } = figures;
    const value = this.#chosen[key] ?? figures.value;
    this.#list.set(key, { key, title, value, unit, low, high, why });
    return { value, low, high, assumed: true };
  }

  /** Notes an assumption that has no range. */
  note(key: string, title: string, value: string | boolean | number, why: string, unit = ''): void {
    this.#list.set(key, { key, title, value, unit, why });
  }

  /** The value that was chosen for a key in place of the usual one. */
  chosen(key: string): number | undefined {
    return this.#chosen[key];
  }

  list(): Assumption[] {
    return [...this.#list.values()];
  }
}

/** A figure that was measured. */
export function measured(value: number): moisture.Band {
  return { value, low: value, high: value, assumed: false };
}
