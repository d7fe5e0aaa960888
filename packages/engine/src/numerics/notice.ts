/** Something a reader of a figure must know: an extrapolation, an assumption, a value that could not be given. */
export interface Notice {
  /** Short stable name, kebab-case, e.g. `outside-range`. */
  readonly code: string;
  /** One plain sentence in American English, with the figures that matter. */
  readonly message: string;
}

/** A figure together with what must be known about it. */
export interface Figure<T = number> {
  readonly value: T;
  readonly notices: readonly Notice[];
}
