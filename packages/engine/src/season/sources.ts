import type { Source } from '../sources/source.ts';

/** Publications and habits behind the season's equations and defaults. */
export const seasonSources = {
  surfaceCoefficients: {
    id: 'iso-6946-surface-coefficients',
    citation:
      'ISO 6946, Building components, surface resistances; cold floor below still air 3 to 6 W/(m²·K)',
    provenance: 'memory',
  },
  soilColumn: {
    id: 'season-soil-column',
    citation:
      'Seven layers of 3.15 m and a lateral coupling of 0.3 to 0.6 W/(m²·K), chosen so that the yearly mean follows the ground transmittance of ISO 13370:2017',
    provenance: 'computed',
  },
  materials: {
    id: 'ashrae-fundamentals-materials',
    citation:
      'ASHRAE Handbook - Fundamentals, chapters on thermal and vapor properties of building materials (ch. 25 to 27)',
    provenance: 'memory',
  },
  woodMass: {
    id: 'season-wood-mass',
    citation:
      'Joists 38 by 235 mm at 406 mm with 18 mm subfloor at 500 kg/m³: 20 kg and 2.6 m² of wood per m² of plan; core times from slab diffusion with 1.5e-10 m²/s',
    provenance: 'computed',
  },
  woodPermeance: {
    id: 'wood-vapor-permeability',
    citation: 'Wood Handbook and IEA Annex 24, vapor permeability of wood 2e-12 to 6e-12 kg/(m·s·Pa)',
    provenance: 'memory',
  },
  ventRates: {
    id: 'house-simulation-protocols',
    citation: 'NREL House Simulation Protocols: vented crawl space 2 air changes per hour, unvented 0.1',
    provenance: 'memory',
  },
  lewis: {
    id: 'ashrae-fundamentals-mass-transfer',
    citation:
      'ASHRAE Handbook - Fundamentals ch. 6, analogy of heat and mass transfer: 0.0014 to 0.0028 m/s in still air',
    provenance: 'memory',
  },
  dehumidifier: {
    id: 'winkler-2011-surfaces',
    citation:
      'Winkler, Christensen and Tomerlin 2011, dehumidifier capacity and efficiency surfaces, as carried by a public residential model; part load and cold behavior as in the dehumidifier subject',
    provenance: 'read',
  },
  practice: {
    id: 'season-common-practice',
    citation: 'Common practice, no published source',
    provenance: 'practice',
  },
} as const satisfies Record<string, Source>;
