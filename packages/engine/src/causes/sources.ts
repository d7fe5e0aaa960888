import type { Source } from '../sources/source.ts';

/** Publications behind the chain of causes, and the habits of the trade where there is none. */
export const causesSources = {
  trade: {
    id: 'causes-trade',
    citation: 'Experience of the trade with wet crawl spaces, no published source',
    provenance: 'practice',
  },
  judgment: {
    id: 'causes-judgment',
    citation: 'Chances of the chain of causes, set by judgment, no published source; editable defaults',
    provenance: 'practice',
  },
  weightOfEvidence: {
    id: 'good-1950',
    citation: 'I. J. Good, Probability and the Weighing of Evidence, 1950: log-likelihood ratios add up',
    provenance: 'quoted',
  },
  expectedInformation: {
    id: 'lindley-1956',
    citation:
      'D. V. Lindley, On a Measure of the Information Provided by an Experiment, Annals of Mathematical Statistics 27, 1956: expected fall of the entropy, never negative',
    provenance: 'quoted',
  },
  layeredDrawing: {
    id: 'sugiyama-1981',
    citation:
      'K. Sugiyama, S. Tagawa, M. Toda, Methods for Visual Understanding of Hierarchical System Structures, IEEE Transactions on Systems, Man, and Cybernetics 11, 1981',
    provenance: 'memory',
  },
  drawingDirectedGraphs: {
    id: 'gansner-1993',
    citation:
      'E. Gansner, E. Koutsofios, S. North, K.-P. Vo, A Technique for Drawing Directed Graphs, IEEE Transactions on Software Engineering 19, 1993: neighbors are exchanged while that takes crossings away',
    provenance: 'memory',
  },
  massBalance: {
    id: 'water-balance-of-air',
    citation:
      'Water balance of a volume of air: an air stream cannot bring the space above the water content that the stream has itself',
    provenance: 'computed',
  },
  evaporationRises: {
    id: 'ground-evaporation-rises',
    citation:
      'Evaporation from open ground and water rises as the air above is dried: surface transfer after the Lewis analogy, ASHRAE Handbook of Fundamentals',
    provenance: 'memory',
  },
  ventedYear: {
    id: 'vented-crawl-years',
    citation:
      'Advanced Energy, matched houses in North Carolina, 2001 to 2005: vented crawl spaces with a full ground sheet often above 80 % relative humidity in summer',
    provenance: 'read',
  },
  moldThreshold: {
    id: 'mold-threshold-80',
    citation:
      'ISO 13788 (from memory) and ASHRAE 160-2009 as quoted in ASTM STP 1599, 2017: mold becomes possible from 80 % relative humidity at the surface, month by month',
    provenance: 'quoted',
  },
  woodThresholds: {
    id: 'wood-20-28',
    citation:
      'South Carolina official wood infestation report, item on moisture: 20 % is excessive, decay fungi are active from 28 %, quoted on a state association page',
    provenance: 'quoted',
  },
  woodEquilibrium: {
    id: 'wood-handbook-emc',
    citation:
      'Wood Handbook, FPL-GTR-282, 2021, ch. 4, eq. 4-5: wood settles at a moisture content that belongs to the air at it',
    provenance: 'quoted',
  },
  capillarity: {
    id: 'hall-hoff-2007',
    citation: 'C. Hall, W. D. Hoff, Rising damp: capillary rise dynamics in walls, 2007: sharp front model',
    provenance: 'memory',
  },
  dewPoint: {
    id: 'dew-point-of-surface',
    citation:
      'Water forms on a surface that is colder than the dew point of the air, ASHRAE Handbook of Fundamentals, ch. 1',
    provenance: 'memory',
  },
  floorLeakage: {
    id: 'fan-doors-crawl-spaces-1988',
    citation:
      'Brennan and others, Fan Door Testing on Crawl Space Buildings, EPA/600/D-88/236, 1988: floor leakage a large part of the total, much larger with ducts in the space',
    provenance: 'read',
  },
  soilGas: {
    id: 'epa-crawl-space-radon-review',
    citation:
      'Review of radon measures in crawl spaces (AIVC abstract 6669): suction under a membrane takes away 80 to 98 %',
    provenance: 'read',
  },
  circulation: {
    id: 'plan-field-of-humidity',
    citation:
      'Humidity over a floor plan with a machine in one place, depth-averaged diffusion and jet entrainment: a blocked outlet dries its own surroundings',
    provenance: 'computed',
  },
  rot: {
    id: 'usfs-water-conducting-rot-1954',
    citation:
      'Verrall, Preventing and Controlling Water-Conducting Rot in Buildings, USFS Southern Forest Experiment Station Occasional Paper 133, 1954',
    provenance: 'read',
  },
} as const satisfies Record<string, Source>;
