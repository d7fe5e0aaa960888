import { airLinks } from './catalogue/air-links.ts';
import { houseLinks } from './catalogue/house-links.ts';
import { waterLinks } from './catalogue/water-links.ts';
import { woodLinks } from './catalogue/wood-links.ts';
import type { CauseLink } from './link.ts';

/** Every link of the chain. Together they have no circle. */
export const causeLinks: readonly CauseLink[] = [...waterLinks, ...airLinks, ...woodLinks, ...houseLinks];
