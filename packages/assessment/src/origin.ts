/** Where a value came from. `assumption` marks what nobody measured; it is shown as such wherever it appears. */
export interface Origin {
  readonly kind:
    | 'reading'
    | 'observation'
    | 'finding'
    | 'plan'
    | 'house'
    | 'climate'
    | 'photo'
    | 'assumption';
  /** Id of the item in the record, where there is one. */
  readonly id?: string;
  readonly who?: string;
  readonly when?: string;
  /** One short phrase, e.g. "lap by tape at 5 points", "default for hollow block". */
  readonly note?: string;
}
