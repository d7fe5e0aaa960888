import { useCallback, useEffect, useSyncExternalStore } from 'react';
import type { Storage } from '../storage/storage.ts';
import type { WeatherFile } from '../worker/api.ts';
import { useJobs } from './hooks.ts';

const factOf = (jobId: string) => `weather/${jobId}`;

/** Files that were read from the disk; null where a job has none, absent until it is known. */
const known = new Map<string, WeatherFile | null>();
const listeners = new Set<() => void>();

function show(jobId: string, file: WeatherFile | null): void {
  known.set(jobId, file);
  for (const changed of listeners) changed();
}

async function kept(storage: Storage, jobId: string): Promise<WeatherFile | null> {
  const fact = await storage.fact(factOf(jobId));
  if (fact === undefined || fact === '') return null;
  const { sha256, name } = JSON.parse(fact) as Pick<WeatherFile, 'sha256' | 'name'>;
  const blob = await storage.blob(sha256);
  return blob === undefined ? null : { sha256, name, blob };
}

/**
 * The file of hourly weather that a person gave for a job on this device; null for none, undefined until it is known. It
 * stays on this device: the record and its archive do not hold it.
 */
export function useWeatherFile(jobId: string): WeatherFile | null | undefined {
  const { storage } = useJobs();
  useEffect(() => {
    if (known.has(jobId)) return;
    // Without its weather file a job is assessed by the built-in station, and says so.
    kept(storage, jobId).then(
      (file) => show(jobId, file),
      () => show(jobId, null),
    );
  }, [storage, jobId]);
  return useSyncExternalStore(
    useCallback((changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    }, []),
    () => known.get(jobId),
  );
}

/** Keeps a weather file for a job on this device. Rejects with a `StorageError`. */
export async function giveWeather(storage: Storage, jobId: string, file: File): Promise<void> {
  const sha256 = await storage.putBlob(jobId, file);
  await storage.putFact(factOf(jobId), JSON.stringify({ sha256, name: file.name }));
  show(jobId, { sha256, name: file.name, blob: file });
}

/** Goes back to the built-in station. The file stays with the job until the job is deleted. */
export async function dropWeather(storage: Storage, jobId: string): Promise<void> {
  await storage.putFact(factOf(jobId), '');
  show(jobId, null);
}
