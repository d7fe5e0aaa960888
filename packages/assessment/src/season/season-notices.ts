import type { Notice, season } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { Assumptions } from '../assumptions.ts';
import { enteredSources } from '../budget/budgets.ts';
import type { SeasonCaseResult } from './season-assessment.ts';
import type { SpaceState } from './space-state.ts';
import { targetNotices } from './target.ts';

/** Water from things that no repair of the list moves. */
function leftIn(job: SurveyedJob, final: season.SeasonCase): Notice[] {
  if (final.otherWaterKgPerDay === 0 || job.design.repairs.every((r) => !r.chosen)) return [];
  const sources = enteredSources(job, new Assumptions())
    .map((source) => source.title.toLowerCase())
    .join(', ');
  return [
    {
      code: 'source-left-in',
      message: `No repair of the job takes this out of the space: ${sources}. Its ${final.otherWaterKgPerDay.toFixed(1)} kg of water a day stay in every case. End ducts outdoors and stop leaks.`,
    },
  ];
}

/** Repairs that made a month of the year wetter when they are done alone. */
function wetterAlone(cases: readonly SeasonCaseResult[]): Notice[] {
  const [found] = cases;
  return cases.flatMap((one): Notice[] => {
    if (one.kind !== 'repair') return [];
    const rises = one.months.map((m, i) => m.relativeHumidity - found.months[i].relativeHumidity);
    const most = Math.max(...rises);
    if (most < 0.02) return [];
    return [
      {
        code: 'wetter-alone',
        message: `"${one.name}" alone makes the space wetter: up to ${(100 * most).toFixed(0)} points of relative humidity in a month. It belongs together with what stops the water.`,
      },
    ];
  });
}

/** What a reader of the years must know. */
export function seasonNotices(
  job: SurveyedJob,
  final: season.SeasonCase,
  state: SpaceState,
  cases: readonly SeasonCaseResult[],
): Notice[] {
  const unsettled = cases.filter((c) => !c.settled).length;
  const blows = state.fans.some((fan) => fan.kind !== 'circulating-fan');
  return [
    ...targetNotices(job),
    ...leftIn(job, final),
    ...wetterAlone(cases),
    ...(blows
      ? [
          {
            code: 'exhaust-runs-on',
            message: 'In the case without power the exhaust fan still moves air; only its heat is gone.',
          },
        ]
      : []),
    ...(unsettled > 0
      ? [
          {
            code: 'year-not-settled',
            message: `${unsettled} of ${cases.length} years had not settled; their figures still drift a little.`,
          },
        ]
      : []),
  ];
}
