import { EngineError } from './engine-error.ts';

/**
 * Returns `value` when it is a finite number within the closed range, and throws otherwise.
 * @param name what the value is, with its unit, as it should read in the message
 * @throws EngineError `not-finite` for NaN and infinities, `out-of-range` outside [min, max]
 */
export function requireRange(name: string, value: number, min: number, max: number): number {
  if (!Number.isFinite(value)) {
    throw new EngineError('not-finite', `${name} must be a number; got ${value}`);
  }
  if (value < min || value > max) {
    throw new EngineError('out-of-range', `${name} must be from ${min} to ${max}; got ${value}`);
  }
  return value;
}
