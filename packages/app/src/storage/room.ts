/** How much room the browser gives the app and whether it may take it back. */
export interface Room {
  readonly usedBytes: number;
  readonly quotaBytes: number;
  /** True when the browser promised not to evict the data; undefined where it cannot be asked. */
  readonly persistent: boolean | undefined;
  /** Too little left for a visit's photos. */
  readonly low: boolean;
}

/** About 150 photos with their originals (common practice, no source). */
const VISIT_BYTES = 700_000_000;

/** Asks the browser. Undefined where it tells nothing. */
export async function roomLeft(): Promise<Room | undefined> {
  const { storage } = navigator;
  if (storage?.estimate === undefined) return undefined;
  const { usage = 0, quota = 0 } = await storage.estimate();
  const persistent = await storage.persisted?.();
  return { usedBytes: usage, quotaBytes: quota, persistent, low: quota > 0 && quota - usage < VISIT_BYTES };
}

/** Asks for storage that is not evicted. Call it from a tap; browsers decide by themselves or ask the person. */
export async function askForPersistence(): Promise<boolean> {
  return (await navigator.storage?.persist?.()) ?? false;
}
