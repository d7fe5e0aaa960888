import { distanceM, type Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Ending } from '../numerics/solution.ts';
import { relativeHumidityFromHumidityRatio } from '../psychrometrics/humidity-ratio.ts';
import type { Arrangement } from './arrangement.ts';
import type { FieldModel } from './field-model.ts';
import { type MovedAir, movedAir } from './moved-air.ts';
import { cellOfPlace } from './places.ts';
import { scaledSources } from './scaled-sources.ts';
import { steadyField } from './steady-field.ts';
import type { SteadyField } from './steady-state.ts';

/** Air that was read at a place, or the mean of a logger there. */
export interface FieldReading {
  readonly at: Point;
  /** Fraction 0..1. */
  readonly relativeHumidity: number;
  /** Read with it, °C; without it the humidity is compared at the temperature of the model. */
  readonly temperatureC?: number;
}

/** What is fitted and to what. */
export interface FitOptions {
  /** Mixing before any reading, m²/s, and how far it may be off as a factor (3 by default). */
  readonly mixingM2PerS: number;
  readonly mixingFactor?: number;
  /** How far the strength of the sources may be off as a factor; 3 by default. */
  readonly sourceFactor?: number;
  /** Scatter of a reading and of a model that averages over the height, fraction; 0.025 by default. */
  readonly scatter?: number;
  /** Share of the time that the machine ran while it was read; by its humidistat when absent. */
  readonly duty?: number;
}

/** A fitted figure. */
export interface FittedFigure {
  readonly value: number;
  /** Between these it lies with a chance of about two thirds. */
  readonly low: number;
  readonly high: number;
  /** False where the readings say hardly more than was known before. */
  readonly determined: boolean;
}

/** A reading beside what the fitted model says. */
export interface FitResidual {
  readonly at: Point;
  readonly read: number;
  readonly modeled: number;
}

/** What readings say about mixing and sources. */
export type FieldFit =
  | {
      readonly outcome: 'too-few-readings';
      /** Places at least 1 m apart. */
      readonly places: number;
      readonly needed: number;
      readonly notices: readonly Notice[];
    }
  | {
      readonly outcome: 'fitted';
      readonly mixingM2PerS: FittedFigure;
      /** Strength of ground and wall sources over what was entered. */
      readonly sourceStrength: FittedFigure;
      /** How much the two hang together, −1..1: near ±1 the readings bind only a combination of them. */
      readonly correlation: number;
      readonly residuals: readonly FitResidual[];
      /** Root of the mean square of the residuals, fraction, before and after fitting. */
      readonly misfitBefore: number;
      readonly misfit: number;
      /** The model with the fitted sources. */
      readonly model: FieldModel;
      readonly state: SteadyField;
      readonly ending: Ending;
      readonly notices: readonly Notice[];
    };

/** Places that are needed for two figures and a look at how well they fit. */
const NEEDED = 4;
/** Readings nearer to each other than this are of one place, m. */
const ONE_PLACE_M = 1;
const FACTOR = 3;
const SCATTER = 0.025;
/** Step for slopes, as a natural logarithm. */
const PROBE = 0.08;
const MOST_STEPS = 12;
/** Change of the logarithms at which the fit ends. */
const SMALL_STEP = 2e-3;
/** With more than this share of what was open before, a figure stays undetermined. */
const OPEN_SHARE = 0.7;
/** Misfit over scatter at which something else must be at work. */
const POOR = 2;

/**
 * Fits background mixing and the strength of ground and wall sources to humidities read at four places or more, by
 * Gauss-Newton steps on their logarithms, from what was known before and weighed against it. Where readings say little a
 * figure stays near its start, and it is said to be undetermined: air that is mixed well shows only that mixing is strong.
 * @throws EngineError for figures or places that make no sense
 */
