import type { Source } from '../sources/source.ts';

/** Publications and habits behind the wood figures. */
export const woodSources = {
  woodHandbookCh4: {
    id: 'wood-handbook-2021-ch4',
    citation:
      'Glass and Zelinka, Moisture Relations and Physical Properties of Wood, Wood Handbook ch. 4, FPL-GTR-282, USDA Forest Service, 2021, eq. 4-5 and Table 4-2',
    provenance: 'quoted',
  },
  woodHandbookShrinkageRule: {
    id: 'wood-handbook-2021-eq-4-9',
    citation: 'Wood Handbook ch. 4, FPL-GTR-282, USDA Forest Service, 2021, eq. 4-9',
    provenance: 'quoted',
  },
  woodHandbookShrinkageTable: {
    id: 'wood-handbook-2021-table-4-3',
    citation: 'Wood Handbook ch. 4, FPL-GTR-282, USDA Forest Service, 2021, Table 4-3',
    provenance: 'memory',
  },
  woodHandbookCh13: {
    id: 'wood-handbook-2021-ch13',
    citation:
      'Bergman, Drying and Control of Moisture Content and Dimensional Changes, Wood Handbook ch. 13, FPL-GTR-282, USDA Forest Service, 2021, p. 13-3',
    provenance: 'quoted',
  },
  nordicFieldTests: {
    id: 'sp-px21326-2012',
    citation: 'SP Technical Research Institute of Sweden, report PX21326, 2012',
    provenance: 'quoted',
  },
  pfaffGarrahan: {
    id: 'pfaff-garrahan-1986',
    citation:
      'Pfaff and Garrahan, Forest Products Journal 36(3), 1986, as used by Straube, Onysko and Schumacher, 2002',
    provenance: 'memory',
  },
  garrahan: {
    id: 'garrahan-moisture-meter-factors',
    citation:
      'Garrahan, Moisture meter correction factors for high temperature dimension lumber, Forintek Canada, late 1980s, first page',
    provenance: 'read',
  },
  electricMeters: {
    id: 'fpl-gtr-6-abstract',
    citation: 'James, Electric Moisture Meters for Wood, FPL-GTR-6, USDA Forest Service, rev. 1988, abstract',
    provenance: 'read',
  },
  electricMetersTable: {
    id: 'fpl-gtr-6-table-1',
    citation: 'James, Electric Moisture Meters for Wood, FPL-GTR-6, USDA Forest Service, rev. 1988, Table 1',
    provenance: 'memory',
  },
  softwoodGuide: {
    id: 'swedish-wood-guide',
    citation: 'Swedish Wood, timber guide pages on moisture content, sorption and micro-organisms, 2003-2026',
    provenance: 'quoted',
  },
  smulski: {
    id: 'smulski-1996',
    citation: 'Smulski, note on wood decay, University of Massachusetts, 1996',
    provenance: 'read',
  },
  infestationReport: {
    id: 'south-carolina-cl-100',
    citation: 'Clemson University, South Carolina wood infestation report CL-100, item J',
    provenance: 'read',
  },
  lumberStandard: {
    id: 'ps-20',
    citation: 'American Softwood Lumber Standard, PS 20',
    provenance: 'memory',
  },
  carllHighley: {
    id: 'carll-highley-1999',
    citation: 'Carll and Highley, Decay of wood and wood-based products above ground in buildings, 1999',
    provenance: 'memory',
  },
  rowellIbach: {
    id: 'rowell-ibach-2000',
    citation:
      'Rowell and Ibach, Improvements in decay resistance based on moisture exclusion, USDA Forest Service, 2000, abstract',
    provenance: 'read',
  },
  decayMassLoss: {
    id: 'viitanen-2010-decay',
    citation:
      'Viitanen et al., Towards modelling of decay risk of wooden materials, European Journal of Wood and Wood Products 68, 2010',
    provenance: 'memory',
  },
  decayLogisticDose: {
    id: 'brischke-rapp-2008',
    citation: 'Brischke and Rapp, 2008; Brischke and Meyer-Veltrup, 2016: logistic dose-response of decay',
    provenance: 'memory',
  },
  decaySimpleDose: {
    id: 'isaksson-2013',
    citation: 'Isaksson, Brischke and Thelandersson, 2013: simplified dose-response of decay',
    provenance: 'memory',
  },
  commonPractice: {
    id: 'wood-common-practice',
    citation: 'Common practice, no published source',
    provenance: 'practice',
  },
} as const satisfies Record<string, Source>;
