import type { causes } from '@undercroft/engine';
import { ofSurvey } from '../budget/origins.ts';
import type { Origin } from '../origin.ts';
import { percentWords } from '../readings/words.ts';
import {
  airReadings,
  type CausesSubject,
  crawlHumidity,
  meanOf,
  measuredSamples,
  originOf,
  runningMachines,
} from './subject.ts';

/** Whether something was found, was looked for and not found, or was not looked for. */
export interface ConditionState {
  readonly key: causes.CauseKey;
  readonly state: 'seen' | 'absent' | 'not-shown';
  /** What showed it, or what would. One plain sentence. */
  readonly because: string;
  readonly origins: readonly Origin[];
}

type Verdict = Omit<ConditionState, 'key'>;

const notShown = (because: string): Verdict => ({ state: 'not-shown', because, origins: [] });
const verdict = (found: boolean, because: string, origins: readonly Origin[]): Verdict => ({
  state: found ? 'seen' : 'absent',
  because,
  origins,
});

/** Air of a closed space is past its usual alarm above 60 %; of a vented one where mold becomes possible, 80 %. */
const HUMID = { closed: 0.6, vented: 0.8 } as const;

function humidAir(subject: CausesSubject): Verdict {
  const humidity = crawlHumidity(subject);
  if (humidity === undefined) return notShown('Read temperature and humidity in the space.');
  const closed = subject.job.house.spaceType === 'closed' || runningMachines(subject).length > 0;
  const limit = closed ? HUMID.closed : HUMID.vented;
  const words = `Mean of the readings ${percentWords(humidity)} relative humidity; a ${closed ? 'closed' : 'vented'} space should stay below ${percentWords(limit)}.`;
  return verdict(humidity > limit, words, airReadings(subject, 'crawl').map(originOf));
}

function sweating({ readings }: CausesSubject): Verdict {
  const surfaces = readings.filter((r) => r.kind === 'surface' && r.figures.dewPointC !== undefined);
  if (surfaces.length === 0) return notShown('Read the coldest surfaces and the air beside them.');
  const above = (r: (typeof surfaces)[number]) => r.figures.temperatureC - r.figures.dewPointC;
  const wet = surfaces.filter((r) => above(r) <= 0);
  const least = Math.min(...surfaces.map(above));
  const words =
    wet.length > 0
      ? `${wet.length} of ${surfaces.length} surfaces read are below the dew point.`
      : `The coldest surface read is ${least.toFixed(1)} K above the dew point.`;
  return verdict(wet.length > 0, words, (wet.length > 0 ? wet : surfaces).map(originOf));
}

/** A film of water thinner than this is sweat and not free water [m]. */
const FREE_WATER_M = 0.003;

function freeWater(subject: CausesSubject): Verdict {
  const { job } = subject;
  const grounds = [
    { ground: job.plan.ground, note: 'ground of the space' },
    ...job.plan.zones.map((z) => ({ ground: z.ground, note: z.name })),
  ];
  const wet = grounds.filter(
    ({ ground: g }) =>
      g.surface === 'standing-water' ||
      g.liner?.waterOnTop === 'pond' ||
      g.liner?.waterBeneath === 'free-water',
  );
  const depths = ['standingWaterDepthM', 'freeWaterUnderLinerM'].flatMap((q) => measuredSamples(subject, q));
  const deep = depths.filter((s) => typeof s.value === 'number' && s.value > FREE_WATER_M);
  const origins = [...wet.map(({ note }) => ofSurvey(job, 'plan', note)), ...deep.map((s) => s.origin)];
  if (origins.length > 0) {
    return verdict(true, 'Water was found standing on the ground, on the liner or under it.', origins);
  }
  const known = depths.length > 0 || grounds.some(({ ground: g }) => g.liner?.waterOnTop !== undefined);
  if (!known) return notShown('Look for standing water and press the sheet at the low spots.');
  return verdict(
    false,
    'No free water was found on or under the floor.',
    depths.map((s) => s.origin),
  );
}

function dampMasonry({ job }: CausesSubject): Verdict {
  const known = job.plan.walls.filter((w) => w.dampness !== undefined);
  if (known.length === 0) return notShown('Look at the inside face of every wall and pier.');
  const damp = known.filter((w) => w.dampness !== 'dry');
  const words =
    damp.length > 0
      ? `${damp.length} of ${known.length} walls are damp or wet.`
      : 'All walls that were looked at are dry.';
  const origins = (damp.length > 0 ? damp : known).map((w) =>
    ofSurvey(job, 'plan', `wall ${w.wallId} ${w.dampness}`, w.id),
  );
  return verdict(damp.length > 0, words, origins);
}

/** Framing is wet at a mean where mold becomes possible, or where one reading is excessive. */
const WET_MEAN = 0.16;
const WET_ONE = 0.2;
/** Pin readings of one piece are good to about two points, so that bearings count as wetter from there. */
const WETTER = 0.02;

function woodOf({ job, readings }: CausesSubject, members: readonly string[]) {
  const ids = new Set(job.readings.wood.filter((r) => members.includes(r.member)).map((r) => r.id));
  return readings.filter((r) => r.kind === 'wood' && ids.has(r.id));
}

function wetWood(subject: CausesSubject): Verdict {
  const read = woodOf(subject, ['joist', 'subfloor', 'rim', 'post', 'other']);
  const mean = meanOf(read.map((r) => r.figures.moistureContent));
  if (mean === undefined) return notShown('Read joists with a pin meter, three places in each bay.');
  const highest = Math.max(...read.map((r) => r.figures.moistureContent));
  const words = `Corrected pin readings of the framing: mean ${percentWords(mean, 1)}, highest ${percentWords(highest, 1)}.`;
  return verdict(mean >= WET_MEAN || highest >= WET_ONE, words, read.map(originOf));
}

