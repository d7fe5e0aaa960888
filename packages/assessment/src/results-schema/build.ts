/** A piece of JSON Schema, draft 2020-12. */
export type Schema = Readonly<Record<string, unknown>>;

type OptionalKeys<T> = { [K in keyof T]-?: Record<never, never> extends Pick<T, K> ? K : never }[keyof T];
type RequiredKeys<T> = Exclude<keyof T, OptionalKeys<T>>;

export const text: Schema = { type: 'string' };
export const number: Schema = { type: 'number' };
export const yesNo: Schema = { type: 'boolean' };
/** A share of a whole, such as a relative humidity. */
export const fraction: Schema = { type: 'number', minimum: 0, maximum: 1 };
/** A quantity that is never below zero. */
export const amount: Schema = { type: 'number', minimum: 0 };
/** A whole number that is never below zero. */
export const count: Schema = { type: 'integer', minimum: 0 };
/** Money, and other whole numbers that may be below zero. */
export const whole: Schema = { type: 'integer' };

export function oneOf(...values: readonly string[]): Schema {
  return { enum: values };
}

export function listOf(items: Schema): Schema {
  return { type: 'array', items };
}

/** Named numbers, of which the names are not fixed. */
export function namedNumbers(): Schema {
  return { type: 'object', additionalProperties: number };
}

/**
 * An object with no other properties than those of the type: the compiler asks for each of them, in the right place.
 * @param required properties that are always there
 * @param optional those that may be absent
 */
export function object<T>(
  required: Readonly<Record<RequiredKeys<T>, Schema>>,
  optional?: Readonly<Record<OptionalKeys<T>, Schema>>,
): Schema {
  return {
    type: 'object',
    additionalProperties: false,
    properties: { ...required, ...optional },
    required: Object.keys(required),
  };
}

/** A definition by its name. */
export function ref(name: string): Schema {
  return { $ref: `#/$defs/${name}` };
}
