import { number, yesNo } from '../quantity.ts';

/** Ground inside, water outside. */
export const groundAndSiteQuantities = {
  organicDebrisPresent: yesNo(
    'Vegetation, roots, form boards or building waste left',
    'ground',
    'Look over the whole floor, far corners and pier bases included.',
  ),
  insideGradeBelowOutsideM: number(
    'Inside floor below outside grade',
    'm',
    'ground',
    [-10, 10],
    'Level from the ground outside through the access to the floor inside; negative where the floor stands higher.',
  ),
  belowLowestGradeM: number(
    'Inside floor below the lowest outside grade',
    'm',
    'ground',
    [-10, 10],
    'Level from the lowest ground along the outside walls to the floor inside.',
  ),
  crawlWallHeightM: number(
    'Height of the crawl wall',
    'm',
    'wall',
    [0, 10],
    'Tape from the floor inside to the top of the foundation wall.',
  ),
  floodDrainTimeH: number(
    'Time for floodwater to leave the space',
    'h',
    'ground',
    [0, 10_000],
    'Note when the flood outside fell and when the floor inside was free of water.',
  ),
  standingWaterDepthM: number(
    'Depth of standing water',
    'm',
    'floor',
    [0, 5],
    'Stand a rule in the deepest water found on the floor or liner; 0 where there is none.',
  ),
  groundPrepared: yesNo(
    'Ground cleared and smoothed under the liner',
    'ground',
    'Press over the liner, or look before it is laid: no sharp stones, nails, roots or rubble.',
  ),
  outsideGradeFallRatio: number(
    'Fall of the ground away from the wall',
    'fraction',
    'outside',
    [-1, 1],
    'Level from the wall to a point 10 ft (3.05 m) out and divide the drop by the distance; negative toward the house.',
  ),
  pavingFallRatio: number(
    'Fall of paving away from the wall',
    'fraction',
    'outside',
    [-1, 1],
    'Level over the paving from the wall to 10 ft (3.05 m) out, or to its edge; negative toward the house.',
  ),
  roofWaterDischargeM: number(
    'Roof water let go from the wall',
    'm',
    'outside',
    [0, 200],
    'Tape from the foundation wall to where the downspout or its extension ends.',
  ),
  exhaustEndsInCrawl: yesNo(
    'A bath, kitchen or dryer duct ends in the crawl space',
    'duct',
    'Trace every exhaust duct that enters the space to its end, with the fan or dryer running.',
  ),
  ductToEarthM: number(
    'Gap between duct and earth',
    'm',
    'duct',
    [0, 5],
    'Tape from the ground to the underside of the lowest duct.',
  ),
} as const;
