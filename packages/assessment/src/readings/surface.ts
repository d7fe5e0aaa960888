import { psychrometrics } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import type { ReadingMeaning } from '../assessment.ts';
import { percentWords, placeWords, temperatureWords } from './words.ts';

type SurfaceReading = Job['readings']['surface'][number];
type AirReading = Job['readings']['air'][number];

/** The crawl-space air reading that belongs to a surface: the nearest on the plan, else the first. */
function airAt(surface: SurfaceReading, air: readonly AirReading[]): AirReading | undefined {
  const crawl = air.filter((a) => a.where === 'crawl');
  const here = surface.place.at;
  if (here === undefined) return crawl[0];
  const distance = (a: AirReading) =>
    a.place.at === undefined
      ? Number.POSITIVE_INFINITY
      : Math.hypot(a.place.at.xM - here.xM, a.place.at.yM - here.yM);
  return crawl.reduce<AirReading | undefined>(
    (best, a) => (best === undefined || distance(a) < distance(best) ? a : best),
    undefined,
  );
}

/** What one surface temperature says, against the air nearest to it. */
export function surfaceMeaning(reading: SurfaceReading, air: readonly AirReading[]): ReadingMeaning {
  const common = {
    id: reading.id,
    kind: 'surface' as const,
    ...(reading.place.at === undefined ? {} : { at: reading.place.at }),
    place: placeWords(reading.place),
    when: reading.when,
    who: reading.who,
    shown: `${reading.of[0].toUpperCase()}${reading.of.slice(1)} at ${temperatureWords(reading.temperatureC)}`,
  };
  const near = airAt(reading, air);
  if (near === undefined) {
    return {
      ...common,
      means: 'Without an air reading in the space nothing follows; take one beside it.',
      state: 'watch',
      figures: { temperatureC: reading.temperatureC },
      notices: [{ code: 'no-air-reading', message: 'No air reading in the space goes with this surface.' }],
    };
  }
  const vaporPressurePa = near.relativeHumidity * psychrometrics.saturationPressurePa(near.temperatureC);
  const dewPointC = psychrometrics.dewPointC(vaporPressurePa);
  const humidity = vaporPressurePa / psychrometrics.saturationPressurePa(reading.temperatureC);
  const condensing = reading.temperatureC <= dewPointC;
  const state = condensing ? 'alarm' : humidity >= 0.8 ? 'watch' : 'fine';
  const means = condensing
    ? `Colder than the dew point of ${temperatureWords(dewPointC)}: water forms on it now.`
    : `${temperatureWords(reading.temperatureC)} is above the dew point of ${temperatureWords(dewPointC)}; the air at its surface is at ${percentWords(humidity)} RH${humidity >= 0.8 ? ', enough for mold in time' : ''}.`;
  return {
    ...common,
    means,
    state,
    figures: { temperatureC: reading.temperatureC, dewPointC, surfaceRelativeHumidity: humidity },
    notices: [],
  };
}
