import { percent, rises, summerJoists } from './figures.ts';
import { floorInsulated, lined, space, vented } from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Finding, Outcomes, Study } from './study.ts';

const PLACE = 'houston_tx';
const HOUSE_C = [21, 23, 25] as const;
const FLOORS = ['bare floor', 'R-19 batts'] as const;
const FINISHES = ['open finish', 'vapor-tight finish'] as const;
type Floor = (typeof FLOORS)[number];
type Finish = (typeof FINISHES)[number];
const nameOf = (floor: Floor, finish: Finish, houseC: number) => `${floor}, ${finish}, house at ${houseC} °C`;

/** Twelve raised houses over vented spaces. */
export const louisianaFloors: Study = {
  id: 'V6',
  study:
    'Twelve raised houses in New Orleans and Baton Rouge with six ways to insulate the floor, watched for one year.',
  published: [
    {
      level: 'B',
      says: 'Floors take up more water in summer the colder the house is kept.',
      source: s.louisianaHighlight,
    },
    {
      level: 'B',
      says: 'So they do under a floor finish that lets no vapor through.',
      source: s.louisianaGuide,
    },
    {
      level: 'C',
      says: 'Closed-cell foam about 15 % or less; batts or open-cell foam under vinyl above 20 % in late summer.',
      source: s.louisianaRecalled,
    },
    {
      level: 'C',
      says: 'One house with a logger, not part of the study: 10 to 11 % over foam, above 27 % bare, in the first summer month.',
      source: s.louisianaLogger,
    },
  ],
  given: ['Raised floors over open or vented spaces, air conditioning, several floor finishes.'],
  assumed: [
    'Weather of Houston, the nearest built-in station of the same climate zone; not the place of the study.',
    'Vents of 1/150, sheet laid and lapped; default plan. Vapor-tight finish: the floor passes as much as the sheet.',
    'The model has no layers in the floor. What stands for the sheathing is the surface of the joists, one tenth of the way from the air of the space to the house in temperature; sheathing over batts lies much nearer to the house, so the model shows less of the effect than was measured.',
  ],
  cases: FLOORS.flatMap((floor) =>
    FINISHES.flatMap((finish) =>
      HOUSE_C.map((houseC) => ({
        place: PLACE,
        name: nameOf(floor, finish, houseC),
        space: (weather: Parameters<typeof space>[0]) => {
          const bare = vented(lined(space(weather), 'laid-and-lapped'));
          const base = floor === 'bare floor' ? bare : floorInsulated(bare);
          const tight = base.cover.zones[0]!.sheetPermeanceKgPerM2SPa;
          const floorPermeanceKgPerM2SPa =
            finish === 'open finish' ? base.house.floorPermeanceKgPerM2SPa : tight;
          return { ...base, house: { ...base.house, coolingTemperatureC: houseC, floorPermeanceKgPerM2SPa } };
        },
      })),
    ),
  ),
  evaluate: (outcomes) => [...colder(outcomes), ...tighter(outcomes), ...shown(outcomes)],
};

function colder(outcomes: Outcomes): Finding[] {
  return FLOORS.flatMap((floor) =>
    FINISHES.map((finish) => {
      const warmToCold = HOUSE_C.toReversed();
      const joists = warmToCold.map((houseC) => summerJoists(outcomes(nameOf(floor, finish, houseC))));
      const pass = rises(joists);
      return {
        quantity: `${floor}, ${finish}: surface moisture of the joists in summer as the house is kept colder`,
        level: 'B' as const,
        published: 'rises',
        ours: warmToCold.map((houseC, i) => `${houseC} °C ${percent(joists[i]!)}`).join(', '),
        pass,
        ...(pass ? {} : { why: 'Not explained.' }),
      };
    }),
  );
}

function tighter(outcomes: Outcomes): Finding[] {
  return FLOORS.map((floor) => {
    const pairs = HOUSE_C.map((houseC) =>
      FINISHES.map((finish) => summerJoists(outcomes(nameOf(floor, finish, houseC)))),
    );
    const pass = pairs.every(rises);
    return {
      quantity: `${floor}: surface moisture of the joists in summer under a vapor-tight finish`,
      level: 'B' as const,
      published: 'higher than under an open one',
      ours: HOUSE_C.map(
        (houseC, i) => `${houseC} °C ${pairs[i]!.map((mc) => percent(mc, 2)).join(' to ')}`,
      ).join(', '),
      pass,
      ...(pass ? {} : { why: 'Not explained.' }),
    };
  });
}

function shown(outcomes: Outcomes): Finding[] {
  return FLOORS.map((floor) => ({
    quantity: `${floor}, vapor-tight finish, house at 21 °C: highest surface moisture of the joists`,
    level: 'C' as const,
    published: floor === 'bare floor' ? 'above 27 % (one house)' : 'above 20 % (sheathing)',
    ours: percent(outcomes(nameOf(floor, 'vapor-tight finish', 21)).result.peakWoodMoisture.joists.surface),
    pass: null,
  }));
}
