import { causes, psychrometrics, geometry as shapes } from '@undercroft/engine';
import { ofSurvey } from '../budget/origins.ts';
import type { Origin } from '../origin.ts';
import type { CauseEvidenceShown } from './causes-assessment.ts';
import {
  airReadings,
  type CausesSubject,
  crawlHumidity,
  meanOf,
  measuredSamples,
  originOf,
  runningMachines,
} from './subject.ts';

/** What a sign shows in this job. */
export interface SignValue {
  readonly value: number | boolean;
  /** Plus or minus, in the unit of the sign. */
  readonly doubt?: number;
  readonly basis: Extract<CauseEvidenceShown['basis'], 'measured' | 'year'>;
  readonly origins: readonly Origin[];
}

const measured = (value: number | boolean, origins: readonly Origin[], doubt?: number): SignValue => ({
  value,
  ...(doubt === undefined ? {} : { doubt }),
  basis: 'measured',
  origins,
});

/** A sign whose samples the survey keeps under a quantity: the highest, lowest or mean of them. */
function ofQuantity(subject: CausesSubject, sign: causes.Sign): SignValue | undefined {
  if (sign.quantity === undefined) return undefined;
  const answers = sign.model.kind === 'answer';
  const samples = measuredSamples(subject, sign.quantity).filter(
    (s) => (typeof s.value === 'boolean') === answers,
  );
  const numbers = samples.map((s) => Number(s.value));
  if (numbers.length === 0) return undefined;
  const taken =
    sign.take === 'highest'
      ? Math.max(...numbers)
      : sign.take === 'lowest'
        ? Math.min(...numbers)
        : (meanOf(numbers) as number);
  const deciding = sign.take === 'mean' ? samples : samples.filter((s) => Number(s.value) === taken);
  const doubt = answers ? undefined : Math.max(0, ...deciding.map((s) => s.uncertainty ?? 0));
  return measured(
    answers ? taken === 1 : taken,
    deciding.map((s) => s.origin),
    doubt,
  );
}

function ventsOpen({ job }: CausesSubject): SignValue | undefined {
  const { vents } = job.plan;
  const origin = (v: (typeof vents)[number]) => ofSurvey(job, 'plan', `vent ${v.id} ${v.state}`, v.id);
  const open = vents.filter((v) => v.state === 'open' || v.state === 'screened');
  if (open.length > 0) return measured(true, open.map(origin));
  return vents.length > 0 && vents.every((v) => v.state === 'sealed')
    ? measured(false, vents.map(origin))
    : undefined;
}

/** Two dew points by a hygrometer that is good to 3 points differ by about this [K] (computed, middle of the range). */
const DEW_POINT_DOUBT_K = 0.8;

function dewPointOverOutdoor(subject: CausesSubject): SignValue | undefined {
  const outdoor = airReadings(subject, 'outdoor');
  const crawl = airReadings(subject, 'crawl');
  const [out, own] = [outdoor, crawl].map((list) => meanOf(list.map((r) => r.figures.dewPointC)));
  if (out === undefined || own === undefined || runningMachines(subject).length > 0) return undefined;
  return measured(own - out, [...crawl, ...outdoor].map(originOf), DEW_POINT_DOUBT_K);
}

function asFound({ season }: CausesSubject) {
  return season?.cases.find((c) => c.kind === 'as-found');
}

const ofYear = (value: number | boolean): SignValue => ({
  value,
  basis: 'year',
  origins: [{ kind: 'climate', note: 'the year by the hour, as found' }],
});

function summerOverWinter(subject: CausesSubject): SignValue | undefined {
  const found = asFound(subject);
  if (found === undefined || runningMachines(subject).length > 0) return undefined;
  const mean = (months: readonly number[]) =>
    meanOf(months.map((m) => found.months[m].relativeHumidity)) as number;
  return ofYear(mean([5, 6, 7]) - mean([11, 0, 1]));
}

