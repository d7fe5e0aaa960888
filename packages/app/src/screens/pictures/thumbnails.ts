import { useEffect, useState } from 'react';
import { useJobs } from '../../jobs/hooks.ts';
import type { Storage } from '../../storage/storage.ts';

/** So wide are the small copies [px]. */
const WIDTH = 320;
/** So many are kept; the first to come are the first to go. */
const KEPT = 300;

/** A picture that is not here is looked for again, so often and after so long [ms]. */
const TRIES = 20;
const RETRY_MS = 3_000;

const made = new Map<string, Promise<string | null>>();
let queue: Promise<unknown> = Promise.resolve();

/** A small copy of a picture, upright, as an address. The picture itself stays as it is. */
async function shrink(storage: Storage, sha256: string): Promise<string | null> {
  const blob = await storage.blob(sha256);
  if (blob === undefined) return null;
  const bitmap = await createImageBitmap(blob, {
    resizeWidth: WIDTH,
    resizeQuality: 'medium',
    // The only place where the camera's turn is undone.
    imageOrientation: 'from-image',
  });
  try {
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
    return URL.createObjectURL(await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 }));
  } finally {
    bitmap.close();
  }
}

/** Pictures are large: one after the other. */
function thumbnail(storage: Storage, sha256: string): Promise<string | null> {
  const known = made.get(sha256);
  if (known !== undefined) return known;
  const making = queue.then(() => shrink(storage, sha256)).catch(() => null);
  queue = making;
  made.set(sha256, making);
  // What is not here yet may come: a demo picture is still drawn, an archive still taken in.
  void making.then((url) => url === null && made.get(sha256) === making && made.delete(sha256));
  const [oldest] = made.keys();
  if (made.size > KEPT && oldest !== undefined) {
    const gone = made.get(oldest);
    made.delete(oldest);
    void gone?.then((url) => url !== null && URL.revokeObjectURL(url));
  }
  return making;
}

/** Address of a small copy of a picture; undefined until it is made, null where it cannot be. */
export function useThumbnail(sha256: string): string | null | undefined {
  const { storage } = useJobs();
  const [url, setUrl] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    let wanted = true;
    let again: ReturnType<typeof setTimeout> | undefined;
    const look = (tries: number) =>
      thumbnail(storage, sha256).then((address) => {
        if (!wanted) return;
        setUrl(address);
        if (address === null && tries > 1) again = setTimeout(() => void look(tries - 1), RETRY_MS);
      });
    setUrl(undefined);
    void look(TRIES);
    return () => {
      wanted = false;
      clearTimeout(again);
    };
  }, [storage, sha256]);
  return url;
}

/** Address of a kept file itself while it is shown; null where it is not on this device. */
export function useKeptFile(sha256: string): string | null | undefined {
  const { storage } = useJobs();
  const [url, setUrl] = useState<string | null | undefined>(undefined);
  useEffect(() => {
    let address: string | undefined;
    let wanted = true;
    setUrl(undefined);
    storage.blob(sha256).then(
      (blob) => {
        if (!wanted) return;
        address = blob === undefined ? undefined : URL.createObjectURL(blob);
        setUrl(address ?? null);
      },
      () => wanted && setUrl(null),
    );
    return () => {
      wanted = false;
      if (address !== undefined) URL.revokeObjectURL(address);
    };
  }, [storage, sha256]);
  return url;
}
