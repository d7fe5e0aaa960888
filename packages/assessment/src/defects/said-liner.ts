import { undrawnStripsM2 } from './bare-strips.ts';
import { openGroundCounted, type SaidRule, saidBy, withDraftPlan, withPart } from './draft.ts';
import { seamLengthM } from './extents.ts';

/** Estimates of the trade for what a finding names and nobody measured; no source. */
const LOOSE_SHARE = { value: 0.1, low: 0.02, high: 0.5, unit: 'fraction' } as const;
const UNTAPED_SHARE = { value: 0.25, low: 0.05, high: 1, unit: 'fraction' } as const;
const BARE_SHARE = { value: 0.02, low: 0.005, high: 0.1, unit: 'fraction' } as const;
const MEASURE = 'A finding says so and nobody measured how far; a tape replaces this.';

const piers: SaidRule = (draft, { about }) => {
  const { piers: drawn } = draft.job.plan;
  const open = drawn.filter((p) => p.wrapHeightM === undefined && p.wrapSealed === undefined);
  const meant = about.meant(open.map((p) => p.id));
  if (meant.size === 0) return draft;
  const said = withDraftPlan(draft, {
    piers: drawn.map((p) => (meant.has(p.id) ? { ...p, wrapSealed: false } : p)),
  });
  const wasBare = drawn.some((p) => p.wrapHeightM === 0 || p.wrapSealed === false);
  return wasBare ? said : saidBy(said, ['bare-piers'], about.origin);
};

const edges: SaidRule = (draft, { space, assumptions, about }) => {
  const { walls, ground } = draft.job.plan;
  if (ground.cover !== 'liner' || walls.some((w) => (w.linerLooseM ?? 0) > 0)) return draft;
  const { perimeterM, edges: sides } = space.result;
  const share = () =>
    assumptions.band('looseEdgeShare', 'Loose share of the liner edge', LOOSE_SHARE, MEASURE).value;
  const looseM = about.lengthM ?? (about.share ?? share()) * perimeterM;
  const open = walls.filter((w) => w.linerLooseM === undefined);
  const id = about.nearest(open.map((w) => w.id));
  if (id !== undefined) {
    const said = walls.map((w) => (w.id === id ? { ...w, linerLooseM: looseM } : w));
    return saidBy(withDraftPlan(draft, { walls: said }), [id], about.origin);
  }
  const [side] = sides;
  if (walls.length > 0 || side === undefined) return draft;
  const wall = { id: 'said-edge', wallId: side.id, outdoors: true, linerLooseM: looseM };
  return saidBy(withDraftPlan(draft, { walls: [wall] }), [wall.id], about.origin);
};

const seams: SaidRule = (draft, { space, assumptions, about }) => {
  const { plan } = draft.job;
  if (plan.ground.cover !== 'liner' || plan.seams.length > 0) return draft;
  const share = () =>
    assumptions.band('untapedShare', 'Share of the seams without tape', UNTAPED_SHARE, MEASURE).value;
  const lengthM = about.lengthM ?? (about.share ?? share()) * seamLengthM(draft.job, space.result);
  if (lengthM <= 0) return draft;
  const laps = draft.job.readings.observations.flatMap((o) =>
    o.quantity === 'seamLapWidthM' && typeof o.value === 'number' && !o.assumed ? [o.value] : [],
  );
  const lap = laps.length === 0 ? {} : { lapM: laps.reduce((sum, one) => sum + one, 0) / laps.length };
  // One straight seam stands for all of them: the balance takes its length only.
  const path = [
    { xM: 0, yM: 0 },
    { xM: Math.min(lengthM, 1000), yM: 0 },
  ];
  const seam = { id: 'said-seam', path, tapedM: 0, ...lap };
  return saidBy(withDraftPlan(draft, { seams: [seam] }), [seam.id], about.origin);
};

const bareGround: SaidRule = (draft, given) => {
  const { ground } = draft.job.plan;
  const { space, about, assumptions } = given;
  const drawn = space.result.bareEarthM2 > 0;
  if (ground.cover !== 'liner' || drawn || openGroundCounted(ground)) return draft;
  const { floorAreaM2 } = space.result;
  const measured = draft.job.readings.observations.flatMap((o) =>
    o.quantity === 'exposedEarthFraction' && typeof o.value === 'number' && !o.assumed ? [o.value] : [],
  );
  const share = () => assumptions.band('bareShare', 'Bare share of the floor', BARE_SHARE, MEASURE).value;
  const areaM2 =
    about.areaM2 ?? (about.share ?? (measured.length === 0 ? share() : Math.max(...measured))) * floorAreaM2;
  const { surface } = ground;
  return withPart(draft, given, {
    id: 'said-bare',
    name: 'Bare ground as found',
    areaM2,
    ground: { cover: 'bare-earth', ...(surface === undefined ? {} : { surface }) },
  });
};

const strips: SaidRule = (draft, given) => {
  const { plan } = draft.job;
  if (plan.ground.cover !== 'liner' || openGroundCounted(plan.ground)) return draft;
  const open = plan.ducts.filter((d) => d.linerBeneath === undefined);
  const failing = plan.ducts.some((d) => d.linerBeneath === false);
  const meant = failing ? new Set<string>() : given.about.meant(open.map((d) => d.id));
  const said = withDraftPlan(draft, {
    ducts: plan.ducts.map((d) => (meant.has(d.id) ? { ...d, linerBeneath: false } : d)),
  });
  const undrawn = undrawnStripsM2(said.job);
  const areaM2 = undrawn > 0 ? (given.about.areaM2 ?? undrawn) : 0;
  const { surface } = plan.ground;
  return withPart(said, given, {
    id: 'said-strips',
    name: 'Bare strips under ducts',
    areaM2,
    ground: { cover: 'bare-earth', ...(surface === undefined ? {} : { surface }) },
  });
};

const doorFrame: SaidRule = (draft, { about }) => {
  const { doors } = draft.job.plan;
  const meant = about.meant(doors.filter((d) => d.linerSealedToFrame === undefined).map((d) => d.id));
  if (meant.size === 0) return draft;
  const said = doors.map((d) => (meant.has(d.id) ? { ...d, linerSealedToFrame: false } : d));
  return saidBy(withDraftPlan(draft, { doors: said }), meant, about.origin);
};

const torn: SaidRule = (draft, { about }) => {
  const { ground } = draft.job.plan;
  const { liner } = ground;
  if (ground.cover !== 'liner' || liner?.workmanship !== undefined || openGroundCounted(ground)) return draft;
  const said = { ...ground, liner: { ...liner, workmanship: 'torn-or-short' as const } };
  return saidBy(withDraftPlan(draft, { ground: said }), ['elsewhere'], about.origin);
};

/** What is said of the liner, by the key of the defect. */
export const SAID_OF_LINER: Readonly<Record<string, SaidRule>> = {
  'liner-torn-or-thin': torn,
  'exposed-earth': bareGround,
  'bare-strip-under-ducts': strips,
  'piers-not-wrapped': piers,
  'glued-edge-letting-go': edges,
  'seams-not-sealed': seams,
  'door-frame-edge-open': doorFrame,
};
