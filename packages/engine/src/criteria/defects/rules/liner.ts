import { all, is, not } from '../../condition.ts';
import { cite } from '../../sources.ts';
import { answer, beyond, breach, breaches, type DefectRules } from '../proof.ts';

const linerPresent = is('linerPresent', true);

/** Ground liner: sheet, seams, edges, piers, penetrations. */
export const linerRules: Readonly<Record<string, DefectRules>> = {
  'seams-under-lapped': {
    appliesWhen: linerPresent,
    proofs: breaches('LIN-01', 'LIN-02', 'UNV-03', 'RAD-03b', 'RAD-07a', 'RAD-07b'),
    worse: [
      { severity: 3, because: 'seams are short and not closed as well', when: answer('seamsSealed', false) },
    ],
  },
  'seams-not-sealed': { appliesWhen: linerPresent, proofs: [answer('seamsSealed', false)] },
  'glued-edge-letting-go': {
    appliesWhen: linerPresent,
    proofs: [answer('linerEdgeAttached', false)],
    hints: [answer('linerEdgeMechanicallyFixed', false)],
    worse: [{ severity: 3, because: 'more than a tenth of the edge is down', when: { shareAbove: 0.1 } }],
  },
  'wall-edge-at-wrong-height': {
    appliesWhen: linerPresent,
    proofs: [
      beyond('linerEdgeHeightM', '<', [0.1524, '6 in', '152 mm'], cite('irc', 'quoted', 'R408.3 item 1'), 4),
      breach('LIN-07'),
    ],
    also: [answer('linerTouchesUntreatedWood', true), breach('LIN-06b')],
    worse: [
      {
        severity: 3,
        because: 'the liner covers the sill, where termites climb unseen',
        when: answer('linerTouchesUntreatedWood', true),
      },
      {
        severity: 3,
        because: 'no masonry is left free under the sill, so termites climb unseen',
        when: beyond(
          'termiteStripM',
          '<=',
          [0, '0 in', '0 mm'],
          cite('northCarolina', 'quoted', 'R409', '2018'),
        ),
      },
    ],
  },
  'bare-strip-under-ducts': {
    appliesWhen: linerPresent,
    proofs: [answer('linerContinuousUnderDucts', false)],
    hints: [breach('DUC-01')],
  },
  'piers-not-wrapped': {
    appliesWhen: all(linerPresent, is('piersPresent', true)),
    proofs: breaches('LIN-08a', 'LIN-08b'),
    also: [breach('LIN-08c')],
    worse: [{ severity: 3, because: 'wood bears on the piers', when: answer('pierCarriesWood', true) }],
  },
  'exposed-earth': {
    appliesWhen: not(is('floorSurface', 'slab')),
    proofs: [beyond('exposedEarthFraction', '>', [0, '0 %'], cite('irc', 'quoted', 'R408.3 item 1'))],
    worse: [
      {
        severity: 3,
        because: 'more than 2 % of the floor is bare',
        when: beyond('exposedEarthFraction', '>', [0.02, '2 %']),
      },
    ],
  },
  'liner-torn-or-thin': {
    appliesWhen: linerPresent,
    proofs: [
      beyond('linerHoleCount', '>', [0, '0']),
      ...breaches('MAT-05a', 'MAT-05b', 'MAT-06', 'MAT-01', 'UNV-02'),
    ],
    also: breaches('MAT-02a', 'MAT-02b', 'MAT-02c', 'MAT-03a', 'MAT-03b', 'MAT-03c', 'MAT-04', 'RAD-08'),
  },
  'penetrations-open': { appliesWhen: linerPresent, proofs: [answer('penetrationsSealed', false)] },
  'damp-under-liner': { appliesWhen: linerPresent, proofs: [answer('dropletsUnderLiner', true)] },
  'liner-loose-or-staked': {
    appliesWhen: linerPresent,
    proofs: [answer('stakesThroughLiner', true), beyond('linerFoldHeightM', '>', [0.0508, '2 in', '51 mm'])],
    worse: [
      { severity: 2, because: 'stakes make holes that tear on', when: answer('stakesThroughLiner', true) },
    ],
  },
  'lap-against-flow': { appliesWhen: linerPresent, proofs: breaches('LIN-04a', 'LIN-04b') },
  'old-liner-below': {
    appliesWhen: linerPresent,
    proofs: [answer('oldLinerLeft', true)],
    worse: [
      { severity: 3, because: 'water lies between the two sheets', when: answer('oldLinerDryBelow', false) },
    ],
  },
  'smell-from-liner': { appliesWhen: linerPresent, proofs: [answer('linerScrimWet', true)] },
};
