import { causes } from '@undercroft/engine';
import type { CauseArrow } from './causes-assessment.ts';

/** Explanations lighter than this are listed and not drawn, so that the drawing can be read. */
const DRAWN_FROM = 0.2;
/** One that is spoken against, or disputed, is drawn from here on: the reader shall see that it was looked at. */
const DOUBTED_FROM = 0.1;
/** No more arrows than this into one finding. */
const MOST_DRAWN = 4;

function isDrawn(rival: causes.RivalResult, place: number): boolean {
  if (place === 0) return true;
  if (place >= MOST_DRAWN) return false;
  return rival.weight >= (rival.contradicts.length > 0 ? DOUBTED_FROM : DRAWN_FROM);
}

/** A cause of something that was not seen yet, drawn because something was found that speaks for it. */
function isShownCause({ from, weight, standing }: causes.RivalResult): boolean {
  return causes.causeNode(from).kind === 'cause' && standing === 'supported' && weight >= DRAWN_FROM;
}

/**
 * Arrows of a chain, by what they explain, heaviest first. Those that are drawn are numbered: into each finding the
 * heaviest, and into each consequence those that start at something drawn or are a cause that something speaks for.
 */
export function arrowsOf(chain: causes.CauseChain): CauseArrow[] {
  const links = new Map(causes.causeLinks.map((link) => [`${link.from} ${link.to}`, link]));
  const drawn = new Set<causes.CauseKey>(chain.effects.filter((e) => e.seen).map((e) => e.node));
  let next = 1;
  return chain.effects.flatMap((effect) => {
    const arrows = effect.rivals.map((rival, place): CauseArrow => {
      const { reason, source } = links.get(`${rival.from} ${rival.to}`) as causes.CauseLink;
      const shown = effect.seen ? isDrawn(rival, place) : drawn.has(rival.from) || isShownCause(rival);
      const { from, to, weight, prior, standing, supports, contradicts } = rival;
      return {
        from,
        to,
        ...(shown ? { number: next++ } : {}),
        weight,
        prior,
        standing,
        reason,
        source,
        supports,
        contradicts,
      };
    });
    if (!effect.seen) drawn.add(effect.node);
    return arrows;
  });
}
