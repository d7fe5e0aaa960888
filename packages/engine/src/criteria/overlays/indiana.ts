import { all, is } from '../condition.ts';
import type { Overlay } from '../overlay.ts';
import { cite } from '../sources.ts';

const R408_3 = cite('indiana', 'read', '675 IAC 14-4.4-54 (R408.3)', '2020');
const closed = is('spaceType', 'closed');

/** Indiana: room and power for a dehumidifier, concrete over the film with conditioned supply. */
export const indiana: Overlay = {
  id: 'J-05',
  place: 'Indiana',
  origin: 'law',
  changes: [
    {
      change: 'strike-out',
      criterionId: 'UNV-10',
      why: 'The state replaces the item on dehumidification by room and power for one.',
      source: R408_3,
    },
    {
      change: 'add',
      subject: 'unvented',
      why: 'The state asks for a hard pad beside the sump or drain.',
      row: {
        id: 'J-05a',
        title: 'Hard pad for a dehumidifier',
        quantity: 'dehumidifierPadSideM',
        comparison: '>=',
        limit: { value: 0.4064, us: '16 in', si: '406 mm' },
        kind: 'code',
        source: R408_3,
        appliesWhen: closed,
        consequence: 'A dehumidifier that is needed later stands on the film and tips.',
        remark: '16 in by 16 in.',
      },
    },
    {
      change: 'add',
      subject: 'unvented',
      why: 'The state asks for a receptacle beside the sump or drain.',
      row: {
        id: 'J-05b',
        title: 'Receptacle beside the sump or drain',
        quantity: 'receptacleAtSump',
        comparison: 'yes',
        kind: 'code',
        source: R408_3,
        appliesWhen: closed,
        consequence: 'A dehumidifier that is needed later hangs on a long cord.',
        caution: 'SAF-05',
        licensedTrade: 'electrician',
      },
    },
    {
      change: 'add',
      subject: 'unvented',
      why: 'The state protects the film by concrete where conditioned air is supplied.',
      row: {
        id: 'J-05c',
        title: 'Concrete over the film with conditioned supply',
        quantity: 'concreteOverLinerM',
        comparison: '>=',
        limit: { value: 0.0508, us: '2 in', si: '51 mm' },
        kind: 'code',
        source: R408_3,
        appliesWhen: all(closed, is('dryingOption', 'supply')),
        consequence: 'The film is worn and torn.',
      },
    },
  ],
};
