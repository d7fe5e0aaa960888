import type {
  ArrangementTried,
  FanPlaced,
  FieldRange,
  MachinePlaced,
  PlaceFinder,
  RuleExcluded,
} from '@undercroft/assessment';
import { geometry as shapes } from '@undercroft/engine';
import { percent, tapedFrom, toward } from './print-coverage.ts';

/** A machine that moved less stands where it stood, m. */
const SAME_SPOT_M = 0.5;

type Arranged = Pick<ArrangementTried, 'machine' | 'fans'>;

/** A share with its range where that is more than nothing, e.g. `92 % (90 to 92 %)`. */
export function rangeText({ low, value, high }: FieldRange): string {
  const [from, to] = [percent(low), percent(high)];
  return from === to ? percent(value) : `${percent(value)} (${from.replace(' %', '')} to ${to})`;
}

/** A figure with its range, in so many decimals. */
export function figureRange({ low, value, high }: FieldRange, decimals: number): string {
  const [from, to] = [low.toFixed(decimals), high.toFixed(decimals)];
  return from === to ? value.toFixed(decimals) : `${value.toFixed(decimals)} (${from} to ${to})`;
}

const middleOf = ({ intake, outlet, ducted }: MachinePlaced) =>
  ducted ? intake : { xM: (intake.xM + outlet.xM) / 2, yM: (intake.yM + outlet.yM) / 2 };

/** Where a machine stands and blows. */
export function machineText(machine: MachinePlaced, place: PlaceFinder): string {
  const { bearingDeg, ducted, outlet, sensor } = machine;
  const stands = tapedFrom(place.fromWalls(middleOf(machine)));
  const blows = ducted
    ? `its outlet ducted to ${tapedFrom(place.fromWalls(outlet))}`
    : bearingDeg === null
      ? 'its air spread out'
      : `blowing ${toward(place.compassDeg(bearingDeg))}`;
  const reads = sensor === undefined ? '' : `, its humidistat ${tapedFrom(place.fromWalls(sensor))}`;
  return `${stands}, ${blows}${reads}`;
}

/** Where a fan stands and blows. */
export function fanText({ at, bearingDeg }: FanPlaced, place: PlaceFinder): string {
  return `${tapedFrom(place.fromWalls(at))}, blowing ${toward(place.compassDeg(bearingDeg))}`;
}

/** What one does to come from an arrangement to another, one thing each. */
export function stepsTo(found: Arranged, next: Arranged, place: PlaceFinder): string[] {
  const was = found.machine;
  const is = next.machine;
  const steps: string[] = [];
  const stands = middleOf(is);
  const byTape = (at: MachinePlaced['intake']) => tapedFrom(place.fromWalls(at));
  if (shapes.distanceM(middleOf(was), stands) > SAME_SPOT_M && !(is.ducted && same(was.intake, is.intake))) {
    steps.push(`Move the dehumidifier: ${byTape(stands)}.`);
  }
  if (is.ducted && !was.ducted) steps.push(`Duct its outlet to ${byTape(is.outlet)}.`);
  if (!is.ducted && is.bearingDeg !== null && is.bearingDeg !== was.bearingDeg) {
    steps.push(`Have it blow ${toward(place.compassDeg(is.bearingDeg))}.`);
  }
  for (const fan of next.fans.slice(found.fans.length)) {
    steps.push(`Set a fan ${fanText(fan, place)}.`);
  }
  if (is.sensor !== undefined && was.sensor === undefined) {
    steps.push(`Put its humidistat ${byTape(is.sensor)}, set to ${percent(is.setRelativeHumidity)}.`);
  } else if (is.setRelativeHumidity !== was.setRelativeHumidity) {
    steps.push(`Set it to ${percent(is.setRelativeHumidity)}.`);
  }
  return steps;
}

const same = (a: MachinePlaced['intake'], b: MachinePlaced['intake']) =>
  shapes.distanceM(a, b) <= SAME_SPOT_M;

const KINDS: Readonly<Record<string, string>> = {
  move: 'Another place',
  turn: 'Turned where it stands',
  duct: 'A duct at its outlet',
  fan: 'One fan',
  'remote humidistat': 'A humidistat in the dampest place',
};

/** A kind of change for people. */
export function kindText(kind: string): string {
  return KINDS[kind] ?? kind.charAt(0).toUpperCase() + kind.slice(1);
}

/** What a rule asks for, as what was missing. */
export const RULES: Readonly<Record<RuleExcluded['rule'], string>> = {
  'no-floor': 'in a wall, a pier or something solid',
  'clear-height': 'too low for the machine on its block',
  clearance: 'too near to a wall, pier or duct',
  'no-way': 'nobody can crawl there',
  'service-reach': 'too far from the door for service',
  'outlet-run': 'too little free run ahead of the outlet',
  drain: 'no drain or sump within reach of a pump',
  power: 'no receptacle within reach of the cord',
  'no-return-path': 'no opening lets the air flow back',
};
