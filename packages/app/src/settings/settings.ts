import { useSyncExternalStore } from 'react';

/** What a person set on this device. */
export interface Settings {
  readonly language: 'en' | 'es';
  readonly ground: 'under' | 'daylight' | 'sun';
  /** The hand that holds the phone: side of the tools that a thumb must reach. */
  readonly hand: 'right' | 'left';
  readonly units: 'us' | 'si';
  readonly textSize: 'usual' | 'larger' | 'largest';
  /** Name of the surveyor, who stands in every entry. */
  readonly name: string;
  /** The stop at which the tour stands; `offer` until it was taken or declined, `off` afterward. */
  readonly tour: 'offer' | 'off' | number;
}

const KEY = 'undercroft.settings';

const FIRST: Settings = {
  language: globalThis.navigator?.language?.startsWith('es') ? 'es' : 'en',
  ground: 'under',
  hand: 'right',
  units: 'us',
  textSize: 'usual',
  name: '',
  tour: 'offer',
};

const ALLOWED: { readonly [K in keyof Settings]?: readonly Settings[K][] } = {
  language: ['en', 'es'],
  ground: ['under', 'daylight', 'sun'],
  hand: ['right', 'left'],
  units: ['us', 'si'],
  textSize: ['usual', 'larger', 'largest'],
};

/** Settings out of a kept text; what does not fit is as on the first day. */
export function readSettings(text: string | null): Settings {
  let raw: Record<string, unknown> = {};
  try {
    raw = (JSON.parse(text ?? '{}') as Record<string, unknown> | null) ?? {};
  } catch {
    // Damaged settings are no reason to fail.
  }
  const settings: Record<string, unknown> = { ...FIRST };
  for (const [key, allowed] of Object.entries(ALLOWED)) {
    if ((allowed as readonly unknown[]).includes(raw[key])) settings[key] = raw[key];
  }
  if (typeof raw.name === 'string') settings.name = raw.name.slice(0, 200);
  const { tour } = raw;
  if (tour === 'off' || (Number.isInteger(tour) && (tour as number) >= 0)) settings.tour = tour;
  return settings as unknown as Settings;
}

function kept(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

let settings = readSettings(kept());
const listeners = new Set<() => void>();

function apply(): void {
  const { dataset } = document.documentElement;
  dataset.ground = settings.ground;
  dataset.hand = settings.hand;
  dataset.textSize = settings.textSize;
  document.documentElement.lang = settings.language === 'es' ? 'es-US' : 'en-US';
}

function take(next: Settings): void {
  settings = next;
  apply();
  for (const changed of listeners) changed();
}

/** The settings as they stand. */
export function currentSettings(): Settings {
  return settings;
}

/** Who stands in entries of a person who has not given a name. */
const NAMELESS = 'Surveyor';

/** The name of the person who works with this device, as it stands in the record. */
export function surveyorName(): string {
  return settings.name.trim() || NAMELESS;
}

/** Changes some settings, here and in the other tabs, and keeps them where the browser lets us. */
export function changeSettings(changes: Partial<Settings>): void {
  const next = { ...settings, ...changes };
  try {
    localStorage.setItem(KEY, JSON.stringify(next));
  } catch {
    // They hold until the page is closed.
  }
  take(next);
}

/** Puts the settings on the page and follows changes that other tabs make. */
export function startSettings(): void {
  apply();
  addEventListener('storage', (event) => {
    if (event.key === KEY) take(readSettings(event.newValue));
  });
}

/** The settings, for a component that shows what depends on them. */
export function useSettings(): Settings {
  return useSyncExternalStore((changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  }, currentSettings);
}
