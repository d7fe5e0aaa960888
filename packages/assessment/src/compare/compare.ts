import type { Notice } from '@undercroft/engine';
import type { Job } from '@undercroft/record';
import type { Assessment } from '../assessment.ts';
import { namesOf } from '../coverage/names.ts';
import { requireSurveyed } from '../surveyed.ts';
import { claimsChecked } from './claims.ts';
import type { CompareOptions, Comparison } from './comparison.ts';
import { findingTurns } from './findings.ts';
import { itemChanges } from './items.ts';
import { readingPairs, weatherNotice } from './readings.ts';
import { criterionTurns, stillNotMet } from './turns.ts';

/** A survey with what follows from it. */
export interface Survey {
  readonly job: Job;
  readonly assessment: Assessment;
}

/** Floors that differ by more than this are hardly one space. Common practice, no source. */
const SAME_FLOOR = 0.05;

function headlineOf(parts: Omit<Comparison, 'headline' | 'notices' | 'before' | 'after'>): string {
  const { criteria, readings, claims, stillNotMet: still, findings } = parts;
  const count = (turn: string) => criteria.filter((c) => c.turn === turn).length;
  const [mended, broken] = [count('mended'), count('broken')];
  const better = readings.filter((r) => r.turn === 'better').length;
  const worse = readings.filter((r) => r.turn === 'worse').length;
  const wrong = claims.filter((c) => c.state === 'is-not');
  return [
    `${mended} criteria that were not met are met now, ${still.length} still are not, ${broken} that were met are not met any more.`,
    readings.length === 0
      ? 'No reading was taken twice at one place.'
      : `Of ${readings.length} readings taken again at their places ${better} ${better === 1 ? 'is' : 'are'} better and ${worse} worse.`,
    ...(wrong.length === 0 ? [] : [`Claimed as done and not so: ${wrong.map((c) => c.title).join(', ')}.`]),
    ...(findings.some((f) => f.turn === 'unseen')
      ? [
          `${findings.filter((f) => f.turn === 'unseen').length} earlier findings were neither found again nor looked at.`,
        ]
      : []),
  ].join(' ');
}

function noticesOf(before: Survey, after: Survey, readings: Comparison['readings']): Notice[] {
  const notices: Notice[] = [];
  const [was, is] = [before.assessment, after.assessment];
  const [a, b] = [was.geometry.floorAreaM2, is.geometry.floorAreaM2];
  if (Math.abs(a - b) > SAME_FLOOR * Math.max(a, b)) {
    const message = `The floors are ${a.toFixed(1)} m² and ${b.toFixed(1)} m²: check that both surveys are of one space.`;
    notices.push({ code: 'other-floor', message });
  }
  const [then, now] = [was.job.surveyedOn, is.job.surveyedOn];
  if (then !== undefined && now !== undefined && then > now) {
    const message = `The survey taken as the earlier one is of ${then}, the later one of ${now}: they stand the wrong way round.`;
    notices.push({ code: 'wrong-order', message });
  }
  const weather = weatherNotice(readings, before.job, after.job);
  if (weather !== undefined) notices.push({ code: 'weather', message: weather });
  return notices;
}

/**
 * Two surveys of one space, before and after: what changed, readings side by side, criteria and findings that turned, and
 * what was claimed as done and is not. What the later survey does not show is never a change, neither way.
 * @throws JobError when the walls or the ground of either are missing
 */
export function compareSurveys(
  before: Survey,
  after: Survey,
  { withinM = 1 }: CompareOptions = {},
): Comparison {
  const [was, is] = [requireSurveyed(before.job), requireSurveyed(after.job)];
  const names = {
    before: namesOf(was, before.assessment.geometry),
    after: namesOf(is, after.assessment.geometry),
  };
  const { pairs, left } = readingPairs(before, after, withinM);
  const parts = {
    items: itemChanges(was, is, names, withinM),
    readings: pairs,
    unpaired: { before: left.gone.map((r) => r.id), after: left.fresh.map((r) => r.id) },
    criteria: criterionTurns(before.assessment, after.assessment),
    stillNotMet: stillNotMet(before.assessment, after.assessment),
    findings: findingTurns(was, is, after.assessment, withinM),
    claims: claimsChecked(was, is, after.assessment),
  };
  return {
    before: before.assessment.job,
    after: after.assessment.job,
    headline: headlineOf(parts),
    ...parts,
    notices: noticesOf(before, after, pairs),
  };
}