export function fitReadings(
  model: FieldModel,
  arrangement: Arrangement,
  readings: readonly FieldReading[],
  options: FitOptions,
): FieldFit {
  const places = distinctPlaces(readings);
  if (places < NEEDED) {
    return {
      outcome: 'too-few-readings',
      places,
      needed: NEEDED,
      notices: [
        {
          code: 'too-few-readings',
          message: `${places} ${places === 1 ? 'place was' : 'places were'} read; it takes ${NEEDED}, at least ${ONE_PLACE_M} m apart, to fit mixing and sources and to see how well they fit.`,
        },
      ],
    };
  }
  const cells = readings.map(({ at, relativeHumidity, temperatureC }, k) => {
    requireRange(`humidity of reading ${k + 1} (fraction)`, relativeHumidity, 0, 1);
    if (temperatureC !== undefined)
      requireRange(`temperature of reading ${k + 1} (°C)`, temperatureC, -40, 60);
    return cellOfPlace(model.mesh, at, `reading ${k + 1}`);
  });
  const scatter = requireRange('scatter of readings (fraction)', options.scatter ?? SCATTER, 1e-3, 0.5);
  const spread = [
    Math.log(requireRange('factor of mixing', options.mixingFactor ?? FACTOR, 1.01, 100)),
    Math.log(requireRange('factor of the sources', options.sourceFactor ?? FACTOR, 1.01, 100)),
  ] as const;
  const air = movedAir(model, arrangement);
  const at = modeled(model, arrangement, air, readings, cells, options);
  const found = gaussNewton(at, readings, scatter, spread);
  const last = at(found.x[0], found.x[1]);
  const before = at(0, 0);
  const figure = (k: 0 | 1, middle: number): FittedFigure => {
    const deviation = Math.sqrt(found.covariance[k]);
    return {
      value: middle * Math.exp(found.x[k]),
      low: middle * Math.exp(found.x[k] - deviation),
      high: middle * Math.exp(found.x[k] + deviation),
      determined: deviation < OPEN_SHARE * spread[k],
    };
  };
  const misfit = rootMeanSquare(last.humidity, readings);
  const fit = {
    outcome: 'fitted' as const,
    mixingM2PerS: figure(0, options.mixingM2PerS),
    sourceStrength: figure(1, 1),
    correlation: found.covariance[2] / Math.sqrt(found.covariance[0] * found.covariance[1]),
    residuals: readings.map(({ at: place, relativeHumidity }, k) => ({
      at: place,
      read: relativeHumidity,
      modeled: last.humidity[k]!,
    })),
    misfitBefore: rootMeanSquare(before.humidity, readings),
    misfit,
    model: last.model,
    state: last.state,
    ending: found.ending,
  };
  return { ...fit, notices: fitNotices(fit, scatter) };
}

function distinctPlaces(readings: readonly FieldReading[]): number {
  const kept: Point[] = [];
  for (const { at } of readings) {
    if (kept.every((other) => distanceM(other, at) >= ONE_PLACE_M)) kept.push(at);
  }
  return kept.length;
}

interface Modeled {
  readonly humidity: readonly number[];
  readonly model: FieldModel;
  readonly state: SteadyField;
}

/** Humidities at the readings for logarithms of mixing and source strength over their start. */
function modeled(
  model: FieldModel,
  arrangement: Arrangement,
  air: MovedAir,
  readings: readonly FieldReading[],
  cells: readonly number[],
  { mixingM2PerS, duty }: FitOptions,
): (mixing: number, sources: number) => Modeled {
  let near: SteadyField | undefined;
  return (mixing, sources) => {
    const scaled = scaledSources(model, ['ground', 'wall'], Math.exp(sources));
    const state = steadyField(scaled, arrangement, {
      mixingM2PerS: mixingM2PerS * Math.exp(mixing),
      air,
      accuracy: 'ranking',
      ...(near === undefined ? {} : { near }),
      ...(duty === undefined ? {} : { duty }),
    });
    near = state;
    const humidity = cells.map((cell, k) =>
      relativeHumidityFromHumidityRatio(
        readings[k]!.temperatureC ?? state.temperatureC[cell]!,
        state.humidityRatio[cell]!,
        model.pressurePa,
      ),
    );
    return { humidity, model: scaled, state };
  };
}

interface Found {
  readonly x: readonly [number, number];
  /** Variances of both and their covariance. */
  readonly covariance: readonly [number, number, number];
  readonly ending: Ending;
}

