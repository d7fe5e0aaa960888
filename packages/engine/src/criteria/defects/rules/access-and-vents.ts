import { all, any, is, not } from '../../condition.ts';
import { cite } from '../../sources.ts';
import { answer, beyond, breach, breaches, type DefectRules, fact } from '../proof.ts';

const notVented = not(is('spaceType', 'vented'));

/** Ways in for people, air and pests. */
export const accessAndVentRules: Readonly<Record<string, DefectRules>> = {
  'access-door-leaks': {
    appliesWhen: notVented,
    proofs: [answer('accessDoorSealed', false)],
    also: [answer('accessDoorLatched', false)],
  },
  'door-frame-edge-open': {
    appliesWhen: is('linerPresent', true),
    proofs: [answer('linerDoorFrameSealed', false)],
  },
  'access-sill-too-low': {
    appliesWhen: not(is('accessKind', 'floor-hatch')),
    proofs: [
      beyond('accessSillAboveGradeM', '<', [0.1016, '4 in', '102 mm'], cite('closedCrawlGuide', 'read')),
    ],
    also: [breach('ACC-03c')],
  },
  'vent-loose-board': { proofs: [answer('ventFillerLoose', true)] },
  'vent-plug-wrong-foam': {
    appliesWhen: is('foamPresent', true),
    proofs: [answer('ventPanelShortOfR', true), ...breaches('FOM-02', 'FOM-03')],
    worse: [
      {
        severity: 3,
        because: 'foam is bare in a space with a flame',
        when: {
          by: 'all',
          parts: [answer('foamIgnitionBarrierFitted', false), fact('combustionAppliance', true)],
        },
      },
    ],
  },
  'foam-hides-termites': {
    appliesWhen: all(is('foamPresent', true), not(is('termiteZone', 'none'))),
    proofs: [
      beyond(
        'termiteStripM',
        '<',
        [0.0762, '3 in', '76 mm'],
        cite('northCarolina', 'quoted', 'R409', '2018'),
      ),
      ...breaches('TRM-01', 'TRM-02'),
    ],
  },
  'flood-opening-sealed': {
    appliesWhen: is('floodZone', true),
    proofs: breaches('FLD-01'),
    also: breaches('FLD-02a', 'FLD-02b', 'FLD-03'),
  },
  'half-vented': {
    appliesWhen: any(is('spaceType', 'closed'), is('dehumidifierPresent', true)),
    proofs: [answer('ventsOpen', true)],
  },
  'rim-and-floor-leaks': { proofs: [beyond('rimAndFloorHolesM2', '>', [0, '0 ft²', '0 m²'])] },
  'open-to-neighbor-cell': { appliesWhen: notVented, proofs: [answer('spaceSealedFromNeighbors', false)] },
  'path-obstructed': {
    proofs: breaches('APP-01a', 'APP-01b', 'APP-02'),
    hints: [
      beyond('passageHeightM', '<', [0.762, '30 in', '762 mm'], cite('irc', 'quoted', 'M1305.1.4', '2006')),
    ],
    worse: [
      {
        severity: 3,
        because: 'lower than the smallest access opening the code allows, so the equipment is out of reach',
        when: {
          by: 'all',
          parts: [
            beyond('passageHeightM', '<', [0.4064, '16 in', '406 mm'], cite('irc', 'quoted', 'R408.4')),
            fact('applianceInSpace', true),
          ],
        },
      },
    ],
  },
  rodents: { proofs: [fact('rodentSigns', true)] },
};
