/** Lengths that were typed last, by what they measure: many things in a row have the same size. */
const typedLast = new Map<string, string>();

export const lastLength = (what: string): string | undefined => typedLast.get(what);

export function rememberLength(what: string, typed: string): void {
  typedLast.set(what, typed);
}
