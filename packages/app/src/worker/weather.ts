import { climate } from '@undercroft/engine';
import type { WeatherFile, WeatherReading } from './api.ts';

async function unpacked(blob: Blob): Promise<Uint8Array> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  if (!climate.looksGzipped(bytes)) return bytes;
  const stream = blob.stream().pipeThrough(new DecompressionStream('gzip'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** What a file holds, or why it is no weather. */
export async function readWeather(blob: Blob, name: string): Promise<WeatherReading> {
  const read = climate.readWeather(await unpacked(blob), name);
  if (!read.ok) {
    return { ok: false, problems: read.issues.slice(0, 3).map((issue) => issue.message) };
  }
  const { place, source, notices } = read.year;
  return { ok: true, place: place.name, source, notices: notices.map((n) => n.message) };
}

let last: { readonly sha256: string; readonly year: climate.ClimateYear | undefined } | undefined;

/** The year of a file, read once; undefined for none and for one that cannot be read. The same object each time. */
export async function weatherYear(file: WeatherFile | null): Promise<climate.ClimateYear | undefined> {
  if (file === null) return undefined;
  if (last?.sha256 !== file.sha256) {
    const read = climate.readWeather(await unpacked(file.blob), file.name);
    last = { sha256: file.sha256, year: read.ok ? read.year : undefined };
  }
  return last.year;
}
