import type { Source } from '../sources/source.ts';

/** What the dehumidifier calculations lean on. */
export const dehumidifierSources = {
  genericSurface: {
    id: 'winkler-2011-generic-surface',
    citation:
      'Generic capacity and efficiency surfaces in the public source of a US national laboratory residential model, ' +
      'attributed there to Winkler, Christensen and Tomerlin 2011, with part-load curve and air flow per capacity',
    provenance: 'read',
  },
  singleUnitSurface: {
    id: 'single-unit-surface',
    citation:
      'Performance record of one example unit in the open Buildings library of a US national laboratory, with a public ' +
      'port that states its domain: 21 to 32.2 C, 40 to 80 % relative humidity',
    provenance: 'read',
  },
  ahamDh1: {
    id: 'aham-dh-1-2008',
    citation:
      'AHAM DH-1-2008, test air 80 F dry bulb and 69.6 F wet bulb, as cited in a note on test conditions',
    provenance: 'quoted',
  },
  doeAppendixX1: {
    id: 'doe-appendix-x1',
    citation:
      '10 CFR 430 subpart B appendix X1: test air of 65 F (portable) and 73 F (whole-home), 60 %; ' +
      'rules 80 FR 45801 (2015) and 88 FR 48035 (2023), summaries read; 73 F as used in a public model source',
    provenance: 'quoted',
  },
  relabelling: {
    id: 'trade-relabelling-2019',
    citation:
      'Trade explanation of the 2019 relabelling: 30, 50 and 70 pint/day at 80 F read 20, 30 and 50 at 65 F',
    provenance: 'quoted',
  },
  federalMinimum: {
    id: 'federal-minimum-2019',
    citation:
      '10 CFR 430.32(v), minimum integrated energy factor of portable dehumidifiers from 13 June 2019, as summarized by a ' +
      'certification body in 2016',
    provenance: 'quoted',
  },
  federalMinimumWholeHome: {
    id: 'federal-minimum-2019-whole-home',
    citation: '10 CFR 430.32(v), minimum integrated energy factor of whole-home dehumidifiers',
    provenance: 'memory',
  },
  epaVoluntary: {
    id: 'epa-voluntary-5-0',
    citation: 'US EPA voluntary efficiency specification for dehumidifiers, version 5.0 (2019)',
    provenance: 'memory',
  },
  latentDegradation: {
    id: 'henderson-shirey-latent-degradation',
    citation:
      'Henderson and Shirey, latent capacity degradation of cooling coils at part load: moisture returns to the air from ' +
      'the wet coil after each stop',
    provenance: 'memory',
  },
  practice: {
    id: 'dehumidifier-practice',
    citation:
      'Common practice, no source: minimum off time, humidistat differential, frost limits, share of time lost to defrost, ' +
      'drying days, water held by wet block',
    provenance: 'practice',
  },
  woodDrying: {
    id: 'wood-handbook-slab-drying',
    citation:
      'Diffusion out of a slab, first-order time constant b2/(pi2 D), with D of 1 to 2e-10 m2/s across the grain: ' +
      'Wood Handbook and Siau 1984',
    provenance: 'memory',
  },
  ircR408: {
    id: 'irc-2018-r408-3',
    citation:
      'IRC 2018 to 2024 section R408.3 item 2: continuous exhaust or conditioned supply of 1 cfm per 50 ft2 (seen in ' +
      'quotation), dehumidification of 70 pints/day per 1000 ft2 without a stated test condition (from memory)',
    provenance: 'memory',
  },
} as const satisfies Record<string, Source>;
