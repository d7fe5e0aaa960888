import { describe, expect, test } from 'vitest';
import { DEFECT_SIGHTINGS, defectSigns } from '../../src/causes/catalogue/defect-signs.ts';
import { causeChain } from '../../src/causes/chain.ts';
import { causeLinks } from '../../src/causes/links.ts';
import { type CauseKey, causeNode, causeNodes } from '../../src/causes/node.ts';
import { outcomeChances } from '../../src/causes/outcome-model.ts';
import { signUnit } from '../../src/causes/sign.ts';
import { causeSigns } from '../../src/causes/signs.ts';
import { causesSources } from '../../src/causes/sources.ts';
import { defects } from '../../src/criteria/defects/defects.ts';

const effects = [...new Set(causeLinks.map((link) => link.to))];

describe('the nodes', () => {
  test('have short titles and a sentence each, and none stands alone', () => {
    for (const { key, title, meaning } of causeNodes) {
      expect(title.length, key).toBeLessThanOrEqual(30);
      expect(meaning, key).toMatch(/\.$/);
      expect(
        causeLinks.some((link) => link.from === key || link.to === key),
        key,
      ).toBe(true);
    }
    expect(new Set(causeNodes.map((node) => node.key)).size).toBe(causeNodes.length);
  });

  test('causes begin a chain, and what is found or follows is explained', () => {
    for (const { key, kind } of causeNodes) {
      expect(effects.includes(key), key).toBe(kind !== 'cause');
    }
  });
});

describe('the links', () => {
  test('run in no circle', () => {
    expect(() => causeChain({ seen: [...effects], absent: [], ruledOut: [], evidence: [] })).not.toThrow();
    const circle = [...causeLinks, { ...causeLinks[0], from: 'mold' as const, to: 'wet-wood' as const }];
    expect(() =>
      causeChain({ seen: ['mold'], absent: [], ruledOut: [], evidence: [], links: circle }),
    ).toThrow(/circle/);
  });

  test.each(effects)('of "%s" are told once, with priors that leave room for what is not listed', (to) => {
    const links = causeLinks.filter((link) => link.to === to);
    expect(new Set(links.map((link) => link.from)).size).toBe(links.length);
    const sum = links.reduce((all, link) => all + link.prior, 0);
    expect(sum).toBeGreaterThan(0.75);
    expect(sum).toBeLessThanOrEqual(1);
    for (const { from, prior, reason, source } of links) {
      expect(prior, from).toBeGreaterThan(0);
      expect(reason, from).toMatch(/\.$/);
      expect(Object.values(causesSources), from).toContain(source);
    }
  });
});

describe('the signs', () => {
  test('have keys of their own', () => {
    expect(new Set(causeSigns.map((sign) => sign.key)).size).toBe(causeSigns.length);
  });

  test.each(causeSigns.map((sign) => [sign.key, sign] as const))(
    '"%s" has chances that can be',
    (_key, sign) => {
      const { model } = sign;
      expect(signUnit(sign) === 'yes-no').toBe(model.kind === 'answer');
      expect(sign.unit === undefined).toBe(sign.quantity !== undefined || model.kind === 'answer');
      const told = Object.keys(model.tells) as CauseKey[];
      expect(told.length).toBeGreaterThan(0);
      const chances = outcomeChances(model);
      for (const list of [chances.otherwise, ...told.map((node) => chances.of(node))]) {
        expect(list.length).toBe(chances.outcomes.length);
        expect(list.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
        if (model.kind !== 'normal') for (const chance of list) expect(chance).toBeGreaterThan(0);
      }
      if (model.kind === 'bands') {
        expect([...model.edges].sort((a, b) => a - b)).toEqual([...model.edges]);
      }
    },
  );

  test.each(causeSigns.map((sign) => [sign.key, sign] as const))(
    '"%s" tells about explanations that its effects have',
    (_key, sign) => {
      for (const node of Object.keys(sign.model.tells)) {
        const explained = causeLinks.filter((link) => link.from === node).map((link) => link.to);
        expect(
          explained.some((to) => sign.of === undefined || sign.of.includes(to)),
          node,
        ).toBe(true);
      }
      expect(sign.how).toMatch(/\.$/);
      expect(sign.reason).toMatch(/\.$/);
      expect(sign.minutes).toBeGreaterThan(0);
    },
  );

  test('leave no cause untold but those that nothing on site can tell', () => {
    const told = new Set(causeSigns.flatMap((sign) => Object.keys(sign.model.tells)));
    const untold = causeNodes.filter((node) => node.kind === 'cause' && !told.has(node.key));
    expect(untold.map((node) => node.key)).toEqual([]);
  });

  test('of one effect differ: every condition with several explanations has a sign', () => {
    for (const to of effects) {
      if (causeNode(to).kind !== 'condition') continue;
      const rivals = causeLinks.filter((link) => link.to === to).map((link) => link.from);
      const signs = causeSigns.filter(
        (sign) =>
          (sign.of === undefined || sign.of.includes(to)) && rivals.some((r) => r in sign.model.tells),
      );
      expect(signs.length, to).toBeGreaterThan(0);
    }
  });
});

describe('defects that speak for an explanation', () => {
  const known = new Set(defects.map((defect) => defect.key));

  test.each(defectSigns.map((sign) => [`${sign.defect} for ${sign.explains}`, sign] as const))(
    '%s',
    (_name, sign) => {
      expect(known.has(sign.defect)).toBe(true);
      const explained = causeLinks.filter((link) => link.from === sign.explains).map((link) => link.to);
      expect(explained.some((to) => sign.of === undefined || sign.of.includes(to))).toBe(true);
    },
  );

  test('and those that are a sighting are in the catalogue', () => {
    for (const [defect, key] of Object.entries(DEFECT_SIGHTINGS)) {
      expect(known.has(defect), defect).toBe(true);
      expect(causeNode(key).kind, defect).not.toBe('cause');
    }
  });
});
