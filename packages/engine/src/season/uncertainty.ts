import { EngineError } from '../numerics/engine-error.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { AirExchange } from './air-exchange-case.ts';
import { runCase } from './run.ts';
import { type Chance, chanceOf, latinHypercube, quantile, rankCorrelation } from './sampling.ts';
import type { SeasonCase, SeasonWeather } from './season-case.ts';
import type { FlowTables } from './step-drive.ts';
import { prepareWeather } from './weather-series.ts';

/** Something about the space that is known only as a range. */
export interface Unknown {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  /** `even`: any value of the range is as likely. `even-in-factor`: as likely to be off by a factor either way. */
  readonly spread: 'even' | 'even-in-factor';
  /** The case with this value; must not change its argument. */
  readonly apply: (space: SeasonCase, value: number) => SeasonCase;
}

/** How many years, and from which seed. */
export interface UncertaintyOptions {
  /** 20 to 10 000; default 500. */
  readonly count?: number;
  /** Default 1. */
  readonly seed?: number;
  /** Equally likely years, drawn as one more unknown in place of the one weather; in order, or its influence says nothing. */
  readonly otherWeather?: { readonly name: string; readonly years: readonly SeasonWeather[] };
}

/** How the years are spread: a tenth lies below `low`, half below `middle`, nine tenths below `high`. */
export interface Spread {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** How much one unknown has to do with an outcome. */
export interface Influence {
  readonly name: string;
  /** Rank correlation with the highest daily humidity and with the peak mold index, −1..1. */
  readonly onHumidity: number;
  readonly onMold: number;
  /** Squared rank correlation with the humidity: about its share of the spread. */
  readonly share: number;
}

/** What is known about a year when some inputs are not. */
export interface UncertainSeason {
  readonly name: string;
  readonly count: number;
  readonly seed: number;
  /** Chance that no daily mean of the relative humidity goes above the limit. */
  readonly staysBelow60: Chance;
  readonly staysBelow70: Chance;
  readonly staysBelow80: Chance;
  /** Chance that the mold index does not go above 3. */
  readonly moldAtMost3: Chance;
  readonly highestDayRelativeHumidity: Spread;
  readonly daysAbove80: Spread;
  readonly peakMoldIndex: Spread;
  readonly energyKWh: Spread;
  readonly waterRemovedKg: Spread;
  /** Most important first. */
  readonly influences: readonly Influence[];
  readonly notices: readonly Notice[];
}

/**
 * Runs many years, each with its own values of what is not known, drawn by a seeded Latin hypercube.
 *
 * The chances speak of the ranges that were given, in this one weather or in the years of `otherWeather`.
 * @throws EngineError `bad-input` for no unknowns or an empty range; what `runSeason` throws
 */
export function runUncertainty(
  space: SeasonCase,
  unknowns: readonly Unknown[],
  weather: SeasonWeather,
  options: UncertaintyOptions = {},
): UncertainSeason {
  const count = Math.round(requireRange('number of years', options.count ?? 500, 20, 10_000));
  const seed = requireRange('seed', options.seed ?? 1, 0, 2 ** 32 - 1);
  checkUnknowns(unknowns);
  const { otherWeather } = options;
  const prepared = (otherWeather?.years ?? [weather]).map(prepareWeather);
  if (prepared.length === 0) throw new EngineError('bad-input', 'otherWeather has no year');
  const sample = latinHypercube(count, unknowns.length + 1, seed);
  const weatherOf = sample[unknowns.length]!.map((at) => Math.floor(at * prepared.length));
  sample[unknowns.length] = weatherOf;
  const humidity = new Float64Array(count);
  const mold = new Float64Array(count);
  const days = new Float64Array(count);
  const energy = new Float64Array(count);
  const water = new Float64Array(count);
  const tables: FlowTables = new WeakMap();
  let unsettled = 0;
  for (let i = 0; i < count; i++) {
    const drawn = unknowns.reduce((before, u, k) => u.apply(before, drawnValue(u, sample[k]![i]!)), space);
    const result = runCase(drawn, prepared[weatherOf[i]!]!, tables, {});
    humidity[i] = result.highestDayRelativeHumidity;
    mold[i] = result.peakMoldIndex;
    days[i] = result.daysAbove80;
    energy[i] = result.energyKWh;
    water[i] = result.waterRemovedKg;
    if (!result.ending.converged) unsettled++;
  }
  const below = (limit: number) => chanceOf(humidity.filter((h) => h <= limit).length, count);
  const names = unknowns.map((u) => u.name);
  if (otherWeather !== undefined) names.push(otherWeather.name);
  const influences = names.map((name, k) => {
    const onHumidity = rankCorrelation(sample[k]!, humidity);
    return {
      name,
      onHumidity,
      onMold: rankCorrelation(sample[k]!, mold),
      share: onHumidity * onHumidity,
    };
  });
  return {
    name: space.name,
    count,
    seed,
    staysBelow60: below(0.6),
    staysBelow70: below(0.7),
    staysBelow80: below(0.8),
    moldAtMost3: chanceOf(mold.filter((m) => m <= 3).length, count),
    highestDayRelativeHumidity: spreadOf(humidity),
    daysAbove80: spreadOf(days),
    peakMoldIndex: spreadOf(mold),
    energyKWh: spreadOf(energy),
    waterRemovedKg: spreadOf(water),
    influences: influences.sort((a, b) => b.share - a.share),
    notices:
      unsettled === 0
        ? []
        : [{ code: 'year-not-settled', message: `${unsettled} of ${count} years had not settled.` }],
  };
}

function spreadOf(values: Float64Array): Spread {
  return { low: quantile(values, 0.1), middle: quantile(values, 0.5), high: quantile(values, 0.9) };
}

function drawnValue(unknown: Unknown, at: number): number {
  const { low, high } = unknown;
  return unknown.spread === 'even' ? low + at * (high - low) : low * (high / low) ** at;
}

function checkUnknowns(unknowns: readonly Unknown[]): void {
  if (unknowns.length === 0) throw new EngineError('bad-input', 'there is no unknown to vary');
  for (const { name, low, high, spread } of unknowns) {
    requireRange(`low end of ${name}`, low, spread === 'even' ? -1e12 : 1e-30, 1e12);
    requireRange(`high end of ${name}`, high, low, 1e12);
  }
}

/**
 * The inputs of a crawl space that are weakest known, as ranges around the values of the case: open ground by a factor of
 * two, dry crust by a factor of two, leakage of the crawl space by a factor of two, film coefficient 0.0014 to 0.0028 m/s,
 * soil conductivity by 1.5, wood permeance by two. Ranges are common practice but for the film, which follows the Lewis
 * analogy.
 */
export function usualUnknowns(): Unknown[] {
  const factor = (name: string, by: number, apply: Unknown['apply']): Unknown => ({
    name,
    low: 1 / by,
    high: by,
    spread: 'even-in-factor',
    apply,
  });
  const unknowns: Unknown[] = [
    factor('open ground', 2, (s, f) => ({
      ...s,
      cover: {
        ...s.cover,
        zones: s.cover.zones.map((z) => ({ ...z, openFraction: Math.min(1, z.openFraction * f) })),
      },
    })),
    factor('dry crust', 2, (s, f) => ({
      ...s,
      cover: {
        ...s.cover,
        zones: s.cover.zones.map((z) => ({ ...z, dryLayerResistanceSPerM: z.dryLayerResistanceSPerM * f })),
      },
    })),
    {
      name: 'air film on ground and walls',
      low: 0.0014,
      high: 0.0028,
      spread: 'even',
      apply: (s, value) => ({ ...s, cover: { ...s.cover, massTransferMPerS: value } }),
    },
    factor('soil conductivity', 1.5, (s, f) => ({
      ...s,
      soil: { ...s.soil, conductivityWPerMK: s.soil.conductivityWPerMK * f },
    })),
    factor('wood permeance', 2, (s, f) => ({
      ...s,
      wood: {
        joists: { ...s.wood.joists, permeanceKgPerM2SPa: s.wood.joists.permeanceKgPerM2SPa * f },
        girder: { ...s.wood.girder, permeanceKgPerM2SPa: s.wood.girder.permeanceKgPerM2SPa * f },
        sill: { ...s.wood.sill, permeanceKgPerM2SPa: s.wood.sill.permeanceKgPerM2SPa * f },
      },
    })),
  ];
  return [...unknowns, factor('leakage', 2, (s, f) => ({ ...s, airExchange: leakier(s.airExchange, f) }))];
}

/** The same openings to the crawl space, all larger by a factor. */
function leakier(exchange: AirExchange, factor: number): AirExchange {
  if (exchange.kind === 'fixed') {
    return {
      ...exchange,
      airChangesPerHour: exchange.airChangesPerHour * factor,
      perKelvin: exchange.perKelvin * factor,
    };
  }
  const { network } = exchange;
  return {
    ...exchange,
    network: {
      ...network,
      openings: network.openings.map((o) =>
        o.from === 'crawl' || o.to === 'crawl' ? { ...o, coefficient: o.coefficient * factor } : o,
      ),
    },
  };
}
