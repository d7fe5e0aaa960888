import { coldNotices } from '../dehumidifier/frost.ts';
import { performanceAt } from '../dehumidifier/surfaces.ts';
import type { Notice } from '../numerics/notice.ts';
import type { Spread } from './band.ts';
import type { BudgetInput } from './budget-input.ts';
import type { BudgetPath } from './budget-result.ts';
import type { CrawlAir } from './crawl-air.ts';
import type { SteadyState } from './steady-state.ts';

const kg = (value: number) => `${value.toFixed(Math.abs(value) < 1 ? 2 : 1)} kg/day`;

/** What the machine's figures rest on at this air. */
function machineNotices(budget: BudgetInput, air: CrawlAir): Notice[] {
  const machine = budget.dehumidifier;
  if (!machine || machine.kind === 'collected') return [];
  const rh = Math.min(1, Math.max(0, air.relativeHumidity));
  const notices = [...performanceAt(air.temperatureC, rh).notices];
  if (machine.cold) {
    notices.push(...coldNotices(air.temperatureC, rh, machine.cold, machine.lowestAirC));
  }
  if (machine.kind === 'humidistat' && budget.state.kind === 'read') {
    notices.push({
      code: 'run-time-unknown',
      message:
        'How long the dehumidifier ran was not recorded: it was taken from the reading and its setting. Collect its water ' +
        'for a day or read its hours to know.',
    });
  }
  return notices;
}

/** Air streams that cannot be as entered: more goes up to the house than comes in. */
function airNotices(budget: BudgetInput): Notice[] {
  const house = budget.houseAir?.flowM3PerS.value ?? 0;
  const others = (budget.otherAir ?? []).reduce((sum, stream) => sum + stream.flowM3PerS.value, 0);
  const inflow = (budget.outsideAir?.flowM3PerS.value ?? 0) + others;
  if (house >= 0 || inflow >= -house * (1 - 1e-9)) return [];
  return [
    {
      code: 'air-not-balanced',
      message:
        `${(-1000 * house).toFixed(1)} L/s goes up to the house but only ${(1000 * inflow).toFixed(1)} L/s comes in; ` +
        'the flow from outdoors was left as entered and is too low.',
    },
  ];
}

function steadyNotices(steady: SteadyState): Notice[] {
  const notices: Notice[] = [];
  if (steady.excessKgPerS > 0) {
    notices.push({
      code: 'saturated',
      message: `The paths bring ${kg(86_400 * steady.excessKgPerS)} more than air at this temperature can hold or lose: it condenses.`,
    });
  }
  if (steady.shortKgPerS > 0) {
    notices.push({
      code: 'sinks-exceed-sources',
      message: `The entered sinks take ${kg(86_400 * steady.shortKgPerS)} more than the paths bring even into dry air: check them.`,
    });
  }
  if (steady.machineAtLimit) {
    notices.push({
      code: 'machine-too-small',
      message: `The dehumidifier runs all the time and the air stays at ${(100 * steady.air.relativeHumidity).toFixed(0)} %, above its setting.`,
    });
  }
  return notices;
}

/** The assumed path whose range is widest, if it is worth a word: a tenth of all that comes in. */
function doubtNotices(paths: readonly BudgetPath[], totalIn: number): Notice[] {
  let widest: BudgetPath | undefined;
  for (const path of paths) {
    if (!path.assumed || path.inputs.length === 0) continue;
    if (!widest || path.high - path.low > widest.high - widest.low) widest = path;
  }
  if (!widest || widest.high - widest.low <= 0.1 * totalIn) return [];
  const guessed = widest.inputs.filter(({ band }) => band.assumed).map(({ name }) => name);
  return [
    {
      code: 'largest-doubt',
      message: `The widest guess is "${widest.title}", ${widest.low.toFixed(2)} to ${kg(widest.high)}; assumed there: ${guessed.join(', ')}.`,
    },
  ];
}

function unexplainedNotices(unexplained: Spread): Notice[] {
  if (unexplained.likelyLow > 0) {
    return [
      {
        code: 'source-not-found',
        message:
          `The air loses ${kg(unexplained.value)} more than the paths bring (likely ${unexplained.likelyLow.toFixed(2)} to ${kg(unexplained.likelyHigh)}): ` +
          'look for a source that was not seen, or for wood and masonry that are drying.',
      },
    ];
  }
  if (unexplained.likelyHigh < 0) {
    return [
      {
        code: 'sink-not-found',
        message:
          `The paths bring ${kg(-unexplained.value)} more than the air loses (likely ${(-unexplained.likelyHigh).toFixed(2)} to ${kg(-unexplained.likelyLow)}): ` +
          'it leaves by a way that was not seen, goes into wood and masonry, or a guess is too high.',
      },
    ];
  }
  return [];
}

/** Everything a reader of the budget must know. */
export function budgetNotices(
  budget: BudgetInput,
  air: CrawlAir,
  paths: readonly BudgetPath[],
  totalInKgPerDay: number,
  solved: { readonly steady?: SteadyState; readonly unexplained?: Spread },
): readonly Notice[] {
  return [
    ...(solved.steady ? steadyNotices(solved.steady) : []),
    ...(solved.unexplained ? unexplainedNotices(solved.unexplained) : []),
    ...airNotices(budget),
    ...machineNotices(budget, air),
    ...doubtNotices(paths, totalInKgPerDay),
  ];
}
