import { season } from '@undercroft/engine';
import type { Assumption } from '../assumption.ts';
import { Assumptions } from '../assumptions.ts';
import type { ChancesResult } from './season-assessment.ts';
import { type CaseGround, seasonCaseOf } from './season-case-of.ts';
import { warmerWeather } from './season-weather.ts';
import type { SpaceState } from './space-state.ts';

/**
 * How much a year as a whole is warmer or colder than the usual one at the same relative humidity [K]: the middles of
 * five equally likely parts of a normal spread of 1 K (spread of yearly summer means: common knowledge, no source).
 */
const YEARS_OFF_K = [-1.28, -0.52, 0, 0.52, 1.28];
const WEATHER = { key: 'weather', title: 'How warm and humid the year is', unit: 'K' };

interface Drawn extends Assumption {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

function isDrawn(a: Assumption): a is Drawn {
  return typeof a.value === 'number' && a.low !== undefined && a.high !== undefined && a.low < a.high;
}

/** A range that is given as a factor either way has its usual value at the geometric middle. */
function spreadOf({ value, low, high }: Drawn): season.Unknown['spread'] {
  if (low <= 0) return 'even';
  const geometric = Math.sqrt(low * high);
  const arithmetic = (low + high) / 2;
  return Math.abs(value - geometric) < Math.abs(value - arithmetic) ? 'even-in-factor' : 'even';
}

/**
 * How sure the year of a space is: many years, each with its own value for everything that was assumed with a range, and
 * with weather of the year a little warmer or colder.
 * @param step is told how many years have been begun
 */
export function chancesOf(
  name: string,
  state: SpaceState,
  shared: CaseGround,
  sample: { readonly seed: number; readonly years: number },
  step: (years: number) => void,
): ChancesResult {
  const usual = new Assumptions();
  const space = seasonCaseOf(name, state, shared, usual);
  const bands = usual.list().filter(isDrawn);
  const values = new WeakMap<season.SeasonCase, Readonly<Record<string, number>>>();
  let drawnYears = 0;
  const unknowns = bands.map((band, i): season.Unknown => {
    const isLast = i === bands.length - 1;
    return {
      name: band.key,
      low: band.low,
      high: band.high,
      spread: spreadOf(band),
      // The values of one year are gathered; the last of them makes the case.
      apply: (before, value) => {
        const gathered = { ...values.get(before), [band.key]: value };
        if (!isLast) {
          const next = { ...before };
          values.set(next, gathered);
          return next;
        }
        step(drawnYears);
        drawnYears += 1;
        return seasonCaseOf(name, state, { ...shared, networks: new Map() }, new Assumptions(gathered));
      },
    };
  });
  const { weather } = shared.site;
  const ran = season.runUncertainty(space, unknowns, weather, {
    count: sample.years,
    seed: sample.seed,
    otherWeather: {
      name: WEATHER.key,
      years: YEARS_OFF_K.map((byK) => (byK === 0 ? weather : warmerWeather(weather, byK))),
    },
  });
  const known = new Map<string, Pick<Drawn, 'key' | 'title' | 'unit' | 'low' | 'high'>>(
    bands.map((band) => [band.key, band]),
  );
  known.set(WEATHER.key, { ...WEATHER, low: Math.min(...YEARS_OFF_K), high: Math.max(...YEARS_OFF_K) });
  return {
    name,
    count: ran.count,
    seed: ran.seed,
    staysBelow60: ran.staysBelow60,
    staysBelow70: ran.staysBelow70,
    staysBelow80: ran.staysBelow80,
    moldAtMost3: ran.moldAtMost3,
    highestDayRelativeHumidity: ran.highestDayRelativeHumidity,
    daysAbove80: ran.daysAbove80,
    peakMoldIndex: ran.peakMoldIndex,
    energyKWh: ran.energyKWh,
    waterRemovedKg: ran.waterRemovedKg,
    influences: ran.influences.flatMap(({ name: key, onHumidity, onMold, share }) => {
      const band = known.get(key);
      if (band === undefined) return [];
      const { title, low, high, unit } = band;
      return [{ key, title, low, high, unit, onHumidity, onMold, share }];
    }),
    notices: ran.notices,
  };
}
