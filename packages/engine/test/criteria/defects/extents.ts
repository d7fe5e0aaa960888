import type { DefectEvidence } from '../../../src/criteria/index.ts';

/** Sizes of a made space of 120 m². */
export const EXTENTS: DefectEvidence['extents'] = {
  floorM2: 120,
  perimeterM: 44,
  bareEarthM2: 6,
  seamM: 60,
  drainM: 30,
  ductM: 12,
  doorFrameM: 3,
  girderM: 24,
  doors: 1,
  vents: 8,
  piers: 12,
  sumps: 1,
  dehumidifiers: 2,
};
