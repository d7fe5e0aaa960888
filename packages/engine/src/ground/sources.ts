import type { Source } from '../sources/source.ts';

/** What the ground calculations lean on. */
export const groundSources = {
  kusudaAchenbach: {
    id: 'kusuda-achenbach-1965',
    citation:
      'Kusuda and Achenbach 1965, Earth temperature and thermal diffusivity at selected stations in the United States, ' +
      'ASHRAE Transactions 71(1): annual wave of ground temperature',
    provenance: 'memory',
  },
  iso13370: {
    id: 'iso-13370-2017',
    citation:
      'ISO 13370:2017, Thermal performance of buildings - Heat transfer via the ground: formulas 1 to 20, annexes G and H ' +
      'up to formula H.6, as coded in a public open-source function set; standard not opened',
    provenance: 'quoted',
  },
  iso13370Recalled: {
    id: 'iso-13370-2017-recalled',
    citation:
      'ISO 13370:2017, soil property table (conductivity and heat capacity per volume), labels of the wind shielding ' +
      'factors, periodic coefficients of suspended floors in annex H',
    provenance: 'memory',
  },
  carslawJaeger: {
    id: 'carslaw-jaeger-1959-2.6',
    citation:
      'Carslaw and Jaeger 1959, Conduction of Heat in Solids, 2nd edition, section 2.6: semi-infinite solid under a ' +
      'medium of periodic temperature',
    provenance: 'memory',
  },
  soilMoistureClasses: {
    id: 'soil-diffusivity-classes',
    citation:
      'Dry, average and wet soil: conductivity 0.5, 1.5, 2.2 W/(m K) and diffusivity 0.025, 0.050, 0.080 m2/day of ' +
      'building handbooks; heat capacity computed as their quotient',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
