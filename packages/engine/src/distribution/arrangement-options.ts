import type { Arrangement, FieldFan, FieldMachine } from './arrangement.ts';
import type { PlacingSite } from './placing-rules.ts';

/** What each change costs, whole cents. */
export interface ArrangementPrices {
  readonly moveMachine: number;
  readonly turnMachine: number;
  readonly ductPerM: number;
  readonly ductFixed: number;
  readonly fan: number;
  readonly remoteSensor: number;
  readonly pump: number;
}

/** Prices that are assumed where nobody gave any. Common practice, no source. */
export const USUAL_PRICES: ArrangementPrices = {
  moveMachine: 25_000,
  turnMachine: 5_000,
  ductPerM: 4_000,
  ductFixed: 15_000,
  fan: 30_000,
  remoteSensor: 15_000,
  pump: 15_000,
};

/** What is looked for. */
export interface ArrangementOptions {
  /** Background mixing, m²/s: the middle of the band. */
  readonly mixingM2PerS: number;
  readonly site: PlacingSite;
  /** The machine that is there or will be; its place counts only in `present`. */
  readonly machine: FieldMachine;
  /** The arrangement as found; null when nothing stands there yet. */
  readonly present: Arrangement | null;
  /** A fan that may be added, up to three of them; none by default. */
  readonly fan?: Omit<FieldFan, 'at' | 'bearingDeg'>;
  readonly mostFans?: 1 | 2 | 3;
  /** Set-points to try, fractions, besides that of the machine. */
  readonly setPoints?: readonly number[];
  /** Humidity to hold at a remote humidistat in the dampest place; not tried when absent. */
  readonly remoteSetPoint?: number;
  /** Distance between places [m]; 1 by default. */
  readonly spacingM?: number;
  /** Side of the cells that candidates are screened on [m]; 0.5 by default. */
  readonly screeningCellM?: number;
  /** Share of its air flow that the machine keeps with a duct at its outlet; 0.8 by default. */
  readonly ductedFlowShare?: number;
  /** A floor whose dampest twentieth is no damper than this is dry enough, fraction; see `arrangementOrder`. */
  readonly dryEnough?: number;
  /** How many of the best are worked out again on the model's own cells; 16 by default. */
  readonly refined?: number;
  readonly prices?: ArrangementPrices;
}
