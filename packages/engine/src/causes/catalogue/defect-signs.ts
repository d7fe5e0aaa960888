import type { CauseKey } from '../node.ts';

/** What a defect of the catalogue says about an explanation. */
export interface DefectSign {
  /** Key of the defect. */
  readonly defect: string;
  readonly explains: CauseKey;
  /** Effects that it counts for; absent for all. */
  readonly of?: readonly CauseKey[];
  /** Group of the sign that looks at the same thing, so that a defect and the reading behind it count once. */
  readonly group: string;
}

const HUMID = ['humid-air', 'damp-far-end'] as const;
const WATER = ['free-water'] as const;

function linerSigns(...defects: readonly string[]): DefectSign[] {
  return defects.map((defect) => ({
    defect,
    explains: 'open-liner',
    // Faults all over the liner do not tell its far end from its near one.
    of: ['humid-air', 'soil-gas'],
    group: 'liner-work',
  }));
}

/**
 * Defects that speak for an explanation. That they do is the trade's experience (no published source); how much they
 * count is set by `DEFECT_TIMES`.
 */
export const defectSigns: readonly DefectSign[] = [
  { defect: 'exposed-earth', explains: 'bare-ground', group: 'ground-cover' },
  { defect: 'exposed-earth', explains: 'open-liner', group: 'ground-cover' },
  ...linerSigns(
    'seams-under-lapped',
    'seams-not-sealed',
    'glued-edge-letting-go',
    'door-frame-edge-open',
    'bare-strip-under-ducts',
    'piers-not-wrapped',
    'liner-torn-or-thin',
    'penetrations-open',
  ),
  { defect: 'outside-water-let-in', explains: 'surface-water', group: 'outside' },
  { defect: 'access-sill-too-low', explains: 'surface-water', group: 'outside-sill' },
  { defect: 'drain-on-grade', explains: 'drain-fails', of: WATER, group: 'drain-level' },
  { defect: 'drain-falls-wrong', explains: 'drain-fails', of: WATER, group: 'drain-fall' },
  { defect: 'drain-disconnected', explains: 'drain-fails', of: WATER, group: 'drain-joints' },
  { defect: 'drain-silted', explains: 'drain-fails', of: WATER, group: 'drain-silt' },
  { defect: 'basin-rim-proud', explains: 'drain-fails', of: WATER, group: 'basin-rim' },
  { defect: 'pump-or-discharge-faulty', explains: 'drain-fails', of: WATER, group: 'pump' },
  {
    defect: 'water-let-in-from-plumbing-or-dryer',
    explains: 'dryer-exhaust',
    of: ['humid-air'],
    group: 'exhaust',
  },
  { defect: 'condensate-pump-loose', explains: 'condensate', of: WATER, group: 'condensate' },
  { defect: 'condensate-line-fouled', explains: 'condensate', of: WATER, group: 'condensate' },
  { defect: 'dehumidifier-facing-wall', explains: 'machine-pocket', of: HUMID, group: 'outlet' },
  { defect: 'dehumidifier-too-small', explains: 'machine-small', of: HUMID, group: 'machine-effect' },
  { defect: 'humidistat-off', explains: 'machine-small', of: HUMID, group: 'machine-effect' },
  { defect: 'access-door-leaks', explains: 'outdoor-air', of: HUMID, group: 'door' },
  { defect: 'vent-loose-board', explains: 'outdoor-air', of: HUMID, group: 'vents' },
  { defect: 'half-vented', explains: 'outdoor-air', of: HUMID, group: 'vents' },
  { defect: 'open-to-neighbor-cell', explains: 'outdoor-air', of: HUMID, group: 'neighbor' },
  { defect: 'wet-floor-batts', explains: 'wet-batts', group: 'batts' },
  { defect: 'wood-near-earth', explains: 'wood-touches', group: 'clearance' },
  { defect: 'debris-left', explains: 'organics', of: ['smell'], group: 'debris' },
  { defect: 'smell-from-organics', explains: 'organics', of: ['smell'], group: 'lifted-sheet' },
  { defect: 'rodents', explains: 'organics', of: ['smell'], group: 'droppings' },
  { defect: 'old-liner-below', explains: 'old-liner', of: ['smell'], group: 'old-liner' },
  { defect: 'smell-from-liner', explains: 'old-liner', of: ['smell'], group: 'lifted-sheet' },
  { defect: 'rim-and-floor-leaks', explains: 'floor-leaks', of: ['air-upstairs'], group: 'floor-holes' },
  { defect: 'sump-lid-loose', explains: 'soil-way-in', of: ['soil-gas'], group: 'pit-lid' },
  { defect: 'sump-lid-holes-open', explains: 'soil-way-in', of: ['soil-gas'], group: 'pit-lid' },
  { defect: 'penetrations-open', explains: 'soil-way-in', of: ['soil-gas'], group: 'penetrations' },
  { defect: 'soil-gas-exhaust-missing', explains: 'soil-way-in', of: ['soil-gas'], group: 'suction' },
];

/**
 * How many times likelier a defect is where the explanation holds. Shown: measured, or claimed with proof. Claimed: a
 * surveyor says so without proof. Contradicted: claimed, but what was measured says otherwise, which speaks against.
 * Set by judgment.
 */
export const DEFECT_TIMES = { shown: 4, claimed: 2, contradicted: 1 / 2 } as const;

/** Conditions and consequences that a defect is a sighting of. */
export const DEFECT_SIGHTINGS: Readonly<Record<string, CauseKey>> = {
  'standing-water': 'free-water',
  'water-bed': 'free-water',
  'water-on-liner': 'free-water',
  'damp-walls': 'damp-masonry',
  'sweating-ducts': 'sweating',
  'dead-zones': 'damp-far-end',
  'wet-wood': 'wet-wood',
  'smell-from-organics': 'smell',
  'smell-from-liner': 'smell',
  'visible-mold': 'mold',
  'water-conducting-rot': 'decay',
  'termite-signs': 'insects',
  'supports-unsound': 'bearing-fails',
  'wet-floor-batts': 'batts-fall',
};
