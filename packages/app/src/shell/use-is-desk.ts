import { useSyncExternalStore } from 'react';

const DESK = '(min-width: 64rem)';

/** True where three parts have room side by side. */
export function useIsDesk(): boolean {
  return useSyncExternalStore(
    (changed) => {
      const query = matchMedia(DESK);
      query.addEventListener('change', changed);
      return () => query.removeEventListener('change', changed);
    },
    () => matchMedia(DESK).matches,
  );
}
