import { describe, expect, it } from 'vitest';
import type { Proof } from '../../../src/criteria/defects/proof.ts';
import { defectRules } from '../../../src/criteria/defects/rules.ts';
import { criteria } from '../../../src/index.ts';

const { defects, defectOf, cautions, findQuantity, REPAIR_ORDER } = criteria;
const keys = new Set(defects.map((d) => d.key));

describe('the catalogue of defects', () => {
  it('names each defect once, by a key that a finding of the record can hold', () => {
    expect(keys.size).toBe(defects.length);
    expect(defects.length).toBeGreaterThanOrEqual(65);
    for (const { key } of defects) {
      expect(key).toMatch(/^[a-z][a-z0-9-]{1,60}$/);
      expect(defectOf(key)?.key).toBe(key);
    }
    expect(defectOf('other')).toBeUndefined();
  });

  it('says everything in both languages', () => {
    for (const { key, name, seen, proof, remedy } of defects) {
      for (const text of [name, seen, proof, remedy]) {
        expect(text.en.length, key).toBeGreaterThan(3);
        expect(text.es.length, key).toBeGreaterThan(3);
        expect(text.es, key).not.toBe(text.en);
      }
    }
    const names = defects.map((d) => d.name.en);
    expect(new Set(names).size).toBe(names.length);
  });

  it('rests on criteria, quantities and cautions that exist', () => {
    const ids = criteria.criteria.map((c) => c.id);
    for (const defect of defects) {
      for (const id of defect.criteria) {
        const found = ids.some((known) => known === id || known.replace(/[a-z]$/, '') === id);
        expect(found, `${defect.key}: ${id}`).toBe(true);
      }
      if (defect.quantity !== undefined) expect(findQuantity(defect.quantity), defect.key).toBeDefined();
      if (defect.caution !== undefined) {
        expect(
          cautions.map((c) => c.id),
          defect.key,
        ).toContain(defect.caution);
      }
      expect(REPAIR_ORDER).toContain(defect.step);
    }
  });

  it('proves by criteria that exist, and grades only upward', () => {
    const ids = new Set(criteria.criteria.map((c) => c.id));
    const check = (proof: Proof): void => {
      if (proof.by === 'criterion') expect(ids.has(proof.id), proof.id).toBe(true);
      if (proof.by === 'all') proof.parts.forEach(check);
      if (proof.by !== 'number' && proof.by !== 'answer') return;
      const unit = findQuantity(proof.quantity)?.unit;
      expect(unit === 'yes-no', proof.quantity).toBe(proof.by === 'answer');
    };
    for (const { key, severity } of defects) {
      const { proofs, also = [], hints = [], worse = [] } = defectRules[key];
      expect(proofs.length, key).toBeGreaterThan(0);
      for (const proof of [...proofs, ...also, ...hints]) check(proof);
      for (const one of worse) {
        expect(one.severity, key).toBeGreaterThan(severity);
        if ('by' in one.when) check(one.when);
      }
    }
  });

  it('links causes and consequences to defects of the catalogue, and none to itself', () => {
    for (const { key, causedBy, leadsTo } of defects) {
      for (const other of [...causedBy, ...leadsTo]) {
        expect(keys.has(other), `${key} -> ${other}`).toBe(true);
        expect(other).not.toBe(key);
      }
    }
  });

  it('grades damp under a liner as no defect, and what can kill as 4', () => {
    expect(defectOf('damp-under-liner')?.severity).toBe(0);
    for (const key of ['gas-appliance-sealed-in', 'bad-air', 'flood-opening-sealed', 'supports-unsound']) {
      expect(defectOf(key)?.severity, key).toBe(4);
    }
    for (const { key, severity, licensedTrade, caution } of defects) {
      if (severity === 4) expect(licensedTrade ?? caution, key).toBeDefined();
    }
  });
});
