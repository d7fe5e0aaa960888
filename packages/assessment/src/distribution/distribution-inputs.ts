import type { Origin } from '../origin.ts';
import type { DistributionInput } from './distribution-assessment.ts';

/** Gathers the figures that a field rests on, each with where it came from. */
export class DistributionInputs {
  #list = new Map<string, DistributionInput>();

  /** Notes a figure that somebody measured, drew or entered. */
  known(key: string, title: string, value: number | string, unit: string, origin: Origin): void {
    this.#list.set(key, { key, title, value, unit, origin });
  }

  /** Notes a figure that nobody measured, with the range it may have. */
  assumed(
    key: string,
    title: string,
    value: number | string,
    unit: string,
    why: string,
    range?: { readonly low: number; readonly high: number },
  ): void {
    this.#list.set(key, {
      key,
      title,
      value,
      unit,
      ...range,
      origin: { kind: 'assumption', note: why },
    });
  }

  list(): DistributionInput[] {
    return [...this.#list.values()];
  }
}
