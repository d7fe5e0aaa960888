import { all, type Condition, is } from '../condition.ts';
import type { CriterionSource } from '../criterion.ts';
import type { Overlay, OverlayChange } from '../overlay.ts';
import { cite } from '../sources.ts';

const system = is('radonSystem', true);
const CMR = cite('massachusetts', 'read', '780 CMR AF103.5.2');
const IAC = cite('illinois', 'quoted', '422.160(e)');

function lap(id: string, source: CriterionSource): OverlayChange {
  return {
    change: 'add',
    subject: 'radon',
    why: 'The state gives the lap of the membrane.',
    row: {
      id,
      title: 'Membrane lap',
      quantity: 'seamLapWidthM',
      comparison: '>=',
      limit: { value: 0.3048, us: '12 in', si: '305 mm' },
      kind: 'code',
      source,
      appliesWhen: system,
      sampling: { atLeast: 5, combine: 'each' },
      consequence: 'Suction draws room air through the seams instead of soil gas.',
    },
  };
}

function asked(
  id: string,
  title: string,
  quantity: 'seamsSealed' | 'linerEdgeMechanicallyFixed' | 'linerEdgeSealed' | 'pierWrapSealed',
  why: string,
  source: CriterionSource,
  appliesWhen: Condition = system,
): OverlayChange {
  return {
    change: 'add',
    subject: 'radon',
    why,
    row: {
      id,
      title,
      quantity,
      comparison: 'yes',
      kind: 'code',
      source,
      appliesWhen,
      consequence: 'Suction draws room air through the gap instead of soil gas.',
    },
  };
}

/** Massachusetts: lap, height and sealant of the radon membrane. */
export const massachusetts: Overlay = {
  id: 'J-06',
  place: 'Massachusetts',
  origin: 'law',
  changes: [
    lap('J-06a', CMR),
    {
      change: 'add',
      subject: 'radon',
      why: 'The state takes the membrane up the wall.',
      row: {
        id: 'J-06b',
        title: 'Membrane up the wall',
        quantity: 'linerEdgeHeightM',
        comparison: '>=',
        limit: { value: 0.1524, us: '6 in', si: '152 mm' },
        kind: 'code',
        source: CMR,
        appliesWhen: system,
        sampling: { atLeast: 4, combine: 'each' },
        consequence: 'Soil gas passes at the edge.',
      },
    },
    asked('J-06c', 'Membrane edge sealed', 'linerEdgeSealed', 'The state asks for a sealed edge.', CMR),
    {
      change: 'add',
      subject: 'radon',
      why: 'The state names the class of the sealant.',
      row: {
        id: 'J-06d',
        title: 'Sealant class at the membrane edge',
        quantity: 'sealantMovementClass',
        comparison: '>=',
        limit: { value: 25, us: '25', si: '25' },
        kind: 'code',
        source: CMR,
        appliesWhen: system,
        consequence: 'The bead tears when sheet and wall move.',
        remark: 'ASTM C920; the text opened prints another letter before the number, evidently a slip.',
      },
    },
  ],
};

/** Illinois: film, glued laps, edges under strips, sealed piers. */
export const illinois: Overlay = {
  id: 'J-07',
  place: 'Illinois',
  origin: 'law',
  changes: [
    {
      change: 'add',
      subject: 'radon',
      why: 'The state gives the thickness of the membrane.',
      row: {
        id: 'J-07a',
        title: 'Membrane thickness',
        quantity: 'linerThicknessM',
        comparison: '>=',
        limit: { value: 0.0001524, us: '6 mil', si: '0.15 mm' },
        kind: 'code',
        source: IAC,
        appliesWhen: system,
        consequence: 'Thin film tears and the suction is lost.',
      },
    },
    lap('J-07b', IAC),
    asked('J-07c', 'Membrane laps glued', 'seamsSealed', 'The state asks for glued laps.', IAC),
    asked(
      'J-07d',
      'Membrane edge held by strips',
      'linerEdgeMechanicallyFixed',
      'The state holds the edge by furring strips as well as glue.',
      IAC,
    ),
    asked('J-07e', 'Membrane edge glued', 'linerEdgeSealed', 'The state glues the edge as well.', IAC),
    asked(
      'J-07f',
      'Membrane sealed to piers',
      'pierWrapSealed',
      'The state asks for sealed piers.',
      IAC,
      all(system, is('piersPresent', true)),
    ),
  ],
};
