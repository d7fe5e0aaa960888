import { EngineError } from '../numerics/engine-error.ts';
import { type CauseEvidence, combineEvidence } from './evidence.ts';
import type { CauseLink } from './link.ts';
import { causeLinks } from './links.ts';
import { type CauseKey, causeNode } from './node.ts';
import { entropyBits, rivalWeights } from './weigh.ts';

/** Prior of "something that is not listed": no list of causes is complete. Set by judgment. */
export const UNLISTED_PRIOR = 0.06;

/**
 * Chance that a condition is seen where it is the main explanation of another, and where it is not: seeing it speaks for
 * it three to one, finding it absent against it seven to one. Set by judgment.
 */
const SEEN = { present: 0.9, otherwise: 0.3 } as const;

/** How many times likelier it is to see such a condition, or to find it absent, than under the other hypothesis. */
export const SEEN_TIMES = {
  seen: SEEN.present / SEEN.otherwise,
  absent: (1 - SEEN.otherwise) / (1 - SEEN.present),
} as const;

/** What is known about one job, before it is put together. */
export interface ChainInput {
  /** Conditions and consequences that were found. */
  readonly seen: readonly CauseKey[];
  /** Those that were looked for and not found. */
  readonly absent: readonly CauseKey[];
  /** What cannot be, as cause or as consequence: there is no machine, no liner, no drain. */
  readonly ruledOut: readonly CauseKey[];
  readonly evidence: readonly CauseEvidence[];
  /** Defaults to the catalogue. */
  readonly links?: readonly CauseLink[];
}

/**
 * `supported` and `contradicted` where all evidence points one way, `disputed` where it points both ways, `not-shown`
 * where there is none and the prior stands.
 */
export type Standing = 'supported' | 'contradicted' | 'disputed' | 'not-shown';

/** One explanation of an effect with its weight. */
export interface RivalResult {
  readonly from: CauseKey;
  readonly to: CauseKey;
  /** Scaled, so that the priors of an effect with "not listed" sum to 1. */
  readonly prior: number;
  /** The weights of an effect with "not listed" sum to 1. */
  readonly weight: number;
  /** What the evidence adds to the logarithm of its odds. */
  readonly logRatio: number;
  readonly supports: readonly string[];
  readonly contradicts: readonly string[];
  readonly standing: Standing;
}

/** Weight of a first cause of an effect, followed back through conditions that were seen. */
export interface RootShare {
  /** `unlisted` for what is not in the catalogue. */
  readonly node: CauseKey | 'unlisted';
  readonly weight: number;
}

/** Something found, or that follows, with its rival explanations. */
export interface EffectResult {
  readonly node: CauseKey;
  /** False for a consequence that follows and was not seen yet. */
  readonly seen: boolean;
  /** Heaviest first. */
  readonly rivals: readonly RivalResult[];
  readonly unlisted: { readonly prior: number; readonly weight: number };
  /** How open the question is. */
  readonly entropyBits: number;
  /** Heaviest first; they sum to 1. */
  readonly roots: readonly RootShare[];
}

/** The chain of one job. */
export interface CauseChain {
  /** Seen first, in the order of the catalogue, then what follows. */
  readonly effects: readonly EffectResult[];
  /** First causes of all conditions that were seen, each condition counting alike; they sum to 1, or are empty. */
  readonly roots: readonly RootShare[];
}

function standingOf(supports: number, contradicts: number): Standing {
  if (supports > 0 && contradicts > 0) return 'disputed';
  return supports > 0 ? 'supported' : contradicts > 0 ? 'contradicted' : 'not-shown';
}

/** Evidence that a condition upstream was seen or found absent. Its id is `seen:` and the key. */
function evidenceOfStates(seen: ReadonlySet<CauseKey>, absent: ReadonlySet<CauseKey>): CauseEvidence[] {
  const item = (explains: CauseKey, logRatio: number): CauseEvidence => ({
    id: `seen:${explains}`,
    explains,
    group: 'seen',
    logRatio,
  });
  return [
    ...[...seen].map((key) => item(key, Math.log(SEEN_TIMES.seen))),
    ...[...absent].map((key) => item(key, -Math.log(SEEN_TIMES.absent))),
  ];
}

/** Effects in an order in which each comes after all that explain it. */
function inOrder(links: readonly CauseLink[]): CauseKey[] {
  const order: CauseKey[] = [];
  const state = new Map<CauseKey, 'open' | 'done'>();
  const visit = (key: CauseKey): void => {
    const known = state.get(key);
    if (known === 'done') return;
    if (known === 'open')
      throw new EngineError('bad-input', `the links of the chain run in a circle at ${key}`);
    state.set(key, 'open');
    for (const link of links) if (link.to === key) visit(link.from);
    state.set(key, 'done');
    order.push(key);
  };
  for (const link of links) visit(link.to);
  return order.filter((key) => links.some((link) => link.to === key));
}

