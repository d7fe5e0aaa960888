import type { SurveyedJob } from '@undercroft/record';

type Plan = SurveyedJob['plan'];
type Ground = Plan['ground'];
type Liner = NonNullable<Ground['liner']>;
type Change = (plan: Plan, isMeant: (id: string) => boolean) => Plan;

const withLiner = (ground: Ground, fill: Partial<Liner>): Ground =>
  ground.cover === 'liner' ? { ...ground, liner: { ...fill, ...ground.liner } } : ground;

const floor =
  (fill: Partial<Liner>): Change =>
  (plan) => ({ ...plan, ground: withLiner(plan.ground, fill) });

/** What a finding says about the drawing, where the drawing itself says nothing: a drawn fact always stands. */
const SAYS: Readonly<Record<string, Change>> = {
  'piers-not-wrapped': (plan, isMeant) => ({
    ...plan,
    piers: plan.piers.map((p) => (isMeant(p.id) ? { wrapHeightM: 0, wrapSealed: false, ...p } : p)),
  }),
  'glued-edge-letting-go': (plan, isMeant) => ({
    ...plan,
    walls: plan.walls.map((w) =>
      isMeant(w.id) ? { linerFixing: 'adhesive' as const, linerSealed: false, ...w } : w,
    ),
  }),
  'door-frame-edge-open': (plan, isMeant) => ({
    ...plan,
    doors: plan.doors.map((d) => (isMeant(d.id) ? { linerSealedToFrame: false, ...d } : d)),
  }),
  'seams-not-sealed': (plan, isMeant) => ({
    ...plan,
    seams: plan.seams.map((s) => (isMeant(s.id) ? { tapedM: 0, ...s } : s)),
    ground: withLiner(plan.ground, { workmanship: 'laid-and-lapped' }),
  }),
  'liner-torn-or-thin': floor({ workmanship: 'torn-or-short' }),
  'water-bed': floor({ waterBeneath: 'free-water' }),
  'damp-under-liner': floor({ waterBeneath: 'droplets' }),
  'water-on-liner': floor({ waterOnTop: 'pond' }),
  'old-liner-below': floor({ oldLinerBelow: true }),
  'standing-water': (plan) =>
    plan.ground.cover === 'bare-earth' ? { ...plan, ground: { surface: 'wet', ...plan.ground } } : plan,
  'vent-loose-board': (plan, isMeant) => ({
    ...plan,
    vents: plan.vents.map((v) => (isMeant(v.id) ? { state: 'loose-board' as const, ...v } : v)),
  }),
  'half-vented': (plan, isMeant) => ({
    ...plan,
    vents: plan.vents.map((v) => (isMeant(v.id) ? { state: 'open' as const, ...v } : v)),
  }),
  'damp-walls': (plan, isMeant) => ({
    ...plan,
    walls: plan.walls.map((w) => (isMeant(w.id) ? { dampness: 'damp' as const, ...w } : w)),
  }),
  'sweating-ducts': (plan, isMeant) => ({
    ...plan,
    ducts: plan.ducts.map((d) => (isMeant(d.id) ? { leaks: true, ...d } : d)),
  }),
  'drain-disconnected': (plan, isMeant) => ({
    ...plan,
    drains: plan.drains.map((d) => (isMeant(d.id) ? { joined: false, ...d } : d)),
  }),
};

/**
 * The job as the balance of water takes it: what a finding says fills what the drawing leaves open. A finding that names an
 * item is about that item, one that names none about all of its kind. Nothing is counted twice, since a drawn fact stands.
 */
export function withClaims(job: SurveyedJob): SurveyedJob {
  let { plan } = job;
  for (const { defect, place } of job.findings) {
    const named = place.on?.id;
    plan = SAYS[defect]?.(plan, (id) => named === undefined || named === id) ?? plan;
  }
  return plan === job.plan ? job : { ...job, plan };
}
