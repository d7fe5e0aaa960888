import type { Caution } from '../caution.ts';
import { always } from '../condition.ts';
import { cite } from '../sources.ts';

/** Structure and soil. */
export const workCautions: readonly Caution[] = [
  {
    id: 'SAF-15',
    title: 'Loaded members',
    steps: ['survey', 'lift-floor', 'treat-wood', 'clear-out'],
    showsWhen: always,
    text:
      'Do not jack, cut, or pull a shim without a design. Keep out from under a failed girder. Shoring stands on pads ' +
      'and cribbing, and a floor is lifted slowly.',
    defersTo: 'A licensed structural engineer',
    licensedTrade: 'structural-engineer',
    source: cite('irc', 'memory', 'R502, R407', '2018'),
  },
  {
    id: 'SAF-16',
    title: 'Trench beside a footing',
    steps: ['dig'],
    showsWhen: always,
    text:
      'A trench too near or too deep undermines the footing. Stay above a 45 degree line from its edge, dig in short ' +
      'lengths, and protect any trench deeper than 5 ft (1.5 m).',
    defersTo: 'A licensed structural engineer and the safety authority of the place',
    licensedTrade: 'structural-engineer',
    source: cite('oshaConstruction', 'memory', '1926.652'),
  },
];
