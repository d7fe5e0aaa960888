import { criteria } from '@undercroft/engine';
import type { Place } from '@undercroft/record';

/** Parts of the space by which defects are looked for, in the order of a walk through it. */
export const PARTS = [
  'outside',
  'access',
  'vents',
  'walls',
  'floor',
  'piers',
  'wood',
  'ducts',
  'sump',
  'machines',
  'air',
  'papers',
] as const;
export type Part = (typeof PARTS)[number];

const OF_PLACES: Readonly<Record<criteria.QuantityPlace, Part>> = {
  space: 'air',
  floor: 'floor',
  ground: 'floor',
  seam: 'floor',
  liner: 'floor',
  'soil-gas': 'floor',
  wall: 'walls',
  'liner-edge': 'walls',
  pier: 'piers',
  post: 'piers',
  vent: 'vents',
  access: 'access',
  passage: 'access',
  joist: 'wood',
  girder: 'wood',
  sill: 'wood',
  wood: 'wood',
  duct: 'ducts',
  equipment: 'machines',
  dehumidifier: 'machines',
  condensate: 'machines',
  wiring: 'machines',
  sump: 'sump',
  drain: 'sump',
  discharge: 'sump',
  outside: 'outside',
  house: 'outside',
  papers: 'papers',
};

const OF_SUBJECTS: Readonly<Record<criteria.DefectSubject, Part>> = {
  'access-and-vents': 'access',
  liner: 'floor',
  'ground-and-water': 'floor',
  'sump-and-drain': 'sump',
  'dry-air': 'air',
  'wood-and-mold': 'wood',
  insulation: 'wood',
  'structure-and-safety': 'piers',
  papers: 'papers',
};

/** What a remedy is counted by tells where the defect is. */
const OF_BILLS: Readonly<Record<string, Part>> = {
  doors: 'access',
  doorFrameM: 'access',
  vents: 'vents',
  piers: 'piers',
  sumps: 'sump',
  drainM: 'sump',
  dehumidifiers: 'machines',
  ductM: 'ducts',
  girderM: 'wood',
  seamM: 'floor',
  bareEarthM2: 'floor',
};

const known = new Map<string, Part>();

function find(defect: criteria.Defect): Part {
  const { quantity, bill, subject } = defect;
  if (quantity !== undefined) return OF_PLACES[criteria.quantities[quantity].place];
  if ('of' in bill && OF_BILLS[bill.of] !== undefined) return OF_BILLS[bill.of];
  const first = criteria.criteria.find(({ id }) => defect.criteria.some((one) => id.startsWith(one)));
  return first === undefined ? OF_SUBJECTS[subject] : OF_PLACES[criteria.quantities[first.quantity].place];
}

/** The part of the space where a defect is found. */
export function partOf(defect: criteria.Defect): Part {
  const part = known.get(defect.key) ?? find(defect);
  known.set(defect.key, part);
  return part;
}

/** Kinds of things on the plan that a defect of a part can belong to. */
export const KINDS_OF_PARTS: Readonly<Partial<Record<Part, readonly NonNullable<Place['on']>['kind'][]>>> = {
  access: ['door'],
  vents: ['vent'],
  walls: ['wall'],
  floor: ['zone'],
  piers: ['pier'],
  wood: ['girder'],
  ducts: ['duct'],
  sump: ['equipment', 'drain'],
  machines: ['equipment'],
};
