import type { Source } from '../sources/source.ts';

/** Where the conversion factors come from. Factors that are exact by definition need no source. */
export const unitsSources = {
  nistSp811: {
    id: 'nist-sp-811-2008',
    citation:
      'NIST Special Publication 811 (2008), Guide for the Use of the International System of Units, Appendix B',
    provenance: 'memory',
  },
  ashraeWaterColumn: {
    id: 'ashrae-inch-of-water-60f',
    citation: 'ASHRAE Handbook - Fundamentals, Units and Conversions: inch of water at 60 °F, 248.84 Pa',
    provenance: 'memory',
  },
  astmE96Perm: {
    id: 'astm-e96-perm',
    citation:
      'ASTM E96, perm: 1 grain per hour, square foot and inch of mercury; the factor follows from the exact inch and ' +
      'grain and the conventional inch of mercury (3386.389 Pa)',
    provenance: 'computed',
  },
} as const satisfies Record<string, Source>;