function gaussNewton(
  at: (mixing: number, sources: number) => Modeled,
  readings: readonly FieldReading[],
  scatter: number,
  spread: readonly [number, number],
): Found {
  const weight = 1 / scatter ** 2;
  const prior = [1 / spread[0] ** 2, 1 / spread[1] ** 2] as const;
  const cost = (humidity: readonly number[], x: readonly [number, number]): number =>
    weight * humidity.reduce((sum, h, k) => sum + (readings[k]!.relativeHumidity - h) ** 2, 0) +
    prior[0] * x[0] ** 2 +
    prior[1] * x[1] ** 2;
  let x: readonly [number, number] = [0, 0];
  let humidity = at(0, 0).humidity;
  let covariance: Found['covariance'] = [spread[0] ** 2, spread[1] ** 2, 0];
  let step = Number.POSITIVE_INFINITY;
  let steps = 0;
  for (; steps < MOST_STEPS && step > SMALL_STEP; steps += 1) {
    const slopes = [at(x[0] + PROBE, x[1]).humidity, at(x[0], x[1] + PROBE).humidity].map((probe) =>
      probe.map((h, k) => (h - humidity[k]!) / PROBE),
    );
    const [a, b] = slopes as [number[], number[]];
    const sum = (f: (k: number) => number): number => readings.reduce((s, _, k) => s + f(k), 0);
    const aa = weight * sum((k) => a[k]! * a[k]!) + prior[0];
    const bb = weight * sum((k) => b[k]! * b[k]!) + prior[1];
    const ab = weight * sum((k) => a[k]! * b[k]!);
    const left = (k: number): number => readings[k]!.relativeHumidity - humidity[k]!;
    const ga = weight * sum((k) => a[k]! * left(k)) - prior[0] * x[0];
    const gb = weight * sum((k) => b[k]! * left(k)) - prior[1] * x[1];
    const det = aa * bb - ab * ab;
    covariance = [bb / det, aa / det, -ab / det];
    let dx = (ga * bb - gb * ab) / det;
    let dy = (gb * aa - ga * ab) / det;
    const now = cost(humidity, x);
    // Halved until it helps; a step that never does ends the fit where it stands.
    step = 0;
    for (let half = 0; half < 6; half += 1) {
      const next = [x[0] + dx, x[1] + dy] as const;
      const trial = at(next[0], next[1]).humidity;
      if (cost(trial, next) < now) {
        step = Math.max(Math.abs(dx), Math.abs(dy));
        x = next;
        humidity = trial;
        break;
      }
      dx /= 2;
      dy /= 2;
    }
  }
  const converged = step <= SMALL_STEP;
  return {
    x,
    covariance,
    ending: {
      converged,
      reason: converged ? 'tolerance-met' : 'iteration-limit',
      residual: step,
      iterations: steps,
    },
  };
}

function rootMeanSquare(humidity: readonly number[], readings: readonly FieldReading[]): number {
  const sum = humidity.reduce((s, h, k) => s + (h - readings[k]!.relativeHumidity) ** 2, 0);
  return Math.sqrt(sum / humidity.length);
}

function fitNotices(
  {
    mixingM2PerS,
    sourceStrength,
    correlation,
    misfit,
    residuals,
  }: Pick<
    Extract<FieldFit, { outcome: 'fitted' }>,
    'mixingM2PerS' | 'sourceStrength' | 'correlation' | 'misfit' | 'residuals'
  >,
  scatter: number,
): Notice[] {
  const notices: Notice[] = [];
  if (!mixingM2PerS.determined) {
    notices.push({
      code: 'mixing-undetermined',
      message:
        'The readings say hardly anything about mixing; read far corners as well as near the machine while it runs.',
    });
  }
  if (!sourceStrength.determined) {
    notices.push({
      code: 'sources-undetermined',
      message: 'The readings say hardly anything about how much water ground and walls give.',
    });
  }
  if (Math.abs(correlation) > 0.9) {
    notices.push({
      code: 'hang-together',
      message: 'Stronger sources with more mixing would fit nearly as well: only their combination is known.',
    });
  }
  if (misfit > POOR * scatter) {
    const worst = residuals.reduce((a, b) =>
      Math.abs(b.read - b.modeled) > Math.abs(a.read - a.modeled) ? b : a,
    );
    const more = worst.read > worst.modeled ? 'damper' : 'drier';
    notices.push({
      code: 'poor-fit',
      message: `The readings differ from the model by ${(100 * misfit).toFixed(0)} points: something is missing in it. At (${worst.at.xM.toFixed(1)}, ${worst.at.yM.toFixed(1)}) it is ${(100 * Math.abs(worst.read - worst.modeled)).toFixed(0)} points ${more} than modeled.`,
    });
  }
  return notices;
}
