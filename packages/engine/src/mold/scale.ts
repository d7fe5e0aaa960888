import { requireRange } from '../numerics/require-range.ts';
import type { Source } from '../sources/source.ts';
import { moldSources } from './sources.ts';

/** Which wording of the index scale; they share numbers and not meanings, so show the name with the text. */
export type MoldScaleName = '2010' | '2007';

/** A wording of the index scale. */
export interface MoldScale {
  readonly name: MoldScaleName;
  readonly source: Source;
  /** What is seen at each whole index that this wording is known for, lowest first. */
  readonly steps: readonly { readonly index: number; readonly meaning: string }[];
}

/** The two wordings. Of the 2007 wording only steps 3 to 5 are known here, where it differs. */
export const moldScales: Readonly<Record<MoldScaleName, MoldScale>> = {
  '2010': {
    name: '2010',
    source: moldSources.indexScale2010,
    steps: [
      { index: 0, meaning: 'no growth' },
      { index: 1, meaning: 'small amounts, seen only under a microscope' },
      { index: 2, meaning: 'several local colonies, seen only under a microscope' },
      {
        index: 3,
        meaning: 'visible on less than 10 % of the surface, or on less than 50 % under a microscope',
      },
      { index: 4, meaning: 'visible on 10 to 50 % of the surface' },
      { index: 5, meaning: 'visible on more than 50 % of the surface' },
      { index: 6, meaning: 'heavy and tight growth on about all of the surface' },
    ],
  },
  '2007': {
    name: '2007',
    source: moldSources.indexScale2007,
    steps: [
      { index: 3, meaning: 'visible on 10 to 30 % of the surface' },
      { index: 4, meaning: 'visible on 30 to 70 % of the surface' },
      { index: 5, meaning: 'visible on more than 70 % of the surface' },
    ],
  },
};

/**
 * What the index means in words: the text of the last whole step reached.
 * @param index mold index, 0..6
 * @param name wording; default `2010`
 * @returns null where the wording is not known for that step
 * @throws EngineError `not-finite`, `out-of-range` for an index outside 0..6
 */
export function moldIndexMeaning(index: number, name: MoldScaleName = '2010'): string | null {
  const reached = Math.floor(requireRange('mold index', index, 0, 6));
  return moldScales[name].steps.find((step) => step.index === reached)?.meaning ?? null;
}
