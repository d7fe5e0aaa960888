import type { Source } from '../src/sources/source.ts';

/** Publications of the studies, and how much of each was read. */
export const studySources = {
  princevilleDesign: {
    id: 'closed-crawl-buildings-ix',
    citation:
      'Moisture performance of closed crawlspaces and their impact on home cooling and heating energy in the southeastern US, Thermal Performance of Exterior Envelopes of Whole Buildings IX, abstract',
    provenance: 'read',
  },
  princevilleReport: {
    id: 'osti-850459',
    citation:
      'A field study comparison of the energy and moisture performance characteristics of ventilated versus sealed crawl spaces in the South, OSTI 850459, abstract',
    provenance: 'read',
  },
  princevilleHumidity: {
    id: 'closed-crawlspaces-2010',
    citation:
      'Closed crawlspaces, article of a green building program, 2010, on the twelve houses of Princeville',
    provenance: 'read',
  },
  threeClimates: {
    id: 'build-it-right-crawl-spaces',
    citation:
      'Build it right: insulating crawl spaces, building trade magazine, on the field studies of Princeville, Baton Rouge and Flagstaff',
    provenance: 'read',
  },
  princevilleRecalled: {
    id: 'davis-dastur-2004',
    citation: 'Davis and Dastur 2004 on the same houses, low confidence',
    provenance: 'memory',
  },
  slides: {
    id: 'controlled-crawl-slides',
    citation:
      'Slide text of an intervention study of humidity-controlled crawl spaces, 2004 to 2006, place not stated',
    provenance: 'read',
  },
  newJersey: {
    id: 'custer-stiles',
    citation:
      'Custer and Stiles, Sealing crawl space exterior walls and soil floor to save energy and reduce moisture of floor joists, abstract',
    provenance: 'read',
  },
  louisianaHighlight: {
    id: 'fpl-highlight-286',
    citation:
      'US Forest Service, research highlight 286, Moisture control in crawl spaces in Louisiana, 2011',
    provenance: 'read',
  },
  louisianaGuide: {
    id: 'lsu-agcenter-3187',
    citation: 'LSU AgCenter Pub. 3187, Insulating raised floors in hot, humid climates',
    provenance: 'read',
  },
  louisianaRecalled: {
    id: 'glass-2010',
    citation: 'Glass and others 2010, report of the same study',
    provenance: 'memory',
  },
  louisianaLogger: {
    id: 'wood-flooring-2018',
    citation: 'Wood-flooring trade magazine, August and September 2018, p. 57, one house',
    provenance: 'read',
  },
  britishRates: {
    id: 'hartless-white-1994',
    citation:
      'Hartless and White, Measuring subfloor ventilation rates, 15th AIVC conference, 1994, abstract',
    provenance: 'read',
  },
  britishVapor: {
    id: 'aivc-20-suspended-floor',
    citation:
      'Measuring and modelling moisture and temperature beneath a suspended timber floor, 20th AIVC and Indoor Air conference, 1999, abstract',
    provenance: 'read',
  },
  newZealand: {
    id: 'mcneil-build-152',
    citation: 'McNeil, Modelling moist subfloors, Build 152, p. 51',
    provenance: 'read',
  },
  helsinki: {
    id: 'kurnitski-2000',
    citation:
      'Kurnitski, Crawl space air change, heat and moisture behaviour, Energy and Buildings 32, 2000, abstract',
    provenance: 'read',
  },
  finnishFive: {
    id: 'tampere-five-crawl-spaces',
    citation:
      'Temperature and relative humidity measurements and data analysis of five crawl spaces, Tampere University, abstract',
    provenance: 'read',
  },
  finnishSpores: {
    id: 'airaksinen-a7',
    citation:
      'Airaksinen, Moisture and fungal spore transport in outdoor air-ventilated crawl spaces in a cold climate, Helsinki University of Technology, Report A7, abstract',
    provenance: 'read',
  },
  tennessee: {
    id: 'brennan-1988',
    citation:
      'Brennan and others, Fan door testing on crawl space buildings, EPA/600/D-88/236, 1988, abstract',
    provenance: 'read',
  },
  oakRidge: {
    id: 'oak-ridge-pair',
    citation: 'Oak Ridge reports of about 2010 to 2012 on a sealed and a vented pair, low confidence',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
