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
 * Which arrows into a consequence are drawn: those from what was found and from causes that something speaks for; where
 * there are none, those from other consequences. So a consequence is drawn once, as near to what was found as it comes.
 */
function drawnInto(effect: causes.EffectResult, found: ReadonlySet<string>, following: ReadonlySet<string>) {
  const near = effect.rivals.filter((r) => found.has(r.from) || isShownCause(r));
  return new Set(near.length > 0 ? near : effect.rivals.filter((r) => following.has(r.from)));
}

/** Arrows of a chain, by what they explain, heaviest first. Those that are drawn are numbered. */
export function arrowsOf(chain: causes.CauseChain): CauseArrow[] {
  const links = new Map(causes.causeLinks.map((link) => [`${link.from} ${link.to}`, link]));
  const found = new Set<string>(chain.effects.filter((e) => e.seen).map((e) => e.node));
  const following = new Set<string>(chain.effects.filter((e) => !e.seen).map((e) => e.node));
  let next = 1;
  return chain.effects.flatMap((effect) => {
    const into = effect.seen ? new Set(effect.rivals.filter(isDrawn)) : drawnInto(effect, found, following);
    return effect.rivals.map((rival): CauseArrow => {
      const { reason, source } = links.get(`${rival.from} ${rival.to}`) as causes.CauseLink;
      const { from, to, weight, prior, standing, supports, contradicts } = rival;
      return {
        from,
        to,
        ...(into.has(rival) ? { number: next++ } : {}),
        weight,
        prior,
        standing,
        reason,
        source,
        supports,
        contradicts,
      };
    });
  });
}
