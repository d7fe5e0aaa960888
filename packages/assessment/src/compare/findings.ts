import { coverage as engine } from '@undercroft/engine';
import type { Point, SurveyedJob } from '@undercroft/record';
import type { Assessment } from '../assessment.ts';
import { Assumptions } from '../assumptions.ts';
import { sceneOf } from '../coverage/scene.ts';
import { picturesOf } from '../coverage/stations.ts';
import type { FindingTurn } from './comparison.ts';
import { pairUp } from './pairs.ts';

type Finding = SurveyedJob['findings'][number];

/** Which of some places the pictures of a survey show. */
function placesShown(
  job: SurveyedJob,
  { geometry }: Assessment,
  places: ReadonlyMap<string, Point>,
): ReadonlySet<string> {
  const stations = picturesOf(job, new Assumptions()).placed.flatMap((p) => p.stations);
  if (stations.length === 0 || places.size === 0) return new Set();
  const claims = [...places].map(([id, at]) => ({ id, about: { kind: 'place', at } as const }));
  const proofs = engine.proofOf(sceneOf(job, geometry).scene, stations, claims);
  return new Set(proofs.filter((p) => p.verdict === 'shown').map((p) => p.id));
}

const placed = (findings: readonly Finding[]) =>
  findings.map((item) => ({
    id: item.id,
    sort: item.defect,
    item,
    ...(item.place.at === undefined ? {} : { at: item.place.at }),
  }));

/** What became of every finding. A finding that is not made again is only gone where somebody looked. */
export function findingTurns(
  before: SurveyedJob,
  after: SurveyedJob,
  assessment: Assessment,
  withinM: number,
): FindingTurn[] {
  const { pairs, gone, fresh } = pairUp(placed(before.findings), placed(after.findings), withinM, true);
  const places = new Map(gone.flatMap(({ id, at }) => (at === undefined ? [] : [[id, at] as const])));
  const looked = placesShown(after, assessment, places);
  return [
    ...fresh.map(
      ({ id, item }): FindingTurn => ({
        title: item.title,
        defect: item.defect,
        afterId: id,
        turn: 'new',
        says: `Found now: ${item.title}.`,
      }),
    ),
    ...pairs.map(
      (p): FindingTurn => ({
        title: p.after.item.title,
        defect: p.after.item.defect,
        beforeId: p.before.id,
        afterId: p.after.id,
        turn: 'still',
        says: `Found again: ${p.after.item.title}.`,
      }),
    ),
    ...gone.map(({ id, item }): FindingTurn => {
      const seen = looked.has(id);
      return {
        title: item.title,
        defect: item.defect,
        beforeId: id,
        turn: seen ? 'gone' : 'unseen',
        says: seen
          ? `Not found again, and a later picture shows the place: ${item.title}.`
          : `Not found again, and no later picture shows the place, which says nothing: ${item.title}.`,
      };
    }),
  ];
}
