import type { Change, Finding, Place } from '@undercroft/record';
import { type FormDraft, useFormDraft } from '../../jobs/use-form-draft.ts';

/** A finding as somebody fills it in. */
export interface FindingForm {
  readonly view: 'pick' | 'form' | 'place' | 'measure';
  /** Id of the finding that is changed; empty for a new one. */
  readonly id: string;
  readonly search: string;
  readonly subject: string;
  readonly part: string;
  /** Key of the catalogue, `other`, or empty while none is picked. */
  readonly defect: string;
  readonly title: string;
  readonly place: Place;
  /** 0 to 4 as picked; empty for the grade of the catalogue. */
  readonly severity: string;
  /** As typed. */
  readonly measured: string;
  readonly photoIds: readonly string[];
  readonly clipIds: readonly string[];
  readonly audioIds: readonly string[];
  readonly note: string;
}

export const FIRST_FINDING: FindingForm = {
  view: 'pick',
  id: '',
  search: '',
  subject: '',
  part: '',
  defect: '',
  title: '',
  place: {},
  severity: '',
  measured: '',
  photoIds: [],
  clipIds: [],
  audioIds: [],
  note: '',
};

export const findingKey = (jobId: string) => `${jobId}/finding`;

export function useFindingForm(jobId: string): FormDraft<FindingForm> {
  return useFormDraft(findingKey(jobId), FIRST_FINDING);
}

/** True for a kept draft in which a defect was picked and not saved. */
export function isFindingBegun(kept: string): boolean {
  try {
    const { defect = '' } = JSON.parse(kept) as Partial<FindingForm>;
    return defect !== '';
  } catch {
    return false;
  }
}

/** A finding of the record in the form. */
export function formOf(finding: Finding, measured: string): FindingForm {
  const { id, defect, title, place, severity, photoIds, clipIds = [], audioIds = [], note = '' } = finding;
  return {
    ...FIRST_FINDING,
    view: 'form',
    id,
    defect,
    title,
    place,
    severity: severity === undefined ? '' : String(severity),
    measured,
    photoIds,
    clipIds,
    audioIds,
    note,
  };
}

/** Fields that may be left out; what is not there now is taken away. */
const OPTIONAL = ['severity', 'measured', 'note', 'clipIds', 'audioIds'] as const;

/** The changes that bring a finding from what it is to what it should be, field by field. */
export function changesOf(finding: Finding, now: Readonly<Record<string, unknown>>): Change[] {
  const before = finding as unknown as Readonly<Record<string, unknown>>;
  return [...new Set([...Object.keys(now), ...OPTIONAL])].flatMap((field): Change[] => {
    const value = now[field] ?? null;
    const isSame = JSON.stringify(before[field] ?? null) === JSON.stringify(value);
    return isSame ? [] : [{ do: 'set', kind: 'finding', item: finding.id, field, value }];
  });
}
