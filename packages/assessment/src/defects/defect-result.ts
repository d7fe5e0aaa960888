import type { criteria } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import type { EvidenceUsed } from '../assessment.ts';

/** A finding of the surveyor as the record has it. */
export interface DefectClaim {
  readonly id: string;
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

/** What changes when only this defect is mended. */
export interface MendedEffect {
  /** Water of the design month that goes with it [kg/day]. */
  readonly waterKgPerDay: number;
  /** The same as a share of all water that enters in that month. */
  readonly waterShare: number;
  /** Change of the relative humidity of that month; negative is drier. */
  readonly relativeHumidity: number;
  /** Change over the year by the hour; absent where it was not run. */
  readonly year?: {
    readonly daysAbove80: number;
    readonly peakMoldIndex: number;
    readonly peakWoodMoisture: number;
  };
}

/** One defect as it stands in this space. */
export interface DefectResult {
  readonly key: string;
  readonly subject: criteria.DefectSubject | 'other';
  readonly name: string;
  readonly seen: string;
  readonly proof: string;
  readonly remedy: string;
  readonly state: 'shown' | 'claimed' | 'contradicted';
  /** 0 to 4; raised only by what was measured. */
  readonly severity: number;
  readonly severityBecause: readonly string[];
  readonly causes: readonly string[];
  readonly consequences: readonly string[];
  /** Keys of defects of this space that bring it about, and that it brings about. */
  readonly causedBy: readonly string[];
  readonly leadsTo: readonly string[];
  /** Ids of the criteria that it breaks, and of those that nobody has shown yet. */
  readonly broken: readonly string[];
  readonly notShown: readonly string[];
  readonly evidence: readonly EvidenceUsed[];
  /** Ids of the samples and of the findings that it rests on. */
  readonly samples: readonly string[];
  readonly claims: readonly string[];
  readonly findings: readonly DefectClaim[];
  /** Ids of the items of the plan that fail. */
  readonly items: readonly string[];
  readonly bill: criteria.BillQuantity;
  readonly step: criteria.RepairStep;
  readonly caution?: string;
  readonly licensedTrade?: string;
  readonly mended?: MendedEffect;
}

/** How many defects of the catalogue and of the surveyor stand how. */
export interface DefectsCount {
  readonly shown: number;
  readonly claimed: number;
  readonly contradicted: number;
  readonly absent: number;
  readonly notShown: number;
}
