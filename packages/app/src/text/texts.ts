import { currentSettings, type Settings, useSettings } from '../settings/settings.ts';

/** A message: one text, or one for one and one for any other count. `{name}` stands for what is put in. */
export type Message = string | { readonly one: string; readonly other: string };

type Names<T extends string> = T extends `${string}{${infer Name}}${infer Rest}` ? Name | Names<Rest> : never;
type TextOf<M extends Message> = M extends { other: infer T extends string }
  ? T
  : M extends string
    ? M
    : never;
type Values<M extends Message> = M extends { other: string }
  ? Readonly<Record<Names<TextOf<M>> | 'count', string | number>>
  : Readonly<Record<Names<TextOf<M>>, string | number>>;
type Arguments<M extends Message> = [keyof Values<M>] extends [never] ? [] : [values: Values<M>];

type SameShape<T> = {
  readonly [K in keyof T]: T[K] extends string ? string : { readonly one: string; readonly other: string };
};

/** The texts of one part of the app in every language. */
export interface Texts<T extends Readonly<Record<string, Message>>> {
  readonly en: T;
  readonly es: SameShape<T>;
}

/** Gives a text of a part of the app by its key, in the language that is set. */
export type Say<T extends Readonly<Record<string, Message>>> = <K extends keyof T & string>(
  key: K,
  ...values: Arguments<T[K]>
) => string;

/** Texts of one part of the app. That Spanish has every key, and no other, is checked by the types. */
export function texts<const T extends Readonly<Record<string, Message>>>(en: T, es: SameShape<T>): Texts<T> {
  return { en, es };
}

/** Language tag for numbers, dates and the browser. Bare `es` would swap the decimal point and comma. */
export const LOCALES = { en: 'en-US', es: 'es-US' } as const;

const plurals = {
  en: new Intl.PluralRules(LOCALES.en),
  es: new Intl.PluralRules(LOCALES.es),
} as const;

function fill(
  language: Settings['language'],
  message: Message,
  values: Readonly<Record<string, string | number>>,
): string {
  const text =
    typeof message === 'string'
      ? message
      : plurals[language].select(Number(values.count)) === 'one'
        ? message.one
        : message.other;
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}

/** The texts in a language. */
export function sayIn<T extends Readonly<Record<string, Message>>>(
  language: Settings['language'],
  all: Texts<T>,
): Say<T> {
  return (key, ...[values]) => fill(language, all[language][key] as Message, values ?? {});
}

/** The texts in the language that is set, for a component. */
export function useTexts<T extends Readonly<Record<string, Message>>>(all: Texts<T>): Say<T> {
  return sayIn(useSettings().language, all);
}

/** A moment as people write it, without slashes, which mean another day in the other language. */
export function shownTime(iso: string, language = currentSettings().language): string {
  const date = new Date(iso);
  if (Number.isNaN(date.getTime())) return iso;
  return new Intl.DateTimeFormat(LOCALES[language], {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: 'numeric',
    minute: '2-digit',
  }).format(date);
}
