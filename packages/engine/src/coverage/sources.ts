import type { Source } from '../sources/source.ts';

/** Publications and habits behind coverage and crawl routes. */
export const coverageSources = {
  accessOpening: {
    id: 'irc-r408-4',
    citation:
      'International Residential Code, section R408.4 (under-floor access openings, 16 by 24 in through a wall)',
    provenance: 'quoted',
  },
  pictureHabits: {
    id: 'crawl-picture-habits',
    citation:
      'Common practice, no source: field of view 65°, lamp range 4 m, lamp 0.3 m over the floor, surfaces not flatter than 75°, nine tenths of a face and 98 % of the floor as enough',
    provenance: 'practice',
  },
  crawlHabits: {
    id: 'crawl-body-habits',
    citation:
      'Common practice, no source: body width 0.5 m, arm reach 0.6 m, things lower than 0.15 m are crawled over',
    provenance: 'practice',
  },
  coverBound: {
    id: 'held-wolfe-crowder-1974',
    citation:
      'M. Held, P. Wolfe and H. Crowder, Validation of subgradient optimization, Mathematical Programming 6 (1974)',
    provenance: 'memory',
  },
  coverReduction: {
    id: 'beasley-1987',
    citation:
      'J. E. Beasley, An algorithm for set covering problem, European Journal of Operational Research 31 (1987)',
    provenance: 'memory',
  },
  tourExact: {
    id: 'held-karp-1962',
    citation:
      'M. Held and R. Karp, A dynamic programming approach to sequencing problems, Journal of SIAM 10 (1962)',
    provenance: 'memory',
  },
  tourBound: {
    id: 'held-karp-1970',
    citation:
      'M. Held and R. Karp, The traveling-salesman problem and minimum spanning trees, Operations Research 18 (1970)',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
