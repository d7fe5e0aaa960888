import type { Source } from '../sources/source.ts';

/** Publications and habits behind the plan figures. */
export const planSources = {
  compassRule: {
    id: 'open-access-surveying-traverse',
    citation:
      'J. Mahun, Open Access Surveying Library, Traverse Computations, chapters E (closure), G (compass rule) and I (area)',
    provenance: 'read',
  },
  compassRuleExample: {
    id: 'purdue-asm-215-traverse',
    citation: 'Purdue University, ASM 215, Traverse calculations, worked five-sided example',
    provenance: 'read',
  },
  transitRule: {
    id: 'transit-rule',
    citation: 'Transit rule as given by standard surveying textbooks',
    provenance: 'memory',
  },
  closureLimits: {
    id: 'tape-closure-limits',
    citation: 'Common practice for tape-and-corner work, no source: accept 1:500, warn below 1:200',
    provenance: 'practice',
  },
  inverseDistance: {
    id: 'shepard-1968',
    citation:
      'D. Shepard, A two-dimensional interpolation function for irregularly-spaced data, ACM National Conference 1968',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
