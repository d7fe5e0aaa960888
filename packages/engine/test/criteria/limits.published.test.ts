import { describe, expect, test } from 'vitest';
import { criteria } from '../../src/criteria/index.ts';
import { readPrinted } from './printed-limits.ts';

/**
 * Limits as their publications print them, in US and in SI units, typed apart from the catalogue. A dash where a
 * publication prints one system only. Provenance of each is that of the criterion; rows of common practice have no
 * publication and stand in the last group.
 */
const PRINTED: Record<
  string,
  readonly (readonly [id: string, comparison: string, us: string, si: string])[]
> = {
  'IRC R408.2, ventilated under-floor space': [
    ['VNT-01', '>=', '1/150', '1/150'],
    ['VNT-02', '>=', '1/1500', '1/1500'],
    ['VNT-03', '<=', '3 ft', '914 mm'],
    ['VNT-05a', '<=', '1/4 in', '6.4 mm'],
    ['VNT-06a', '>=', '0.070 in', '1.8 mm'],
    ['VNT-06b', '>=', '0.047 in', '1.2 mm'],
    ['VNT-07', '>=', '0.035 in', '0.89 mm'],
    ['VNT-08', '<=', '1.5 perm', '86 ng/(s·m²·Pa)'],
  ],
  'IRC R408.3, unvented space': [
    ['UNV-01', '=', '0 %', '0 %'],
    ['UNV-02', '<=', '0.1 perm', '5.7 ng/(s·m²·Pa)'],
    ['UNV-03', '>=', '6 in', '152 mm'],
    ['UNV-05', '>=', '6 in', '152 mm'],
    ['UNV-07a', '>=', '1 cfm per 50 ft²', '0.10 L/(s·m²)'],
    ['UNV-08a', '>=', '1 cfm per 50 ft²', '0.10 L/(s·m²)'],
    ['UNV-10', '>=', '70 pint/day per 1000 ft²', '0.36 L/(d·m²)'],
    ['UNV-11', '>=', '1', '1'],
  ],
  'IRC R408.4 and M1305.1.4, access': [
    ['ACC-01a', '>=', '18 in', '457 mm'],
    ['ACC-01b', '>=', '24 in', '610 mm'],
    ['ACC-02a', '>=', '16 in', '407 mm'],
    ['ACC-02b', '>=', '24 in', '610 mm'],
    ['ACC-03a', '>=', '16 in', '407 mm'],
    ['ACC-03b', '>=', '24 in', '610 mm'],
    ['APP-01a', '>=', '30 in', '762 mm'],
    ['APP-01b', '>=', '22 in', '559 mm'],
    ['APP-02', '<=', '20 ft', '6.10 m'],
    ['APP-03a', '>=', '30 in', '762 mm'],
    ['APP-03b', '>=', '30 in', '762 mm'],
    ['APP-04a', '>=', '22 in', '559 mm'],
    ['APP-04b', '>=', '30 in', '762 mm'],
    ['APP-05b', '>=', '4 in', '102 mm'],
    ['APP-06a', '>=', '3 in', '76 mm'],
    ['APP-06b', '>=', '6 in', '152 mm'],
    ['DUC-01', '>=', '4 in', '102 mm'],
  ],
  'Closed crawl space design guide': [['ACC-05d', '>=', '4 in', '102 mm']],
  'NFIP Technical Bulletin 1 and FEMA Technical Bulletin 11': [
    ['FLD-01', '>=', '1 in² per ft²', '69 cm² per m²'],
    ['FLD-02a', '>=', '2', '2'],
    ['FLD-02b', '>=', '2', '2'],
    ['FLD-03', '<=', '1 ft', '305 mm'],
    ['FLD-04a', '<=', '2 ft', '0.61 m'],
    ['FLD-04b', '<=', '4 ft', '1.22 m'],
    ['FLD-04c', '<=', '72 h', '72 h'],
  ],
  'IRC M1411.3, IMC 307.2.1, condensate': [
    ['CON-01', '>=', '1/8 in per ft', '10 mm/m'],
    ['CON-02', '>=', '3/4 in', '19 mm'],
    ['CON-04a', '>=', '1.5 in', '38 mm'],
    ['CON-04b', '>=', '3 in', '76 mm'],
  ],
  'IRC P3303.1.2, P3302.1, R405.1, sump and drain': [
    ['SMP-01a', '>=', '18 in', '457 mm'],
    ['SMP-01b', '>=', '24 in', '610 mm'],
    ['SMP-08a', '>=', '4 in', '102 mm'],
    ['DRN-02a', '>=', '1 ft', '305 mm'],
    ['DRN-02b', '>=', '6 in', '152 mm'],
    ['DRN-03a', '>=', '2 in', '51 mm'],
    ['DRN-03b', '>=', '6 in', '152 mm'],
  ],
  'IRC R401.3, R801.3, site water': [
    ['SIT-01', '>=', '6 in in 10 ft', '152 mm in 3.05 m'],
    ['SIT-01', '>=', '5 %', '5 %'],
    ['SIT-02', '>=', '2 %', '2 %'],
    ['SIT-03a', '>=', '5 ft', '1.52 m'],
  ],
  'IRC R317.1, wood near earth': [
    ['WOD-01', '>=', '18 in', '457 mm'],
    ['WOD-02', '>=', '12 in', '305 mm'],
    ['WOD-03', '>=', '8 in', '203 mm'],
    ['WOD-04', '>=', '8 in', '203 mm'],
    ['WOD-05', '>=', '1/2 in', '12.7 mm'],
    ['WOD-06a', '>=', '6 in', '152 mm'],
    ['WOD-06b', '>=', '2 in', '51 mm'],
    ['WOD-08', '>', '8 in', '203 mm'],
  ],
  'IRC R318.4, North Carolina R409, Wyoming guide, termites': [
    ['TRM-02', '>=', '6 in', '152 mm'],
    ['TRM-04a', '>=', '3 in', '76 mm'],
    ['TRM-04b', 'within', '3-4 in', '76-102 mm'],
  ],
  'IRC R316, R302.10.1, foam and facings': [
    ['FOM-01a', '<=', '75', '75'],
    ['FOM-01b', '<=', '450', '450'],
    ['FOM-04a', '>=', '1 1/2 in', '38 mm'],
    ['FOM-04b', '>=', '1/4 in', '6.4 mm'],
    ['FOM-04c', '>=', '3/8 in', '9.5 mm'],
    ['FOM-04d', '>=', '1/4 in', '6.4 mm'],
    ['FOM-04e', '>=', '3/8 in', '9.5 mm'],
    ['FOM-04f', '>=', '0.016 in', '0.4 mm'],
    ['FOM-05a', '<=', '3 1/4 in', '83 mm'],
    ['FOM-05b', 'within', '0.5-2.0 lb/ft³', '8-32 kg/m³'],
    ['FOM-05c', '<=', '25', '25'],
    ['FOM-05d', '<=', '450', '450'],
    ['FOM-06a', '<=', '25', '25'],
    ['FOM-06b', '<=', '450', '450'],
  ],
  'IECC R402.1 as tabulated by PNNL, 2021': [
    ['INS-01', '>=', 'R-13', '-'],
    ['INS-02a', '>=', 'R-5', 'RSI 0.88'],
    ['INS-02b', '>=', 'R-13', '-'],
    ['INS-02c', '>=', 'R-19', '-'],
    ['INS-03a', '>=', 'R-10', 'RSI 1.76'],
    ['INS-03b', '>=', 'R-13', '-'],
    ['INS-03c', '>=', 'R-19', '-'],
    ['INS-04a', '>=', 'R-15', 'RSI 2.64'],
    ['INS-04b', '>=', 'R-19', '-'],
    ['INS-04c', '>=', 'R-13', '-'],
    ['INS-04d', '>=', 'R-5', '-'],
    ['INS-04e', '>=', 'R-30', '-'],
    ['INS-05a', '>=', 'R-15', 'RSI 2.64'],
    ['INS-05b', '>=', 'R-19', '-'],
    ['INS-05c', '>=', 'R-13', '-'],
    ['INS-05d', '>=', 'R-5', '-'],
    ['INS-05e', '>=', 'R-38', '-'],
    ['INS-06', '>=', '24 in', '610 mm'],
  ],
  'EPA and WHO, radon levels': [
    ['RAD-01a', '<', '4 pCi/L', '148 Bq/m³'],
    ['RAD-01b', '<', '2 pCi/L', '75 Bq/m³'],
    ['RAD-02a', '<=', '2.7 pCi/L', '100 Bq/m³'],
    ['RAD-02b', '<=', '8.1 pCi/L', '300 Bq/m³'],
    ['RAD-15b', '<=', '2 years', '-'],
  ],
  'IRC appendix F and ANSI/AARST standards, soil-gas systems': [
    ['RAD-03a', '>=', '6 mil', '0.15 mm'],
    ['RAD-03b', '>=', '12 in', '305 mm'],
    ['RAD-05a', '>=', '3 in', '76 mm'],
    ['RAD-05b', '>=', '12 in', '305 mm'],
    ['RAD-05c', '>=', '10 ft', '3.05 m'],
    ['RAD-07a', '>=', '12 in', '305 mm'],
    ['RAD-07b', '>=', '6 in', '-'],
    ['RAD-09', '>=', '12 in', '305 mm'],
    ['RAD-10a', '>=', '3 ft', '0.9 m'],
    ['RAD-10b', '>=', '10 ft', '3 m'],
    ['RAD-11', '>=', '1', '1'],
    ['RAD-12c', '>=', '1/4 in', '6 mm'],
    ['RAD-13a', '>=', '4 ft', '1.2 m'],
    ['RAD-13b', '>=', '10 ft', '3 m'],
    ['DPR-17b', '>=', '6 in', '-'],
  ],
  'ASTM E1745 table 1, ASTM E1643, C920, ACI 302.2R, public guides, liner': [
    ['MAT-01', '<=', '0.1 perm', '5.7 ng/(s·m²·Pa)'],
    ['MAT-02a', '>=', '45 lbf/in', '7.9 kN/m'],
    ['MAT-02b', '>=', '30 lbf/in', '5.3 kN/m'],
    ['MAT-02c', '>=', '13.6 lbf/in', '2.4 kN/m'],
    ['MAT-03a', '>=', '-', '2200 g'],
    ['MAT-03b', '>=', '-', '1700 g'],
    ['MAT-03c', '>=', '-', '475 g'],
    ['MAT-04', '<=', '0.1 perm', '5.7 ng/(s·m²·Pa)'],
    ['MAT-05a', '>=', '6 mil', '0.15 mm'],
    ['MAT-05b', '>=', '3 mil', '0.08 mm'],
    ['MAT-07', '>=', '25', '25'],
    ['MAT-08', '>=', '10 mil', '0.25 mm'],
    ['LIN-01', '>=', '12 in', '305 mm'],
    ['LIN-02', '>=', '6 in', '152 mm'],
    ['LIN-06a', '>=', '6 in', '152 mm'],
    ['LIN-08a', '>=', '6 in', '152 mm'],
  ],
  'UPC 1101.6; 10 CFR 430.32(v), dehumidifiers': [
    ['DPR-10b', '>=', '15 gpm', '-'],
    ['DHU-07a', '>=', '-', '1.30 L/kWh'],
    ['DHU-07b', '>=', '-', '1.60 L/kWh'],
    ['DHU-07c', '>=', '-', '2.80 L/kWh'],
    ['DHU-07d', '>=', '-', '1.77 L/kWh'],
    ['DHU-07e', '>=', '-', '2.41 L/kWh'],
  ],
  'EPA, ASHRAE 160, ISO 13788, CL-100, PS 20, ASTM D4444, moisture and mold': [
    ['DHU-02', '<=', '60 %', '-'],
    ['DHU-03', '<', '80 %', '-'],
    ['surface-humidity-monthly', '<=', '80 %', '-'],
    ['WMC-01', '<', '20 %', '-'],
    ['WMC-02', '<', '28 %', '-'],
    ['WMC-04b', '>=', '3', '-'],
    ['new-lumber-dry', '<=', '19 %', '-'],
    ['mold-index', '<=', '3.0', '-'],
    ['MLD-04a', '<', '10 ft²', '0.93 m²'],
    ['MLD-04b', '<=', '100 ft²', '9.3 m²'],
    ['MLD-06', '<=', '48 h', '-'],
    ['BOR-01a', '>=', '2', '-'],
    ['BOR-01b', '>=', '1', '-'],
  ],
  '29 CFR 1926.1202 and NIOSH; IFGC 304.5, safety': [
    ['SAF-03a', 'within', '19.5-23.5 %', '-'],
    ['SAF-03b', '<', '10 %', '-'],
    ['SAF-03c', '<', '35 ppm', '-'],
    ['SAF-03d', '<', '10 ppm', '-'],
    ['SAF-17a', '>=', '50 ft³ per 1000 Btu/h', '4.8 m³/kW'],
  ],
  'Common practice, no source': [
    ['SIT-03b', '>=', '5 ft', '1.52 m'],
    ['MAT-06', '>=', '12 mil', '0.30 mm'],
    ['LIN-03b', '>=', '4 in', '0.1 m'],
    ['LIN-05b', '<=', '12 in', '305 mm'],
    ['LIN-07', 'within', '3-4 in', '76-102 mm'],
    ['LIN-15b', '<=', '24 h', '-'],
    ['LIN-18a', '<=', '1/8 in', '3 mm'],
    ['LIN-18b', '<=', '48 h', '-'],
    ['DPR-01a', '>=', '4 in', '0.1 m'],
    ['DPR-02a', '>=', '1/8 in per ft', '10 mm/m'],
    ['DPR-02b', '<=', '1/4 in', '6 mm'],
    ['DPR-03', '>=', '12 in', '-'],
    ['DPR-07', '>=', '2 in', '51 mm'],
    ['DPR-09a', '>=', '5 ft', '1.5 m'],
    ['DPR-09b', '>=', '10 ft', '3 m'],
    ['DPR-10a', '>=', '1.5', '1.5'],
    ['DPR-12', '>=', '8 h', '-'],
    ['DPR-14', '<=', '10 per h', '-'],
    ['DPR-15a', '>=', '3 in', '76 mm'],
    ['DPR-16', '<=', '6 months', '-'],
    ['DHU-01', 'within', '45-55 %', '-'],
    ['DHU-08a', '>=', '10 ft', '3 m'],
    ['DHU-08b', '>=', '3 ft', '0.9 m'],
    ['DHU-09', '<=', '8 points', '8 points'],
    ['DHU-10', '<=', '3 per h', '-'],
    ['DHU-11', '>=', '30 in', '762 mm'],
    ['DHU-12a', '<=', '6 months', '-'],
    ['DHU-12b', '<=', '12 months', '-'],
    ['DHU-13', '<=', '10 points', '-'],
    ['DHU-14', '<=', '5 points', '-'],
    ['DHU-17', '<=', '15 %', '-'],
    ['EXS-01', '<=', '-0.004 in w.c.', '-1 Pa'],
    ['WMC-03', '<', '16 %', '-'],
    ['MLD-08b', '<', '16 %', '-'],
    ['wood-surface-humidity-watch', '<=', '70 %', '-'],
    ['wood-surface-humidity-act', '<=', '80 %', '-'],
    ['ROT-02b', '>=', '3 ft', '-'],
    ['ROT-03', '<=', '1/8', '-'],
    ['SAF-15a', '<=', '1/8 in', '3 mm'],
  ],
};

