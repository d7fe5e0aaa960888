import type { CriterionResult } from '@undercroft/assessment';
import type { Source } from '@undercroft/engine';

/** What a kind of criterion is called and how far it binds. */
export const KIND_WORDS: Readonly<
  Record<CriterionResult['kind'], { readonly name: string; readonly binds: string }>
> = {
  code: { name: 'Code', binds: 'binds where it is adopted and for work under permit' },
  standard: { name: 'Standard', binds: 'binds by contract or license' },
  guide: { name: 'Guide', binds: 'advice of a public body, or the rule of another place' },
  practice: { name: 'Practice', binds: 'opinion of the trade; it does not bind by itself' },
};

/** How well a source is known, as a tag behind it. Empty where its own text was read. */
export const PROVENANCE_TAGS: Readonly<Record<Source['provenance'], string>> = {
  read: '',
  quoted: 'second hand',
  memory: 'from memory',
  computed: 'worked out',
  practice: 'no published source',
};

/** What each tag means. */
export const PROVENANCE_WORDS: Readonly<Record<Source['provenance'], string>> = {
  read: 'its own text was read',
  quoted: 'seen quoted elsewhere, its own text was not opened',
  memory: 'recalled, its own text was not opened; check before relying on it',
  computed: 'follows by calculation, no publication prints it',
  practice: 'opinion and habit of the trade',
};

const TRADES: Readonly<Record<string, string>> = {
  electrician: 'an electrician',
  plumber: 'a plumber',
  'mechanical-contractor': 'a mechanical contractor',
  'gas-fitter': 'a gas fitter',
  'structural-engineer': 'a structural engineer',
  'radon-professional': 'a radon professional',
  'pest-control-applicator': 'a pest control applicator',
  'mold-professional': 'a mold professional',
};

/** The licensed trade that a remedy may call for, as a phrase. */
export function tradeWords(trade: string): string {
  return `The remedy may call for ${TRADES[trade] ?? trade.replaceAll('-', ' ')} with a license.`;
}

const COVERS: Readonly<Record<string, string>> = {
  'bare-earth': 'bare earth',
  liner: 'ground liner',
  slab: 'slab',
  gravel: 'gravel',
};

export const coverWords = (cover: string): string => COVERS[cover] ?? cover;

/** Words of other parts of the program in the typography of the report: no space before a percent sign. */
export function plain(text: string): string {
  return text.replace(/(\d) %/g, '$1%').replace(/(?<=[\s(])-(?=\d)/g, '−');
}

/** A publication with a well-known short name. */
export interface ShortSource {
  /** As it stands beside a criterion, e.g. `IRC, 2021, R408.2`. */
  readonly short: string;
  /** Short name and full name, where the source has one. */
  readonly name?: { readonly short: string; readonly full: string };
}

/** A citation by its short name where it gives one in parentheses: `..., Long Title (IRC), 2021, R408` is `IRC, 2021, R408`. */
export function shortSource(source: string): ShortSource {
  const found = /^(.{20,}?) \(([A-Z][A-Z0-9-]{1,9})\)(.*)$/.exec(source);
  if (found === null) return { short: source };
  const [, full, short, rest] = found;
  return { short: `${short}${rest}`, name: { short, full } };
}

/** First letter upper case. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Dates written as numbers inside a sentence stay findable: `2031-05-14`. */
export const ISO_DAY = /\b\d{4}-\d{2}-\d{2}\b/g;
