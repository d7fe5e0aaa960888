import { gunzipSync } from 'node:zlib';
import { climate } from '@undercroft/engine';
import { readInput } from './files.ts';
import { UsageError, wrongThings } from './usage-error.ts';

/** A weather year unpacks to about 2 MB; more than this is not one. */
const MOST_BYTES = 64 * 1024 * 1024;

function unpacked(path: string, bytes: Uint8Array): Uint8Array {
  try {
    return gunzipSync(bytes, { maxOutputLength: MOST_BYTES });
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    const why =
      code === 'ERR_BUFFER_TOO_LARGE'
        ? 'it holds more than 64 MB, and a weather year about 2 MB'
        : `${message}. Get the file again`;
    throw new UsageError(`${path} does not unpack: ${why}.`);
  }
}

/**
 * A weather file in either of the two public layouts, gzip-compressed or not.
 * @throws UsageError when the file cannot be read or is not a weather year
 */
export async function loadWeather(path: string, cwd: string): Promise<climate.ClimateYear> {
  const bytes = await readInput(path, cwd);
  const read = climate.readWeather(climate.looksGzipped(bytes) ? unpacked(path, bytes) : bytes, path);
  if (read.ok) return read.year;
  throw wrongThings(
    path,
    read.issues.map((i) => i.message),
    read.issueCount,
  );
}