const byId = new Map(criteria.map((criterion) => [criterion.id, criterion]));

/** Limits that are plain zero: at grade, at the dew point, nothing standing. */
const ZERO = [
  'ACC-03c',
  'GRD-01',
  'standing-water',
  'DRN-05',
  'LIN-15c',
  'DHU-16',
  'surface-above-dew-point',
];

describe.each(Object.entries(PRINTED))('%s', (_source, rows) => {
  test.each(rows)('%s %s %s, %s', (id, comparison, us, si) => {
    const criterion = byId.get(id);
    expect(criterion?.comparison).toBe(comparison);
    const kept = [criterion?.limit?.value].flat() as number[];
    for (const text of [us, si].filter((each) => each !== '-')) {
      const printed = readPrinted(text);
      expect(printed.values).toHaveLength(kept.length);
      // One step of the last printed digit: sources round either way (16 in as 407 mm, 2 pCi/L as 75 Bq/m³).
      for (const [index, value] of printed.values.entries()) {
        expect(Math.abs(kept[index] - value)).toBeLessThanOrEqual(printed.step);
      }
    }
  });
});

test('every criterion with a number is checked here', () => {
  const checked = new Set([...Object.values(PRINTED).flatMap((rows) => rows.map(([id]) => id)), ...ZERO]);
  const withNumber = criteria.filter(({ limit }) => limit).map(({ id }) => id);
  expect(withNumber.filter((id) => !checked.has(id))).toEqual([]);
  for (const id of ZERO) expect(byId.get(id)?.limit?.value, id).toBe(0);
});
