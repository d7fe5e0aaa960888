import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { DecayRisk } from './decay.ts';

/**
 * Dose-response models of decay from daily mean moisture content and temperature, both recalled from memory.
 * `logistic`: polynomials in both, nothing below 25 % MC. `simplified`: a product of two shares; it never falls to zero
 * for damp wood, so `decayDoseOfSeries` counts only days at or above 20 % MC.
 */
export type DecayDoseModel = 'logistic' | 'simplified';

/** Dose at which the first decay shows [days of ideal conditions]. */
const ONSET_DAYS = 325;
/** Driest wood for which the simplified model is counted; the sources apply it above about 20 to 25 % MC. */
const SIMPLIFIED_FROM = 0.2;

function logistic(t: number, u: number): number {
  if (u < 25 || t <= 0 || t > 40) return 0;
  const moisture = -4.98 + u * (0.34 + u * (-7.22e-3 + u * (7.18e-5 + u * (-3.5e-7 + u * 6.75e-10))));
  const warmth = t * (4.17e-2 + t * (-1.55e-3 + t * (9.57e-5 - t * 1.8e-6)));
  return moisture > 0 && warmth > 0 ? (3.2 * warmth + moisture) / 4.2 : 0;
}

function simplified(t: number, u: number): number {
  return Math.min(1, (u / 30) ** 2) * Math.min(1, Math.max(0, t / 30));
}

/**
 * Dose that one day adds [days of ideal conditions, 0..1]. A kernel without checks.
 * @param temperatureC daily mean wood temperature [°C]
 * @param moistureContent daily mean [fraction of oven-dry mass]
 * @source Brischke and Rapp 2008, Brischke and Meyer-Veltrup 2016 (logistic); Isaksson, Brischke and Thelandersson 2013
 *   (simplified); both from memory
 */
export function decayDoseOfDay(temperatureC: number, moistureContent: number, model: DecayDoseModel): number {
  const u = 100 * moistureContent;
  return model === 'logistic' ? logistic(temperatureC, u) : simplified(temperatureC, u);
}

/**
 * Mean decay rating of the logistic model, 0 sound to 4 failed, for a dose.
 * @param doseDays sum of daily doses of the logistic model, 0..100000
 * @throws EngineError `not-finite`, `out-of-range`
 * @source Brischke and Meyer-Veltrup 2016, from memory (`woodSources.decayLogisticDose`)
 */
export function decayRating(doseDays: number): number {
  const dose = requireRange('decay dose (days)', doseDays, 0, 100_000);
  return 4 * Math.exp(-Math.exp(1.7716 - 0.0032 * dose));
}

/** Decay dose of a series of days. */
export interface DecayDoseResult {
  /** Sum of daily doses [days of ideal conditions]. */
  readonly doseDays: number;
  /** `likely` from a dose of 325 days, at which the first decay shows. */
  readonly risk: DecayRisk;
  readonly notices: readonly Notice[];
}

/**
 * Decay dose and risk over a series of days. The notice `recalled-model` is always there.
 * @param temperatureC daily mean wood temperature [°C], -90..90
 * @param moistureContent daily mean [fraction of oven-dry mass], 0..3
 * @throws EngineError `bad-input` for series of different or no length; `not-finite`, `out-of-range` naming the day
 * @source as `decayDoseOfDay`
 */
export function decayDoseOfSeries(
  temperatureC: ArrayLike<number>,
  moistureContent: ArrayLike<number>,
  model: DecayDoseModel,
): DecayDoseResult {
  const days = temperatureC.length;
  if (days !== moistureContent.length || days === 0) {
    throw new EngineError(
      'bad-input',
      `decay dose needs as many temperatures as moisture contents, at least one; got ${days} and ${moistureContent.length}`,
    );
  }
  let doseDays = 0;
  for (let day = 0; day < days; day++) {
    const t = requireRange(`decay dose, day ${day}: wood temperature (°C)`, temperatureC[day]!, -90, 90);
    const mc = requireRange(
      `decay dose, day ${day}: moisture content (fraction)`,
      moistureContent[day]!,
      0,
      3,
    );
    if (model === 'simplified' && mc < SIMPLIFIED_FROM) continue;
    doseDays += decayDoseOfDay(t, mc, model);
  }
  return {
    doseDays,
    risk: doseDays >= ONSET_DAYS ? 'likely' : doseDays > 0 ? 'building-up' : 'none',
    notices: [
      {
        code: 'recalled-model',
        message:
          'The dose-response model is recalled from memory; use it as a class of risk, never as remaining strength.',
      },
    ],
  };
}
