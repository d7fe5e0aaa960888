import type { Source } from '../sources/source.ts';

/** What the plan field leans on. */
export const distributionSources = {
  jets: {
    id: 'ashrae-fundamentals-space-air-diffusion',
    citation:
      'ASHRAE Handbook - Fundamentals (SI), chapter on space air diffusion, table 1 and equations 2 to 12: throw ' +
      'constants, velocity and entrainment of jets',
    provenance: 'read',
  },
  confinedJets: {
    id: 'nielsen-awbi-confined-jets',
    citation:
      'Nielsen and Awbi: wall jets in low rooms are stopped by their return flow after 3 to 4 heights',
    provenance: 'memory',
  },
  mixingInHouses: {
    id: 'cheng-2011-mixing',
    citation:
      'Cheng and others 2011, Environmental Science and Technology 45:4016-4022, doi 10.1021/es103080p: horizontal mixing ' +
      'of 0.001 to 0.013 m2/s in two houses (abstract read); regression by volume and air changes from memory',
    provenance: 'memory',
  },
  corridorMixing: {
    id: 'hospital-corridor-mixing',
    citation:
      'Airborne infection in a fully air-conditioned hospital III, Journal of Hygiene (Cambridge): 0.06 m2/s in a still ' +
      'corridor, 0.12 at 0.04 m/s (abstract read); fixes the factor of mixing by warmth',
    provenance: 'computed',
  },
  turbulenceBalance: {
    id: 'jet-mixing-turbulence-balance',
    citation:
      'Mixing from the power of jets by a balance of turbulence: Karlsson 1994, Shao 2017, Foat 2020; prefactor uncertain',
    provenance: 'memory',
  },
  openingExchange: {
    id: 'brown-solvason-1962',
    citation: 'Brown and Solvason 1962, natural convection through rectangular openings',
    provenance: 'memory',
  },
  recirculatingUnits: {
    id: 'lau-2020-advection-diffusion-reaction',
    citation:
      'Lau, Griffiths, English and Kaouri, arXiv 2012.12267, and Pretty and others, arXiv 2309.16332: advection, ' +
      'diffusion and reaction with a recirculating unit, averaged over the height, in good agreement with finer ' +
      'computations (abstracts read)',
    provenance: 'quoted',
  },
  exponentialWeighting: {
    id: 'scharfetter-gummel-1969',
    citation:
      'Scharfetter and Gummel 1969, IEEE Transactions on Electron Devices 16:64-77: exponential weighting',
    provenance: 'memory',
  },
  gradients: {
    id: 'conjugate-gradients',
    citation:
      'Hestenes and Stiefel 1952 (symmetric systems), van der Vorst 1992 (others): conjugate gradients',
    provenance: 'memory',
  },
  practice: {
    id: 'distribution-practice',
    citation:
      'Common practice, no source: least free run ahead of an outlet, spread of temperature in a still space, thickness of ' +
      'a thin barrier, clearances and costs of an arrangement',
    provenance: 'practice',
  },
} as const satisfies Record<string, Source>;
