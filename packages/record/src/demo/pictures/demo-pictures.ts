import { sha256Hex } from '../../archive/sha256.ts';
import type { Job } from '../../schema/job.ts';
import { drawPicture } from './picture.ts';

/**
 * The pictures that a demo job names, drawn from its plan one after the other, each with its hash. Takes about 30 ms of
 * processor time each. A photo without a place, direction or reach has none.
 */
export function* drawPictures({ plan, media }: Job): Generator<readonly [sha256: string, bytes: Uint8Array]> {
  for (const { place, bearingDeg, fieldOfViewDeg, rangeM } of media.photos) {
    const { at, heightM } = place;
    if (at === undefined || heightM === undefined || bearingDeg === undefined) continue;
    if (fieldOfViewDeg === undefined || rangeM === undefined) continue;
    const bytes = drawPicture(plan, { at, heightM, bearingDeg, fieldOfViewDeg, rangeM });
    yield [sha256Hex(bytes), bytes];
  }
}
