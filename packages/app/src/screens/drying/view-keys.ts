/** What the middle of this question shows; the address names it. */
export const VIEW_KEYS = ['year', 'air', 'machine', 'ranking'] as const;
export type ViewKey = (typeof VIEW_KEYS)[number];

/** The view that an address asks for; the year where it names none. */
export function viewOf(place: string | undefined): ViewKey {
  return VIEW_KEYS.find((key) => key === place) ?? 'year';
}
