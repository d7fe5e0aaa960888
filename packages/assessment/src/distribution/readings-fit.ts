import { distribution as engine } from '@undercroft/engine';
import type { Conditions } from '../budget/conditions.ts';
import type { ReadingsFit } from './distribution-assessment.ts';
import { surveyDayField } from './field-conditions.ts';
import { modelOfSite, siteOfJob } from './field-site.ts';
import {
  type DistributionSpace,
  heatOfFans,
  mixingOf,
  type PreparedField,
  stateOf,
} from './prepare-field.ts';

/** Cells of the fit [m]: it solves many states, and a reading is no sharper than this. */
const FIT_CELL_M = 0.5;
/** Places that readings must be from. */
const NEEDED = 4;

const NOT_READ =
  'The air of the space was not read with its place while the machine ran, so mixing and sources stay as assumed.';

/** A fit, and what it makes of the mixing that is assumed: factors, undefined where it tells nothing. */
export interface FitOfReadings {
  readonly fit: ReadingsFit;
  readonly mixingBy?: { readonly low: number; readonly value: number; readonly high: number };
}

/**
 * What the humidity readings of the survey say about mixing and the strength of the sources, in the air of that day.
 * @param survey the day of the survey; undefined where its air was not read
 * @throws EngineError for figures or places that make no sense
 */
export function fitOfReadings(
  where: DistributionSpace,
  prepared: PreparedField,
  survey: Conditions | undefined,
): FitOfReadings {
  const { job, drawn, space, chosen, seed } = where;
  const placed = job.readings.air.flatMap(({ id, where: of, place, relativeHumidity, temperatureC }) =>
    of === 'crawl' && place.at !== undefined ? [{ id, at: place.at, relativeHumidity, temperatureC }] : [],
  );
  if (survey === undefined || placed.length === 0) {
    return { fit: { outcome: 'not-fitted', why: NOT_READ, places: placed.length, needed: NEEDED } };
  }
  const { arrangement, machine } = prepared;
  if (placed.length < NEEDED) {
    const why = `The air was read at ${placed.length} ${placed.length === 1 ? 'place' : 'places'}; it takes ${NEEDED}, at least 1 m apart, to fit mixing and sources.`;
    return { fit: { outcome: 'not-fitted', why, places: placed.length, needed: NEEDED } };
  }
  const day = surveyDayField(stateOf(where), space, chosen, seed, survey);
  const { setPoint } = arrangement.machine;
  const made = siteOfJob(stateOf(where), drawn, space, day, setPoint, heatOfFans(arrangement));
  const model = modelOfSite(made.site, FIT_CELL_M);
  const middle = mixingOf(model, survey.air.fromOutdoorsM3PerS.value).value;
  const fit = engine.fitReadings(model, arrangement, placed, {
    mixingM2PerS: middle,
    ...(machine.runShare === undefined ? {} : { duty: machine.runShare }),
  });
  if (fit.outcome === 'too-few-readings') {
    const { places, needed, notices } = fit;
    return { fit: { outcome: 'not-fitted', why: notices[0].message, places, needed } };
  }
  const { mixingM2PerS, sourceStrength, correlation, misfit, misfitBefore, notices } = fit;
  const used = mixingM2PerS.determined && !notices.some((n) => n.code === 'poor-fit');
  const { low, value, high } = mixingM2PerS;
  return {
    fit: {
      outcome: 'fitted',
      mixingM2PerS,
      sourceStrength,
      correlation,
      residuals: fit.residuals.map(({ at, read, modeled }, i) => ({
        readingId: placed[i].id,
        at: { xM: at.xM, yM: at.yM },
        read,
        modeled,
      })),
      misfitBefore,
      misfit,
      used,
      notices,
    },
    ...(used ? { mixingBy: { low: low / middle, value: value / middle, high: high / middle } } : {}),
  };
}
