import type { Source } from '../sources/source.ts';

/** What the moisture calculations lean on. */
export const moistureSources = {
  lewisAnalogy: {
    id: 'lewis-analogy',
    citation:
      'Analogy of heat and vapor transfer at a surface (Lewis), ASHRAE Handbook - Fundamentals ch. 6; dry soil layer as a ' +
      'diffusion resistance after Philip and after van de Griend and Owe',
    provenance: 'memory',
  },
  crustClasses: {
    id: 'ground-surface-classes',
    citation:
      'Resistance classes of ground surfaces, set so that average ground gives 185 to 450 g/(m2 day), in line with the ' +
      '400 g/(m2 day) of New Zealand research on uncovered crawl space ground (Trethowen, BRANZ, from memory; 0.4 L/(m2 day) ' +
      'seen in quotation)',
    provenance: 'computed',
  },
  ashraeSheets: {
    id: 'ashrae-fundamentals-ch26-permeance',
    citation: 'ASHRAE Handbook - Fundamentals, ch. 26, table of water vapor permeance of building materials',
    provenance: 'memory',
  },
  iso10456: {
    id: 'iso-10456-polyethylene',
    citation:
      'EN ISO 10456, polyethylene 0.15 mm sd 50 m, 0.25 mm sd 100 m, converted with 2e-10 kg/(m s Pa)',
    provenance: 'memory',
  },
  astmE1745: {
    id: 'astm-e1745',
    citation: 'ASTM E1745, water vapor retarders under slabs: 0.1 perm after conditioning',
    provenance: 'memory',
  },
  retarderClasses: {
    id: 'irc-r702-7-classes',
    citation:
      'IRC R702.7 vapor retarder classes by ASTM E96 desiccant method: I to 0.1, II to 1.0, III to 10 perm; seen in ' +
      'secondary pages',
    provenance: 'quoted',
  },
  linerPractice: {
    id: 'liner-practice',
    citation:
      'Common practice, no source: open share of a liner by workmanship, pumping of air through seams, reinforced sheet',
    provenance: 'practice',
  },
  lapDiffusion: {
    id: 'lap-diffusion',
    citation:
      'Diffusion of vapor through the slot of a lap, diffusivity of vapor in air 2.5e-5 m2/s; computed',
    provenance: 'computed',
  },
  sharpFront: {
    id: 'hall-hoff-2007',
    citation:
      'Hall and Hoff 2007, Rising damp: capillary rise dynamics in walls, Proceedings of the Royal Society A 463: ' +
      'sharp-front model',
    provenance: 'memory',
  },
  sourceTables: {
    id: 'moisture-source-tables',
    citation:
      'Household moisture sources of the ASHRAE Handbook and of the National Research Council of Canada',
    provenance: 'memory',
  },
  massBalance: {
    id: 'vapor-balance',
    citation: 'Steady mass balance of water vapor; computed',
    provenance: 'computed',
  },
} as const satisfies Record<string, Source>;
