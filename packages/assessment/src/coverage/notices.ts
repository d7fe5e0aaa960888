import type { Notice } from '@undercroft/engine';
import type { CoverageAssessment, HiddenItem, UnseenPart } from './coverage-assessment.ts';
import { listed } from './proof-words.ts';

const square = (areaM2: number): string => `${areaM2.toFixed(1)} m²`;

/** Less than this of the floor is left over along walls and behind piers, and not worth a word. Common practice, no source. */
const ENOUGH_FLOOR = 0.98;

/** Kinds that an owner wants to hear of where nobody looked; walls and piers border every corner. */
const TELLING = new Set(['obstacle', 'zone', 'finding', 'equipment']);

const telling = ({ standsIn }: UnseenPart): HiddenItem[] => standsIn.filter((s) => TELLING.has(s.kind));

/** What stands in the unseen parts, those with something to tell first. */
function cornersWords(unseen: readonly UnseenPart[]): string {
  const corners = unseen.filter((part) => telling(part).length > 0).slice(0, 3);
  return corners
    .map((part) => {
      const bare = part.covers.includes('bare-earth') ? ', drawn as bare earth' : '';
      return ` Where nobody looked, over ${square(part.areaM2)}${bare}, the plan shows: ${listed(telling(part).map((s) => s.name))}.`;
    })
    .join('');
}

/** One sentence on what nobody looked at; none where the pictures show as good as everything. */
export function unseenHeadline({ floor, pictures, unseen }: CoverageAssessment): string | undefined {
  if (pictures.length === 0) return 'No picture shows where it was taken, so none of this is proved by one.';
  if (floor.share >= ENOUGH_FLOOR) return undefined;
  const [corner] = unseen.filter((part) => telling(part).length > 0);
  const within =
    corner === undefined ? '' : `; in it, as drawn: ${listed(telling(corner).map((s) => s.name))}`;
  return `No picture shows ${square(floor.areaM2 - floor.seenM2)} of the floor${within}.`;
}

/** What an owner must know about the pictures of a job, weightiest first. */
export function coverageNotices(parts: Omit<CoverageAssessment, 'notices'>): Notice[] {
  const { floor, pictures, unplaced, unseen, piers, proofs } = parts;
  const notices: Notice[] = [];
  if (pictures.length === 0) {
    const message = 'No picture has a place and a direction on the plan, so nothing of the space is shown.';
    notices.push({ code: 'no-pictures', message: message + cornersWords(unseen) });
  } else if (floor.share < ENOUGH_FLOOR) {
    const left = floor.areaM2 - floor.seenM2;
    const message = `No picture shows ${square(left)} of the floor, ${Math.round(100 * (1 - floor.share))} % of it.`;
    notices.push({ code: 'unseen-floor', message: message + cornersWords(unseen) });
  }
  const doubtful = proofs.filter((p) => p.of !== 'finding' && p.verdict !== 'proved');
  for (const { title, says } of doubtful) {
    notices.push({ code: 'claim-not-proved', message: `Claimed as done and not proved: ${title}. ${says}` });
  }
  const bare = proofs.filter((p) => p.of === 'finding' && p.verdict !== 'proved');
  if (pictures.length > 0 && bare.length > 0) {
    const message = `${bare.length} of ${proofs.filter((p) => p.of === 'finding').length} findings are in no picture, or not wholly: ${listed(bare.map((p) => p.title))}.`;
    notices.push({ code: 'finding-without-picture', message });
  }
  const hidden = piers.filter((p) => p.facesShown < p.facesOpen);
  if (pictures.length > 0 && hidden.length > 0) {
    const all = `${hidden.length} of ${piers.length} piers are not shown on every face.`;
    notices.push({ code: 'pier-faces-unseen', message: all });
  }
  if (unplaced.length > 0) {
    const message = `${unplaced.length} ${unplaced.length === 1 ? 'picture has' : 'pictures have'} no place or no direction and count${unplaced.length === 1 ? 's' : ''} for nothing.`;
    notices.push({ code: 'picture-unplaced', message });
  }
  return notices;
}
