import type { Notice } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { runningDehumidifiers } from './space-state.ts';

/** Humidity that a dehumidifier can be asked to hold. */
const LEAST = 0.2;
const MOST = 0.95;

/** A humidity to hold, brought into what can be held; `targetNotices` says where that was needed. */
export function heldHumidity(asked: number): number {
  return Math.min(MOST, Math.max(LEAST, asked));
}

/** Says which humidity was asked for that no machine holds. */
export function targetNotices(job: SurveyedJob): Notice[] {
  const asked = [
    ['Target of the design', job.design.targetRelativeHumidity] as const,
    ...runningDehumidifiers(job).flatMap((e) =>
      e.setRelativeHumidity === undefined
        ? []
        : [[`Setting of dehumidifier ${e.id}`, e.setRelativeHumidity] as const],
    ),
  ];
  return asked
    .filter(([, value]) => value !== heldHumidity(value))
    .map(([what, value]) => ({
      code: 'humidity-not-held',
      message: `${what}: ${(100 * value).toFixed(0)} % relative humidity cannot be held; ${(100 * heldHumidity(value)).toFixed(0)} % was taken.`,
    }));
}
