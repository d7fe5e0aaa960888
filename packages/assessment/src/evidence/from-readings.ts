import { psychrometrics } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { corrected } from '../readings/wood.ts';
import type { Sample } from './sample.ts';

/** What the surveyor measured or answered by the engine's name of the quantity. */
export function samplesOfObservations(job: SurveyedJob): Sample[] {
  return job.readings.observations.map((o) => ({
    id: o.id,
    quantity: o.quantity,
    value: o.value,
    ...(o.place?.on === undefined ? {} : { item: o.place.on.id }),
    ...(o.plusMinus === undefined ? {} : { uncertainty: o.plusMinus }),
    assumed: o.assumed,
    origin: {
      kind: 'observation',
      id: o.id,
      who: o.who,
      when: o.when,
      ...(o.note === undefined ? {} : { note: o.note }),
    },
  }));
}

/** Members that carry the load to masonry. */
const BEARINGS: readonly string[] = ['girder', 'sill', 'post'];

/** Pin readings as corrected moisture contents, each with its doubt; those at a bearing as such too. */
export function samplesOfWood(job: SurveyedJob): Sample[] {
  return job.readings.wood.flatMap((reading): Sample[] => {
    const { moistureContent, low, high } = corrected(reading);
    const sample: Sample = {
      id: reading.id,
      quantity: 'woodMoistureContent',
      value: moistureContent,
      uncertainty: Math.max(moistureContent - low, high - moistureContent),
      assumed: false,
      origin: {
        kind: 'reading',
        id: reading.id,
        who: reading.who,
        when: reading.when,
        note: `${reading.member}, pin meter, corrected`,
      },
    };
    if (!BEARINGS.includes(reading.member)) return [sample];
    return [sample, { ...sample, id: `${reading.id}-bearing`, quantity: 'bearingMoistureContent' }];
  });
}

/** How far each measured surface stands above the dew point of the mean air of the space [K]. */
export function samplesOfSurfaces(
  job: SurveyedJob,
  crawlHumidityRatio: number | undefined,
  pressurePa: number,
): Sample[] {
  if (crawlHumidityRatio === undefined) return [];
  const vaporPressurePa = psychrometrics.vaporPressureFromHumidityRatioPa(crawlHumidityRatio, pressurePa);
  const dewPointC = psychrometrics.dewPointC(vaporPressurePa);
  return job.readings.surface.flatMap((s): Sample[] => {
    const sample: Sample = {
      id: s.id,
      quantity: 'surfaceAboveDewPointK',
      value: s.temperatureC - dewPointC,
      assumed: false,
      origin: {
        kind: 'reading',
        id: s.id,
        who: s.who,
        when: s.when,
        note: `${s.of}, against the mean air of the space`,
      },
    };
    if (s.of !== 'duct') return [sample];
    return [
      sample,
      {
        ...sample,
        id: `${s.id}-duct`,
        quantity: 'ductSkinAboveDewPointK',
        ...(s.place.on === undefined ? {} : { item: s.place.on.id }),
      },
    ];
  });
}
