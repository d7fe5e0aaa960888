import type { season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { Assumptions } from '../assumptions.ts';
import type { ChosenClimate } from '../climate.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { airNetwork, keptNetworks } from './air.ts';
import { chancesOf } from './chances.ts';
import { designDay } from './design-day.ts';
import { floorAir } from './floor-air.ts';
import type { PlanFigures } from './machines.ts';
import { pullDownOf } from './pull-down.ts';
import { rankingYears, rankRepairs } from './ranking.ts';
import { type ChosenRepair, chosenRepairs, repaired } from './repairs.ts';
import { runCases, type StateYear } from './run-cases.ts';
import type { HourlyYear, SeasonAssessment } from './season-assessment.ts';
import { type CaseGround, seasonCaseOf, tariffCentsPerKWh } from './season-case-of.ts';
import { seasonNotices } from './season-notices.ts';
import { seasonSite } from './season-weather.ts';
import { type Sized, sizingOf } from './sizing.ts';
import { asFound } from './space-state.ts';
import { heldHumidity } from './target.ts';
import { yearsOf } from './years.ts';

/** How much of the year is worked out. */
export interface SeasonRequest {
  /**
   * `quick` runs the space as found and with all repairs; `cases` each repair alone and the failures as well; `full` ranks
   * the repairs and asks how sure it is, which takes longer.
   */
  readonly depth: 'quick' | 'cases' | 'full';
  readonly seed: number;
  /** Years that the chances rest on. */
  readonly years: number;
  readonly progress: (done: number, total: number) => void;
  /** Given the hours of the space as found and with all repairs. */
  readonly hours: (years: readonly HourlyYear[]) => void;
  /** Plan coefficients from the air on the plan, where that was worked out. */
  readonly planFigures?: PlanFigures;
}

/**
 * Runs the space as found and the repaired space without a machine, whose temperatures the machine is sized at.
 * @param later notes what is assumed of the repaired space
 */
function foundAndSized(
  job: SurveyedJob,
  repairs: readonly ChosenRepair[],
  shared: CaseGround,
  ofFound: Assumptions,
  later: Assumptions,
): { readonly found: StateYear; readonly sized: Sized } {
  const { space, site } = shared;
  const state = asFound(job);
  const foundCase = seasonCaseOf('as found', state, shared, ofFound);
  const dry = repaired(state, repairs, {});
  const name = `${repairs.length > 0 ? 'all repairs' : 'as found'}, without a machine`;
  const without = { ...seasonCaseOf(name, dry, shared, later), machines: [] };
  const [year, dryYear] = yearsOf([foundCase, without], site.weather);
  const day = designDay(dry, space, site, dryYear.hourly as season.SeasonHourly, later);
  const target = heldHumidity(job.design.targetRelativeHumidity);
  const sized = sizingOf(
    {
      name,
      state: dry,
      space,
      day,
      pullDown: pullDownOf(job, space, without.wood, year, day.crawlC.value, target, later),
      ducts: without.ducts,
      machineWanted: repairs.some((r) => r.meaning.repair === 'dehumidifier'),
    },
    later,
  );
  return { found: { state, space: foundCase, year }, sized };
}

function hourlyYears(found: StateYear, final: StateYear, worked: boolean): HourlyYear[] {
  const hours = ({ year }: StateYear) => year.hourly as season.SeasonHourly;
  return [
    { name: found.year.name, kind: 'as-found', hourly: hours(found) },
    ...(worked ? [{ name: final.year.name, kind: 'all-repairs' as const, hourly: hours(final) }] : []),
  ];
}

/** The space through a year: as found, with each repair, with all, with a failure; sizing, ranking and chances. */
export function assessSeason(
  job: SurveyedJob,
  space: SpaceGeometry,
  chosen: ChosenClimate,
  assumptions: Assumptions,
  request: SeasonRequest,
): SeasonAssessment {
  const full = request.depth === 'full';
  const repairs = chosenRepairs(job);
  const acting = repairs.filter((r) => r.meaning.changesTheYear);
  const ranked = full && acting.length > 0 ? rankingYears(acting.length) : 0;
  const drawn = full ? request.years : 0;
  const quick = request.depth === 'quick';
  const ordinary = quick ? 3 : 6 + acting.length;
  const tell = (done: number) => request.progress(done, ordinary + ranked + drawn);

  tell(0);
  const site = seasonSite(chosen, request.seed);
  const { planFigures } = request;
  const shared: CaseGround = {
    space,
    site,
    networks: keptNetworks(),
    ...(planFigures === undefined ? {} : { planFigures }),
  };
  const later = new Assumptions();
  const { found, sized } = foundAndSized(job, repairs, shared, assumptions, later);
  tell(2);
  const given = sized.machine === undefined ? {} : { machine: sized.machine };
  const { cases, final } = runCases(found, repairs, given, shared, later, quick);
  request.hours(hourlyYears(found, final, repairs.length > 0));
  tell(ordinary);
  const ranking =
    ranked > 0 ? rankRepairs(found.state, acting, given, shared, (n) => tell(ordinary + n)) : undefined;
  const name = final.space.name;
  const chances = full
    ? chancesOf(name, final.state, shared, request, (n) => tell(ordinary + ranked + n))
    : undefined;
  tell(ordinary + ranked + drawn);

  const air = (at: StateYear, noted: Assumptions) =>
    floorAir(at.year, at.space, airNetwork(at.state, space, noted, shared.networks), chosen);
  const ofFound = new Set(assumptions.list().map((a) => JSON.stringify(a)));
  return {
    depth: request.depth,
    weather: site.used,
    tariffCentsPerKWh: tariffCentsPerKWh(found.state, assumptions),
    repairs: repairs.map((r) => r.meaning),
    cases,
    airExchange: [air(found, assumptions), ...(repairs.length > 0 ? [air(final, later)] : [])],
    sizing: sized.result,
    ...(ranking === undefined ? {} : { ranking }),
    ...(chances === undefined ? {} : { chances }),
    assumptions: later.list().filter((a) => !ofFound.has(JSON.stringify(a))),
    notices: seasonNotices(job, final.space, final.state, cases),
  };
}
