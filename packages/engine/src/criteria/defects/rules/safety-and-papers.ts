import { all, is, not } from '../../condition.ts';
import { answer, beyond, breaches, type DefectRules, fact } from '../proof.ts';

/** What can hurt somebody, and what should be on file. */
export const safetyAndPaperRules: Readonly<Record<string, DefectRules>> = {
  'gas-appliance-sealed-in': {
    appliesWhen: all(is('combustionAppliance', true), not(is('spaceType', 'vented'))),
    proofs: breaches('SAF-17a', 'SAF-18a'),
    also: breaches('EXS-02'),
    hints: [fact('spaceType', 'closed')],
  },
  'supports-unsound': {
    proofs: [fact('supportsDoubtful', true)],
    also: [beyond('sectionLossFraction', '>', [0.125, '12.5 %']), ...breaches('SAF-15a')],
  },
  'no-light-wrong-power': {
    proofs: [answer('gfciProtected', false), answer('flexibleCordAsWiring', true)],
    also: [
      answer('lightingGfciProtected', false),
      answer('lightSwitchAtEntry', false),
      ...breaches('APP-07a', 'APP-07b'),
    ],
  },
  'bad-air': { proofs: breaches('SAF-03a', 'SAF-03b', 'SAF-03c', 'SAF-03d') },
  'papers-missing': {
    proofs: [answer('handoverFileComplete', false)],
    also: [answer('membraneLabeled', false)],
  },
  'radon-not-retested': {
    appliesWhen: is('spaceType', 'closed'),
    proofs: [answer('radonTestedSinceWork', false)],
    also: [beyond('radonTestAgeYears', '>', [2, '2 years'])],
  },
};
