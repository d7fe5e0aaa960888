import { causes } from '@undercroft/engine';
import { describe, expect, it } from 'vitest';
import { nodeTitle, nodeTitles } from '../../../src/screens/causes/chain-titles.ts';
import { SIGN_SPANISH } from '../../../src/screens/causes/sign-spanish.ts';

describe('the chain of causes', () => {
  it('calls every node what the engine calls it, and has a Spanish word for it', () => {
    expect(Object.keys(nodeTitles('en')).sort()).toEqual(causes.causeNodes.map((n) => n.key).sort());
    for (const { key, title } of causes.causeNodes) {
      expect(nodeTitle(key, 'en'), key).toBe(title);
      expect(nodeTitle(key, 'es'), key).not.toBe(title);
      expect(nodeTitle(key, 'es').length, key).toBeLessThanOrEqual(36);
    }
  });

  it('has Spanish for every measurement, and for none that is gone', () => {
    expect(Object.keys(SIGN_SPANISH).sort()).toEqual(causes.causeSigns.map((s) => s.key).sort());
    for (const [key, [title, how]] of Object.entries(SIGN_SPANISH)) {
      expect(title, key).not.toMatch(/\.$/);
      expect(how, key).toMatch(/\.$/);
    }
  });
});