function effectOf(
  node: CauseKey,
  seen: boolean,
  links: readonly CauseLink[],
  evidence: readonly CauseEvidence[],
): Omit<EffectResult, 'roots'> {
  const combined = links.map((link) =>
    combineEvidence(
      evidence.filter((e) => e.explains === link.from && (e.of === undefined || e.of.includes(node))),
    ),
  );
  const priors = [...links.map((link) => link.prior), UNLISTED_PRIOR];
  const whole = priors.reduce((a, b) => a + b, 0);
  const weights = rivalWeights(priors.map((prior, i) => ({ prior, logRatio: combined[i]?.logRatio ?? 0 })));
  const rivals = links.map((link, i): RivalResult => {
    const { logRatio, supports, contradicts } = combined[i] as (typeof combined)[number];
    return {
      from: link.from,
      to: node,
      prior: link.prior / whole,
      weight: weights[i] as number,
      logRatio,
      supports,
      contradicts,
      standing: standingOf(supports.length, contradicts.length),
    };
  });
  return {
    node,
    seen,
    rivals: rivals.sort((a, b) => b.weight - a.weight),
    unlisted: { prior: UNLISTED_PRIOR / whole, weight: weights[links.length] as number },
    entropyBits: entropyBits(weights),
  };
}

const heaviestFirst = (shares: ReadonlyMap<RootShare['node'], number>): RootShare[] =>
  [...shares]
    .map(([node, weight]) => ({ node, weight }))
    .sort((a, b) => b.weight - a.weight || (a.node < b.node ? -1 : 1));

function rootsOf(
  effect: Omit<EffectResult, 'roots'>,
  known: ReadonlyMap<CauseKey, readonly RootShare[]>,
): RootShare[] {
  const shares = new Map<RootShare['node'], number>();
  const add = (node: RootShare['node'], weight: number) => shares.set(node, (shares.get(node) ?? 0) + weight);
  for (const { from, weight } of effect.rivals) {
    for (const root of known.get(from) ?? [{ node: from, weight: 1 }]) add(root.node, weight * root.weight);
  }
  add('unlisted', effect.unlisted.weight);
  return heaviestFirst(shares);
}

/** Consequences that follow from what was seen or from one another, and were not looked for in vain. */
function following(
  order: readonly CauseKey[],
  links: readonly CauseLink[],
  seen: ReadonlySet<CauseKey>,
  absent: ReadonlySet<CauseKey>,
): Set<CauseKey> {
  const found = new Set<CauseKey>();
  for (const key of order) {
    if (seen.has(key) || absent.has(key) || causeNode(key).kind !== 'consequence') continue;
    if (links.some((l) => l.to === key && (seen.has(l.from) || found.has(l.from)))) found.add(key);
  }
  return found;
}

/**
 * Puts the chain of a job together: for everything that was found, and for what follows from it, the rival explanations with
 * their weights.
 *
 * A weight answers "which of these is the main explanation?": prior times the likelihood ratios of its evidence, scaled to
 * sum to 1 with "not listed" (see `rivalWeights` and `combineEvidence`). Priors are judgment, so weights are a ranking
 * with reasons and not measured chances. What was ruled out takes no part. Without evidence the prior stands and the
 * explanation is "not shown".
 * @throws EngineError `bad-input` where links run in a circle
 */
export function causeChain({ seen, absent, ruledOut, evidence, links = causeLinks }: ChainInput): CauseChain {
  const found = new Set(seen);
  const missing = new Set(absent.filter((key) => !found.has(key)));
  const out = new Set(ruledOut);
  const possible = links.filter((link) => !out.has(link.from) && !out.has(link.to));
  const order = inOrder(links);
  const follows = following(order, possible, found, missing);
  const all = [...evidence, ...evidenceOfStates(found, missing)];
  const results = new Map<CauseKey, EffectResult>();
  const roots = new Map<CauseKey, readonly RootShare[]>();
  for (const key of order) {
    if (!found.has(key) && !follows.has(key)) continue;
    const effect = effectOf(
      key,
      found.has(key),
      possible.filter((link) => link.to === key),
      all,
    );
    const own = rootsOf(effect, roots);
    if (found.has(key)) roots.set(key, own);
    results.set(key, { ...effect, roots: own });
  }
  const effects = [...results.values()];
  const ordered = [...effects.filter((e) => e.seen), ...effects.filter((e) => !e.seen)];
  const conditions = ordered.filter((e) => e.seen && causeNode(e.node).kind === 'condition');
  const counted = conditions.length > 0 ? conditions : ordered.filter((e) => e.seen);
  const sums = new Map<RootShare['node'], number>();
  for (const effect of counted) {
    for (const { node, weight } of effect.roots) {
      sums.set(node, (sums.get(node) ?? 0) + weight / counted.length);
    }
  }
  return { effects: ordered, roots: heaviestFirst(sums) };
}
