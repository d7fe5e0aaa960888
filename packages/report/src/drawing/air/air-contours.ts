import type { FieldGridMap } from '@undercroft/assessment';
import { GROUNDS } from '../../look/tokens.ts';
import { BAND_EDGES, fieldColor, THRESHOLDS } from './air-bands.ts';
import { partsAbove, type Rings } from './contours.ts';

/** The relative humidity over a floor as bands of color and lines, in plan meters, for a screen to draw. */
export interface AirContours {
  /** Color where it is drier than every band. */
  readonly driest: string;
  /** Bands from the driest on, each over all damper ones: draw them in order. */
  readonly bands: readonly { readonly from: number; readonly color: string; readonly rings: Rings }[];
  /** 60, 70 and 80 %. */
  readonly lines: readonly { readonly value: number; readonly rings: Rings }[];
}

const color = (relativeHumidity: number): string => GROUNDS.paper[fieldColor(relativeHumidity)];

/** The scale of all maps of the air, driest first; the first band has no lower end. */
export const AIR_SCALE: readonly { readonly from?: number; readonly color: string }[] = [
  { color: color(0) },
  ...BAND_EDGES.map((from) => ({ from, color: color(from) })),
];

/** Bands and lines of a map of the air. They reach a little over the floor: cut them off at the walls. */
export function airContours(map: FieldGridMap): AirContours {
  const parts = partsAbove(map, map.relativeHumidity, BAND_EDGES);
  const of = (value: number): Rings => parts.get(value) ?? [];
  return {
    driest: color(0),
    bands: BAND_EDGES.map((from) => ({ from, color: color(from), rings: of(from) })).filter(
      ({ rings }) => rings.length > 0,
    ),
    lines: THRESHOLDS.map((value) => ({ value, rings: of(value) })).filter(({ rings }) => rings.length > 0),
  };
}
