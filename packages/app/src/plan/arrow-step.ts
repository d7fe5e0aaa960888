import type { Point } from '@undercroft/record';

/** So far an arrow key moves something [m]: 1 in, with Shift 1 ft, with Alt 1/16 in. */
const STEPS = { plain: 0.0254, shift: 0.3048, alt: 0.0015875 } as const;

const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { xM: -1, yM: 0 },
  ArrowRight: { xM: 1, yM: 0 },
  ArrowUp: { xM: 0, yM: 1 },
  ArrowDown: { xM: 0, yM: -1 },
};

interface Keys {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** The direction of an arrow key on the plan; null of any other key. */
export function arrowWay({ key }: Pick<Keys, 'key'>): Point | null {
  return WAYS[key] ?? null;
}

/** By how much a key moves something on the plan [m]; null of a key that is no arrow. */
export function arrowStep({ key, shiftKey, altKey }: Keys): Point | null {
  const way = arrowWay({ key });
  if (way === null) return null;
  const step = altKey ? STEPS.alt : shiftKey ? STEPS.shift : STEPS.plain;
  return { xM: way.xM * step, yM: way.yM * step };
}
