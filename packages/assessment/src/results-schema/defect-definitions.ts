import { criteria } from '@undercroft/engine';
import type {
  DefectClaim,
  DefectNotShown,
  DefectPlace,
  DefectResult,
  DefectsCount,
  MendedEffect,
  MendedYear,
} from '../defects/defect-result.ts';
import {
  amount,
  count,
  fraction,
  listOf,
  number,
  object,
  oneOf,
  ref,
  type Schema,
  text,
  whole,
  yesNo,
} from './build.ts';

const subject = oneOf(...new Set(criteria.defects.map((d) => d.subject)));
const grade: Schema = { type: 'integer', minimum: 0, maximum: 4 };
const ids = listOf(text);

/** What is wrong, how sure that is, and what mending it does. */
export const DEFECT_DEFINITIONS = {
  DefectClaim: object<DefectClaim>(
    { id: text, number: count, title: text, photoIds: ids, who: text, when: text },
    {
      at: ref('Point'),
      words: text,
      note: text,
      severity: grade,
      measured: object<NonNullable<DefectClaim['measured']>>({
        quantity: text,
        value: { type: ['number', 'boolean'] },
      }),
    },
  ),
  DefectPlace: object<DefectPlace>(
    { id: text, from: oneOf('finding', 'sample', 'item'), words: text },
    { at: ref('Point') },
  ),
  MendedYear: object<MendedYear>({ daysAbove80: whole, peakMoldIndex: number, peakWoodMoisture: number }),
  MendedEffect: object<MendedEffect>(
    { waterKgPerDay: number, relativeHumidity: number, sharesWith: ids },
    { waterShare: number, year: ref('MendedYear') },
  ),
  BillQuantity: object<criteria.BillQuantity>(
    { unit: oneOf('m', 'm2', 'm3', 'each', 'lot', 'hour'), from: text, assumed: yesNo },
    { value: amount, range: { type: 'array', items: amount, minItems: 2, maxItems: 2 } },
  ),
  Defect: object<DefectResult>(
    {
      key: text,
      subject: { anyOf: [subject, { const: 'other' }] },
      name: text,
      seen: text,
      proof: text,
      remedy: text,
      state: oneOf('shown', 'claimed', 'contradicted', 'not-shown', 'absent'),
      certainty: oneOf('measured', 'seen', 'suspected', 'none'),
      source: oneOf('finding', 'measured', 'both', 'none'),
      because: ids,
      severity: grade,
      severityBecause: ids,
      causes: ids,
      consequences: ids,
      causedBy: ids,
      leadsTo: ids,
      broken: ids,
      met: ids,
      notShown: ids,
      evidence: listOf(ref('Evidence')),
      against: listOf(ref('Evidence')),
      facts: ids,
      findings: listOf(ref('DefectClaim')),
      places: listOf(ref('DefectPlace')),
      items: ids,
      bill: ref('BillQuantity'),
      step: oneOf(...criteria.REPAIR_ORDER),
    },
    { share: fraction, caution: text, licensedTrade: text, mended: ref('MendedEffect'), mendedNot: text },
  ),
  DefectNotShown: object<DefectNotShown>({ key: text, subject, name: text, proof: text, severity: grade }),
  DefectsCount: object<DefectsCount>({
    shown: count,
    claimed: count,
    suspected: count,
    contradicted: count,
    absent: count,
    notShown: count,
  }),
} as const satisfies Record<string, Schema>;
