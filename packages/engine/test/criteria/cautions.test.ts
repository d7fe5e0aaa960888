import { describe, expect, test } from 'vitest';
import {
  cautions,
  cautionsFor,
  criteriaSources,
  type JobFacts,
  type WorkStep,
} from '../../src/criteria/index.ts';

const idsFor = (step: WorkStep, facts: JobFacts) => cautionsFor(step, facts).map(({ id }) => id);

describe('standing cautions', () => {
  test('are the twenty-five hazards, each with a text, somebody to defer to, and a source', () => {
    const expected = Array.from({ length: 25 }, (_, index) => `SAF-${String(index + 1).padStart(2, '0')}`);
    expect(cautions.map(({ id }) => id).sort()).toEqual(expected);
    const known = new Set<string>(Object.values(criteriaSources).map(({ id }) => id));
    for (const caution of cautions) {
      expect(caution.text, caution.id).toMatch(/^[A-Z].*\.$/s);
      expect(caution.defersTo.length, caution.id).toBeGreaterThan(10);
      expect(caution.steps.length, caution.id).toBeGreaterThan(0);
      expect(known, caution.id).toContain(caution.source.id);
    }
  });

  test('never tell anybody that it is safe', () => {
    for (const { id, text } of cautions) {
      expect(text, id).not.toMatch(
        /\b(is|are|be) safe\b|safe to (enter|work|close)|no danger|harmless\b(?! or toxic)/i,
      );
    }
  });

  test('show on entry whatever is known', () => {
    for (const facts of [
      {},
      { gasSmell: false, sewagePresent: false, electricityInSpace: false },
    ] as JobFacts[]) {
      for (const id of ['SAF-01', 'SAF-02', 'SAF-03', 'SAF-04', 'SAF-05'])
        expect(idsFor('enter', facts)).toContain(id);
    }
  });

  test('an unanswered fact hides nothing, a clear no does', () => {
    expect(idsFor('close-space', {})).toEqual(['SAF-17', 'SAF-18', 'SAF-19', 'SAF-23']);
    expect(idsFor('close-space', { combustionAppliance: false })).toEqual(['SAF-23']);
    expect(idsFor('clear-out', { rodentSigns: false })).not.toContain('SAF-09');
    expect(idsFor('clear-out', { rodentSigns: true })).toContain('SAF-09');
    expect(idsFor('survey', {})).toContain('SAF-07');
  });

  test('a licensed trade is named where the work is licensed', () => {
    const trade = Object.fromEntries(cautions.map(({ id, licensedTrade }) => [id, licensedTrade]));
    expect(trade).toMatchObject({
      'SAF-05': 'electrician',
      'SAF-15': 'structural-engineer',
      'SAF-17': 'gas-fitter',
      'SAF-18': 'gas-fitter',
      'SAF-20': 'pest-control-applicator',
      'SAF-23': 'radon-professional',
    });
  });

  // 29 CFR 1926.1153 (opened), CDC hantavirus pages (opened), IFGC 304.5 (quoted).
  test.each([
    ['SAF-11', /25 and the limit 50 micrograms per cubic meter over 8 hours/],
    ['SAF-09', /at least 30 minutes .* 5 minutes with bleach, 1 part to 9 of water/s],
    ['SAF-17', /50 ft³ per 1000 Btu\/h \(4\.8 m³\/kW\)/],
    ['SAF-16', /deeper than 5 ft \(1\.5 m\)/],
  ])('%s carries its figures', (id, figures) => {
    expect(cautions.find((each) => each.id === id)?.text).toMatch(figures);
  });
});
