import type { criteria } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { EvidenceUsed } from '../evidence-used.ts';

/** A finding of the surveyor as the record has it. */
export interface DefectClaim {
  readonly id: string;
  /** Its number in the record, from 1, by which plan and report name it. */
  readonly number: number;
  readonly title: string;
  readonly at?: Point;
  readonly words?: string;
  readonly photoIds: readonly string[];
  readonly who: string;
  readonly when: string;
  readonly note?: string;
  /** The surveyor's own grade. */
  readonly severity?: number;
  readonly measured?: { readonly quantity: string; readonly value: number | boolean };
}

/** Where a defect is: a finding, a sample, or an item of the plan. */
export interface DefectPlace {
  /** Id of the finding, of the sample or of the item. */
  readonly id: string;
  readonly from: 'finding' | 'sample' | 'item';
  readonly words: string;
  readonly at?: Point;
}

/** What changes when only this defect is mended. */
export interface MendedEffect {
  /**
   * Water that its own paths bring in the design month with the air as found, less what they bring once it is mended
   * [kg/day]. Below zero where the fault dries the space in that month, such as an open vent in air drier than the space.
   */
  readonly waterKgPerDay: number;
  /** The same over all water that enters in that month; absent where none does. */
  readonly waterShare?: number;
  /** Change of the steady relative humidity of that month; below zero is drier. */
  readonly relativeHumidity: number;
  /** Keys of defects that the same work mends, so that their water is the same water. */
  readonly sharesWith: readonly string[];
  /** Change over the year by the hour; absent where it was not run. */
  readonly year?: MendedYear;
}

/** The year with only this defect mended, less the year as found. */
export interface MendedYear {
  readonly daysAbove80: number;
  readonly peakMoldIndex: number;
  /** Share of dry mass. */
  readonly peakWoodMoisture: number;
}

/** One defect as it stands in this space. */
export interface DefectResult {
  /** Key of the catalogue; `other` for a finding that it does not have. */
  readonly key: string;
  readonly subject: criteria.DefectSubject | 'other';
  readonly name: string;
  readonly seen: string;
  /** The measurement that proves it. */
  readonly proof: string;
  readonly remedy: string;
  readonly state: criteria.DefectState;
  readonly certainty: criteria.DefectCertainty;
  /** What says so: a finding, what was measured, both, or neither yet. */
  readonly source: 'finding' | 'measured' | 'both' | 'none';
  /** Why it is in that state. */
  readonly because: readonly string[];
  /** 0 to 4; raised only by what was measured. */
  readonly severity: number;
  readonly severityBecause: readonly string[];
  readonly causes: readonly string[];
  readonly consequences: readonly string[];
  /** Keys of other defects of this space that bring it about, and that it brings about. */
  readonly causedBy: readonly string[];
  readonly leadsTo: readonly string[];
  /** Ids of the criteria that it breaks, of those that speak against it, and of those that nobody has shown yet. */
  readonly broken: readonly string[];
  readonly met: readonly string[];
  readonly notShown: readonly string[];
  readonly evidence: readonly EvidenceUsed[];
  /** What was measured and speaks against it; shown beside it, not dropped. */
  readonly against: readonly EvidenceUsed[];
  /** Questions about the job whose answers show it or speak against it. */
  readonly facts: readonly string[];
  readonly findings: readonly DefectClaim[];
  readonly places: readonly DefectPlace[];
  /** Ids of the items of the plan that have it. */
  readonly items: readonly string[];
  /** Share of the plan's length, area or count that has it, where that is known. */
  readonly share?: number;
  readonly bill: criteria.BillQuantity;
  /** Step of a repair plan; steps are taken in the catalogue's order. */
  readonly step: criteria.RepairStep;
  /** Id of the standing caution beside it. */
  readonly caution?: string;
  readonly licensedTrade?: string;
  readonly mended?: MendedEffect;
  /** Why nothing is said of what mending it does. */
  readonly mendedNot?: string;
}

/** A defect that nobody can rule out yet. */
export interface DefectNotShown {
  readonly key: string;
  readonly subject: criteria.DefectSubject;
  readonly name: string;
  /** The measurement that would tell. */
  readonly proof: string;
  readonly severity: number;
}

/** How many defects of the catalogue and of the surveyor stand how. */
export interface DefectsCount {
  readonly shown: number;
  readonly claimed: number;
  readonly suspected: number;
  readonly contradicted: number;
  readonly absent: number;
  readonly notShown: number;
}
