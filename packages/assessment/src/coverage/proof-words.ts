import { compassWord } from './compass.ts';
import type { MissingPart, ProofShown } from './coverage-assessment.ts';

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** Words joined as a sentence joins them; more than `most` are counted. */
export function listed(words: readonly string[], most = 4): string {
  const shown =
    words.length > most ? [...words.slice(0, most - 1), `${words.length - most + 1} more`] : words;
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}

/** Faces of one pier that are not shown, e.g. `the north face of pier 4 (3 of 4 faces are shown)`. */
function pierWords(parts: readonly MissingPart[], asked: number): string {
  const faces = parts.map(({ face, facingDeg }) =>
    facingDeg === undefined ? `face ${face}` : `the ${compassWord(facingDeg)} face`,
  );
  return `${listed(faces)} of ${parts[0].name} (${asked - parts.length} of ${asked} faces are shown)`;
}

function partWords(part: MissingPart): string {
  const { kind, name, side, share } = part;
  const some = share > 0 ? `, of which ${percent(share)} is shown` : '';
  switch (kind) {
    case 'floor':
      return share > 0 ? `${percent(1 - share)} of the floor that it is about` : 'the floor that it is about';
    case 'interior-wall':
      return `the ${side} side of ${name}${some}`;
    case 'place':
      return 'the place';
    case 'wall':
      return `the ${name}${some}`;
    default:
      return `${name}${some}`;
  }
}

/** What is missing, walls and bays one by one and the faces of a pier together. */
function missingWords(missing: readonly MissingPart[], faces: ReadonlyMap<string, number>): string {
  const piers = new Map<string, MissingPart[]>();
  const others: string[] = [];
  for (const part of missing) {
    if (part.kind !== 'pier' || part.id === undefined) others.push(partWords(part));
    else piers.set(part.id, [...(piers.get(part.id) ?? []), part]);
  }
  const ofPiers = [...piers].map(([id, parts]) => pierWords(parts, faces.get(id) ?? 4));
  return listed([...others, ...ofPiers]);
}

/**
 * What the pictures make of a claim, one or two plain sentences.
 * @param photoCount pictures that its author named
 * @param faces how many faces of each pier it is about
 */
export function proofWords(
  proof: Omit<ProofShown, 'says'>,
  photoCount: number,
  faces: ReadonlyMap<string, number> = new Map(),
): string {
  const { verdict, missing, named, pictures, others } = proof;
  const whose = named ? 'The pictures named for it' : 'The pictures';
  switch (verdict) {
    case 'unplaced':
      return photoCount > 0
        ? `Nothing on the plan says what ${photoCount === 1 ? 'its picture has' : 'its pictures have'} to show.`
        : 'No picture is named, and nothing on the plan says what one would have to show.';
    case 'proved':
      return proof.of === 'finding'
        ? `${whose} show the place.`
        : `${whose} show all of it. Whether it is right, someone has to look.`;
    case 'no-picture': {
      const elsewhere =
        others.length > 0
          ? ` ${others.length === 1 ? 'One other picture shows' : `${others.length} other pictures show`} some of it.`
          : '';
      return `${named ? 'No picture named for it shows' : 'No picture shows'} ${missingWords(missing, faces)}.${elsewhere}`;
    }
    case 'partly': {
      const count = pictures.length;
      const seen = named
        ? `The ${count === 1 ? 'picture' : `${count} pictures`} named for it`
        : 'The pictures';
      return `${seen} do${count === 1 && named ? 'es' : ''} not show ${missingWords(missing, faces)}.`;
    }
  }
}
