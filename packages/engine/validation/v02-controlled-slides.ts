import { percent } from './figures.ts';
import { closed, floorInsulated, space, withDehumidifier, withSupplyAir } from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Study } from './study.ts';

const PLACES = [
  { place: 'atlanta_ga', name: 'Atlanta' },
  { place: 'greensboro_nc', name: 'Greensboro' },
] as const;
const KINDS = ['dehumidifier at 55 %', 'supply air'] as const;

/** Spaces whose humidity is controlled. */
export const controlledSlides: Study = {
  id: 'V2',
  study:
    'An intervention study of crawl spaces with controlled humidity beside untreated ones, humid Southeast of the US, 2004 to 2006.',
  published: [
    {
      level: 'B',
      says: 'The controlled spaces stayed below 70 % relative humidity through the whole period.',
      source: s.slides,
    },
  ],
  given: ['Closed spaces with some control of humidity; the part that was read does not say which.'],
  assumed: [
    'Both usual controls, each by itself: a dehumidifier of 70 pint/day set to 55 %, and supply air of 1 cfm for 30 ft².',
    'Closed as in the other studies, R-19 batts in the floor, default plan.',
    'Weather of two cities of the region; the place of the study is not known.',
  ],
  cases: PLACES.flatMap(({ place, name }) =>
    KINDS.map((kind) => ({
      place,
      name: `${name}, ${kind}`,
      space: (weather) => {
        const base = closed(floorInsulated(space(weather)));
        return kind === 'supply air' ? withSupplyAir(base) : withDehumidifier(base);
      },
    })),
  ),
  evaluate: (outcomes) =>
    PLACES.flatMap(({ name }) =>
      KINDS.map((kind) => {
        const day = outcomes(`${name}, ${kind}`).result.highestDayRelativeHumidity;
        const pass = day <= 0.7;
        return {
          quantity: `${name}, ${kind}: highest daily mean of relative humidity`,
          level: 'B' as const,
          published: 'not above 70 %',
          ours: percent(day),
          pass,
          ...(pass
            ? {}
            : {
                why:
                  kind === 'supply air'
                    ? 'Supply air comes only while the air handler runs: on mild, humid days of the changing seasons it stands still, and nothing dries the space.'
                    : 'A dehumidifier of this size should hold its set-point: not explained.',
              }),
        };
      }),
    ),
};
