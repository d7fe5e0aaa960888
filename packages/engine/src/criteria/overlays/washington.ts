import { is, not } from '../condition.ts';
import type { Overlay } from '../overlay.ts';
import { cite } from '../sources.ts';

const R408 = cite('washington', 'read', 'WAC 51-51-0408 (R408)');
const notSlab = not(is('floorSurface', 'slab'));

/** Washington: more modest vents, a ground cover everywhere. */
export const washington: Overlay = {
  id: 'J-01',
  place: 'Washington',
  origin: 'law',
  changes: [
    {
      change: 'replace',
      criterionId: 'VNT-01',
      fields: { limit: { value: 1 / 300, us: '1/300', si: '1/300' } },
      why: 'The state asks for half the vent area, together with a ground cover in every case.',
      source: R408,
    },
    {
      change: 'add',
      subject: 'liner-material',
      why: 'The state asks for a black film on all earth unless there is a slab.',
      row: {
        id: 'J-01a',
        title: 'Ground cover film, thickness',
        quantity: 'linerThicknessM',
        comparison: '>=',
        limit: { value: 0.0001524, us: '6 mil', si: '0.15 mm' },
        kind: 'code',
        source: R408,
        appliesWhen: notSlab,
        consequence: 'Thin film tears and ages early.',
        remark: 'Black. Not asked over a slab of at least 2 in.',
      },
    },
    {
      change: 'add',
      subject: 'liner',
      why: 'The state asks for a lap in every case.',
      row: {
        id: 'J-01b',
        title: 'Ground cover, lap',
        quantity: 'seamLapWidthM',
        comparison: '>=',
        limit: { value: 0.1524, us: '6 in', si: '152 mm' },
        kind: 'code',
        source: R408,
        appliesWhen: notSlab,
        sampling: { atLeast: 5, combine: 'each' },
        consequence: 'The seam opens and lets vapor through.',
      },
    },
    {
      change: 'add',
      subject: 'liner',
      why: 'The state asks for the film to be carried to the wall.',
      row: {
        id: 'J-01c',
        title: 'Ground cover carried to the wall',
        quantity: 'linerReachesWalls',
        comparison: 'yes',
        kind: 'code',
        source: R408,
        appliesWhen: notSlab,
        consequence: 'Bare earth along the wall keeps wetting the space.',
      },
    },
    {
      change: 'add',
      subject: 'radon',
      why: 'In this state a closed space brings in the radon appendix.',
      row: {
        id: 'RAD-06',
        title: 'Soil-gas system with a closed space',
        quantity: 'radonSystemInstalled',
        comparison: 'yes',
        kind: 'code',
        source: cite('washington', 'quoted', 'WAC 51-51-0332'),
        appliesWhen: is('spaceType', 'closed'),
        consequence: 'Soil gas that the vents used to carry off goes into the house.',
        licensedTrade: 'radon-professional',
      },
    },
  ],
};
