import { runCombinations, type SeasonRepair } from '../src/season/combinations.ts';
import { runSeason } from '../src/season/run.ts';
import { runUncertainty, usualUnknowns } from '../src/season/uncertainty.ts';
import { plainYear } from '../test/season/plain-integrator.ts';
import { networkCase, prototypeDryer, prototypeWeather } from '../test/season/test-cases.ts';

const weather = prototypeWeather();
/** Vented crawl space with its pressure network, as found. */
const asFound = networkCase(8000);
const closed = networkCase(100).airExchange;
const start = runSeason([asFound], weather, { keepStart: true })[0]!.start!;

const repairs: readonly SeasonRepair[] = [
  {
    name: 'liner',
    costCents: 400_000,
    apply: (s) => ({
      ...s,
      cover: { ...s.cover, zones: s.cover.zones.map((z) => ({ ...z, openFraction: 0.005 })) },
    }),
  },
  { name: 'close vents', costCents: 80_000, apply: (s) => ({ ...s, airExchange: closed }) },
  {
    name: 'dehumidifier',
    costCents: 180_000,
    apply: (s) => ({ ...s, machines: [...s.machines, prototypeDryer] }),
  },
  {
    name: 'insulate walls',
    costCents: 250_000,
    apply: (s) => ({ ...s, walls: { ...s.walls, aboveGradeUWPerM2K: 0.6 } }),
  },
  {
    name: 'insulate floor',
    costCents: 220_000,
    apply: (s) => ({ ...s, house: { ...s.house, floorUWPerM2K: 0.35 } }),
  },
  {
    name: 'supply register',
    costCents: 60_000,
    apply: (s) => ({ ...s, ducts: { ...s.ducts, supplyFlowM3PerS: 0.02, maximumRunShare: 0.35 } }),
  },
  {
    name: 'fan',
    costCents: 50_000,
    apply: (s) => ({ ...s, fans: [...s.fans, { powerW: 30, runShare: 1, exhaustM3PerS: 0 }] }),
  },
  {
    name: 'drain',
    costCents: 500_000,
    apply: (s) => ({ ...s, cover: { ...s.cover, standingWaterAreaM2: 0 } }),
  },
];

const flooded = { ...asFound, cover: { ...asFound.cover, standingWaterAreaM2: 2 } };
/** One year of the plain integrator, which takes as long for every case. */
const plainOf = (space: typeof asFound) => () => {
  plainYear(space, weather, start, 60);
};

/** What the runner measures; goals are milliseconds on one core, warm. */
export const benches = [
  {
    id: 'season.year',
    goal: 15,
    warm: 10,
    rounds: 21,
    run: () => {
      runSeason([asFound], weather);
    },
    plain: plainOf(asFound),
    plainRounds: 1,
  },
  {
    id: 'season.combinations256',
    goal: 3000,
    warm: 1,
    rounds: 3,
    run: () => {
      runCombinations(flooded, repairs, weather);
    },
    plain: plainOf(flooded),
    plainTimes: 256,
    plainRounds: 1,
  },
  {
    id: 'season.uncertain500',
    goal: 6000,
    warm: 1,
    rounds: 3,
    run: () => {
      runUncertainty(asFound, usualUnknowns(), weather, { count: 500, seed: 7 });
    },
    plain: plainOf(asFound),
    plainTimes: 500,
    plainRounds: 1,
  },
];
