import type { moisture } from '@undercroft/engine';
import type { Assumption } from './assessment.ts';

/** Collects what nobody measured, each with its range and the reason, while an assessment is made. */
export class Assumptions {
  #list = new Map<string, Assumption>();

  /** Notes an assumption and gives its band. The same key twice is one assumption. */
  band(
    key: string,
    title: string,
    figures: { readonly value: number; readonly low: number; readonly high: number; readonly unit: string },
    why: string,
  ): moisture.Band {
    const { value, low, high, unit } = figures;
    this.#list.set(key, { key, title, value, unit, low, high, why });
    return { value, low, high, assumed: true };
  }

  /** Notes an assumption that has no range. */
  note(key: string, title: string, value: string | boolean | number, why: string, unit = ''): void {
    this.#list.set(key, { key, title, value, unit, why });
  }

  list(): Assumption[] {
    return [...this.#list.values()];
  }
}

/** A figure that was measured. */
export function measured(value: number): moisture.Band {
  return { value, low: value, high: value, assumed: false };
}
