import type { Source } from '../sources/source.ts';

/** Publications and habits behind the level figures. */
export const levelSources = {
  drainageSlope: {
    id: 'plumbing-code-table-704-1',
    citation:
      'Slope of horizontal drainage pipe: City of Chicago plumbing code Table 18-29-704.1, the same figures as International Plumbing Code Table 704.1',
    provenance: 'read',
  },
  readingError: {
    id: 'rod-reading-error',
    citation:
      'Common practice, no source: a rod is read to 1/16 in under a laser or a hand level at crawl-space range',
    provenance: 'practice',
  },
  levelDrain: {
    id: 'level-footing-drain',
    citation:
      'Common practice, no source: footing drains are often laid level in stone; below 0.1 % is level',
    provenance: 'practice',
  },
  loopTolerance: {
    id: 'crawl-space-loop-tolerance',
    citation: 'Common practice, no source: a level loop in a crawl space closes within 1/8 in',
    provenance: 'practice',
  },
  thirdOrder: {
    id: 'fgcs-1984-third-order',
    citation:
      'Federal Geodetic Control Committee, Standards and Specifications for Geodetic Control Networks, 1984',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
