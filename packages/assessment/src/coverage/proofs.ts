import { coverage as engine } from '@undercroft/engine';
import type { GeometryResult } from '../assessment.ts';
import type { ClaimOfJob } from './claims.ts';
import type { MissingPart, ProofShown } from './coverage-assessment.ts';
import type { NameOf } from './names.ts';
import { proofWords } from './proof-words.ts';
import type { PlacedPicture } from './stations.ts';

const VERDICTS = { shown: 'proved', 'partly-shown': 'partly', 'not-shown': 'no-picture' } as const;

/** Which pictures a list of stations belongs to, each once, in the order of the pictures. */
export function picturesBehind(
  pictures: readonly PlacedPicture[],
): (stationIds: readonly string[]) => string[] {
  const owner = new Map(pictures.flatMap(({ picture, stations }) => stations.map((s) => [s.id, picture.id])));
  return (stationIds) => {
    const found = new Set(stationIds.map((id) => owner.get(id)));
    return pictures.map((p) => p.picture.id).filter((id) => found.has(id));
  };
}

/** Where a face of a pier looks, degrees clockwise from true north. */
export function facingDeg(face: number, turnDeg: number, northDeg: number): number {
  const bearing = [180, 90, 0, 270][face] + turnDeg + northDeg;
  return ((bearing % 360) + 360) % 360;
}

/** Faces of each pier that anybody could see, with where each looks [degrees clockwise from true north]. */
export type PierFaces = ReadonlyMap<string, ReadonlyMap<number, number>>;

/** What is known of the plan beside the scene: which pier faces are open, which walls there are, what things are called. */
export interface PlanNames {
  readonly piers: PierFaces;
  readonly edges: GeometryResult['edges'];
  readonly nameOf: NameOf;
}

function missingOf(
  parts: readonly engine.MissingProof[],
  { piers, edges, nameOf }: PlanNames,
): MissingPart[] {
  return parts.map((part) => {
    const { kind, id, face = -1 } = part;
    if (id === undefined) return part;
    const own = kind === 'wall' ? edges[Number(id)].id : id;
    const toward = kind === 'pier' ? piers.get(id)?.get(face) : undefined;
    return {
      ...part,
      id: own,
      name: nameOf(kind, own),
      ...(toward === undefined ? {} : { facingDeg: toward }),
    };
  });
}

/**
 * Whether each claim has its proof. Where its author named pictures, only those count, and others that show some of it
 * are listed apart.
 * @param floorOf ids of pictures of which the share of the floor is wanted as well
 */
export function proofsOf(
  scene: engine.CoverageScene,
  pictures: readonly PlacedPicture[],
  claims: readonly ClaimOfJob[],
  names: PlanNames,
  floorOf: readonly string[],
): { readonly proofs: ProofShown[]; readonly floorShare: ReadonlyMap<string, number> } {
  const stationsOf = new Map(pictures.map((p) => [p.picture.id, p.stations.map((s) => s.id)]));
  const behind = picturesBehind(pictures);
  const placed = claims.filter((claim) => claim.about.length > 0);
  const asked: engine.Claim[] = [
    ...placed.flatMap(({ about, photoIds }, i): engine.Claim[] => [
      { id: `all ${i}`, about },
      ...(photoIds.length === 0
        ? []
        : [{ id: `named ${i}`, about, stationIds: photoIds.flatMap((id) => stationsOf.get(id) ?? []) }]),
    ]),
    ...floorOf.map(
      (id): engine.Claim => ({ id, about: { kind: 'floor' }, stationIds: stationsOf.get(id) ?? [] }),
    ),
  ];
  const stations = pictures.flatMap((p) => p.stations);
  const found = asked.length === 0 ? [] : engine.proofOf(scene, stations, asked);
  const byId = new Map(found.map((proof) => [proof.id, proof]));
  const proofs = claims.map((claim): ProofShown => {
    const { about: _, photoIds, ...rest } = claim;
    const named = photoIds.length > 0;
    const i = placed.indexOf(claim);
    const all = byId.get(`all ${i}`);
    const proof = named ? byId.get(`named ${i}`) : all;
    if (proof === undefined || all === undefined) {
      const none = { share: 0, missing: [], pictures: [], others: [], named } as const;
      const shown = { ...rest, verdict: 'unplaced', ...none } as const;
      return { ...shown, says: proofWords(shown, photoIds.length) };
    }
    const own = behind(proof.stations);
    const shown = {
      ...rest,
      // Where the plan holds nothing of the kind, there is nothing that a picture could show.
      verdict: proof.notices.some((n) => n.code === 'nothing-to-show')
        ? ('unplaced' as const)
        : VERDICTS[proof.verdict],
      share: proof.share,
      missing: missingOf(proof.missing, names),
      pictures: own,
      named,
      others: named ? behind(all.stations).filter((id) => !own.includes(id)) : [],
    };
    return { ...shown, says: proofWords(shown, photoIds.length, facesAsked(claim, names.piers)) };
  });
  return { proofs, floorShare: new Map(floorOf.map((id) => [id, byId.get(id)?.share ?? 0])) };
}

/** How many faces of each pier a claim is about, of those that anybody could see. */
function facesAsked({ about }: ClaimOfJob, piers: PierFaces): ReadonlyMap<string, number> {
  const asked = new Map<string, number>();
  for (const subject of about) {
    if (subject.kind === 'piers') for (const [id, faces] of piers) asked.set(id, faces.size);
    if (subject.kind !== 'pier') continue;
    const one = subject.face !== undefined;
    asked.set(subject.id, one ? (asked.get(subject.id) ?? 0) + 1 : (piers.get(subject.id)?.size ?? 0));
  }
  return asked;
}
