import {
  airflow,
  causes,
  type climate,
  coverage,
  dehumidifier,
  distribution,
  EngineError,
  ground,
  moisture,
  mold,
  plan,
  psychrometrics,
  type Source,
  season,
  wood,
} from '@undercroft/engine';
import { isSurveyed, type Job, type RecordIssue, type SurveyedJob } from '@undercroft/record';
import type { Assessment } from './assessment.ts';
import { Assumptions } from './assumptions.ts';
import { budgetOf } from './budget/budgets.ts';
import { type Conditions, designMonth, surveyDay } from './budget/conditions.ts';
import { causesOf } from './causes/causes.ts';
import { type ChosenClimate, chooseClimate } from './climate.ts';
import { coverageOf } from './coverage/coverage.ts';
import { cautionsOf, judgeCriteria } from './criteria.ts';
import { asSaid } from './defects/as-said.ts';
import { detectedDefects } from './defects/detected.ts';
import { effectsOr, mendsOf, monthEffects, withEffects } from './defects/effects.ts';
import { withYears } from './defects/years.ts';
import {
  type DistributionDepth,
  type DistributionOfJob,
  distributionOf,
} from './distribution/distribution.ts';
import { placeForMachine } from './distribution/place-machine.ts';
import type { DistributionSpace } from './distribution/prepare-field.ts';
import type { AirToTry } from './distribution/try-arrangements.ts';
import { samplesOfFindings } from './evidence/from-findings.ts';
import { samplesOfPlan } from './evidence/from-plan.ts';
import { samplesOfObservations, samplesOfSurfaces, samplesOfWood } from './evidence/from-readings.ts';
import { jobFacts } from './evidence/job-facts.ts';
import { geometryOf, planIssues, type SpaceGeometry } from './geometry.ts';
import { headlineOf } from './headline.ts';
import { meanAir } from './readings/air.ts';
import { readingMeanings } from './readings/meanings.ts';
import type { PlanFigures } from './season/machines.ts';
import { assessSeason } from './season/season.ts';
import type { HourlyYear } from './season/season-assessment.ts';
import { missingParts, requireSurveyed } from './surveyed.ts';

/** Everything about a well-formed job that a person should still mend. Empty for a sound one. */
export function checkJob(job: Job): RecordIssue[] {
  return isSurveyed(job) ? planIssues(job) : missingParts(job);
}

/** How much of the year by the hour an assessment works out, and from which seed. */
export interface AssessOptions {
  /**
   * `none` leaves the year out. `quick` runs the space as found and with all repairs, and sizes the machine: for somebody
   * who waits. `cases` (default) adds each repair alone and the failures: about a second. `full` adds the ranking of the
   * repairs and the chances: some hundred years more.
   */
  readonly season?: 'none' | 'quick' | 'cases' | 'full';
  /** Whether what the pictures show is worked out; true by default; see `coverageOf` for its cost. */
  readonly coverage?: boolean;
  /**
   * Whether it is worked out where the dry air goes on the plan, which the years then take: `present` as found, about
   * 0.3 s for 130 m²; `search` better arrangements too, some seconds. By default `present`, and false where `season` is
   * `none`, since it stands on the hours of a year.
   */
  readonly distribution?: false | DistributionDepth;
  /** Of weather that is synthesized and of values that are drawn; default 1. */
  readonly seed?: number;
  /** Years that the chances of `full` rest on, 20 to 10 000; default 500. */
  readonly years?: number;
  /** Told how many years of how many are done. */
  readonly progress?: (done: number, total: number) => void;
  /** Given the hours of the space as found and, where there are repairs, with all of them. Not called for `none`. */
  readonly hours?: (years: readonly HourlyYear[]) => void;
  /** Given the air on the plan to try other arrangements in. Not called where `distribution` is false or has none. */
  readonly air?: (air: AirToTry) => void;
}

