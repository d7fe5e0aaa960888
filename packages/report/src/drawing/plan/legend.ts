import type { Item, Spot } from '../display-list.ts';
import type { Word } from './spanish.ts';
import { type PlanStyle, wordIn } from './style.ts';

/** A sample of a symbol: its line in the legend, and how to draw it about the middle of a field 24 units wide. */
export interface LegendEntry {
  readonly key: string;
  readonly words: string;
  readonly sample: (at: Spot) => Item[];
  /** Height of its line, in units. */
  readonly height: number;
}

/** What is on the sheet, gathered while it is drawn, so that the legend explains nothing else. */
export class Legend {
  readonly #style: PlanStyle;
  readonly #entries = new Map<string, LegendEntry>();

  constructor(style: PlanStyle) {
    this.#style = style;
  }

  /** Notes a symbol; the second of a kind is the same line. */
  add(key: string, word: Word, sample: (at: Spot) => Item[], height = 12.5): void {
    if (this.#entries.has(key)) return;
    this.#entries.set(key, { key, words: wordIn(this.#style, word), sample, height });
  }

  list(): readonly LegendEntry[] {
    return [...this.#entries.values()];
  }
}
