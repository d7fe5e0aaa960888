import type { Assessment, DefectResult } from '@undercroft/assessment';
import type { Job, Point } from '@undercroft/record';
import { placeThumbnail } from '../../drawing/coverage/thumbnail.ts';
import { readablePicture } from '../../pictures/readable.ts';
import { day } from '../../words/dates.ts';
import { type Block, type GalleryEntry, heading, soft, strong } from '../blocks.ts';
import type { ReportExtras } from '../extras.ts';

type Claim = DefectResult['findings'][number];

/** Ids of pictures of a finding, those that its author named first. */
function pictureIds({ id, photoIds }: Claim, { coverage }: Assessment): string[] {
  const shows = coverage?.proofs.find((p) => p.id === id)?.pictures ?? [];
  return [...new Set([...photoIds, ...shows])];
}

/** Where the numbered findings of defects are, and the picture that shows each, as far as there is one. */
export function defectPictures(job: Job, assessment: Assessment, { pictures }: ReportExtras): Block[] {
  const { coverage, defects } = assessment;
  const hashes = new Map(job.media.photos.map(({ id, sha256 }) => [id, sha256]));
  const numbers = new Map(coverage?.pictures.map((p) => [p.id, p.number]));
  const entries = defects.flatMap((defect) =>
    defect.findings.flatMap((claim): (GalleryEntry & { readonly order: number })[] => {
      const places = claim.at === undefined ? [] : [claim.at];
      const ids = pictureIds(claim, assessment);
      if (places.length === 0 && ids.length === 0) return [];
      const shown = ids
        .map((id) => ({ id, bytes: pictures?.get(hashes.get(id) ?? '') }))
        .flatMap(({ id, bytes }) => {
          const readable = bytes === undefined ? null : readablePicture(bytes);
          return readable === null ? [] : [{ id, readable }];
        });
      const named = ids.flatMap((id) => numbers.get(id) ?? []).sort((a, b) => a - b);
      const inPictures = named.length === 0 ? 'In no picture' : `In picture ${named.slice(0, 4).join(', ')}`;
      return [
        {
          order: claim.number,
          id: `finding-${claim.number}-${defect.key}`,
          from: `defects/${defect.key}`,
          description: `Finding ${claim.number}: ${claim.title}. ${inPictures}.`,
          ...(shown.length === 0 ? {} : { picture: shown[0].readable }),
          plan: (room) => placeThumbnail(job, assessment, claim.title, places as readonly Point[], room),
          text: [
            [strong(String(claim.number)), { text: `  ${claim.title}` }],
            ...(claim.title === defect.name ? [] : [[soft(defect.name)]]),
            [soft(`${inPictures}. ${claim.who}, ${day(claim.when)}`)],
          ],
        },
      ];
    }),
  );
  if (entries.length === 0) return [];
  const inOrder = [...entries].sort((a, b) => a.order - b.order);
  return [
    heading(3, 'Findings on the plan and in pictures', 'finding-pictures'),
    { kind: 'gallery', entries: inOrder.map(({ order: _, ...entry }) => entry) },
  ];
}
