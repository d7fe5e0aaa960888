import { causes } from '@undercroft/engine';
import type {
  CauseArrow,
  CauseConsequence,
  CauseEvidenceShown,
  CauseMechanism,
  CauseNotShown,
  CauseObservation,
  CauseRuledOut,
  CauseShare,
  CausesAssessment,
  NextMeasurementShown,
  NextOutcome,
} from '../causes/causes-assessment.ts';
import { amount, count, fraction, listOf, number, object, oneOf, ref, type Schema, text } from './build.ts';

const keys = causes.causeNodes.map((node) => node.key);
const key = oneOf(...keys);
const standing = oneOf('supported', 'contradicted', 'disputed', 'not-shown');
const ids = listOf(text);

const TOOLS = [
  'eyes',
  'tape',
  'level',
  'hygrometer',
  'pin-meter',
  'infrared',
  'logger',
  'hose',
  'water-meter',
  'smoke',
  'gauge',
  'radon-monitor',
  'papers',
] as const satisfies readonly causes.SignTool[];

/** Why the space is as it was found: findings, explanations, evidence, consequences, what to measure next. */
export const CAUSES_DEFINITIONS = {
  CauseEvidence: object<CauseEvidenceShown>(
    {
      id: text,
      explains: key,
      title: text,
      says: oneOf('for', 'against'),
      times: { type: 'number', minimum: 1 },
      basis: oneOf('measured', 'balance', 'year', 'defect', 'seen'),
      reason: text,
      origins: listOf(ref('Origin')),
      criteria: ids,
    },
    { value: { type: ['number', 'boolean'] }, unit: text },
  ),
  CauseArrow: object<CauseArrow>(
    {
      from: key,
      to: key,
      weight: fraction,
      prior: fraction,
      standing,
      reason: text,
      source: ref('Source'),
      supports: ids,
      contradicts: ids,
    },
    { number: count },
  ),
  CauseShare: object<CauseShare>({ key: oneOf(...keys, 'unlisted'), title: text, weight: fraction }),
  CauseObservation: object<CauseObservation>({
    key,
    kind: oneOf('cause', 'condition', 'consequence'),
    title: text,
    meaning: text,
    because: text,
    origins: listOf(ref('Origin')),
    unlisted: fraction,
    entropyBits: amount,
    roots: listOf(ref('CauseShare')),
  }),
  CauseMechanism: object<CauseMechanism>({
    key,
    title: text,
    meaning: text,
    weight: fraction,
    standing,
    supports: ids,
    contradicts: ids,
  }),
  CauseRuledOut: object<CauseRuledOut>({ key, title: text, because: text }),
  CauseConsequence: object<CauseConsequence>({ key, title: text, meaning: text, from: listOf(key) }),
  CauseNotShown: object<CauseNotShown>({ key, title: text, how: text }),
  NextOutcome: object<NextOutcome>(
    { chance: fraction, leads: ref('CauseShare') },
    { answer: { type: 'boolean' }, from: number, below: number },
  ),
  NextMeasurement: object<NextMeasurementShown>(
    {
      key: text,
      title: text,
      unit: text,
      how: text,
      tool: oneOf(...TOOLS),
      minutes: amount,
      reason: text,
      gainBits: amount,
      about: key,
      outcomes: listOf(ref('NextOutcome')),
    },
    { quantity: text, waitDays: amount },
  ),
  Causes: object<CausesAssessment>({
    headline: text,
    observations: listOf(ref('CauseObservation')),
    mechanisms: listOf(ref('CauseMechanism')),
    ruledOut: listOf(ref('CauseRuledOut')),
    arrows: listOf(ref('CauseArrow')),
    consequences: listOf(ref('CauseConsequence')),
    evidence: listOf(ref('CauseEvidence')),
    notShown: listOf(ref('CauseNotShown')),
    next: listOf(ref('NextMeasurement')),
  }),
} as const satisfies Record<string, Schema>;
