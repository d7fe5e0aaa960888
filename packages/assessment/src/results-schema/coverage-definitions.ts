import type {
  CoverageAssessment,
  FromWall,
  HiddenItem,
  InteriorWallShown,
  LineShown,
  MissingPart,
  PictureShown,
  PictureUnplaced,
  PierFaceShown,
  PierShown,
  ProofShown,
  SeenThing,
  UnseenPart,
} from '../coverage/coverage-assessment.ts';
import {
  amount,
  count,
  fraction,
  listOf,
  number,
  object,
  oneOf,
  ref,
  type Schema,
  text,
  yesNo,
} from './build.ts';

const ids = listOf(text);
const picture = oneOf('photo', 'clip');
const side = oneOf('left', 'right');
const stretches = listOf(object<LineShown['unseen'][number]>({ fromM: amount, toM: amount }));
const points = listOf(ref('Point'));

/** What the pictures show, what they do not, and which claims they prove. */
export const COVERAGE_DEFINITIONS = {
  SeenThing: object<SeenThing>(
    { kind: oneOf('wall', 'interior-wall', 'pier', 'vent', 'bay'), id: text },
    { faces: listOf(count) },
  ),
  PictureShown: object<PictureShown>(
    {
      id: text,
      kind: picture,
      number: count,
      takenAt: text,
      who: text,
      at: ref('Point'),
      bearingDeg: number,
      fieldOfViewDeg: amount,
      rangeM: amount,
      assumed: listOf(oneOf('fieldOfViewDeg', 'rangeM')),
      floorM2: amount,
      newM2: amount,
      shows: listOf(ref('SeenThing')),
    },
    { caption: text },
  ),
  PictureUnplaced: object<PictureUnplaced>({ id: text, kind: picture, why: text }),
  UnseenPart: object<UnseenPart>({
    areaM2: amount,
    at: ref('Point'),
    fromWalls: listOf(object<FromWall>({ wallId: text, name: text, distanceM: amount })),
    rings: listOf(points),
    standsIn: listOf(object<HiddenItem>({ kind: text, id: text, name: text })),
    covers: listOf(text),
  }),
  LineShown: object<LineShown>(
    { id: text, name: text, openM: amount, unseen: stretches, pictures: ids },
    { share: fraction },
  ),
  InteriorWallShown: object<InteriorWallShown>(
    { id: text, name: text, openM: amount, unseen: stretches, pictures: ids, side },
    { share: fraction },
  ),
  PierShown: object<PierShown>({
    id: text,
    name: text,
    at: ref('Point'),
    faces: listOf(
      object<PierFaceShown>({ face: count, facingDeg: number, pictures: ids }, { share: fraction }),
    ),
    facesShown: count,
    facesOpen: count,
  }),
  ProofShown: object<ProofShown>(
    {
      id: text,
      of: oneOf('finding', 'acceptance', 'build-step'),
      title: text,
      verdict: oneOf('proved', 'partly', 'no-picture', 'unplaced'),
      share: fraction,
      missing: listOf(
        object<MissingPart>(
          {
            kind: oneOf('floor', 'wall', 'interior-wall', 'pier', 'vent', 'bay', 'place'),
            share: fraction,
          },
          { id: text, name: text, face: count, facingDeg: number, side, at: ref('Point') },
        ),
      ),
      pictures: ids,
      named: yesNo,
      others: ids,
      says: text,
    },
    { who: text, when: text },
  ),
  Coverage: object<CoverageAssessment>({
    floor: object<CoverageAssessment['floor']>({
      areaM2: amount,
      seenM2: amount,
      share: fraction,
      errorM2: amount,
      coveredM2: amount,
      scatteredM2: amount,
    }),
    pictures: listOf(ref('PictureShown')),
    unplaced: listOf(ref('PictureUnplaced')),
    unseen: listOf(ref('UnseenPart')),
    walls: listOf(ref('LineShown')),
    interiorWalls: listOf(ref('InteriorWallShown')),
    piers: listOf(ref('PierShown')),
    vents: listOf(ref('LineShown')),
    bays: listOf(ref('LineShown')),
    proofs: listOf(ref('ProofShown')),
    notices: listOf(ref('Notice')),
  }),
} as const satisfies Record<string, Schema>;
