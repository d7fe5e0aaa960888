import type { Spot } from './display-list.ts';
import type { Box } from './polygon.ts';

/** Side of the squares by which neighbors are looked up, in drawing units. */
const CELL = 32;

/** How much more it costs to cover a square unit than to stand a unit and a half further away. */
const CLEAR = 4;

interface Taken {
  readonly box: Box;
  readonly weight: number;
}

/** A label that wants a place near a spot. */
export interface Wanted {
  readonly at: Spot;
  readonly width: number;
  readonly height: number;
  /** How far the label's edge stays from the spot. */
  readonly gap: number;
  /** How far away it may go before it is given up or squeezed in [drawing units]. */
  readonly reach: number;
}

export interface Placed {
  readonly box: Box;
  /** Distance from the spot that the label ended up at; over `gap` it wants a leader line. */
  readonly away: number;
  /** Area by which it still covers something, weighted. Zero where it stands free. */
  readonly covered: number;
}

function overlap(a: Box, b: Box): number {
  const width = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const height = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}

/** Right, left, above and below first, then the corners, then between: people look for a label in this order. */
const DIRECTIONS = [0, 180, 270, 90, 315, 45, 225, 135, 337, 23, 203, 157, 293, 247, 67, 113];

/** Box whose nearest edge or corner lies at a distance from a spot in a direction. */
function boxTowards(wanted: Wanted, away: number, directionDeg: number): Box {
  const angle = (directionDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const x = wanted.at.x + cos * away + (Math.abs(cos) < 0.2 ? 0 : (Math.sign(cos) * wanted.width) / 2);
  const y = wanted.at.y + sin * away + (Math.abs(sin) < 0.2 ? 0 : (Math.sign(sin) * wanted.height) / 2);
  return {
    left: x - wanted.width / 2,
    right: x + wanted.width / 2,
    top: y - wanted.height / 2,
    bottom: y + wanted.height / 2,
  };
}

/**
 * Keeps labels apart. What is taken has a weight: a label lands where it covers least of it, nearer places first.
 * Greedy, so the order of calls matters; the same calls give the same places.
 */
export class LabelPlaces {
  readonly #cells = new Map<string, Taken[]>();
  readonly #area: Box;

  constructor(area: Box) {
    this.#area = area;
  }

  /** Marks a box as taken. Weight 1 for lettering and symbols, less for lines that lettering may cross at need. */
  take(box: Box, weight = 1): void {
    const taken = { box, weight };
    for (const key of this.#keys(box)) {
      const list = this.#cells.get(key);
      if (list === undefined) this.#cells.set(key, [taken]);
      else list.push(taken);
    }
  }

  /** Marks a thin line as taken. */
  takeLine(from: Spot, to: Spot, width: number, weight: number): void {
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 6));
    for (let i = 0; i <= steps; i++) {
      const x = from.x + ((to.x - from.x) * i) / steps;
      const y = from.y + ((to.y - from.y) * i) / steps;
      const half = width / 2;
      this.take({ left: x - half - 2, right: x + half + 2, top: y - half - 2, bottom: y + half + 2 }, weight);
    }
  }

  /** What a box would cover, weighted; outside the drawing counts heavily. */
  covered(box: Box): number {
    const seen = new Set<Taken>();
    const whole = (box.right - box.left) * (box.bottom - box.top);
    let sum = 3 * (whole - overlap(box, this.#area));
    for (const key of this.#keys(box)) {
      for (const taken of this.#cells.get(key) ?? []) {
        if (seen.has(taken)) continue;
        seen.add(taken);
        sum += overlap(box, taken.box) * taken.weight;
      }
    }
    return sum;
  }

  /** The best place near the spot. It is not yet taken: call `take` with its box to keep it. */
  find(wanted: Wanted): Placed {
    const step = Math.max(4, wanted.height * 0.7);
    let best: Placed | undefined;
    let bestCost = Number.POSITIVE_INFINITY;
    for (let away = wanted.gap; away <= wanted.gap + wanted.reach; away += step) {
      for (const [order, direction] of DIRECTIONS.entries()) {
        const box = boxTowards(wanted, away, direction);
        const covered = this.covered(box);
        const cost = CLEAR * covered + order * 0.4 + (away - wanted.gap) * 1.5;
        if (cost < bestCost) {
          best = { box, away, covered };
          bestCost = cost;
        }
      }
      if (best !== undefined && best.covered < 1) break;
    }
    return best as Placed;
  }

  *#keys(box: Box): Generator<string> {
    for (let x = Math.floor(box.left / CELL); x <= Math.floor(box.right / CELL); x++) {
      for (let y = Math.floor(box.top / CELL); y <= Math.floor(box.bottom / CELL); y++) yield `${x},${y}`;
    }
  }
}
