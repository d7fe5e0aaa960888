import type { Source } from '../sources/source.ts';

/** Where the moist-air equations and their check values come from. */
export const psychrometricsSources = {
  ashraeFundamentals: {
    id: 'ashrae-fundamentals-2017-ch1',
    citation:
      'ASHRAE Handbook - Fundamentals (SI), 2017, chapter 1 Psychrometrics: saturation pressure eq. 5 and 6, ' +
      'humidity ratio, wet bulb, enthalpy and volume of moist air, pressure at altitude eq. 3, Tables 1 to 3; ' +
      'equations as coded in psychrolib 2.5.0, tables as quoted in its test suite',
    provenance: 'quoted',
  },
  iso13788Saturation: {
    id: 'iso-13788-saturation',
    citation:
      'ISO 13788:2012, saturation pressure fit (610.5 Pa form), as coded in a public research model of mold growth',
    provenance: 'quoted',
  },
  peppersDewPoint: {
    id: 'peppers-1988-dew-point',
    citation:
      'Peppers 1988, direct dew point fit, printed in ASHRAE Handbook - Fundamentals chapter 1 (eq. 37 and 38 in the 2017 numbering)',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
