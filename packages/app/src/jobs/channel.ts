import type { Entry } from '@undercroft/record';

/** What one tab tells the others: entries that are on the disk, or that the list of jobs has changed. */
export type Message =
  | { readonly about: 'entries'; readonly jobId: string; readonly entries: readonly Entry[] }
  | { readonly about: 'list' };

/** Talks to the other tabs of this device. */
export interface Channel {
  tell(message: Message): void;
  /** Gives the function that stops listening. */
  listen(hear: (message: Message) => void): () => void;
  close(): void;
}

/** Tabs of one browser; one that stands alone where the browser has no such channel. */
export function tabChannel(name: string): Channel {
  const listeners = new Set<(message: Message) => void>();
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
  if (channel !== undefined) {
    channel.onmessage = (event: MessageEvent<Message>) => {
      for (const hear of listeners) hear(event.data);
    };
  }
  return {
    tell: (message) => channel?.postMessage(message),
    listen(hear) {
      listeners.add(hear);
      return () => listeners.delete(hear);
    },
    close: () => channel?.close(),
  };
}
