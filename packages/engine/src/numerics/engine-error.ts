/** Codes of everything the engine throws. A list, so that callers can tell faults apart without reading text. */
export type EngineErrorCode = 'not-finite' | 'out-of-range' | 'bad-geometry' | 'bad-input';

/** Thrown when an input makes the calculation meaningless. Doubtful but usable inputs give a Notice instead. */
export class EngineError extends Error {
  readonly code: EngineErrorCode;

  constructor(code: EngineErrorCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'EngineError';
    this.code = code;
  }
}
