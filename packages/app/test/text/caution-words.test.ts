import { criteria } from '@undercroft/engine';
import { describe, expect, it } from 'vitest';
import { cautionWords, SPANISH_CAUTIONS } from '../../src/text/caution-words.ts';

/** Figures of a text, as they are written in both languages. */
const figures = (text: string) => (text.match(/\d+(\.\d+)?/g) ?? []).map(Number).sort((a, b) => a - b);

describe('the cautions in Spanish', () => {
  it('are those of the engine, none more and none less', () => {
    expect(Object.keys(SPANISH_CAUTIONS).sort()).toEqual(criteria.cautions.map(({ id }) => id).sort());
  });

  it.each(criteria.cautions)('$id has the same figures and other words', (caution) => {
    const { title, text } = cautionWords(caution, 'es');
    expect(figures(text)).toEqual(figures(caution.text));
    expect(title).not.toBe(caution.title);
    expect(text).not.toBe(caution.text);
    expect(cautionWords(caution, 'en')).toBe(caution);
  });
});
