import type { Place } from '@undercroft/record';
import { type FormDraft, useFormDraft } from '../../jobs/use-form-draft.ts';
import type { Before } from './capture.ts';

/** What is set for the next pictures; it stays from one to the next. */
export interface PictureForm {
  readonly view: 'take' | 'place' | 'gallery';
  /** Id of the picture that is open. */
  readonly shown: string;
  readonly place: Place;
  readonly bearingDeg: number | null;
  /** Degrees and meters as picked; empty where not told. */
  readonly fieldOfView: string;
  readonly range: string;
  readonly caption: string;
}

const FIRST: PictureForm = {
  view: 'take',
  shown: '',
  place: {},
  bearingDeg: null,
  fieldOfView: '',
  range: '',
  caption: '',
};

export function usePictureForm(jobId: string): FormDraft<PictureForm> {
  return useFormDraft(`${jobId}/picture`, FIRST);
}

/** What the record will say of a picture that is taken now. */
export function beforeOf({ place, bearingDeg, fieldOfView, range, caption }: PictureForm): Before {
  return {
    place,
    bearingDeg: bearingDeg ?? undefined,
    fieldOfViewDeg: fieldOfView === '' ? undefined : Number(fieldOfView),
    rangeM: range === '' ? undefined : Number(range),
    caption: caption.trim(),
  };
}
