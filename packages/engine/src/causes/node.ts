import { causes } from './catalogue/causes.ts';
import { conditions } from './catalogue/conditions.ts';
import { consequences } from './catalogue/consequences.ts';

/** Where in the chain a node stands: what brings it about, what is found, what follows. */
export type CauseKind = 'cause' | 'condition' | 'consequence';

/** Name of a node of the chain. */
export type CauseKey = keyof typeof causes | keyof typeof conditions | keyof typeof consequences;

/** One node: a cause, something found, or something that follows. */
export interface CauseNode {
  readonly key: CauseKey;
  readonly kind: CauseKind;
  /** A few words, as they stand in the drawing. */
  readonly title: string;
  /** One plain sentence. */
  readonly meaning: string;
}

type Texts = Readonly<Record<string, { readonly title: string; readonly meaning: string }>>;

const nodesOf = (kind: CauseKind, texts: Texts): CauseNode[] =>
  Object.entries(texts).map(([key, text]) => ({ key: key as CauseKey, kind, ...text }));

/** Every node of the chain, causes first. */
export const causeNodes: readonly CauseNode[] = [
  ...nodesOf('cause', causes),
  ...nodesOf('condition', conditions),
  ...nodesOf('consequence', consequences),
];

const byKey = new Map(causeNodes.map((node) => [node.key, node]));

/** The node of a key. */
export function causeNode(key: CauseKey): CauseNode {
  return byKey.get(key) as CauseNode;
}
