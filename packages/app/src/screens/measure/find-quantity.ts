import { criteria } from '@undercroft/engine';
import type { Settings } from '../../settings/settings.ts';
import { folded } from '../../text/folded.ts';
import { QUANTITY_ES } from './quantity-words.ts';

/** The title of a quantity in a language. */
export function quantityTitle(key: string, language: Settings['language']): string {
  const known = criteria.findQuantity(key);
  if (known === undefined) return key;
  return language === 'es' ? (QUANTITY_ES[known.key as criteria.QuantityKey] ?? known.title) : known.title;
}

const searched = new Map(
  Object.values(criteria.quantities).map((quantity) => [
    quantity.key,
    folded(
      [
        quantity.title,
        QUANTITY_ES[quantity.key as criteria.QuantityKey] ?? '',
        quantity.measured,
        quantity.place,
      ].join(' '),
    ),
  ]),
);

/** How well a title fits what is searched: words that start with it, then words that hold it, then other texts. */
function fit(title: string, words: readonly string[]): number {
  const text = ` ${folded(title)}`;
  if (words.every((word) => text.includes(` ${word}`))) return 0;
  return words.every((word) => text.includes(word)) ? 1 : 2;
}

/**
 * Quantities whose words hold every word that is searched, in either language, the best fit first. Where nothing is
 * searched, those that are wanted come first.
 */
export function findQuantities(
  text: string,
  language: Settings['language'],
  wanted: readonly string[] = [],
): criteria.Quantity[] {
  const words = folded(text).split(/\s+/).filter(Boolean);
  const rank = new Map(wanted.map((key, index) => [key, index - wanted.length]));
  return Object.values(criteria.quantities)
    .filter(({ key }) => words.every((word) => searched.get(key)?.includes(word) === true))
    .map((quantity) => {
      const title = quantityTitle(quantity.key, language);
      const order = words.length === 0 ? (rank.get(quantity.key) ?? 0) : fit(title, words);
      return { quantity, title, order };
    })
    .sort((a, b) => a.order - b.order || a.title.localeCompare(b.title, language))
    .map(({ quantity }) => quantity);
}
