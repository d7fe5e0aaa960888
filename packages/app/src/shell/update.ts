import { registerSW } from 'virtual:pwa-register';
import { useSyncExternalStore } from 'react';

let ready = false;
let activate: (() => void) | undefined;
const listeners = new Set<() => void>();

/** Keeps the app on this device for work without a network, and watches for new versions without using one. */
export function startOffline(): void {
  const update = registerSW({
    onNeedRefresh() {
      ready = true;
      for (const changed of listeners) changed();
    },
  });
  activate = () => void update(true);
}

/** True when a new version waits. */
export function useUpdateReady(): boolean {
  return useSyncExternalStore(
    (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    () => ready,
  );
}

/** Takes the new version and loads the page anew. */
export function activateUpdate(): void {
  activate?.();
}
