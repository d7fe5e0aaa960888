import { type Band, overCorners, requireBand } from './band.ts';
import type { CrawlAir } from './crawl-air.ts';

/** One input of a path, named as a reader should see it. */
export interface PathInput {
  readonly name: string;
  readonly unit: string;
  readonly band: Band;
}

/** An input of a path, checked. */
export function pathInput(
  path: string,
  name: string,
  unit: string,
  band: Band,
  min: number,
  max: number,
): PathInput {
  requireBand(`${name} of "${path}" in ${unit}`, band, min, max);
  return { name, unit, band };
}

/** One way of water into or out of the air, as a function of its inputs and of the air. */
export interface PathModel {
  readonly key: string;
  readonly title: string;
  /** The calculation in words. */
  readonly formula: string;
  readonly sourceId: string;
  readonly inputs: readonly PathInput[];
  /** Water into the air, kg/s, for values in the order of `inputs`. Steady in each of them, and falling in humidity. */
  readonly kgPerS: (values: readonly number[], air: CrawlAir) => number;
}

/** Seconds to days, and minus zero, which a path may give that carries nothing, to zero. */
const perDay = (kgPerS: number) => 86_400 * kgPerS + 0;

/** Flow of a path with its inputs at their middle values, kg/day. */
export function middleKgPerDay(path: PathModel, air: CrawlAir): number {
  const values = path.inputs.map(({ band }) => band.value);
  return perDay(path.kgPerS(values, air));
}

/** Lowest and highest flow of a path over the ranges of its own inputs, kg/day, the air being as it is. */
export function endsKgPerDay(
  path: PathModel,
  air: CrawlAir,
): { readonly low: number; readonly high: number } {
  return overCorners(
    path.inputs.map(({ band }) => band),
    (values) => perDay(path.kgPerS(values, air)),
  );
}

/** Whether any input of the path was not measured. */
export function isAssumed(path: PathModel): boolean {
  return path.inputs.some(({ band }) => band.assumed);
}
