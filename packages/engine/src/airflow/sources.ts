import type { Source } from '../sources/source.ts';

/** Publications and habits behind the air flow figures. */
export const airflowSources = {
  ashraeInfiltration: {
    id: 'ashrae-fundamentals-infiltration',
    citation:
      'ASHRAE Handbook - Fundamentals (SI), chapter Ventilation and Infiltration, tables 4 to 9, eqs 1 to 13 and 47 to 51, examples 2 to 7',
    provenance: 'read',
  },
  ashraeFlueShelter: {
    id: 'ashrae-fundamentals-flue-shelter',
    citation:
      'ASHRAE Handbook - Fundamentals (SI), chapter Ventilation and Infiltration, shelter factors of two- and three-story houses with a flue',
    provenance: 'memory',
  },
  ashraeLeakageTable: {
    id: 'ashrae-fundamentals-leakage-areas',
    citation:
      'ASHRAE Handbook - Fundamentals, table of effective leakage areas of building components at 4 Pa',
    provenance: 'memory',
  },
  ashraeWindPressure: {
    id: 'ashrae-fundamentals-wind-pressure',
    citation:
      'ASHRAE Handbook - Fundamentals, chapter Airflow Around Buildings, low-rise wall pressure order',
    provenance: 'memory',
  },
  orificeLaw: {
    id: 'orifice-law',
    citation: 'Sharp-edged orifice, discharge coefficient 0.6, any fluid mechanics textbook',
    provenance: 'memory',
  },
  leakageAreaForm: {
    id: 'leakage-area-form',
    citation: 'Effective leakage area at 4 Pa and air density 1.2 kg/m3: A = Q50 (4/50)^n sqrt(rho/8)',
    provenance: 'computed',
  },
  shermanGrimsrud: {
    id: 'sherman-grimsrud-1980',
    citation: 'Sherman and Grimsrud, Infiltration-pressurization correlation, ASHRAE Transactions 86, 1980',
    provenance: 'memory',
  },
  walkerWilsonRates: {
    id: 'walker-wilson-1998',
    citation:
      'Walker and Wilson, Field validation of algebraic equations for stack and wind driven air infiltration, 1998',
    provenance: 'memory',
  },
  walkerWilsonAngles: {
    id: 'walker-wilson-1994',
    citation:
      'Walker and Wilson, Practical methods for improving estimates of natural ventilation rates, 15th AIVC conference, 1994, wall pressure as a harmonic of the wind angle',
    provenance: 'memory',
  },
  networkForm: {
    id: 'zone-pressure-network',
    citation:
      'Mass balance of three zones over power-law openings, rho = 353.2/(t + 273.15) kg/m3 at 101325 Pa; perfect gas and hydrostatics',
    provenance: 'computed',
  },
  tennesseeFanDoor: {
    id: 'brennan-1988',
    citation:
      'Brennan et al., Fan door testing on crawl space buildings, EPA/600/D-88/236 and ASTM STP17211S, 1988, abstract',
    provenance: 'read',
  },
  leakageSurvey: {
    id: 'lbnl-residential-diagnostics',
    citation:
      'LBNL Residential Diagnostics Database, shares of houses per leakage class as carried by the NREL residential stock model; middle and 10 to 90 % classes of houses of 1000 to 2000 ft2, climate zones unweighted',
    provenance: 'computed',
  },
  tradeHabit: {
    id: 'crawl-space-trade-habit',
    citation: 'Common practice, no source',
    provenance: 'practice',
  },
  ifgcVolume: {
    id: 'ifgc-304-5',
    citation:
      'International Fuel Gas Code 304.5 (IRC G2407.5), indoor combustion air by volume, in a state energy-code note and a mirror',
    provenance: 'quoted',
  },
  ifgcLeakageRate: {
    id: 'ifgc-304-5-2',
    citation: 'International Fuel Gas Code 304.5.2, known air infiltration rate method',
    provenance: 'memory',
  },
  pnnlCombustion: {
    id: 'pnnl-rooms-fuel-burning',
    citation: 'PNNL, Rooms Containing Fuel-Burning Appliances, guide brief',
    provenance: 'read',
  },
  soilGasStandard: {
    id: 'sgm-sf-2017-11-1-1',
    citation: 'ANSI/AARST SGM-SF-2017 (12/20), 11.1.1, back-drafting check',
    provenance: 'read',
  },
  closedCrawlGuide: {
    id: 'closed-crawl-quick-reference',
    citation: 'Designing Closed Crawl Spaces: A Quick Reference, publicly funded research program',
    provenance: 'read',
  },
  crawlCombustionVents: {
    id: 'archived-city-code-combustion-air',
    citation: 'Archived city building code on combustion air drawn from a crawl space at floor level',
    provenance: 'read',
  },
  depressurizationLimits: {
    id: 'house-depressurization-limits',
    citation: 'Depressurization limits of vented appliances, CAN/CGSB-51.71 and ASTM E1998',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
