import { all, is } from '../condition.ts';
import type { Overlay, OverlayChange } from '../overlay.ts';
import { cite } from '../sources.ts';

const R408_2 = cite('northCarolina', 'quoted', 'R408.2');
const R409 = cite('northCarolina', 'quoted', 'R409', '2018, 2024');
const closed = is('spaceType', 'closed');

/** Rows that the base catalogue carries as advice, since they are law only here. */
const lawHere: readonly OverlayChange[] = ['ACC-05a', 'ACC-05b', 'ACC-05c', 'ACC-06a', 'TRM-04b'].map(
  (criterionId) => ({
    change: 'replace',
    criterionId,
    fields: { kind: 'code', remark: 'From the chapter of this state on closed crawl spaces.' },
    why: 'The state has a chapter of its own for closed crawl spaces.',
    source: R409,
  }),
);

/** North Carolina: wide laps on vented floors, drained low spots and sealed doors in closed spaces. */
export const northCarolina: Overlay = {
  id: 'J-03',
  place: 'North Carolina',
  origin: 'law',
  changes: [
    {
      change: 'add',
      subject: 'liner',
      why: 'The state asks for a wider lap of the ground vapor retarder.',
      row: {
        id: 'J-03a',
        title: 'Ground vapor retarder, lap',
        quantity: 'seamLapWidthM',
        comparison: '>=',
        limit: { value: 0.3048, us: '12 in', si: '305 mm' },
        kind: 'code',
        source: R408_2,
        appliesWhen: is('linerPresent', true),
        sampling: { atLeast: 5, combine: 'each' },
        consequence: 'The seam opens and lets vapor through.',
        remark:
          'Low spots may be pierced to drain puddles on top, if ground water cannot come within 6 in (152 mm).',
      },
    },
    {
      change: 'add',
      subject: 'drain',
      why: 'The state asks for a drain or sump at each low spot of a closed space.',
      row: {
        id: 'J-03b',
        title: 'Low spots drained',
        quantity: 'lowSpotDrained',
        comparison: 'yes',
        kind: 'code',
        source: R409,
        appliesWhen: closed,
        consequence: 'A plumbing leak stands on the liner.',
      },
    },
    {
      change: 'add',
      subject: 'drain',
      why: 'The state keeps crawl drains apart from gutter drains.',
      row: {
        id: 'J-03c',
        title: 'Crawl drain apart from gutter drains',
        quantity: 'drainApartFromGutters',
        comparison: 'yes',
        kind: 'code',
        source: R409,
        appliesWhen: all(closed, is('drainPresent', true)),
        consequence: 'A blocked gutter drain pushes roof water into the space.',
      },
    },
    ...lawHere,
  ],
};
