import { EngineError } from '../numerics/engine-error.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Source } from '../sources/source.ts';
import { woodSources } from './sources.ts';

/** One stretch of moisture content and what it means for wood in service. It ends where the next band begins. */
export interface WoodBand {
  /** Stable key, kebab-case. */
  readonly key: string;
  /** Where the band begins [fraction of oven-dry mass]. */
  readonly from: number;
  /** Whether `from` itself belongs to this band; otherwise it belongs to the band below. */
  readonly fromIncluded: boolean;
  /** One plain sentence. */
  readonly meaning: string;
  /** Where the threshold at `from` stands; the sources had different purposes. */
  readonly sources: readonly Source[];
}

const {
  smulski,
  softwoodGuide,
  lumberStandard,
  infestationReport,
  carllHighley,
  rowellIbach,
  commonPractice,
} = woodSources;

/** Bands for corrected readings of framing, driest first. Replace or extend them through `woodBand`'s argument. */
export const woodBands: readonly WoodBand[] = [
  {
    key: 'dry',
    from: 0,
    fromIncluded: true,
    meaning: 'Normal: wood indoors moves between 6 and 16 % over most of the US.',
    sources: [smulski],
  },
  {
    key: 'mold-possible',
    from: 0.15,
    fromIncluded: false,
    meaning: 'Mold is possible in time: 15 to 16 % goes with 75 to 80 % RH at the wood at 20 °C.',
    sources: [softwoodGuide],
  },
  {
    key: 'elevated',
    from: 0.16,
    fromIncluded: true,
    meaning: 'Elevated: watch it and find the source of moisture.',
    sources: [commonPractice],
  },
  {
    key: 'above-dry-lumber',
    from: 0.19,
    fromIncluded: false,
    meaning: 'Above the 19 % that lumber sold as dry may hold.',
    sources: [lumberStandard],
  },
  {
    key: 'excessive',
    from: 0.2,
    fromIncluded: true,
    meaning: 'Excessive: most fungi need at least 20 %; below it the risk of decay is small, with a margin.',
    sources: [infestationReport, smulski, softwoodGuide, carllHighley],
  },
  {
    key: 'decay-prone',
    from: 0.28,
    fromIncluded: true,
    meaning: 'Decay fungi are active.',
    sources: [infestationReport],
  },
  {
    key: 'above-fiber-saturation',
    from: 0.3,
    fromIncluded: false,
    meaning: 'Above fiber saturation: liquid water in the wood; decay takes hold, fastest at 40 to 80 %.',
    sources: [softwoodGuide, rowellIbach],
  },
];

function requireAscending(bands: readonly WoodBand[]): void {
  if (bands[0]?.from !== 0 || !bands[0].fromIncluded) {
    throw new EngineError('bad-input', 'the first wood band must begin at 0 and include it');
  }
  for (let i = 1; i < bands.length; i++) {
    if (!(bands[i]!.from > bands[i - 1]!.from)) {
      throw new EngineError(
        'bad-input',
        `wood bands must ascend; "${bands[i]!.key}" begins at ${bands[i]!.from}, not above "${bands[i - 1]!.key}"`,
      );
    }
  }
}

/**
 * Band that a corrected moisture content lies in. Ask again with a reading's `low` and `high` to see what its doubt
 * allows.
 * @param moistureContent corrected value [fraction of oven-dry mass], 0..3
 * @param bands thresholds to use, driest first; default `woodBands`
 * @throws EngineError `not-finite`, `out-of-range` for the content; `bad-input` for bands that do not ascend from 0
 */
export function woodBand(moistureContent: number, bands: readonly WoodBand[] = woodBands): WoodBand {
  const mc = requireRange('wood moisture content (fraction, 0.18 for 18 %)', moistureContent, 0, 3);
  requireAscending(bands);
  return bands.findLast((band) => mc > band.from || (band.fromIncluded && mc === band.from))!;
}

/**
 * Relative humidity at the wood [fraction] above which a closed crawl space should warn and should act: earlier than
 * the 20 % MC line, which lies well past the humidity where mold begins. Common practice, no source.
 */
export const woodHumidityAlarm = { warnAbove: 0.7, actAbove: 0.8, source: commonPractice } as const;
