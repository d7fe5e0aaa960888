import { all, is, not } from '../../condition.ts';
import { cite } from '../../sources.ts';
import { answer, beyond, breach, breaches, type DefectRules, type Proof } from '../proof.ts';

const EIGHTH_LOST = beyond('sectionLossFraction', '>', [0.125, '12.5 %']);

/** 16 to 20 %: too wet to rest, not yet at the line of excessive moisture. */
const WATCH_BAND: Proof = {
  by: 'number',
  quantity: 'woodMoistureContent',
  comparison: 'within',
  limit: { value: [0.16, 0.2], us: '16-20 %', si: '16-20 %' },
  atLeast: 3,
  basis: cite('southCarolinaReport', 'quoted'),
};

/** Framing and floor or wall insulation. */
export const woodAndInsulationRules: Readonly<Record<string, DefectRules>> = {
  'wood-in-watch-band': { proofs: [WATCH_BAND], also: [breach('DHU-17')] },
  'wet-wood': {
    proofs: [beyond('woodMoistureContent', '>=', [0.2, '20 %'], cite('southCarolinaReport', 'quoted'), 3)],
    worse: [
      {
        severity: 4,
        because: 'at a bearing, where the load goes through',
        when: beyond('bearingMoistureContent', '>=', [0.2, '20 %'], cite('southCarolinaReport', 'quoted')),
      },
      { severity: 4, because: 'an eighth of the section is lost', when: EIGHTH_LOST },
    ],
  },
  'visible-mold': {
    proofs: [answer('moldGrowthPresent', true)],
    also: [beyond('moldAreaM2', '>', [0, '0 ft²', '0 m²'])],
    worse: [
      {
        severity: 3,
        because: '10 ft² or more',
        when: beyond(
          'moldAreaM2',
          '>=',
          [0.9290304, '10 ft²', '0.93 m²'],
          cite('epaMold', 'quoted', 'table 2'),
        ),
      },
    ],
  },
  'water-conducting-rot': { proofs: [answer('waterConductingRotSigns', true)] },
  'wood-near-earth': {
    proofs: breaches('WOD-01', 'WOD-02', 'WOD-03', 'WOD-04'),
    also: breaches('WOD-05', 'WOD-06a', 'WOD-06b', 'WOD-07', 'WOD-08'),
  },
  'termite-signs': {
    proofs: [answer('termiteOrBeetleSigns', true)],
    worse: [{ severity: 4, because: 'an eighth of the section is lost', when: EIGHTH_LOST }],
  },
  'mold-cleaned-not-verified': {
    appliesWhen: is('moldWorkUnderWay', true),
    proofs: breaches('MLD-08a', 'MLD-08b'),
    also: [breach('MLD-07')],
  },
  'wet-floor-batts': {
    appliesWhen: not(is('floorBattsPresent', false)),
    proofs: [answer('wetBattsPresent', true)],
    also: breaches('FOM-06a', 'FOM-06b'),
    hints: [breach('ISR-02')],
  },
  'crawl-walls-not-insulated': {
    appliesWhen: all(is('spaceType', 'closed')),
    proofs: breaches('UNV-12', 'INS-06'),
    also: breaches('INS-02a', 'INS-02b', 'INS-03a', 'INS-03b', 'INS-04a', 'INS-04b', 'INS-05a', 'INS-05b'),
  },
};
