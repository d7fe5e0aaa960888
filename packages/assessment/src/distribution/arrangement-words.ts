import { geometry as shapes } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { ArrangementTried, FanPlaced, MachinePlaced } from './distribution-assessment.ts';

/** A machine that moved less stands where it stood, m. */
const SAME_SPOT_M = 0.5;

type Arranged = Pick<ArrangementTried, 'machine' | 'fans'>;

/** How places, directions and shares are told where the words will be read. */
export interface PlaceWords {
  readonly at: (place: Point) => string;
  /** A direction of the plan [degrees clockwise from its y axis]. */
  readonly toward: (bearingDeg: number) => string;
  readonly percent: (share: number) => string;
}

const middleOf = ({ intake, outlet, ducted }: MachinePlaced): Point =>
  ducted ? intake : { xM: (intake.xM + outlet.xM) / 2, yM: (intake.yM + outlet.yM) / 2 };

const same = (a: Point, b: Point) => shapes.distanceM(a, b) <= SAME_SPOT_M;

/** Where a machine stands and blows. */
export function machineWords(machine: MachinePlaced, say: PlaceWords): string {
  const { bearingDeg, ducted, outlet, sensor } = machine;
  const blows = ducted
    ? `its outlet ducted to ${say.at(outlet)}`
    : bearingDeg === null
      ? 'its air spread out'
      : `blowing ${say.toward(bearingDeg)}`;
  const reads = sensor === undefined ? '' : `, its humidistat ${say.at(sensor)}`;
  return `${say.at(middleOf(machine))}, ${blows}${reads}`;
}

/** Where a fan stands and blows. */
export function fanWords({ at, bearingDeg }: FanPlaced, say: PlaceWords): string {
  return `${say.at(at)}, blowing ${say.toward(bearingDeg)}`;
}

/** What one does to come from an arrangement to another, one sentence each. */
export function stepsBetween(found: Arranged, next: Arranged, say: PlaceWords): string[] {
  const was = found.machine;
  const is = next.machine;
  const steps: string[] = [];
  const stands = middleOf(is);
  if (!same(middleOf(was), stands) && !(is.ducted && same(was.intake, is.intake))) {
    steps.push(`Move the dehumidifier: ${say.at(stands)}.`);
  }
  if (is.ducted && !was.ducted) steps.push(`Duct its outlet to ${say.at(is.outlet)}.`);
  if (!is.ducted && is.bearingDeg !== null && is.bearingDeg !== was.bearingDeg) {
    steps.push(`Have it blow ${say.toward(is.bearingDeg)}.`);
  }
  for (const fan of next.fans.slice(found.fans.length)) steps.push(`Set a fan ${fanWords(fan, say)}.`);
  if (is.sensor !== undefined && was.sensor === undefined) {
    steps.push(`Put its humidistat ${say.at(is.sensor)}, set to ${say.percent(is.setRelativeHumidity)}.`);
  } else if (is.setRelativeHumidity !== was.setRelativeHumidity) {
    steps.push(`Set it to ${say.percent(is.setRelativeHumidity)}.`);
  }
  return steps;
}

const KINDS: Readonly<Record<string, string>> = {
  move: 'Another place',
  turn: 'Turned where it stands',
  duct: 'A duct at its outlet',
  fan: 'One fan',
  'remote humidistat': 'A humidistat in the dampest place',
};

/** A kind of change for people. */
export function changeWords(kind: string): string {
  return KINDS[kind] ?? kind.charAt(0).toUpperCase() + kind.slice(1);
}

/** What a rule of placing asks for, as what was missing. */
export const RULE_WORDS: Readonly<Record<string, string>> = {
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

/** How a machine fares, as the end of a sentence. */
export const OUTCOME_WORDS: Readonly<Record<string, string>> = {
  holds: 'it holds its setting and rests in between',
  undersized: 'it runs all the time and does not reach its setting',
  idle: 'its humidistat is satisfied without it',
  'too-cold': 'the air at its intake is too cold for it to remove water',
};
