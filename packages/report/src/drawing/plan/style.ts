import { units } from '@undercroft/engine';
import { SPANISH, type Word } from './spanish.ts';

/** How a plan is written and what it shows. */
export interface PlanStyle {
  readonly language: 'en' | 'es';
  readonly system: units.UnitSystem;
  /** `free`: what would cover something else is left out, for a drawing that can be made larger. */
  readonly lettering: 'all' | 'free';
  /** `built`: only what stands in the space, without readings, findings and photos. */
  readonly layers: 'all' | 'built';
}

/** Of a sheet of paper: everything on it, in English and feet. */
export const ON_PAPER: PlanStyle = { language: 'en', system: 'us', lettering: 'all', layers: 'all' };

/** A word of the drawing in the language that is set. */
export const wordIn = ({ language }: PlanStyle, word: Word): string =>
  language === 'en' ? word : SPANISH[word];

/** A length as on a tape, to a fraction of an inch or to the millimeter. */
export const lengthIn = ({ system }: PlanStyle, meters: number, denominator = 16): string =>
  system === 'us' ? units.formatFeetInches(meters, { denominator }) : units.formatMetric(meters);
