import { strToU8 } from 'fflate';

/** One file as a test lays it in a zip; what is left out is as it should be. */
export interface Part {
  readonly name: string;
  /** The bytes as they lie in the zip. */
  readonly packed: Uint8Array;
  readonly method?: number;
  readonly flags?: number;
  readonly size?: number;
  readonly packedSize?: number;
  /** The name in the file's own header, where it is another. */
  readonly localName?: string;
  readonly localMethod?: number;
  /** Where the directory says the header is. */
  readonly offset?: number;
}

/** What a test changes about the directory. */
export interface Ending {
  readonly count?: number;
  readonly directorySize?: number;
  readonly directoryStart?: number;
  readonly disk?: number;
  readonly comment?: string;
  readonly between?: number;
}

function header(
  length: number,
  fields: readonly (readonly [at: number, bytes: 2 | 4, value: number])[],
): Uint8Array {
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  for (const [at, size, value] of fields) {
    if (size === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
  }
  return bytes;
}

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

/** Lays a zip by hand, so that a test can say in it what no program would. */
export function zipOf(parts: readonly Part[], ending: Ending = {}): Uint8Array {
  const files: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  for (const part of parts) {
    const { name, packed, method = 0, flags = 0, size = packed.length, packedSize = packed.length } = part;
    const own = strToU8(part.localName ?? name);
    const local = header(30, [
      [0, 4, 0x04034b50],
      [4, 2, 20],
      [6, 2, flags],
      [8, 2, part.localMethod ?? method],
      [18, 4, packedSize],
      [22, 4, size],
      [26, 2, own.length],
    ]);
    const listed = strToU8(name);
    const entry = header(46, [
      [0, 4, 0x02014b50],
      [6, 2, 20],
      [8, 2, flags],
      [10, 2, method],
      [20, 4, packedSize],
      [24, 4, size],
      [28, 2, listed.length],
      [42, 4, part.offset ?? at],
    ]);
    files.push(local, own, packed);
    directory.push(entry, listed);
    at += 30 + own.length + packed.length;
  }
  const listing = joined(directory);
  const comment = strToU8(ending.comment ?? '');
  const count = ending.count ?? parts.length;
  const end = header(22, [
    [0, 4, 0x06054b50],
    [4, 2, ending.disk ?? 0],
    [8, 2, count],
    [10, 2, count],
    [12, 4, ending.directorySize ?? listing.length],
    [16, 4, ending.directoryStart ?? at + (ending.between ?? 0)],
    [20, 2, comment.length],
  ]);
  return joined([...files, new Uint8Array(ending.between ?? 0), listing, end, comment]);
}
