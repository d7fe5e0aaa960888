import { is } from '../../condition.ts';
import { answer, beyond, breach, breaches, type DefectRules, fact } from '../proof.ts';

const linerPresent = is('linerPresent', true);

/** Water on and in the ground, and what lies there. */
export const groundAndWaterRules: Readonly<Record<string, DefectRules>> = {
  'standing-water': {
    proofs: [beyond('standingWaterDepthM', '>', [0, '0 in', '0 mm'])],
    also: [fact('standingWater', true)],
  },
  'water-bed': {
    appliesWhen: linerPresent,
    proofs: [beyond('freeWaterUnderLinerM', '>', [0.003175, '1/8 in', '3 mm'])],
    also: [answer('waterMovesUnderLiner', true), beyond('waterBedClearTimeH', '>', [48, '48 h'])],
  },
  'water-on-liner': {
    appliesWhen: linerPresent,
    proofs: [answer('waterLyingOnLiner', true)],
    also: [beyond('linerPondingTimeH', '>', [24, '24 h'])],
    hints: breaches('LIN-15a', 'LIN-15c'),
  },
  'outside-water-let-in': {
    proofs: breaches('SIT-01', 'SIT-02', 'SIT-03a', 'SIT-03b'),
    hints: [breach('GRD-01')],
  },
  'damp-walls': { proofs: [answer('wallDamp', true)] },
  'water-let-in-from-plumbing-or-dryer': {
    proofs: [answer('plumbingLeakPresent', true), answer('exhaustEndsInCrawl', true)],
  },
  'debris-left': { proofs: [answer('organicDebrisPresent', true)] },
  'smell-from-organics': { appliesWhen: linerPresent, proofs: [answer('organicsUnderLiner', true)] },
};