/** How wet ground looks, by its name in the record, from dry gravel 0 to water 5. */
const LOOKS = {
  'dry-gravel': 0,
  'dry-crust': 1,
  average: 2,
  'dark-damp': 3,
  wet: 4,
  'standing-water': 5,
} as const;

function groundLook({ job, space }: CausesSubject): SignValue | undefined {
  const open = space.result.zones
    .filter((z) => z.cover === 'bare-earth' || z.cover === 'gravel')
    .sort((a, b) => b.areaM2 - a.areaM2);
  const widest = open[0];
  if (widest === undefined) return undefined;
  const ground =
    widest.id === 'elsewhere' ? job.plan.ground : job.plan.zones.find((z) => z.id === widest.id)?.ground;
  if (ground?.surface === undefined) return undefined;
  return measured(LOOKS[ground.surface], [
    ofSurvey(job, 'plan', `ground looks ${ground.surface.replaceAll('-', ' ')}`),
  ]);
}

function ductLeaks({ job }: CausesSubject): SignValue | undefined {
  const known = job.plan.ducts.filter((d) => d.carries !== 'dryer' && d.leaks !== undefined);
  if (known.length === 0) return undefined;
  const leaking = known.filter((d) => d.leaks === true);
  const origins = (leaking.length > 0 ? leaking : known).map((d) =>
    ofSurvey(job, 'plan', `duct ${d.id}`, d.id),
  );
  return measured(leaking.length > 0, origins);
}

function ductInsulation({ job }: CausesSubject): SignValue | undefined {
  const known = job.plan.ducts.filter((d) => d.carries === 'supply' && d.insulationRsi !== undefined);
  if (known.length === 0) return undefined;
  const least = Math.min(...known.map((d) => d.insulationRsi as number));
  return measured(
    least,
    known.filter((d) => d.insulationRsi === least).map((d) => ofSurvey(job, 'plan', `duct ${d.id}`, d.id)),
  );
}

/** Outdoors colder than this the house is heated and its rim is cold [°C] (common practice). */
const HEATING_BELOW_C = 12;

function heatingSeason(subject: CausesSubject): SignValue | undefined {
  const outdoor = airReadings(subject, 'outdoor');
  const mean = meanOf(outdoor.map((r) => r.figures.temperatureC));
  return mean === undefined ? undefined : measured(mean < HEATING_BELOW_C, outdoor.map(originOf));
}

function sweatsAtSixty(subject: CausesSubject): SignValue | undefined {
  const airC = meanOf(airReadings(subject, 'crawl').map((r) => r.figures.temperatureC));
  const surfaces = subject.readings.filter((r) => r.kind === 'surface');
  if (airC === undefined || surfaces.length === 0) return undefined;
  const coldest = surfaces.reduce((a, b) => (b.figures.temperatureC < a.figures.temperatureC ? b : a));
  const dewPointC = psychrometrics.dewPointC(0.6 * psychrometrics.saturationPressurePa(airC));
  return measured(coldest.figures.temperatureC <= dewPointC, [originOf(coldest)]);
}

function wallOverDewPoint({ job, readings }: CausesSubject): SignValue | undefined {
  const ids = new Set(job.readings.surface.filter((s) => s.of === 'wall').map((s) => s.id));
  const walls = readings.filter((r) => ids.has(r.id) && r.figures.dewPointC !== undefined);
  if (walls.length === 0) return undefined;
  const above = (r: (typeof walls)[number]) => r.figures.temperatureC - r.figures.dewPointC;
  const coldest = walls.reduce((a, b) => (above(b) < above(a) ? b : a));
  return measured(above(coldest), [originOf(coldest)], DEW_POINT_DOUBT_K);
}

function woodOverAir(subject: CausesSubject): SignValue | undefined {
  const { job, readings } = subject;
  const ids = new Set(
    job.readings.wood.filter((r) => r.member === 'joist' || r.member === 'subfloor').map((r) => r.id),
  );
  const woods = readings.filter((r) => ids.has(r.id) && r.figures.relativeHumidity !== undefined);
  const wood = meanOf(woods.map((r) => r.figures.relativeHumidity));
  const air = crawlHumidity(subject);
  if (wood === undefined || air === undefined) return undefined;
  return measured(wood - air, [...woods, ...airReadings(subject, 'crawl')].map(originOf), 0.05);
}

