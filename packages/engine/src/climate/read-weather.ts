import { readEpw } from './epw.ts';
import { excerpt, type ReadResult } from './read-issue.ts';
import { linesOf } from './text-lines.ts';
import { readTmy3 } from './tmy3.ts';

/**
 * The one platform interface used here: text decoding, which every host of the engine has (browsers, workers, servers).
 * Declared instead of drawn in with a host's types, so that nothing else of a host can slip into the engine.
 */
declare const TextDecoder: new (
  label: string,
  options?: { fatal?: boolean },
) => { decode(bytes: Uint8Array): string };

/** Whether bytes begin like a gzip stream; the caller then decompresses them before reading. */
export function looksGzipped(bytes: Uint8Array): boolean {
  return bytes.length > 2 && bytes[0] === 0x1f && bytes[1] === 0x8b;
}

/**
 * Reads a weather file of a known layout (EPW or TMY3), telling the layout by its content, never by its name.
 *
 * Bytes are taken as UTF-8, as UTF-16 with a byte order mark, or else as Windows-1252. A compressed or binary file and
 * an unknown layout give one issue that says so. Never throws, whatever the bytes.
 * @param bytes the decompressed file
 * @param fileName for messages only
 */
export function readWeather(bytes: Uint8Array, fileName: string): ReadResult {
  const packed = packedAs(bytes);
  if (packed !== undefined) {
    return notWeather(
      fileName,
      packed,
      'a text file',
      `is ${packed}, not text. Unpack it and give the file inside.`,
    );
  }
  const text = decode(bytes);
  if (text.slice(0, 4096).includes('\0')) {
    return notWeather(fileName, 'binary data', 'a text file', 'is not a text file.');
  }
  if (text.trim() === '') {
    return notWeather(fileName, 'nothing', 'hourly weather', 'is empty.');
  }
  const [first = '', second = ''] = linesOf(text.slice(0, 8192)).filter((line) => line.trim() !== '');
  if (/^\s*(LOCATION|DESIGN CONDITIONS|TYPICAL\/EXTREME PERIODS|GROUND TEMPERATURES)\b/i.test(first)) {
    return readEpw(text);
  }
  if (/^\s*\d{4},\d{1,2},\d{1,2},\d{1,2},\d{1,2},/.test(first)) return readEpw(text);
  if ([first, second].some((line) => /^"?Date \(MM|,"?Dry-bulb \(/i.test(line))) return readTmy3(text);
  return notWeather(
    fileName,
    excerpt(first),
    'an EPW file (first line LOCATION,...) or a TMY3 file (second line "Date (MM/DD/YYYY),...")',
    'is in no layout that can be read here. Typical years in EPW or TMY3 layout can.',
  );
}

function packedAs(bytes: Uint8Array): string | undefined {
  if (looksGzipped(bytes)) return 'a gzip-compressed file';
  if (bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3 && bytes[3] === 4) {
    return 'a zip archive or a spreadsheet';
  }
  return undefined;
}

function decode(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

function notWeather(fileName: string, found: string, expected: string, what: string): ReadResult {
  const message = `${excerpt(fileName)} ${what}`;
  return { ok: false, issues: [{ line: 0, found, expected, message }], issueCount: 1 };
}
