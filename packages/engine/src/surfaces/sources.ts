import type { Source } from '../sources/source.ts';

/** Where the surface criteria come from. */
export const surfacesSources = {
  iso13788: {
    id: 'iso-13788-2012',
    citation:
      'ISO 13788:2012, surface temperature to avoid critical surface humidity and the temperature factor fRsi; ' +
      'its scope was read, its limit of 80 % monthly mean surface humidity is from memory',
    provenance: 'memory',
  },
  din4108: {
    id: 'din-4108-2-temperature-factor',
    citation: 'DIN 4108-2, least temperature factor 0.70, as told by a secondary note',
    provenance: 'quoted',
  },
  breIp106: {
    id: 'bre-ip-1-06',
    citation: 'BRE Information Paper IP 1/06, least temperature factor 0.75 for dwellings',
    provenance: 'memory',
  },
  smallDifference: {
    id: 'temperature-factor-small-difference',
    citation: 'A temperature factor needs about 2 K between inside and outside; common practice, no source',
    provenance: 'practice',
  },
} as const satisfies Record<string, Source>;
