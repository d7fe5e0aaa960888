import { all, is } from '../condition.ts';
import type { Overlay } from '../overlay.ts';
import { cite } from '../sources.ts';

const R408_1 = cite('oregon', 'quoted', 'R408.1', '2023');
const R408_3 = cite('oregon', 'quoted', 'R408.3', '2023');
const ventedAndCovered = all(is('spaceType', 'vented'), is('linerPresent', true));
const laps = { atLeast: 5, combine: 'each' } as const;
const twelve = { value: 0.3048, us: '12 in', si: '305 mm' };

/** Oregon: wide laps, cover well up the wall. */
export const oregon: Overlay = {
  id: 'J-02',
  place: 'Oregon',
  origin: 'law',
  changes: [
    {
      change: 'add',
      subject: 'liner',
      why: 'The state gives a lap for vented spaces too.',
      row: {
        id: 'J-02a',
        title: 'Ground cover of a vented space, lap',
        quantity: 'seamLapWidthM',
        comparison: '>=',
        limit: twelve,
        kind: 'code',
        source: R408_1,
        appliesWhen: ventedAndCovered,
        sampling: laps,
        consequence: 'The seam opens and lets vapor through.',
      },
    },
    {
      change: 'add',
      subject: 'liner',
      why: 'The state takes the cover up the wall in vented spaces too.',
      row: {
        id: 'J-02b',
        title: 'Ground cover of a vented space, up the wall',
        quantity: 'linerEdgeHeightM',
        comparison: '>=',
        limit: twelve,
        kind: 'code',
        source: R408_1,
        appliesWhen: ventedAndCovered,
        sampling: { atLeast: 4, combine: 'each' },
        consequence: 'The joint of floor and wall stays open to soil moisture.',
      },
    },
    {
      change: 'replace',
      criterionId: 'UNV-03',
      fields: {
        appliesWhen: all(is('spaceType', 'closed'), is('linerSeamsSealed', true)),
        remark: 'For sealed seams; see J-02c for seams that are not.',
      },
      why: 'The state takes the 6 in lap only where the seam is sealed.',
      source: R408_3,
    },
    {
      change: 'add',
      subject: 'liner',
      why: 'The state asks for twice the lap where the seam is not sealed.',
      row: {
        id: 'J-02c',
        title: 'Lap of an unsealed seam in a closed space',
        quantity: 'seamLapWidthM',
        comparison: '>=',
        limit: twelve,
        kind: 'code',
        source: R408_3,
        appliesWhen: all(is('spaceType', 'closed'), is('linerSeamsSealed', false)),
        sampling: laps,
        consequence: 'Vapor passes through the open seam.',
      },
    },
    {
      change: 'strike-out',
      criterionId: 'UNV-04',
      why: 'The state allows an unsealed seam when it is lapped 12 in.',
      source: R408_3,
    },
    {
      change: 'replace',
      criterionId: 'UNV-05',
      fields: { limit: twelve },
      why: 'The state takes the cover twice as far up the wall.',
      source: R408_3,
    },
  ],
};
