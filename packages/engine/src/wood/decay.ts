import { requireSurfaceSeries } from '../mold/surface-series.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';

/*
 * Brown rot in pine sapwood by humidity and temperature, fitted over 0 to 30 °C and 95 to 100 % RH. All coefficients are
 * recalled from memory of Viitanen et al. 2010 (`woodSources.decayMassLoss`). That the hourly rate is the monthly one
 * divided by 720 supports the recall. Liquid water counts as 100 % RH.
 */
const ACTIVE_ABOVE_C = 0;
const ACTIVE_ABOVE_PERCENT = 95;
const FITTED_TO_C = 30;
const DAYS_PER_MONTH = 30;
/** Time in which an interrupted start is forgotten [h]. */
const FORGOTTEN_AFTER_HOURS = 17520;

/** Mass loss [%] per month once decay runs. */
function percentPerMonth(t: number, rh: number): number {
  return -42.9 + 0.14 * t + 0.45 * rh;
}

/** Mass loss [fraction] per hour once decay runs. */
function lossPerHour(t: number, rh: number): number {
  return Math.max(0, -5.96e-2 + 1.96e-4 * t + 6.25e-4 * rh) / 100;
}

/**
 * Days of constant air at the wood until brown rot takes hold; infinite where it never does.
 *
 * A kernel without checks. Nothing happens at or below 0 °C or 95 % RH. Above 30 °C, where the fit ends and would soon
 * give no waiting time at all, the value for 30 °C stands; `decayRiskOfSeries` says when that was used.
 *
 * @param temperatureC wood temperature [°C]
 * @param relativeHumidity at the wood [fraction], 1 for liquid water
 * @source Viitanen et al. 2010, from memory (`woodSources.decayMassLoss`)
 */
export function decayInitiationDays(temperatureC: number, relativeHumidity: number): number {
  const rh = 100 * relativeHumidity;
  if (temperatureC <= ACTIVE_ABOVE_C || rh <= ACTIVE_ABOVE_PERCENT) return Number.POSITIVE_INFINITY;
  const t = Math.min(temperatureC, FITTED_TO_C);
  const perMonth = percentPerMonth(t, rh);
  if (perMonth <= 0) return Number.POSITIVE_INFINITY;
  return (DAYS_PER_MONTH * (2.3 * t + 0.035 * rh - 0.024 * t * rh)) / perMonth;
}

/** How far brown rot has come. Changed in place by `stepDecay`. */
export interface DecayState {
  /** Progress towards a start, 0..1; decay runs at 1. */
  progress: number;
  /** Mass lost by pine sapwood [fraction]; for comparison of conditions, never as remaining strength. */
  massLoss: number;
}

/** Wood without decay. */
export function soundWood(): DecayState {
  return { progress: 0, massLoss: 0 };
}

/**
 * Moves decay through one step of constant air, in place. A kernel without checks; a missing value that matters makes both
 * figures NaN.
 * @param hours length of the step [h]
 * @source Viitanen et al. 2010, from memory (`woodSources.decayMassLoss`)
 */
export function stepDecay(
  state: DecayState,
  temperatureC: number,
  relativeHumidity: number,
  hours: number,
): void {
  const days = decayInitiationDays(temperatureC, relativeHumidity);
  if (days === Number.POSITIVE_INFINITY) {
    state.progress = Math.max(0, state.progress - hours / FORGOTTEN_AFTER_HOURS);
    return;
  }
  if (state.progress >= 1) {
    const t = Math.min(temperatureC, FITTED_TO_C);
    state.massLoss = Math.min(1, state.massLoss + hours * lossPerHour(t, 100 * relativeHumidity));
  }
  state.progress = Math.min(1, state.progress + hours / (24 * days));
  if (Number.isNaN(days)) state.massLoss = Number.NaN;
}

/** `none`: never close to starting. `building-up`: part of the way. `likely`: conditions in which decay runs. */
export type DecayRisk = 'none' | 'building-up' | 'likely';

/** Decay risk of a series of conditions. */
export interface DecayRiskResult {
  readonly risk: DecayRisk;
  /** Largest progress towards a start, 0..1. */
  readonly largestProgress: number;
  readonly notices: readonly Notice[];
}

/**
 * Risk of brown rot over a series of conditions at the wood, from sound wood.
 *
 * The notice `recalled-model` is always there; `outside-range` when wet hours above 30 °C were taken as 30 °C.
 *
 * @param temperatureC wood temperature in every step [°C], -90..90
 * @param relativeHumidity at the wood in every step [fraction 0..1]; 1 for liquid water
 * @param hoursPerStep above 0 and up to 24; default 1
 * @throws EngineError `bad-input` for series of different or no length; `not-finite`, `out-of-range` naming the step
 * @source Viitanen et al. 2010, from memory (`woodSources.decayMassLoss`)
 */
export function decayRiskOfSeries(
  temperatureC: ArrayLike<number>,
  relativeHumidity: ArrayLike<number>,
  hoursPerStep = 1,
): DecayRiskResult {
  requireSurfaceSeries(temperatureC, relativeHumidity);
  requireRange('hours per step', hoursPerStep, Number.MIN_VALUE, 24);
  const state = soundWood();
  let largestProgress = 0;
  let beyondFit = 0;
  for (let i = 0; i < temperatureC.length; i++) {
    const t = temperatureC[i]!;
    const h = relativeHumidity[i]!;
    stepDecay(state, t, h, hoursPerStep);
    if (state.progress > largestProgress) largestProgress = state.progress;
    if (t > FITTED_TO_C && 100 * h > ACTIVE_ABOVE_PERCENT) beyondFit++;
  }
  const notices: Notice[] = [
    {
      code: 'recalled-model',
      message:
        'The decay model is recalled from memory and holds for pine sapwood; use it as a class of risk, never as remaining strength.',
    },
  ];
  if (beyondFit > 0) {
    notices.push({
      code: 'outside-range',
      message: `${beyondFit * hoursPerStep} wet hours above ${FITTED_TO_C} °C lie outside the fit and were taken as ${FITTED_TO_C} °C.`,
    });
  }
  const risk = largestProgress >= 1 ? 'likely' : largestProgress > 0 ? 'building-up' : 'none';
  return { risk, largestProgress, notices };
}
