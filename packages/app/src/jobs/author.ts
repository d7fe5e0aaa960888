import type { Author } from '@undercroft/record';
import type { Storage } from '../storage/storage.ts';

const LETTERS = '0123456789abcdefghijklmnopqrstuvwxyz';

/** Random lower-case letters and digits. */
export function randomName(length: number): string {
  return [...crypto.getRandomValues(new Uint8Array(length))].map((byte) => LETTERS[byte % 36]).join('');
}

/** A moment as ISO 8601 with the device's offset. */
export function deviceTime(nowMs: number): string {
  const date = new Date(nowMs);
  const offset = -date.getTimezoneOffset();
  const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
  const local = new Date(nowMs + offset * 60_000).toISOString().slice(0, 19);
  return `${local}${offset < 0 ? '-' : '+'}${two(Math.abs(offset) / 60)}:${two(Math.abs(offset) % 60)}`;
}

/**
 * The name under which this tab writes: ten letters of the device, the same forever, and four of the tab. Two tabs of one
 * device write side by side like two devices, so that their stamps never meet.
 */
export async function writerName(storage: Storage): Promise<string> {
  let device = await storage.fact('device');
  if (device === undefined) {
    device = randomName(10);
    await storage.putFact('device', device);
  }
  return device + randomName(4);
}

/** Who writes now. */
export type Authors = () => Author;

export function authors(writer: string, who: () => string): Authors {
  return () => {
    const nowMs = Date.now();
    return { who: who(), device: writer, nowMs, deviceTime: deviceTime(nowMs) };
  };
}
