import type { ItemKey, Job } from '@undercroft/record';

type Listed = readonly { readonly id: string }[];

/** Every list of a job by the name that its items have in the log. */
function listsOf({ plan, readings, media, design, ...job }: Job): readonly (readonly [string, Listed])[] {
  return [
    ['height', plan.heights],
    ['wall', plan.walls],
    ['interior-wall', plan.interiorWalls],
    ['pier', plan.piers],
    ['girder', plan.girders],
    ['joists', plan.joists],
    ['duct', plan.ducts],
    ['vent', plan.vents],
    ['door', plan.doors],
    ['equipment', plan.equipment],
    ['obstacle', plan.obstacles],
    ['zone', plan.zones],
    ['drain', plan.drains],
    ['seam', plan.seams],
    ['instrument', readings.instruments],
    ['level-setup', readings.levelSetups],
    ['level', readings.levels],
    ['air', readings.air],
    ['surface', readings.surface],
    ['wood', readings.wood],
    ['observation', readings.observations],
    ['answer', readings.answers],
    ['photo', media.photos],
    ['clip', media.clips],
    ['audio', media.audio],
    ['finding', job.findings],
    ['repair', design.repairs],
    ['machine', design.machines],
    ['price', job.prices],
    ['build-step', job.build],
    ['acceptance', job.acceptance],
    ['watch', job.watch],
    ['frozen', job.frozen],
  ];
}

const SINGLE = ['header', 'house', 'plan', 'design'];
const PLAN_KINDS = [
  'height',
  'wall',
  'interior-wall',
  'pier',
  'girder',
  'joists',
  'duct',
  'vent',
  'door',
  'equipment',
  'obstacle',
  'zone',
  'drain',
  'seam',
];

/** Finds items of a job as they are named in its log. */
export interface ItemsOfJob {
  /** The part that a job has once, e.g. `plan`. */
  readonly single: (kind: string) => ItemKey[];
  /** All items of some kinds. */
  readonly all: (...kinds: readonly string[]) => ItemKey[];
  /** The items with an id among some kinds, usually one; none where there is none. */
  readonly withId: (id: string, kinds: readonly string[]) => ItemKey[];
  /** The kinds that a plan is made of. */
  readonly planKinds: readonly string[];
}

/** Looks through the items of a job. */
export function itemsOfJob(job: Job): ItemsOfJob {
  const lists = new Map(listsOf(job));
  const all = (...kinds: readonly string[]): ItemKey[] =>
    kinds.flatMap((kind) => (lists.get(kind) ?? []).map(({ id }) => ({ kind, id })));
  return {
    single: (kind) => (SINGLE.includes(kind) ? [{ kind, id: kind }] : []),
    all,
    withId: (id, kinds) => all(...kinds).filter((item) => item.id === id),
    planKinds: PLAN_KINDS,
  };
}
