import type { Overlay } from './overlay.ts';
import { illinois, massachusetts } from './overlays/east-and-midwest-radon.ts';
import { indiana } from './overlays/indiana.ts';
import { northCarolina } from './overlays/north-carolina.ts';
import { oregon } from './overlays/oregon.ts';
import { southCarolina } from './overlays/south-carolina.ts';
import { washington } from './overlays/washington.ts';

/**
 * Built-in local amendments, those that were met while the criteria were checked; other places have their own. Each is
 * an excerpt, not the whole law of the place.
 */
export const overlays: readonly Overlay[] = [
  washington,
  oregon,
  northCarolina,
  southCarolina,
  indiana,
  massachusetts,
  illinois,
];
