import type { Place } from '@undercroft/record';
import { deviceTime, randomName } from '../../jobs/author.ts';
import type { OpenJob } from '../../jobs/open-job.ts';
import { surveyorName } from '../../settings/settings.ts';
import { type Storage, StorageError } from '../../storage/storage.ts';
import { type CameraFacts, cameraFacts } from './exif.ts';
import { type HeldFile, hold, letGo } from './held.ts';
import { type Sniffed, sniff } from './sniff.ts';

/** What was set before the camera opened. */
export interface Before {
  readonly place: Place;
  readonly bearingDeg?: number | undefined;
  readonly fieldOfViewDeg?: number | undefined;
  readonly rangeM?: number | undefined;
  readonly caption?: string | undefined;
}

/** How a capture ended. `held`: the disk refused the file, and it is kept in memory. */
export type Captured =
  | { readonly is: 'saved'; readonly kind: HeldFile['kind']; readonly item: string }
  | { readonly is: 'held'; readonly full: boolean }
  | { readonly is: 'heic' | 'unreadable' };

/** A file that changed this long before its slot was opened was not taken just now [ms]. */
const JUST_NOW_MS = 5_000;

async function canShow(file: Blob): Promise<boolean> {
  try {
    (await createImageBitmap(file)).close();
    return true;
  } catch {
    return false;
  }
}

/** Length of a film or a sound [s]; undefined where the browser cannot tell. */
function durationOf(file: Blob, kind: 'clip' | 'audio'): Promise<number | undefined> {
  const player = document.createElement(kind === 'clip' ? 'video' : 'audio');
  const url = URL.createObjectURL(file);
  return new Promise<number | undefined>((resolve) => {
    const done = () => resolve(Number.isFinite(player.duration) ? player.duration : undefined);
    player.preload = 'metadata';
    player.onloadedmetadata = done;
    player.onerror = () => resolve(undefined);
    setTimeout(() => resolve(undefined), 3_000);
    player.src = url;
  }).finally(() => URL.revokeObjectURL(url));
}

/**
 * When a file was taken: by the app's clock for what was taken just now; by the camera's clock, where it wrote an offset,
 * or by the time of the file for an older one.
 */
export function timeOf(
  { lastModified, since, now }: { lastModified: number; since: number; now: number },
  facts: CameraFacts,
): { readonly takenAt: string; readonly deviceTime: string } {
  const isFresh = lastModified >= since - JUST_NOW_MS;
  const takenAt = isFresh ? deviceTime(now) : (facts.takenAt ?? deviceTime(lastModified));
  return { takenAt, deviceTime: facts.clock ?? deviceTime(isFresh ? now : lastModified) };
}

interface ToKeep {
  readonly openJob: OpenJob;
  readonly storage: Storage;
  readonly file: Blob;
  readonly name: string;
  /** When the slot was opened, and when the file changed last [ms]. */
  readonly since: number;
  readonly lastModified: number;
  readonly before: Before;
  readonly item?: string | undefined;
  readonly durationS?: number | undefined;
}

const defined = (fields: Record<string, unknown>) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== ''));

async function valueOfFile(given: ToKeep, { kind, mediaType }: Sniffed): Promise<Record<string, unknown>> {
  const { file, before, since, lastModified } = given;
  const facts = kind === 'photo' ? await cameraFacts(file) : {};
  const durationS = given.durationS ?? (kind === 'photo' ? undefined : await durationOf(file, kind));
  const looks =
    kind === 'audio'
      ? {}
      : {
          bearingDeg: before.bearingDeg,
          fieldOfViewDeg: before.fieldOfViewDeg ?? facts.fieldOfViewDeg,
          rangeM: before.rangeM,
        };
  return defined({
    bytes: file.size,
    mediaType,
    ...timeOf({ lastModified, since, now: Date.now() }, facts),
    who: surveyorName(),
    place: before.place,
    caption: before.caption,
    durationS: durationS === undefined || durationS <= 0 ? undefined : durationS,
    ...looks,
  });
}

/** Takes a captured file as it is into the job: its bytes first, then what the record says of it. */
export async function keep(given: ToKeep): Promise<Captured> {
  const { file, name } = given;
  const found = sniff(new Uint8Array(await file.slice(0, 32).arrayBuffer()), file.type);
  if (found === null || file.size === 0) return { is: 'unreadable' };
  if (found.isHeic && !(await canShow(file))) return { is: 'heic' };
  const value = await valueOfFile(given, found);
  const item = given.item ?? randomName(16);
  const typed = new Blob([file], { type: found.mediaType });
  return store(given, { item, kind: found.kind, file: typed, name, value });
}

type Where = Pick<ToKeep, 'openJob' | 'storage'>;

async function store({ openJob, storage }: Where, one: HeldFile): Promise<Captured> {
  const { id } = openJob.view;
  let sha256: string;
  try {
    sha256 = await storage.putBlob(id, one.file);
  } catch (error) {
    hold(id, one);
    return { is: 'held', full: error instanceof StorageError && error.fault === 'full' };
  }
  const { item, kind, value } = one;
  const result = await openJob.commit({ do: 'create', kind, item, value: { ...value, sha256 } });
  if (!result.ok && 'issues' in result) return { is: 'unreadable' };
  letGo(id, item);
  // A refused entry waits in the open job, whose notice says so; its bytes are on the disk.
  return { is: 'saved', kind, item };
}

/** Tries again to keep what the disk refused. */
export function keepHeld(where: Where, one: HeldFile): Promise<Captured> {
  return store(where, one);
}
