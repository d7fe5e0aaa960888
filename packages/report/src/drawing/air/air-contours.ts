import type { FieldGridMap } from '@undercroft/assessment';
import { GROUNDS } from '../../look/tokens.ts';
import { BAND_EDGES, bandColor, THRESHOLDS } from './air-bands.ts';
import { partsAbove, type Rings } from './contours.ts';

/** What a map of the air can show. */
export type AirQuantity = 'relativeHumidity' | 'dewPointC' | 'woodMoisture';

/** A quantity over a floor as bands of color and lines, in plan meters, for a screen to draw. */
export interface AirContours {
  /** Color where it is below every band. */
  readonly lowest: string;
  /** Bands from the lowest on, each over all higher ones: draw them in order. */
  readonly bands: readonly { readonly from: number; readonly color: string; readonly rings: Rings }[];
  /** Values that decide. */
  readonly lines: readonly { readonly value: number; readonly rings: Rings }[];
}

const EDGES: Readonly<Record<AirQuantity, readonly number[]>> = {
  relativeHumidity: BAND_EDGES,
  dewPointC: [8, 10, 12, 14, 16, 18, 20, 22, 24, 26],
  woodMoisture: [0.1, 0.12, 0.13, 0.14, 0.15, 0.16, 0.17, 0.18, 0.19, 0.2],
};

/** Of wood: 16 % to watch, 18 % too wet for a space with a machine (common practice, no source), 20 % where decay can begin. */
const LINES: Readonly<Record<AirQuantity, readonly number[]>> = {
  relativeHumidity: THRESHOLDS,
  dewPointC: [12, 16, 20, 24],
  woodMoisture: [0.16, 0.18, 0.2],
};

/** The scale of every map of a quantity, lowest first; the first band has no lower end. */
export function airScale(
  quantity: AirQuantity,
): readonly { readonly from?: number; readonly color: string }[] {
  const color = (band: number) => GROUNDS.paper[bandColor(band)];
  return [{ color: color(0) }, ...EDGES[quantity].map((from, i) => ({ from, color: color(i + 1) }))];
}

/** Bands and lines of a map of the air. They reach a little over the floor: cut them off at the walls. */
export function airContours(map: FieldGridMap, quantity: AirQuantity = 'relativeHumidity'): AirContours {
  const edges = EDGES[quantity];
  const lines = LINES[quantity];
  const parts = partsAbove(map, map[quantity], [...new Set([...edges, ...lines])]);
  const of = (value: number): Rings => parts.get(value) ?? [];
  const [lowest, ...bands] = airScale(quantity);
  return {
    lowest: lowest.color,
    bands: bands
      .map(({ from = 0, color }) => ({ from, color, rings: of(from) }))
      .filter(({ rings }) => rings.length > 0),
    lines: lines.map((value) => ({ value, rings: of(value) })).filter(({ rings }) => rings.length > 0),
  };
}
