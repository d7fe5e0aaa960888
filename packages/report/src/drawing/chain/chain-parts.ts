import type { CauseArrow, CausesAssessment } from '@undercroft/assessment';
import { causes } from '@undercroft/engine';
import type { ChainWords } from './chain-words.ts';

/** How a box looks: a cause, something found, or something that may follow. */
export type BoxLook = 'cause' | 'found' | 'follows';

export interface ChainBox {
  readonly key: string;
  readonly title: string;
  readonly look: BoxLook;
  /** Share of a first cause in all that was found; absent for the rest. */
  readonly share?: number;
}

/** How an arrow looks: dashed where something speaks against it, dotted where nothing was shown. */
export type ArrowLook = 'supported' | 'against' | 'not-shown' | 'may-follow';

export interface ChainLine {
  readonly number: number;
  readonly from: string;
  readonly to: string;
  readonly weight: number;
  readonly look: ArrowLook;
}

/** What of the causes of a job is drawn. */
export interface ChainParts {
  readonly boxes: readonly ChainBox[];
  readonly lines: readonly ChainLine[];
}

function lookOf(arrow: CauseArrow, found: ReadonlySet<string>): ArrowLook {
  if (!found.has(arrow.to)) return 'may-follow';
  if (arrow.contradicts.length > 0) return 'against';
  return arrow.standing === 'not-shown' ? 'not-shown' : 'supported';
}

/** First causes from this share on have it printed in their box. */
const SHARE_SHOWN_FROM = 0.01;

/**
 * Boxes and arrows of the drawing, in the order of the catalogue.
 * @param about draw only this finding with what explains it and what comes of it; absent for all
 */
export function chainParts(assessed: CausesAssessment, words: ChainWords, about?: string): ChainParts {
  const found = new Set<string>(assessed.observations.map((o) => o.key));
  const shares = new Map<string, number>(assessed.mechanisms.map((m) => [m.key, m.weight]));
  const lines = assessed.arrows.flatMap((arrow): ChainLine[] => {
    if (arrow.number === undefined) return [];
    if (about !== undefined && arrow.to !== about && arrow.from !== about) return [];
    const { number, from, to, weight } = arrow;
    return [{ number, from, to, weight, look: lookOf(arrow, found) }];
  });
  const used = new Set(lines.flatMap((line) => [line.from, line.to]));
  const boxes = causes.causeNodes
    .filter((node) => used.has(node.key))
    .map((node): ChainBox => {
      const share = shares.get(node.key);
      return {
        key: node.key,
        title: words.nodes[node.key] ?? node.title,
        look: node.kind === 'cause' ? 'cause' : found.has(node.key) ? 'found' : 'follows',
        ...(share === undefined || share < SHARE_SHOWN_FROM || about !== undefined ? {} : { share }),
      };
    });
  return { boxes, lines };
}
