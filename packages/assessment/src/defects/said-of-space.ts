import type { SurveyedJob } from '@undercroft/record';
import { type SaidRule, saidBy, withDraftPlan, withPart } from './draft.ts';
import { wetBattShare, withWetBatts } from './wet-batts.ts';

/** Part of the floor on which water stands where a finding says so and nobody measured it; an estimate, no source. */
const WET_SHARE = { value: 0.05, low: 0.005, high: 0.2, unit: 'fraction' } as const;

type Liner = NonNullable<SurveyedJob['plan']['ground']['liner']>;

const liner =
  (fill: Partial<Liner>): SaidRule =>
  (draft, { about }) => {
    const { ground } = draft.job.plan;
    const key = Object.keys(fill)[0] as keyof Liner;
    if (ground.cover !== 'liner' || ground.liner?.[key] !== undefined) return draft;
    const said = { ...ground, liner: { ...ground.liner, ...fill } };
    return saidBy(withDraftPlan(draft, { ground: said }), [`${key}-elsewhere`], about.origin);
  };

const standing: SaidRule = (draft, given) => {
  const { ground, zones } = draft.job.plan;
  const { space, assumptions, about } = given;
  const drawn = [ground, ...zones.map((z) => z.ground)].some((g) => g.surface === 'standing-water');
  if (drawn || ground.cover === 'slab') return draft;
  if (ground.cover === 'liner') return liner({ waterOnTop: 'pond' })(draft, given);
  const share = () =>
    assumptions.band(
      'standingShare',
      'Share of the floor under standing water',
      WET_SHARE,
      'A finding says that water stands and nobody measured it; draw it as a zone to replace this.',
    ).value;
  return withPart(draft, given, {
    id: 'said-water',
    name: 'Standing water as found',
    areaM2: about.areaM2 ?? (about.share ?? share()) * space.result.floorAreaM2,
    ground: { cover: ground.cover, surface: 'standing-water' },
  });
};

const dampWalls: SaidRule = (draft, { about }) => {
  const { walls } = draft.job.plan;
  const meant = about.meant(walls.filter((w) => w.dampness === undefined).map((w) => w.id));
  if (meant.size === 0) return draft;
  const said = walls.map((w) => (meant.has(w.id) ? { ...w, dampness: 'damp' as const } : w));
  return saidBy(withDraftPlan(draft, { walls: said }), meant, about.origin);
};

const looseBoards: SaidRule = (draft, { about }) => {
  const { vents } = draft.job.plan;
  const meant = about.meant(vents.filter((v) => v.state === undefined).map((v) => v.id));
  if (meant.size === 0) return draft;
  return withDraftPlan(draft, {
    vents: vents.map((v) => (meant.has(v.id) ? { ...v, state: 'loose-board' as const } : v)),
  });
};

const leakingDucts: SaidRule = (draft, { about }) => {
  const { ducts } = draft.job.plan;
  const meant = about.meant(ducts.filter((d) => d.leaks === undefined).map((d) => d.id));
  if (meant.size === 0) return draft;
  return withDraftPlan(draft, { ducts: ducts.map((d) => (meant.has(d.id) ? { ...d, leaks: true } : d)) });
};

const batts: SaidRule = (draft, { assumptions, about }) => ({
  ...draft,
  job: withWetBatts(draft.job, about.share ?? wetBattShare(assumptions)),
});

/** What is said of water, walls, vents, ducts and insulation, by the key of the defect. */
export const SAID_OF_SPACE: Readonly<Record<string, SaidRule>> = {
  'water-bed': liner({ waterBeneath: 'free-water' }),
  'water-on-liner': liner({ waterOnTop: 'pond' }),
  'standing-water': standing,
  'damp-walls': dampWalls,
  'vent-loose-board': looseBoards,
  'sweating-ducts': leakingDucts,
  'wet-floor-batts': batts,
};
