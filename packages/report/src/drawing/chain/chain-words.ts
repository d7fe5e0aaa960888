import { causes } from '@undercroft/engine';

/** Words of the drawing; another language gives its own. Plain data, so that it can be sent to where it is drawn. */
export interface ChainWords {
  readonly title: string;
  /** Title of each node, by its key. */
  readonly nodes: Readonly<Record<string, string>>;
  readonly cause: string;
  readonly found: string;
  readonly follows: string;
  readonly supported: string;
  readonly against: string;
  readonly notShown: string;
  readonly mayFollow: string;
  /** Between two titles, e.g. "leads to". */
  readonly leadsTo: string;
  /** Said of the share of a first cause, e.g. "of all"; the share stands before it. */
  readonly ofAll: string;
}

/** The drawing in English. */
export const ENGLISH_CHAIN_WORDS: ChainWords = {
  title: 'Why it is so: the chain of causes',
  nodes: Object.fromEntries(causes.causeNodes.map((node) => [node.key, node.title])),
  cause: 'Cause',
  found: 'Found',
  follows: 'May follow',
  supported: 'shown by something',
  against: 'something speaks against it',
  notShown: 'nothing shown either way',
  mayFollow: 'if nothing is done',
  leadsTo: 'leads to',
  ofAll: 'of all',
};