function winterFloorShare({ season }: CausesSubject): SignValue | undefined {
  const winter = season?.airExchange[0]?.quarters[0];
  return winter === undefined ? undefined : ofYear(winter.floorShare);
}

/** A duct this close to the ground shuts off what is behind it [m]. */
const LOW_DUCT_M = 0.2;

function partitions({ job }: CausesSubject): SignValue | undefined {
  const walls = job.plan.interiorWalls.map((w) => ofSurvey(job, 'plan', `inside wall ${w.id}`, w.id));
  const low = job.plan.ducts.filter((d) => d.clearanceM !== undefined && d.clearanceM < LOW_DUCT_M);
  const origins = [...walls, ...low.map((d) => ofSurvey(job, 'plan', `low duct ${d.id}`, d.id))];
  return origins.length > 0 ? measured(true, origins) : undefined;
}

/** Ground within this distance counts as that of the damp end [m]. */
const NEAR_M = 3;

function openGroundAtDampEnd(subject: CausesSubject): SignValue | undefined {
  const { job } = subject;
  const placed = airReadings(subject, 'crawl').filter((r) => r.at !== undefined);
  if (placed.length === 0) return undefined;
  const damp = placed.reduce((a, b) => (b.figures.relativeHumidity > a.figures.relativeHumidity ? b : a));
  const bare = job.plan.zones.filter((z) => z.ground.cover === 'bare-earth');
  const near = bare.filter(
    (z) => shapes.distanceToPolygonM(damp.at as { xM: number; yM: number }, z.outline) <= NEAR_M,
  );
  const open = near.length > 0 || job.plan.ground.cover === 'bare-earth';
  return measured(open, [originOf(damp), ...near.map((z) => ofSurvey(job, 'plan', z.name, z.id))]);
}

function runShare(subject: CausesSubject): SignValue | undefined {
  const machines = runningMachines(subject).filter((m) => m.runShare !== undefined);
  const mean = meanOf(machines.map((m) => m.runShare as number));
  return mean === undefined
    ? undefined
    : measured(
        mean,
        machines.map((m) => ofSurvey(subject.job, 'plan', 'run-hour meter or logger', m.id)),
      );
}

function radonSystem({ job, facts }: CausesSubject): SignValue | undefined {
  return facts.radonSystem === undefined
    ? undefined
    : measured(facts.radonSystem, [ofSurvey(job, 'plan', 'soil-gas fan or answer')]);
}

/** Signs that are worked out from several things of a job, by the engine's key. */
const WORKED_OUT: Readonly<Record<string, (subject: CausesSubject) => SignValue | undefined>> = {
  'vents-open': ventsOpen,
  'dew-point-over-outdoor': dewPointOverOutdoor,
  'outdoor-air-over-year': (subject) => {
    const found = asFound(subject);
    return found === undefined ? undefined : ofYear(found.waterKg.outdoorAir > 0);
  },
  'summer-over-winter': summerOverWinter,
  'ground-look': groundLook,
  'duct-leaks': ductLeaks,
  'duct-insulation': ductInsulation,
  'heating-season': heatingSeason,
  'sweats-at-sixty': sweatsAtSixty,
  'wall-over-dew-point': wallOverDewPoint,
  'wood-over-air': woodOverAir,
  'winter-floor-share': winterFloorShare,
  partitions,
  'open-ground-at-damp-end': openGroundAtDampEnd,
  'run-share': runShare,
  'radon-system': radonSystem,
};

/** What every sign shows in this job; signs that nobody took are left out. */
export function signValues(subject: CausesSubject): ReadonlyMap<string, SignValue> {
  const found = new Map<string, SignValue>();
  for (const sign of causes.causeSigns) {
    const value = ofQuantity(subject, sign) ?? WORKED_OUT[sign.key]?.(subject);
    if (value !== undefined) found.set(sign.key, value);
  }
  return found;
}
