import type { Option } from './command.ts';
import { UsageError } from './usage-error.ts';

const SEASONS = ['none', 'cases', 'full'] as const;
/** How much of the year a command works out. */
export type Season = (typeof SEASONS)[number];

/** Options of a command that assesses, which works out so much of the year when nobody says. */
export const assessOptions = (usual: Season) =>
  ({
    weather: {
      type: 'string',
      value: 'FILE',
      help: 'Weather year to use in place of the built-in station: EPW or TMY3, plain or gzip.',
    },
    season: {
      type: 'string',
      value: 'HOW',
      help: `The year by the hour: "cases" (the space as found, with each repair, with all), "full" (also which repairs pay, and how sure it is; takes half a minute) or "none". Without it "${usual}".`,
    },
  }) as const satisfies Record<string, Option>;

/**
 * How much of the year is asked for.
 * @throws UsageError for another word than the three
 */
export function seasonAsked(option: string | boolean | undefined, usual: Season): Season {
  const asked = option ?? usual;
  const known = SEASONS.find((season) => season === asked);
  if (known === undefined) {
    throw new UsageError(`--season ${asked} is not known. It takes one of ${SEASONS.join(', ')}.`);
  }
  return known;
}
