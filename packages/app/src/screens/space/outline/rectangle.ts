import { geometry } from '@undercroft/engine';
import { FIRST_AZIMUTH_DEG, type Leg } from './tape.ts';

/** A length as taped: exact, with what was typed. */
export interface Taped {
  readonly nm: number;
  readonly typed?: string;
}

/** A part that is added outside of a wall or cut out inside of it. */
export interface Part {
  readonly kind: 'add' | 'cut';
  /** Which wall it lies on. */
  readonly leg: number;
  /** From the start of the wall to the near side of the part; may be nothing. */
  readonly offsetNm: number;
  readonly width: Taped;
  readonly depth: Taped;
}

const LEFT = -90;
const RIGHT = 90;

/** Four walls around a rectangle, walked to the left; two are taped, two follow from them. */
export function rectangleOf(length: Taped, width: Taped, newId: () => string): Leg[] {
  return [
    { id: newId(), ...length, turnDeg: LEFT },
    { id: newId(), ...width, turnDeg: LEFT },
    { id: newId(), nm: length.nm, turnDeg: LEFT },
    { id: newId(), nm: width.nm, turnDeg: LEFT },
  ];
}

/**
 * The walls with a part added or cut out. A part that reaches an end of its wall makes one with the wall beyond. Null
 * where it is wider than what is left of the wall. Whether walls then cross is for the engine to say.
 */
export function withPart(legs: readonly Leg[], part: Part, newId: () => string): Leg[] | null {
  const wall = legs[part.leg];
  if (wall === undefined) return null;
  const rest = wall.nm - part.offsetNm - part.width.nm;
  if (part.offsetNm < 0 || rest < 0) return null;
  const out = part.kind === 'add' ? RIGHT : LEFT;
  const back = -out;
  const cut: Leg[] = [
    { id: wall.id, nm: part.offsetNm, turnDeg: wall.turnDeg },
    { id: newId(), ...part.depth, turnDeg: out },
    { id: newId(), ...part.width, turnDeg: back },
    { id: newId(), nm: part.depth.nm, turnDeg: back },
    { id: newId(), nm: rest, turnDeg: out },
  ];
  return joined([...legs.slice(0, part.leg), ...cut, ...legs.slice(part.leg + 1)], legs[0].id);
}

interface Walked extends Leg {
  readonly azimuthDeg: number;
}

/**
 * Walls without length taken out, walls that run straight on made one, and what runs back over the wall before taken off
 * it. The walk still starts to the right.
 */
function joined(legs: readonly Leg[], firstId: string): Leg[] {
  const out: Walked[] = [];
  let azimuthDeg = FIRST_AZIMUTH_DEG - legs[0].turnDeg;
  for (const leg of legs) {
    azimuthDeg += leg.turnDeg;
    append(out, { ...leg, azimuthDeg });
  }
  // The last wall meets the first one as any other meets the next.
  for (;;) {
    const last = out.at(-1);
    if (last === undefined || out.length < 3 || !isAlong(last, out[0])) break;
    const first = out.shift() as Walked;
    out.pop();
    append(out, last);
    append(out, first);
  }
  const rightward = ({ azimuthDeg: azimuth }: Walked) => same(azimuth, FIRST_AZIMUTH_DEG);
  const kept = out.findIndex((leg) => leg.id === firstId && rightward(leg));
  const start = Math.max(0, kept >= 0 ? kept : out.findIndex(rightward));
  const walk = [...out.slice(start), ...out.slice(0, start)];
  return walk.map(({ azimuthDeg: azimuth, ...leg }, i) => {
    const before = walk[(i + walk.length - 1) % walk.length].azimuthDeg;
    const turn = geometry.wrapDeg(azimuth - before);
    return { ...leg, turnDeg: turn > 180 ? turn - 360 : turn };
  });
}

const same = (a: number, b: number) => geometry.wrapDeg(a - b) === 0;

/** Whether two walls lie in one line, the same way or back. */
const isAlong = (a: Walked, b: Walked) => geometry.wrapDeg(a.azimuthDeg - b.azimuthDeg) % 180 === 0;

function append(out: Walked[], leg: Walked): void {
  if (leg.nm === 0) return;
  const last = out.at(-1);
  if (last === undefined || !isAlong(last, leg)) {
    out.push(leg);
    return;
  }
  out.pop();
  append(out, together(last, leg));
}

/** Two walls in one line made one, under the id of the longer. Its length is no longer one that was taped. */
function together(a: Walked, b: Walked): Walked {
  const nm = same(a.azimuthDeg, b.azimuthDeg) ? a.nm + b.nm : a.nm - b.nm;
  const { id } = a.nm >= b.nm ? a : b;
  const { azimuthDeg } = nm >= 0 ? a : b;
  return { id, nm: Math.abs(nm), turnDeg: a.turnDeg, azimuthDeg };
}