function wetBearing(subject: CausesSubject): Verdict {
  const joists = meanOf(woodOf(subject, ['joist']).map((r) => r.figures.moistureContent));
  const bearing = woodOf(subject, ['sill', 'girder']);
  if (joists === undefined || bearing.length === 0) {
    return notShown('Read sills and girder ends with a pin meter, and joists for comparison.');
  }
  const highest = Math.max(...bearing.map((r) => r.figures.moistureContent));
  const words = `Wettest sill or girder ${percentWords(highest, 1)}, joists ${percentWords(joists, 1)} on average.`;
  return verdict(highest >= WET_MEAN && highest - joists >= WETTER, words, bearing.map(originOf));
}

/** Humidity that differs by more than this from place to place is a distribution that fails (common practice). */
const UNEVEN = 0.1;

function dampFarEnd(subject: CausesSubject): Verdict {
  const spread = measuredSamples(subject, 'humiditySpread');
  const read = airReadings(subject, 'crawl');
  const values = read.map((r) => r.figures.relativeHumidity);
  const own = read.length >= 3 ? Math.max(...values) - Math.min(...values) : undefined;
  const given = spread.flatMap((s) => (typeof s.value === 'number' ? [s.value] : []));
  if (own === undefined && given.length === 0) {
    return notShown('Read or log the air in at least three places, the far corners among them.');
  }
  const widest = Math.max(...given, own ?? 0);
  const origins = [...spread.map((s) => s.origin), ...(own === undefined ? [] : read.map(originOf))];
  return verdict(
    widest > UNEVEN,
    `Relative humidity differs by ${(100 * widest).toFixed(0)} points over the space.`,
    origins,
  );
}

/** Words for smell in a complaint, English and Spanish. */
const SMELL = /\b(smell\w*|odou?r\w*|must(y|iness)|olor\w*|huele\w*|hedor\w*)\b/i;
const NO_SMELL = /\b(no|without|sin) (smell|odou?r|olor)/i;

function smell({ job }: CausesSubject): Verdict {
  const { complaint } = job.header;
  if (complaint !== undefined && SMELL.test(complaint) && !NO_SMELL.test(complaint)) {
    return verdict(true, 'The owner complains of a smell.', [
      ofSurvey(job, 'house', `complaint: ${complaint}`),
    ]);
  }
  return notShown('Ask who lives there, and smell in the space and in the rooms.');
}

/** Action level of the EPA, 4 pCi/L [Bq/m³]. */
const RADON_ACTION = 148;

function soilGas(subject: CausesSubject): Verdict {
  const tests = measuredSamples(subject, 'radonBqPerM3');
  const values = tests.flatMap((s) => (typeof s.value === 'number' ? [s.value] : []));
  if (values.length === 0) return notShown('Test the lowest lived-in room for radon, two days or longer.');
  const highest = Math.max(...values);
  const words = `Radon test ${highest.toFixed(0)} Bq/m³ (${(highest / 37).toFixed(1)} pCi/L); action is advised from 4 pCi/L.`;
  return verdict(
    highest >= RADON_ACTION,
    words,
    tests.map((s) => s.origin),
  );
}

/** A consequence that a yes-no quantity shows. */
function answered(subject: CausesSubject, quantity: string, yes: string, no: string, how: string): Verdict {
  const found = measuredSamples(subject, quantity);
  if (found.length === 0) return notShown(how);
  const seen = found.filter((s) => s.value === true);
  return verdict(
    seen.length > 0,
    seen.length > 0 ? yes : no,
    (seen.length > 0 ? seen : found).map((s) => s.origin),
  );
}

/** Words for a floor that moves in a complaint, English and Spanish. */
const MOVES =
  /\b(cup(s|ped|ping)?|sag(s|ging|ged)?|buckl\w*|slop(es|ing)|bounc\w*|combad\w*|hundid\w*|abarquillad\w*)\b/i;

function floorMoves({ job }: CausesSubject): Verdict {
  const { complaint } = job.header;
  return complaint !== undefined && MOVES.test(complaint)
    ? verdict(true, 'The owner complains of the floor.', [ofSurvey(job, 'house', `complaint: ${complaint}`)])
    : notShown('Walk the floor above and lay a level on it.');
}

/** The state of everything that a survey can find. */
export function conditionStates(subject: CausesSubject): ConditionState[] {
  const found: readonly (readonly [causes.CauseKey, Verdict])[] = [
    ['free-water', freeWater(subject)],
    ['damp-masonry', dampMasonry(subject)],
    ['humid-air', humidAir(subject)],
    ['sweating', sweating(subject)],
    ['damp-far-end', dampFarEnd(subject)],
    ['wet-wood', wetWood(subject)],
    ['wet-bearing', wetBearing(subject)],
    ['smell', smell(subject)],
    ['soil-gas', soilGas(subject)],
    [
      'mold',
      answered(
        subject,
        'moldGrowthPresent',
        'Mold growth was found.',
        'No mold growth was found.',
        'Look over all faces of the wood with a slanting light.',
      ),
    ],
    [
      'decay',
      answered(
        subject,
        'waterConductingRotSigns',
        'Signs of a water-conducting rot were found.',
        'No signs of a water-conducting rot were found; that does not rule other decay out.',
        'Probe dark and soft wood with an awl.',
      ),
    ],
    ['floor-moves', floorMoves(subject)],
    [
      'batts-fall',
      answered(
        subject,
        'wetBattsPresent',
        'Wet or fallen batts were found.',
        'No wet or fallen batts were found.',
        'Look and press between the joists.',
      ),
    ],
  ];
  return found.map(([key, state]) => ({ key, ...state }));
}
