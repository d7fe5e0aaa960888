import type { Job, Place } from '@undercroft/record';
import { type FormDraft, useFormDraft } from '../../jobs/use-form-draft.ts';

/** What can be measured. */
export type MeasureKind = 'air' | 'surface' | 'wood' | 'level' | 'quantity' | 'instruments';

/** Where the next reading is taken once one is saved. */
export type Way = 'stay' | 'forward' | 'back';

type Readings = Job['readings'];

/** Everything in the sheet of measurements that is not in the record yet, and what the next reading starts with. */
export interface MeasureForm {
  readonly kind: MeasureKind | null;
  readonly isPlacing: boolean;
  /** Numbers as typed, by name. */
  readonly typed: Readonly<Record<string, string>>;
  /** Numbers as they were last taken. */
  readonly last: Readonly<Record<string, string>>;
  readonly place: Place;
  readonly instrument: string;
  readonly note: string;
  readonly where: Readings['air'][number]['where'];
  readonly of: Readings['surface'][number]['of'];
  readonly member: Readings['wood'][number]['member'];
  readonly species: string;
  readonly meterScale: string;
  readonly meterCorrects: Readings['wood'][number]['meterCorrects'];
  readonly way: Way;
  readonly quantity: string;
  readonly assumed: boolean;
  /** Id of the level set-up, or `new`. */
  readonly setup: string;
  readonly levelView: 'take' | 'heights';
  readonly on: Readings['levels'][number]['on'];
  /** Readings that were saved since the sheet was opened, newest last. */
  readonly saved: readonly string[];
}

const FIRST: MeasureForm = {
  kind: null,
  isPlacing: false,
  typed: {},
  last: {},
  place: {},
  instrument: '',
  note: '',
  where: 'crawl',
  of: 'wall',
  member: 'joist',
  species: '',
  meterScale: 'douglas-fir',
  meterCorrects: 'nothing',
  way: 'stay',
  quantity: '',
  assumed: false,
  setup: '',
  levelView: 'take',
  on: 'floor',
  saved: [],
};

/** Key of the draft of a job's measurements. */
export const measureKey = (jobId: string) => `${jobId}/measure`;

/** True for a kept draft in which somebody had typed or chosen something that is not saved. */
export function isHalfDone(kept: string): boolean {
  try {
    const { typed = {}, last = {} } = JSON.parse(kept) as Partial<MeasureForm>;
    return Object.entries(typed).some(([name, text]) => text !== '' && text !== last[name]);
  } catch {
    return false;
  }
}

export function useMeasureForm(jobId: string): FormDraft<MeasureForm> {
  return useFormDraft(measureKey(jobId), FIRST);
}

/** The form after a reading was taken: what was typed becomes what can be repeated, the rest stays. */
export function afterSaving(form: MeasureForm, id: string): Partial<MeasureForm> {
  return {
    typed: {},
    note: '',
    last: { ...form.last, ...form.typed },
    saved: [...form.saved, id],
  };
}
