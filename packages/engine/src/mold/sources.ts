import type { Source } from '../sources/source.ts';

/** Publications and habits behind the mold index. */
export const moldSources = {
  growthModel: {
    id: 'hukka-viitanen-1999',
    citation:
      'Hukka and Viitanen, A mathematical model of mould growth on wooden material, Wood Science and Technology 33, 1999; equations as in published research code of the Finnish mould growth model, 2011-2016',
    provenance: 'quoted',
  },
  sensitivityClasses: {
    id: 'ojanen-viitanen-2010',
    citation:
      'Ojanen, Viitanen et al., Mold growth modeling of building structures using sensitivity classes of materials, Buildings XI, 2010; coefficients as in published research code of the Finnish mould growth model, 2011-2016',
    provenance: 'quoted',
  },
  standard160: {
    id: 'ashrae-160-2016',
    citation:
      'ASHRAE Standard 160-2016, Criteria for Moisture-Control Design Analysis in Buildings, section 6.1 and Addendum e',
    provenance: 'memory',
  },
  standard160Of2009: {
    id: 'ashrae-160-2009',
    citation:
      'ASHRAE Standard 160-2009, as described in Glass et al., Analysis of Improved Criteria for Mold Growth in ASHRAE Standard 160, ASTM STP 1599, 2017, abstract',
    provenance: 'quoted',
  },
  indexScale2010: {
    id: 'mold-index-scale-2010',
    citation: 'Viitanen et al., 2010 wording of the mold index scale, as in a published conservation package',
    provenance: 'quoted',
  },
  indexScale2007: {
    id: 'mold-index-scale-2007',
    citation: 'Viitanen and Ojanen, 2007 wording of the mold index scale, as cited in public code',
    provenance: 'quoted',
  },
  commonPractice: {
    id: 'mold-common-practice',
    citation: 'Common practice, no published source',
    provenance: 'practice',
  },
} as const satisfies Record<string, Source>;
