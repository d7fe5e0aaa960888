import { units } from '@undercroft/engine';
import { plain } from '../../words/names.ts';

/** A share as whole percent. */
export const percent = (share: number): string =>
  plain(units.formatQuantity(share, 'relativeHumidity', 'us'));
