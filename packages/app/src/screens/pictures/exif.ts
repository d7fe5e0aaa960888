import { deviceTime } from '../../jobs/author.ts';

/** What the camera wrote into a picture. Where it was is not read: it is the customer's home. */
export interface CameraFacts {
  /** The camera's clock as it wrote it, e.g. `2031:05:14 09:20:00 -04:00`. */
  readonly clock?: string;
  /** The same as a moment, where the camera also wrote its offset. */
  readonly takenAt?: string;
  readonly fieldOfViewDeg?: number;
}

/** Width of the film to which a focal length is converted [mm]. */
const FILM_MM = 36;

const numberOf = (value: unknown): number | undefined =>
  typeof value === 'number' && Number.isFinite(value) ? value : undefined;

/** Facts out of the tags as they stand in the file, dates as text. */
export function factsOf(tags: Readonly<Record<string, unknown>>): CameraFacts {
  const { DateTimeOriginal: time, OffsetTimeOriginal: offset } = tags;
  const parts = typeof time === 'string' ? /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)/.exec(time) : null;
  const zone = typeof offset === 'string' && /^[+-]\d\d:\d\d$/.test(offset) ? offset : undefined;
  const focal = numberOf(tags.FocalLengthIn35mmFormat);
  const moment =
    parts === null || zone === undefined
      ? Number.NaN
      : Date.parse(`${parts[1]}-${parts[2]}-${parts[3]}T${parts[4]}${zone}`);
  return {
    ...(parts === null ? {} : { clock: [time, zone].filter(Boolean).join(' ').slice(0, 40) }),
    ...(Number.isNaN(moment) ? {} : { takenAt: deviceTime(moment) }),
    ...(focal === undefined || focal <= 0
      ? {}
      : { fieldOfViewDeg: Math.round((360 / Math.PI) * Math.atan(FILM_MM / 2 / focal)) }),
  };
}

/** Reads what the camera wrote; nothing where it wrote nothing that can be read. */
export async function cameraFacts(file: Blob): Promise<CameraFacts> {
  try {
    const { default: exifr } = await import('exifr');
    const tags: unknown = await exifr.parse(file, {
      reviveValues: false,
      pick: ['DateTimeOriginal', 'OffsetTimeOriginal', 'FocalLengthIn35mmFormat'],
    });
    return factsOf((tags ?? {}) as Record<string, unknown>);
  } catch {
    return {};
  }
}
