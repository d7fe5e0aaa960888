import { describe, expect, test } from 'vitest';
import type { Proof } from '../../src/criteria/defects/proof.ts';
import { defectRules } from '../../src/criteria/defects/rules.ts';
import {
  adopt,
  baseCatalogue,
  type Criterion,
  cautions,
  criteria,
  criteriaSources,
  defects,
  findQuantity,
  overlays,
  quantities,
} from '../../src/criteria/index.ts';

const everywhere: readonly Criterion[] = [
  ...criteria,
  ...adopt(baseCatalogue, overlays).amendments.flatMap(({ after }) => (after ? [after] : [])),
];
const CODE_WORDS =
  /\b(IRC|IECC|IMC|IPC|IFGC|UPC|NEC|ASTM|ASHRAE|AARST|CFR|ACI|NFPA|FEMA|EPA|ISO)\b|\bR\d{3}|§/;

describe('the catalogue', () => {
  test('covers all that a surveyor can observe', () => {
    expect(criteria.length).toBeGreaterThanOrEqual(250);
    const prefixes = new Set(criteria.map(({ id }) => id.split('-')[0]));
    for (const prefix of [
      'VNT UNV ACC DEB GRD FLD APP ELE EXH DUC CON SMP DRN SIT WOD TRM FOM INS RAD',
      'MAT LIN DPR DHU EXS WMC MLD BOR ROT ISR SAF',
    ].flatMap((line) => line.split(' '))) {
      expect(prefixes, prefix).toContain(prefix);
    }
  });

  test('ids are unique and stable in form', () => {
    const ids = criteria.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^([A-Z]{3}-\d{2}[a-f]?|[a-z]+(-[a-z]+)*)$/);
  });

  test('titles are unique within a subject', () => {
    const titles = criteria.map(({ subject, title }) => `${subject}: ${title}`);
    expect(new Set(titles).size).toBe(titles.length);
  });

  test.each(everywhere.map((row) => [row.id, row] as const))('%s is whole', (_id, row) => {
    const quantity = findQuantity(row.quantity);
    expect(quantity).toBeDefined();
    expect(row.unit).toBe(quantity?.unit);
    const answered = row.comparison === 'yes' || row.comparison === 'no';
    expect(answered).toBe(row.unit === 'yes-no');
    expect(row.limit === undefined).toBe(answered);
    expect(Number.isInteger(row.sampling.atLeast) && row.sampling.atLeast >= 1).toBe(true);
    expect(row.consequence).toMatch(/^[A-Z0-9].*\.$/);
    expect(row.title).not.toMatch(/\.$/);
    if (row.caution) expect(cautions.map(({ id }) => id)).toContain(row.caution);
    if (row.limit) {
      const values = [row.limit.value].flat() as number[];
      expect(values).toHaveLength(row.comparison === 'within' ? 2 : 1);
      const [low, high] = quantity?.range ?? [0, 0];
      for (const value of values) {
        expect(value).toBeGreaterThanOrEqual(low);
        expect(value).toBeLessThanOrEqual(high);
      }
    }
  });

  test('every source is registered and says how well it is known', () => {
    const known = new Map(Object.values(criteriaSources).map((source) => [source.id as string, source]));
    const order = ['read', 'quoted', 'computed', 'memory', 'practice'];
    for (const { id, source } of everywhere) {
      expect(order, id).toContain(source.provenance);
      const publication = known.get(source.id);
      expect(publication?.citation, id).toBe(source.citation);
      // A figure is never known better than the publication it stands in.
      expect(order.indexOf(source.provenance), id).toBeGreaterThanOrEqual(
        order.indexOf(publication?.provenance ?? 'practice'),
      );
    }
  });

  test('practice is never dressed up as code, and nothing else leans on habit', () => {
    for (const row of everywhere) {
      if (row.kind === 'practice') {
        expect(row.source, row.id).toEqual(criteriaSources.practice);
        const words = [row.title, row.consequence, row.remark, row.limit?.us, row.limit?.si].join(' ');
        expect(words, row.id).not.toMatch(CODE_WORDS);
      } else {
        expect(row.source.provenance, row.id).not.toBe('practice');
        expect(row.source.citation, row.id).not.toMatch(/practice/i);
      }
    }
  });

  test('law of one place is advice elsewhere', () => {
    const local =
      /North Carolina|South Carolina|Illinois|Massachusetts|Washington|Indiana|Municipal Code of Chicago/;
    const rows = criteria.filter(({ source }) => local.test(source.citation));
    expect(rows.length).toBeGreaterThan(5);
    for (const { id, kind } of rows) expect(kind, id).toBe('guide');
  });

  test('work on wiring, flames and loaded members carries a caution or a licensed trade', () => {
    for (const row of criteria.filter(({ subject }) => subject === 'electricity')) {
      expect(row.caution, row.id).toBeDefined();
      expect(row.licensedTrade, row.id).toBe('electrician');
    }
    for (const row of criteria.filter(({ id }) => /^(SAF-1[78]|ROT-0[13]|RAD-1[34])/.test(id))) {
      expect(row.caution, row.id).toBeDefined();
    }
  });

  test('words are American', () => {
    const text = JSON.stringify([everywhere, quantities, cautions, overlays, defects, defectRules]);
    expect(text).not.toMatch(
      /\b(mould|vapour|grey|colour|odour|fibre|metre|litre|licence|neighbour|centre|aluminium|louvre|draught|kerb|storey)/i,
    );
  });
});

describe('the quantities', () => {
  const all = Object.values(quantities);

  test('each is named, explained and placed', () => {
    for (const { key, title, measured, range, unit } of all) {
      expect(key).toMatch(/^[a-z][A-Za-z0-9]{1,80}$/);
      expect(title, key).not.toMatch(/\.$/);
      expect(measured, key).toMatch(/^[A-Z].*\.$/);
      expect(range === undefined, key).toBe(unit === 'yes-no');
      if (range) expect(range[0], key).toBeLessThan(range[1]);
    }
  });

  test('lengths, areas and pressures end in their unit', () => {
    const ending: Record<string, RegExp> = {
      m: /M$/,
      'm²': /M2$/,
      Pa: /Pa$/,
      K: /K$/,
      ppm: /Ppm$/,
      h: /H$/,
      'Bq/m³': /BqPerM3$/,
      'kg/m³': /KgM3$/,
      month: /Months$/,
      year: /Years$/,
    };
    for (const { key, unit } of all) if (ending[unit]) expect(key).toMatch(ending[unit]);
  });

  test('each is judged somewhere, by a criterion or the proof of a defect', () => {
    const used = new Set<string>(everywhere.map(({ quantity }) => quantity));
    const look = (proof: Proof): void => {
      if ('quantity' in proof) used.add(proof.quantity);
      if ('parts' in proof) proof.parts.forEach(look);
    };
    for (const { proofs, also = [], hints = [], worse = [] } of Object.values(defectRules)) {
      for (const proof of [...proofs, ...also, ...hints]) look(proof);
      for (const { when } of worse) if ('by' in when) look(when);
    }
    expect(all.map(({ key }) => key).filter((key) => !used.has(key))).toEqual([]);
  });

  test('an unknown name is not found, even one that every object has', () => {
    expect(findQuantity('toString')).toBeUndefined();
    expect(findQuantity('seamLapWidthIn')).toBeUndefined();
    expect(findQuantity('seamLapWidthM')?.unit).toBe('m');
  });
});
