import { change, type Months, meanOfHours, meanOfMonths, shareOfHours, YEAR } from './figures.ts';
import { floorInsulated, space, vented } from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Study } from './study.ts';

const PLACE = 'duluth_mn';
const COLD = 'vented, insulated floor';
/** May and June, January 0: spring there. */
const SPRING: Months = [4, 6];

/** Five cold crawl spaces in Finland. */
export const finnishCold: Study = {
  id: 'V10',
  study: 'Five cold crawl spaces in Finland, temperature and humidity of one year.',
  published: [
    {
      level: 'B',
      says: 'All five had times when they were colder, and times when they held more water, than the air outdoors; hours at risk of condensation differed most.',
      source: s.finnishFive,
    },
  ],
  given: ['Cold spaces, vented with outdoor air.'],
  assumed: [
    'R-19 batts in the floor, bare average soil, vents of 1/150, default plan.',
    'Weather of Duluth, Minnesota, for cold winters; not the place of the study.',
  ],
  cases: [{ place: PLACE, name: COLD, space: (weather) => vented(floorInsulated(space(weather))) }],
  evaluate: (outcomes) => {
    const one = outcomes(COLD);
    const { weather, result } = one;
    const hourly = result.hourly!;
    const colder = meanOfMonths(one, SPRING, (m) => m.temperatureC) - springMean(weather.temperatureC);
    const moister =
      1000 * (meanOfHours(hourly.humidityRatio, SPRING) - meanOfHours(weather.humidityRatio, SPRING));
    const wet = 8760 * shareOfHours(YEAR, (hour) => hourly.groundSurfaceC[hour]! < hourly.dewPointC[hour]!);
    return [
      {
        quantity: 'temperature of the space less outdoors, May and June',
        level: 'B',
        published: 'below zero',
        ours: `${change(colder, 1)} K`,
        pass: colder < 0,
        ...(colder < 0 ? {} : { why: 'Not explained.' }),
      },
      {
        quantity: 'water in the air of the space less outdoors, May and June',
        level: 'B',
        published: 'above zero',
        ours: `${change(moister, 2)} g/kg`,
        pass: moister > 0,
        ...(moister > 0 ? {} : { why: 'Not explained.' }),
      },
      {
        quantity: 'hours with the ground colder than the dew point of the air',
        level: 'B',
        published: 'some',
        ours: `${Math.round(wet)} in the year`,
        pass: wet > 0,
        ...(wet > 0 ? {} : { why: 'Not explained.' }),
      },
    ];
  },
};

function springMean(series: ArrayLike<number>): number {
  // Month by month, like the mean of the space.
  return (
    (meanOfHours(series, [SPRING[0], SPRING[0] + 1]) + meanOfHours(series, [SPRING[0] + 1, SPRING[1]])) / 2
  );
}
