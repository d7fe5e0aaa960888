import { airSigns } from './catalogue/air-signs.ts';
import { machineSigns } from './catalogue/machine-signs.ts';
import { waterSigns } from './catalogue/water-signs.ts';
import { woodSigns } from './catalogue/wood-signs.ts';
import type { Sign } from './sign.ts';

/** Every sign that tells explanations apart. */
export const causeSigns: readonly Sign[] = [...airSigns, ...waterSigns, ...woodSigns, ...machineSigns];

const byKey = new Map(causeSigns.map((sign) => [sign.key, sign]));

/** The sign of a key, or undefined. */
export function findSign(key: string): Sign | undefined {
  return byKey.get(key);
}
