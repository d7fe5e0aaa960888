import type { LicensedTrade } from '../criterion.ts';
import type { QuantityKey } from '../quantities.ts';
import type { BillRule } from './bill-rule.ts';

/** A text in the two languages that crews read. Spanish says usted. */
export interface InBoth {
  readonly en: string;
  readonly es: string;
}

/** What a defect is about; one data file each. */
export type DefectSubject =
  | 'access-and-vents'
  | 'liner'
  | 'ground-and-water'
  | 'sump-and-drain'
  | 'dry-air'
  | 'wood-and-mold'
  | 'insulation'
  | 'structure-and-safety'
  | 'papers';

/**
 * 4: life or structure, act now. 3: the system is defeated and damage under way. 2: weakened, damage likely within
 * seasons. 1: minor, or for the record. 0: no defect, worth knowing. The scale and the grades are common practice, no
 * source.
 */
export type Severity = 0 | 1 | 2 | 3 | 4;

/** Steps of a repair in the order in which a repair plan takes them (common practice, no source). */
export const REPAIR_ORDER = [
  'safety',
  'outside-water',
  'drain-and-sump',
  'clear-out',
  'wood',
  'liner',
  'close-air',
  'dry-air',
  'prove',
] as const;
/** A step of a repair. */
export type RepairStep = (typeof REPAIR_ORDER)[number];

/** What raises the severity of a defect by one step, where it was measured. */
export type Aggravation = 'wet-wood' | 'standing-water' | 'widespread';

/** A fault that a surveyor can find. Names, grades and thresholds without a criterion are common practice, no source. */
export interface Defect {
  /** Stable; the record's findings name it. */
  readonly key: string;
  readonly subject: DefectSubject;
  readonly name: InBoth;
  /** What is seen, smelled or heard. */
  readonly seen: InBoth;
  /** The measurement that proves it. */
  readonly proof: InBoth;
  readonly remedy: InBoth;
  /** What a surveyor measures of it, where one number says how far it goes. */
  readonly quantity?: QuantityKey;
  /** Ids of the criteria that it breaks; a number without a letter stands for all its parts. */
  readonly criteria: readonly string[];
  /** Probable causes, in words. */
  readonly causes: readonly string[];
  /** Keys of defects that bring it about. */
  readonly causedBy: readonly string[];
  /** What follows, in the order in which it follows. */
  readonly consequences: readonly string[];
  /** Keys of defects that it brings about. */
  readonly leadsTo: readonly string[];
  readonly severity: Severity;
  /** Why this grade. */
  readonly gradedBecause: string;
  readonly aggravatedBy: readonly Aggravation[];
  readonly bill: BillRule;
  readonly step: RepairStep;
  /** Id of the standing caution that goes with checking or mending it. */
  readonly caution?: string;
  readonly licensedTrade?: LicensedTrade;
}

/** A defect as a data file writes it: what is usual may be left out. */
export type DefectRow = Omit<Defect, 'subject' | 'causedBy' | 'leadsTo' | 'aggravatedBy'> &
  Partial<Pick<Defect, 'causedBy' | 'leadsTo' | 'aggravatedBy'>>;

/** Completes the rows of one subject. */
export function defectsOf(
  subject: DefectSubject,
  aggravatedBy: readonly Aggravation[],
  rows: readonly DefectRow[],
): readonly Defect[] {
  return rows.map((row) => ({ causedBy: [], leadsTo: [], aggravatedBy, ...row, subject }));
}
