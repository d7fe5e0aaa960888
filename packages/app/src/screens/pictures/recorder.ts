import type { Storage } from '../../storage/storage.ts';

/** Formats in the order in which they are tried: the first that the browser records. */
const FORMATS = ['audio/webm;codecs=opus', 'audio/mp4', 'audio/ogg;codecs=opus'];
const BITS_PER_S = 32_000;
/** So much sound a dead battery may cost [ms]. */
const PIECE_MS = 5_000;

/** A recording that is under way. */
export interface Recording {
  readonly startedMs: number;
  readonly mediaType: string;
  /** Ends it and gives the sound. */
  stop(): Promise<Blob>;
}

const pieceKey = (jobId: string, item: string, index: number) => `${jobId}/audio.${item}.${index}`;

async function toBase64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = '';
  for (let i = 0; i < bytes.length; i += 0x8000) {
    text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  }
  return btoa(text);
}

const fromBase64 = (text: string) => Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));

/** True where this browser can record sound. */
export const canRecord = () =>
  typeof MediaRecorder !== 'undefined' && navigator.mediaDevices?.getUserMedia !== undefined;

/**
 * Starts to record from the microphone. Every few seconds what is there goes to the disk, so that little is lost.
 * @param onPiece told how many pieces are on the disk
 * @param onEnd called when the system ends it, as for a call
 * @throws DOMException where the person or the browser refuses
 */
export async function record(
  storage: Storage,
  jobId: string,
  item: string,
  onPiece: (count: number) => void,
  onEnd: () => void,
): Promise<Recording> {
  const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
  const type = FORMATS.find((format) => MediaRecorder.isTypeSupported(format));
  const recorder = new MediaRecorder(stream, {
    ...(type === undefined ? {} : { mimeType: type }),
    audioBitsPerSecond: BITS_PER_S,
  });
  const pieces: Blob[] = [];
  const ended = new Promise<void>((resolve) => {
    recorder.onstop = () => {
      for (const track of stream.getTracks()) track.stop();
      resolve();
      onEnd();
    };
  });
  recorder.ondataavailable = ({ data }) => {
    if (data.size === 0) return;
    const index = pieces.push(data) - 1;
    toBase64(data)
      .then((text) => storage.putDraft(pieceKey(jobId, item, index), text))
      .then(
        () => onPiece(index + 1),
        () => undefined,
      );
  };
  recorder.start(PIECE_MS);
  const mediaType = recorder.mimeType.split(';', 1)[0] || 'audio/webm';
  return {
    startedMs: performance.now(),
    mediaType,
    async stop() {
      if (recorder.state !== 'inactive') recorder.stop();
      await ended;
      return new Blob(pieces, { type: mediaType });
    },
  };
}

/** The sound of a recording that was cut off, from its pieces on the disk; null where there is none. */
export async function rescued(
  storage: Storage,
  jobId: string,
  item: string,
  count: number,
  mediaType: string,
): Promise<Blob | null> {
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  for (let index = 0; index < count; index += 1) {
    const text = await storage.draft(pieceKey(jobId, item, index));
    if (text === undefined) break;
    pieces.push(fromBase64(text));
  }
  return pieces.length === 0 ? null : new Blob(pieces, { type: mediaType });
}

/** Drops the pieces of a recording once it is kept whole. */
export async function dropPieces(
  storage: Storage,
  jobId: string,
  item: string,
  count: number,
): Promise<void> {
  for (let index = 0; index < count; index += 1) {
    await storage.putDraft(pieceKey(jobId, item, index), null);
  }
}
