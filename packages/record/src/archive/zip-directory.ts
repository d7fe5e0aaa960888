import { strFromU8 } from 'fflate';
import { shown } from '../issues.ts';

/** One file in a zip: where its packed bytes are and how large they say they unpack. */
export interface ZipFile {
  readonly name: string;
  readonly deflated: boolean;
  readonly packed: Uint8Array;
  readonly size: number;
}

/** Why a zip cannot be read: what was found, and as `expected` what should have been there. */
export class ZipFault extends Error {
  readonly expected: string;

  constructor(found: string, expected: string) {
    super(found);
    this.expected = expected;
  }
}

const END = 0x06054b50;
const END_BYTES = 22;
const ENTRY = 0x02014b50;
const ENTRY_BYTES = 46;
const LOCAL = 0x04034b50;
const LOCAL_BYTES = 30;
const MOST_COMMENT = 0xffff;
/** Flags 0, 6 and 13: encrypted in one way or another. */
const ENCRYPTED = 0x2041;
const STORED = 0;
const DEFLATED = 8;
/** Deflate makes at most 258 bytes of 2 bits. */
const MOST_EXPANSION = 1032;

/** Where the record at the end of the file stands that says where the directory is. */
function endRecord(view: DataView): number {
  const last = view.byteLength - END_BYTES;
  for (let at = last; at >= 0 && last - at <= MOST_COMMENT; at -= 1) {
    if (view.getUint32(at, true) === END && view.getUint16(at + 20, true) === last - at) return at;
  }
  throw new ZipFault(`${view.byteLength} bytes without the end of a zip file`, 'a whole zip file');
}

function directoryPlace(view: DataView): { start: number; end: number; count: number } {
  const end = endRecord(view);
  const count = view.getUint16(end + 10, true);
  const start = view.getUint32(end + 16, true);
  if (count === 0xffff || start === 0xffffffff)
    throw new ZipFault('a ZIP64 file', 'a zip file without ZIP64');
  if (view.getUint32(end + 4, true) !== 0 || view.getUint16(end + 8, true) !== count) {
    throw new ZipFault('one part of several', 'a zip file in one part');
  }
  if (start + view.getUint32(end + 12, true) !== end) {
    throw new ZipFault(
      'a directory that is not where it should be',
      'a whole zip file with nothing before it',
    );
  }
  return { start, end, count };
}

/** The packed bytes of a file, and from where to where the file reaches with its own header. */
function packedBytes(
  bytes: Uint8Array,
  view: DataView,
  entry: { name: string; method: number; packed: number; at: number; before: number },
): { packed: Uint8Array; from: number; to: number } {
  const { name, method, at, before } = entry;
  const whole = `the header of ${shown(name)} as the directory says it`;
  if (at + LOCAL_BYTES > before || view.getUint32(at, true) !== LOCAL)
    throw new ZipFault('something else', whole);
  const nameAt = at + LOCAL_BYTES;
  const dataAt = nameAt + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  const to = dataAt + entry.packed;
  if (to > before) throw new ZipFault(`${shown(name)} reaching too far`, `at most ${before - dataAt} bytes`);
  const localName = strFromU8(bytes.subarray(nameAt, nameAt + view.getUint16(at + 26, true)), true);
  if (localName !== name) throw new ZipFault(`the header of ${shown(localName)}`, whole);
  if (view.getUint16(at + 8, true) !== method) throw new ZipFault('another method', whole);
  return { packed: bytes.subarray(dataAt, to), from: at, to };
}

/**
 * Lists what is in a zip file. Strict where programs read zip files differently, since a file that two of them read
 * differently proves nothing: directory and files stand where they say, nothing overlaps, no name is hidden. A size that
 * so few packed bytes cannot reach is refused before memory is taken for it.
 * The form is that of PKWARE's APPNOTE 6.3.10, sections 4.3.7, 4.3.12 and 4.3.16 (from memory), without ZIP64,
 * encryption and several parts, and with the methods stored and deflate only.
 * @param mostFiles a file with more entries is refused
 * @throws ZipFault
 */
export function zipDirectory(bytes: Uint8Array, mostFiles: number): ZipFile[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { start, end, count } = directoryPlace(view);
  if (count > mostFiles) throw new ZipFault(`${count} files`, `at most ${mostFiles}`);
  const files: ZipFile[] = [];
  const spans: { from: number; to: number }[] = [];
  let at = start;
  for (let i = 0; i < count; i += 1) {
    if (at + ENTRY_BYTES > end || view.getUint32(at, true) !== ENTRY) {
      throw new ZipFault(`${i} files in the directory`, `${count} files`);
    }
    const flags = view.getUint16(at + 8, true);
    const method = view.getUint16(at + 10, true);
    const packed = view.getUint32(at + 20, true);
    const size = view.getUint32(at + 24, true);
    const nameBytes = view.getUint16(at + 28, true);
    const next = at + ENTRY_BYTES + nameBytes + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end) throw new ZipFault('a directory that is cut off', 'a whole zip file');
    const name = strFromU8(bytes.subarray(at + ENTRY_BYTES, at + ENTRY_BYTES + nameBytes), true);
    if ((flags & ENCRYPTED) !== 0)
      throw new ZipFault(`${shown(name)} encrypted`, 'files that anyone can read');
    if (method !== STORED && method !== DEFLATED) {
      throw new ZipFault(`${shown(name)} packed with method ${method}`, 'method 0 or 8');
    }
    if (method === STORED ? size !== packed : size > packed * MOST_EXPANSION) {
      throw new ZipFault(`${shown(name)} of ${size} bytes in ${packed}`, 'a size that unpacking can give');
    }
    const header = { name, method, packed, at: view.getUint32(at + 42, true), before: start };
    const span = packedBytes(bytes, view, header);
    spans.push(span);
    files.push({ name, deflated: method === DEFLATED, packed: span.packed, size });
    at = next;
  }
  if (at !== end) throw new ZipFault('more in the directory than it counts', `${count} files`);
  spans.sort((a, b) => a.from - b.from);
  if (spans.some((span, i) => i > 0 && span.from < spans[i - 1].to)) {
    throw new ZipFault('files that overlap', 'each byte in one file');
  }
  return files;
}