/** Publications behind the figures of every assessment; those of single criteria stand with them. */
function sourcesUsed(): Source[] {
  const sets: Readonly<Record<string, Source>>[] = [
    psychrometrics.psychrometricsSources,
    wood.woodSources,
    moisture.moistureSources,
    airflow.airflowSources,
    ground.groundSources,
    plan.planSources,
    dehumidifier.dehumidifierSources,
    mold.moldSources,
    season.seasonSources,
    coverage.coverageSources,
    distribution.distributionSources,
    causes.causesSources,
  ];
  const byId = new Map(sets.flatMap((set) => Object.values(set)).map((s) => [s.id, s]));
  return [...byId.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** The year by the hour; where the engine refuses figures of the job, none, and a problem says why. */
function yearOf(
  job: SurveyedJob,
  space: SpaceGeometry,
  chosen: ChosenClimate,
  assumptions: Assumptions,
  { season: depth = 'cases', seed = 1, years = 500, progress = () => {}, hours = () => {} }: AssessOptions,
  planFigures: PlanFigures | undefined,
  problems: string[],
): Assessment['season'] {
  if (depth === 'none') return undefined;
  try {
    const air = planFigures === undefined ? {} : { planFigures };
    return assessSeason(job, space, chosen, assumptions, { depth, seed, years, progress, hours, ...air });
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    problems.push(`The year by the hour was not run: ${error.message}.`);
    return undefined;
  }
}

/** What the pictures show; where the engine refuses sizes of the plan, nothing, and a problem says why. */
function coverageWith(
  job: SurveyedJob,
  space: SpaceGeometry,
  assumptions: Assumptions,
  problems: string[],
): Assessment['coverage'] {
  try {
    return coverageOf(job, space.result, assumptions);
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    problems.push(`What the pictures show was not worked out: ${error.message}.`);
    return undefined;
  }
}

/** Where the dry air goes; where the engine refuses figures of the plan, the reason. */
function distributionWith(
  where: DistributionSpace,
  { season: depth = 'cases', distribution: asked = depth === 'none' ? false : 'present' }: AssessOptions,
  survey: Conditions | undefined,
): DistributionOfJob | undefined {
  if (asked === false) return undefined;
  try {
    return distributionOf(where, asked, survey);
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    const why = `The air on the plan was not worked out: ${error.message}.`;
    return { shown: { outcome: 'missing', code: 'refused', why } };
  }
}

/** What is told of the air on the plan, with places for a machine that is to be set where none runs yet. */
function withPlacing(
  air: DistributionOfJob | undefined,
  where: DistributionSpace,
  { distribution: asked }: AssessOptions,
  year: Assessment['season'],
): Pick<Assessment, 'distribution'> {
  if (air === undefined) return {};
  const { shown } = air;
  const chosen = year?.sizing.chosen;
  if (asked !== 'search' || chosen === undefined) return { distribution: shown };
  if (shown.outcome !== 'missing' || shown.code !== 'no-machine') return { distribution: shown };
  try {
    const placing = placeForMachine(where, chosen);
    return { distribution: placing === undefined ? shown : { ...shown, placing } };
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    return { distribution: { ...shown, why: `${shown.why} No place was looked for: ${error.message}.` } };
  }
}

/**
 * Assesses a job: sizes, what every reading means, criteria judged with their evidence, the steady moisture balance
 * of the survey day and of the most humid month, and the year by the hour. The same job, climate and options give the
 * same assessment.
 * @param weather a year of hours; without it the built-in monthly statistics of the nearest station serve
 * @throws JobError when the walls or the ground are missing, or the outline encloses no single area
 */
export function assess(record: Job, weather?: climate.ClimateYear, options: AssessOptions = {}): Assessment {
  const job = requireSurveyed(record);
  const assumptions = new Assumptions();
  const space = geometryOf(job, assumptions);
  const chosen = chooseClimate(job, weather, assumptions);
  const pressurePa = psychrometrics.pressureAtAltitudePa(job.header.elevationM ?? chosen.place.elevationM);
  const problems: string[] = [];
  const facts = jobFacts(job, (question) => {
    problems.push(`readings.answers: "${question}" is not a question with that answer; it is not used.`);
  });
  const crawl = meanAir(job.readings.air, 'crawl', pressurePa);
  const samples = [
    ...samplesOfObservations(job),
    ...samplesOfWood(job),
    ...samplesOfSurfaces(job, crawl?.humidityRatio, pressurePa),
    ...samplesOfPlan(job, space.result),
    ...samplesOfFindings(job),
  ];
  const judged = judgeCriteria(job, samples, facts);
  const count = (verdict: string) => judged.results.filter((c) => c.verdict === verdict).length;
  const looked = detectedDefects(job, space.result, judged, samples, facts);
  const said = asSaid(job, space, looked.detected, samples, assumptions);
  const day = surveyDay(said.job, space, chosen, pressurePa, assumptions);
  const balance = (conditions: Conditions) =>
    budgetOf(said.job, said.space, { ...conditions, said: said.origins }, assumptions);
  const budgets = {
    ...(day === undefined ? {} : { surveyDay: balance(day) }),
    designMonth: balance(designMonth(said.job, space, chosen, assumptions)),
  };
  const seed = options.seed ?? 1;
  const where = { ...said, drawn: job.plan, chosen, seed };
  const air = distributionWith(where, options, day);
  if (air?.toTry !== undefined) options.air?.(air.toTry);
  const year = yearOf(said.job, said.space, chosen, assumptions, options, air?.planFigures, problems);
  const mends = mendsOf(said, job, looked.defects);
  const effects = effectsOr(() => {
    const month = monthEffects(mends, said, chosen, budgets.designMonth);
    return withYears(mends, month, said, chosen, year, seed, air?.planFigures);
  }, problems);
  const shown = options.coverage === false ? undefined : coverageWith(job, space, assumptions, problems);
  const parts = {
    readings: readingMeanings(job, pressurePa),
    criteria: judged.results,
    openQuestions: judged.openQuestions,
    criteriaCount: { met: count('met'), notMet: count('not-met'), notShown: count('not-shown') },
    defects: withEffects(looked.defects, effects, said),
    defectsNotShown: looked.notShown,
    defectsCount: looked.count,
    budgets,
    ...(shown === undefined ? {} : { coverage: shown }),
  };
  const { id, header } = job;
  return {
    format: 'undercroft-assessment',
    version: 1,
    job:
      header.surveyedOn === undefined
        ? { id, title: header.title }
        : { id, title: header.title, surveyedOn: header.surveyedOn },
    climate: chosen.used,
    headline: headlineOf(parts),
    geometry: space.result,
    ...parts,
    ...withPlacing(air, where, options, year),
    ...(year === undefined ? {} : { season: year }),
    causes: causesOf({
      job,
      space,
      facts,
      samples,
      ...parts,
      ...(year === undefined ? {} : { season: year }),
      defects: looked.detected,
    }),
    assumptions: assumptions.list(),
    cautions: cautionsOf(facts),
    sources: sourcesUsed(),
    notices: [...problems, ...judged.problems].map((message) => ({ code: 'not-used', message })),
  };
}
