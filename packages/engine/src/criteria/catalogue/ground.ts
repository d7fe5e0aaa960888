import { all, is } from '../condition.ts';
import { criteriaOf } from '../criterion-row.ts';
import { cite, commonPractice } from '../sources.ts';

/** Floor of the space: debris, level, standing water. */
export const ground = criteriaOf('ground', [
  {
    id: 'DEB-01',
    title: 'No organic matter or building waste left',
    quantity: 'organicDebrisPresent',
    comparison: 'no',
    kind: 'code',
    source: cite('irc', 'quoted', 'R408.5', '2021'),
    consequence: 'It feeds termites and mold, smells under the liner and punctures it.',
    caution: 'SAF-14',
  },
  {
    id: 'GRD-01',
    title: 'Inside floor not below outside grade where water can reach it',
    quantity: 'insideGradeBelowOutsideM',
    comparison: '<=',
    limit: { value: 0, us: '0 in', si: '0 mm' },
    kind: 'code',
    source: cite('irc', 'memory', 'R408.6', '2018'),
    appliesWhen: all(is('groundWaterOrPoorRunoff', true), is('drainPresent', false)),
    consequence: 'Ground or surface water rises into the space.',
    remark:
      'Asked where ground water can come within 6 in (152 mm) of the floor or surface water does not run off, unless an ' +
      'approved drain is there. Outcome seen quoted; the trigger is recalled.',
  },
  {
    id: 'standing-water',
    title: 'No water standing on the floor',
    quantity: 'standingWaterDepthM',
    comparison: '<=',
    limit: { value: 0, us: '0 in', si: '0 mm' },
    kind: 'practice',
    source: commonPractice,
    consequence: 'Open water keeps the air near saturation and hides what lies below it.',
    caution: 'SAF-05',
    remark: 'Water on top of a liner and water under it have rows of their own: LIN-15, LIN-18.',
  },
]);
