import { is } from '../../condition.ts';
import { cite } from '../../sources.ts';
import { answer, beyond, breach, breaches, type DefectRules } from '../proof.ts';

const sump = is('sumpPresent', true);
const drain = is('drainPresent', true);

/** Basin, pump, discharge and drain. */
export const sumpAndDrainRules: Readonly<Record<string, DefectRules>> = {
  'sump-lid-loose': {
    appliesWhen: sump,
    proofs: [answer('sumpLidSealed', false)],
    also: [answer('sumpLidFastened', false)],
  },
  'sump-lid-holes-open': {
    appliesWhen: sump,
    proofs: [answer('sumpLidPenetrationsSealed', false)],
    worse: [{ severity: 4, because: 'the cord is damaged: shock', when: answer('sumpCordDamaged', true) }],
  },
  'basin-rim-proud': {
    appliesWhen: sump,
    proofs: [beyond('floorInletRimAboveLinerM', '>', [0, '0 in', '0 mm'])],
  },
  'basin-too-small': {
    appliesWhen: sump,
    proofs: breaches('SMP-01a', 'SMP-01b'),
    also: [beyond('pumpStartsPerHour', '>', [10, '10 an hour'])],
  },
  'pump-or-discharge-faulty': {
    appliesWhen: sump,
    proofs: breaches('SMP-07a', 'DPR-09a', 'DPR-10a'),
    also: breaches('SMP-07b', 'DPR-10b', 'DPR-13b'),
    hints: breaches('DPR-09b', 'DPR-09c', 'DPR-13c'),
  },
  'no-alarm-or-back-up': {
    appliesWhen: sump,
    proofs: breaches('DPR-11a', 'DPR-12'),
    also: breaches('DPR-11b', 'DPR-11c'),
  },
  'drain-on-grade': { appliesWhen: drain, proofs: breaches('DPR-01a', 'DRN-05') },
  'drain-falls-wrong': {
    appliesWhen: drain,
    proofs: breaches('DPR-02a'),
    also: [breach('DPR-02b')],
    worse: [
      {
        severity: 3,
        because: 'the run falls away from its outlet',
        when: beyond('drainFallSlope', '<', [0, '0 in per ft']),
      },
    ],
  },
  'drain-without-filter': {
    appliesWhen: drain,
    proofs: [answer('drainFilterPresent', false)],
    worse: [
      {
        severity: 3,
        because: 'it is silting already',
        when: beyond('drainBlockedFraction', '>', [0.1, '10 %']),
      },
    ],
  },
  'drain-without-stone': {
    appliesWhen: drain,
    proofs: [
      beyond('stoneBelowPipeM', '<', [0.0508, '2 in', '51 mm'], cite('irc', 'quoted', 'R405.1')),
      beyond('stoneAbovePipeM', '<', [0.1524, '6 in', '152 mm'], cite('irc', 'quoted', 'R405.1')),
    ],
    also: [answer('drainStoneWashed', false)],
  },
  'drain-silted': {
    appliesWhen: drain,
    proofs: [beyond('drainBlockedFraction', '>', [0.1, '10 %'])],
    worse: [
      {
        severity: 3,
        because: 'more than half is blocked',
        when: beyond('drainBlockedFraction', '>', [0.5, '50 %']),
      },
    ],
  },
  'drain-disconnected': {
    appliesWhen: drain,
    proofs: [answer('drainJointsCoupled', false)],
    also: [
      answer('drainEntersBasin', false),
      answer('drainEndsCapped', false),
      answer('drainDischargeApproved', false),
    ],
  },
};
