import { fixed, meanOfMonths, percent, rises, SUMMER, summerJoists } from './figures.ts';
import { crawlFacts, linedAndSealed, space, vented, withAir } from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Study } from './study.ts';

const PLACE = 'wilmington_de';
const BEFORE = 'as found, vented';
/** Leakage areas of the crawl space to outdoors, cm² at 4 Pa. */
const LEAKAGE_CM2 = [40, 100, 250, 500, 1000, 2000, 4000] as const;
const sealedName = (cm2: number) => `sealed to ${cm2} cm²`;

/** Seventeen houses whose crawl spaces were sealed. */
export const newJersey: Study = {
  id: 'V5',
  study: 'Seventeen houses in southern New Jersey, some with walls and soil of the crawl space sealed.',
  published: [
    {
      level: 'B',
      says: 'The joists of sealed spaces lost moisture.',
      source: s.newJersey,
    },
    {
      level: 'B',
      says: 'In the five sealed houses the leakage area of the space to outdoors alone explained how moist the joists were.',
      source: s.newJersey,
    },
  ],
  given: ['Walls and soil sealed; leakage area of the space to outdoors measured, values not read.'],
  assumed: [
    'Weather of Wilmington, Delaware, across the river from the place of the study.',
    'As found: vents of 1/150 and bare soil. Sealed: sheet sealed on ground and walls, vents gone, one of seven leakage areas; default plan.',
  ],
  cases: [
    { place: PLACE, name: BEFORE, space: (weather) => vented(space(weather)) },
    ...LEAKAGE_CM2.map((cm2) => ({
      place: PLACE,
      name: sealedName(cm2),
      space: (weather: Parameters<typeof space>[0]) => {
        const base = linedAndSealed(space(weather));
        return withAir(base, { ...crawlFacts(base), walls: 'sealed', measuredLeakageAreaM2: cm2 * 1e-4 });
      },
    })),
  ],
  evaluate: (outcomes) => {
    const before = summerJoists(outcomes(BEFORE));
    const sealed = LEAKAGE_CM2.map((cm2) => outcomes(sealedName(cm2)));
    const joists = sealed.map(summerJoists);
    const air = sealed.map((one) => meanOfMonths(one, SUMMER, (m) => m.airChangesPerHour));
    const fell = joists.every((one) => one < before);
    const monotone = rises(joists);
    return [
      {
        quantity: 'surface moisture of the joists in summer, sealed against as found',
        level: 'B',
        published: 'lower',
        ours: `${percent(joists[0]!)} to ${percent(joists.at(-1)!)} against ${percent(before)}`,
        pass: fell,
        ...(fell ? {} : { why: 'Not explained.' }),
      },
      {
        quantity: 'surface moisture of the joists in summer, over the leakage area of sealed spaces',
        level: 'B',
        published: 'rises with leakage area',
        ours: LEAKAGE_CM2.map(
          (cm2, i) => `${cm2} cm² ${percent(joists[i]!)} (${fixed(air[i]!, 2)} air changes)`,
        ).join(', '),
        pass: monotone,
        ...(monotone ? {} : { why: 'Not explained.' }),
      },
    ];
  },
};
