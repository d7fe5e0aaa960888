import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { inflate } from '../../src/archive/inflate.ts';
import { canonicalJson, JobLog, readArchive, sha256Hex } from '../../src/index.ts';
import { smallLog } from '../small-job.ts';
import { type Ending, joined, type Part, zipOf } from './zip-parts.ts';

const BLOB = strToU8('not really a picture');
const BLOB_NAME = `blobs/${sha256Hex(BLOB)}`;

function linesOf(entries: readonly unknown[]): Uint8Array {
  return strToU8(entries.map((entry) => `${canonicalJson(entry)}\n`).join(''));
}

const COUNT = smallLog().length;
const LINES = linesOf(new JobLog('small', smallLog()).entries());

function manifest(lines: Uint8Array, changes: Record<string, unknown> = {}): Uint8Array {
  const count = new TextDecoder().decode(lines).split('\n').length - 1;
  return strToU8(
    JSON.stringify({
      format: 'undercroft-archive',
      version: 1,
      jobId: 'small',
      entriesSha256: sha256Hex(lines),
      entryCount: count,
      blobs: [sha256Hex(BLOB)],
      ...changes,
    }),
  );
}

const deflated = (name: string, bytes: Uint8Array): Part => ({
  name,
  packed: deflateSync(bytes, { level: 9 }),
  method: 8,
  size: bytes.length,
});

/** The parts of a good archive, with some changed or added. */
function parts(
  changed: { manifest?: Partial<Part>; entries?: Partial<Part>; blob?: Partial<Part> } = {},
): Part[] {
  return [
    { ...deflated('undercroft.json', manifest(LINES)), ...changed.manifest },
    { ...deflated('entries.jsonl', LINES), ...changed.entries },
    { name: BLOB_NAME, packed: BLOB, ...changed.blob },
  ];
}

/** An archive of these lines, right in everything else. */
function archiveOf(lines: Uint8Array): Uint8Array {
  return zipOf(
    parts({
      manifest: deflated('undercroft.json', manifest(lines)),
      entries: deflated('entries.jsonl', lines),
    }),
  );
}

function refusal(bytes: Uint8Array): string {
  const read = readArchive(bytes);
  if (read.ok) return 'it opened';
  for (const issue of read.issues) {
    for (const text of [issue.path, issue.found, issue.expected]) expect(text).not.toBe('');
  }
  return read.issues.map(({ path, found, expected }) => `${path}: ${found}; ${expected}`).join('\n');
}

const zeros = (length: number) => new Uint8Array(length);

describe('a zip file', () => {
  it('laid by hand opens when nothing is wrong with it', () => {
    expect(readArchive(zipOf(parts())).ok).toBe(true);
    expect(readArchive(zipOf(parts(), { comment: 'a comment' })).ok).toBe(true);
    expect(
      readArchive(zipOf(parts({ entries: { name: 'entries.jsonl', packed: LINES, method: 0 } }))).ok,
    ).toBe(true);
  });

  const endings: readonly [string, Ending, string][] = [
    ['counts more files than it has', { count: 4 }, 'archive: 3 files in the directory; 4 files'],
    [
      'counts fewer files than it has',
      { count: 2 },
      'archive: more in the directory than it counts; 2 files',
    ],
    ['counts as ZIP64 does', { count: 0xffff }, 'archive: a ZIP64 file; a zip file without ZIP64'],
    ['places its directory as ZIP64 does', { directoryStart: 0xffffffff }, 'archive: a ZIP64 file'],
    ['is one of several', { disk: 1 }, 'archive: one part of several'],
    [
      'places its directory elsewhere',
      { directoryStart: 7 },
      'archive: a directory that is not where it should be',
    ],
    [
      'says another size of its directory',
      { directorySize: 7 },
      'archive: a directory that is not where it should be',
    ],
    ['has no files', { count: 0, directorySize: 0 }, 'archive: a directory that is not where it should be'],
  ];
  it.each(endings)('that %s is refused', (_, ending, expected) => {
    expect(refusal(zipOf(parts(), ending))).toContain(expected);
  });

  const entries: readonly [string, Parameters<typeof parts>[0], string][] = [
    [
      'is encrypted',
      { entries: { flags: 1 } },
      'archive: "entries.jsonl" encrypted; files that anyone can read',
    ],
    ['is strongly encrypted', { entries: { flags: 0x41 } }, 'archive: "entries.jsonl" encrypted'],
    [
      'is packed in another way',
      { entries: { method: 12 } },
      'archive: "entries.jsonl" packed with method 12; method 0 or 8',
    ],
    [
      'is packed otherwise than its own header says',
      { entries: { localMethod: 0 } },
      'archive: another method',
    ],
    [
      'has another name in its own header',
      { entries: { localName: 'entries.jsonX' } },
      'archive: the header of "entries.jsonX"',
    ],
    [
      'begins where another file lies',
      { blob: { offset: 0 } },
      `archive: the header of "undercroft.json"; the header of "blobs`,
    ],
    ['begins nowhere', { blob: { offset: 0x7fffffff } }, 'archive: something else; the header of "blobs'],
    [
      'reaches into the directory',
      { blob: { packedSize: 5000, size: 5000 } },
      'reaching too far; at most 20 bytes',
    ],
    [
      'is stored in more bytes than it has',
      { blob: { size: 10 } },
      'of 10 bytes in 20; a size that unpacking can give',
    ],
    ['says a size that nothing unpacks to', { entries: { size: 2 ** 31 } }, 'of 2147483648 bytes in'],
    [
      'says one byte more',
      { entries: { size: LINES.length + 1 } },
      'entries.jsonl: damaged bytes; bytes that unpack to',
    ],
    [
      'says one byte less',
      { entries: { size: LINES.length - 1 } },
      'entries.jsonl: damaged bytes; bytes that unpack to',
    ],
    ['says it is empty', { entries: { size: 0 } }, 'entries.jsonl: damaged bytes; bytes that unpack to 0'],
    ['is no deflate', { entries: { packed: zeros(LINES.length).fill(255) } }, 'entries.jsonl: damaged bytes'],
    [
      'is a blob that is compressed',
      { blob: deflated(BLOB_NAME, BLOB) },
      `${BLOB_NAME}: compressed bytes; a blob stored as it is`,
    ],
    ['is a blob of other bytes', { blob: { packed: strToU8('surely not a picture') } }, `${BLOB_NAME}: `],
  ];
  it.each(entries)('with a file that %s is refused', (_, changed, expected) => {
    expect(refusal(zipOf(parts(changed)))).toContain(expected);
  });

  it.each([
    '../undercroft.json',
    '../../x',
    '/etc/x',
    'C:\\x',
    'blobs\\x',
    'blobs/../entries.jsonl',
    `blobs/${'A'.repeat(64)}`,
    `blobs/${'a'.repeat(63)}`,
    `blobs/${'a'.repeat(64)}\n`,
    'blobs/',
    'entries.jsonl ',
    'ENTRIES.JSONL',
    '__proto__',
    'constructor',
    '\u0000',
    '',
  ])('with a file named %j is refused', (name) => {
    const listed = [...parts(), { name, packed: BLOB }];
    expect(refusal(zipOf(listed))).toContain(`archive: a file named ${JSON.stringify(name).slice(0, 57)}`);
  });

  it('with a name twice is refused, be the bytes the same or not', () => {
    const [first, second, blob] = parts();
    expect(refusal(zipOf([first, second, blob, second]))).toContain(
      'entries.jsonl: the name twice; each name once',
    );
    expect(refusal(zipOf([first, second, blob, { ...second, packed: BLOB, method: 0, size: 20 }]))).toContain(
      'twice',
    );
    expect(refusal(zipOf([first, second, blob, blob]))).toContain(`${BLOB_NAME}: the name twice`);
  });

  it('whose files overlap is refused, though each is well by itself', () => {
    const inner = zipOf([{ name: BLOB_NAME, packed: BLOB }]).subarray(0, 30 + BLOB_NAME.length + BLOB.length);
    const outer = { name: `blobs/${sha256Hex(inner)}`, packed: inner };
    const [first, second] = parts();
    const listed = [first, second, outer];
    const before = 30 * 3 + first.name.length + second.name.length + outer.name.length;
    const offset = before + first.packed.length + second.packed.length;
    const whole = zipOf([
      ...listed,
      { name: BLOB_NAME, packed: new Uint8Array(0), packedSize: 20, size: 20, offset },
    ]);
    expect(refusal(whole)).toContain('archive: files that overlap; each byte in one file');
  });

  it('that is cut off anywhere, or has bytes before or behind, is refused', () => {
    const whole = zipOf(parts());
    for (let length = 0; length < whole.length; length += 1) {
      expect(refusal(whole.subarray(0, length))).toContain('archive: ');
    }
    expect(refusal(joined([whole, zeros(1)]))).toContain('without the end of a zip file');
    expect(refusal(joined([zeros(1), whole]))).toContain('a directory that is not where it should be');
  });
});

describe('bytes that no file claims', () => {
  it('may lie between the files and the directory, where other programs repeat the sizes', () => {
    expect(refusal(zipOf(parts(), { between: 16 }))).toBe('it opened');
  });
});

describe('an archive that would fill the memory', () => {
  const MOST = 2 ** 25;
  /** 34 MB of zeros in 33 kB. */
  const bomb = deflateSync(zeros(MOST), { level: 9 });

  function heldMb(work: () => void): number {
    const before = process.memoryUsage();
    work();
    const after = process.memoryUsage();
    return (after.arrayBuffers + after.heapUsed - before.arrayBuffers - before.heapUsed) / 1e6;
  }

  it('is refused by the size it says', () => {
    const said = zipOf(parts({ entries: { packed: bomb, size: 2 ** 27 + 1 } }));
    expect(refusal(said)).toContain('of 134217729 bytes in');
    const most = { totalBytes: 2 ** 20, textBytes: 2 ** 20, files: 10 };
    const held = heldMb(() => {
      const read = readArchive(zipOf(parts({ entries: { packed: bomb, size: MOST } })), most);
      expect(read.ok).toBe(false);
      if (!read.ok)
        expect(read.issues[0]).toEqual({
          path: 'entries.jsonl',
          found: `${MOST} bytes`,
          expected: 'at most 1048576',
        });
    });
    expect(held).toBeLessThan(20);
  });

  it('is stopped where it unpacks to more than it says', () => {
    const timed = (size: number) => {
      const started = performance.now();
      const unpacked = inflate(bomb, size);
      return { unpacked, ms: performance.now() - started };
    };
    const honest = timed(MOST);
    const lying = timed(1000);
    expect(honest.unpacked).toHaveLength(MOST);
    expect(lying.unpacked).toBeNull();
    expect(lying.ms).toBeLessThan(honest.ms / 2);
    const held = heldMb(() => {
      const archive = zipOf(parts({ entries: { packed: bomb, size: 1000 } }));
      expect(refusal(archive)).toContain('entries.jsonl: damaged bytes; bytes that unpack to 1000');
    });
    expect(held).toBeLessThan(60);
  });

  it('is stopped where packed bytes go on behind their end', () => {
    const packed = joined([deflateSync(LINES), zeros(2 ** 24)]);
    const started = performance.now();
    expect(refusal(zipOf(parts({ entries: { packed, size: LINES.length } })))).toContain(
      'entries.jsonl: damaged bytes',
    );
    expect(performance.now() - started).toBeLessThan(2000);
  });

  it('is refused by its number of files', () => {
    const files = Array.from({ length: 40 }, (_, i) => ({
      name: `blobs/${i.toString().padStart(64, '0')}`,
      packed: BLOB,
    }));
    const read = readArchive(zipOf(files), { totalBytes: 2 ** 20, textBytes: 2 ** 20, files: 39 });
    expect(read).toEqual({
      ok: false,
      issues: [{ path: 'archive', found: '40 files', expected: 'at most 39' }],
    });
    const small = readArchive(zipOf(parts()), { totalBytes: 100, textBytes: 2 ** 20, files: 39 });
    expect(small).toMatchObject({ issues: [{ path: 'archive', expected: 'at most 100' }] });
  });

  it('lists a thousand faults of a million', () => {
    const lines = strToU8('7\n'.repeat(1_000_000));
    const text = refusal(archiveOf(lines)).split('\n');
    expect(text).toHaveLength(1001);
    expect(text[0]).toBe('entries.jsonl line 1: 7; an object');
    expect(text[1000]).toBe(
      'entries.jsonl line 1001: 1000 faults before this one; fewer; what comes after them is not listed',
    );
  });

  it('is refused for a line without an end', () => {
    const lines = strToU8(`[${'1,'.repeat(2 ** 21)}1]\n`);
    expect(refusal(archiveOf(lines))).toBe('entries.jsonl line 1: 4194307 characters; at most 4194304');
  });

  it('folds twenty thousand entries of one stamp, of one field or replacing each other in rings in seconds', () => {
    const [first] = smallLog();
    const count = 20_000;
    const started = performance.now();
    const oneStamp = new JobLog(
      'small',
      Array.from({ length: count }, (_, i) => ({ ...first, who: `person ${i}` })),
    );
    expect(oneStamp.fold().issues.length).toBeLessThan(1010);
    const stamp = (i: number) => `${i.toString(36).padStart(9, '0')}-0000-phone`;
    const make = (i: number, seen: string[]) => ({
      ...first,
      id: stamp(i),
      field: 'title',
      value: `title ${i}`,
      seen,
    });
    const oneField = new JobLog('small', [
      ...smallLog(),
      ...Array.from({ length: count }, (_, i) => make(count - i, [])),
    ]);
    expect(oneField.disagreements()[0].sides).toHaveLength(count + 1);
    const ring = new JobLog('small', [
      ...smallLog(),
      ...Array.from({ length: count }, (_, i) =>
        make(i, [stamp((i * 7919) % count), stamp((i + 1) % count)]),
      ),
    ]);
    expect(ring.fold().job?.header.title).toBe('Three piers');
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});

describe('the texts of an archive', () => {
  const withManifest = (changes: Record<string, unknown>) =>
    refusal(zipOf(parts({ manifest: deflated('undercroft.json', manifest(LINES, changes)) })));

  it.each([
    [{ format: 'other' }, 'undercroft.json.format: "other"; "undercroft-archive"'],
    [{ version: 0 }, 'undercroft.json.version: 0; a value above 0'],
    [{ version: 'one' }, 'undercroft.json.version: "one"; a number'],
    [{ jobId: '../x' }, 'undercroft.json.jobId: "../x"; an id of 1 to 64 letters'],
    [{ color: 'red' }, 'no field named "color"'],
    [{ blobs: ['x'] }, 'undercroft.json.blobs[0]: "x"; a SHA-256'],
    [{ blobs: [] }, `${BLOB_NAME}: a blob; nothing that undercroft.json does not list`],
    [
      { blobs: [sha256Hex(BLOB), 'a'.repeat(64)] },
      `blobs/${'a'.repeat(64)}: nothing; bytes with SHA-256 aaaa`,
    ],
    [{ entriesSha256: 'b'.repeat(64) }, `entries.jsonl: ${sha256Hex(LINES)}; bytes with SHA-256 bbbb`],
    [{ entryCount: 5 }, `entries.jsonl: ${COUNT} entries; 5 entries`],
  ])('with %j in the list of contents are refused', (changes, expected) => {
    expect(withManifest(changes)).toContain(expected);
  });

  it('with more blobs than there may be in the list of contents are refused once', () => {
    expect(withManifest({ blobs: Array(60_001).fill(7) })).toMatch(
      /^undercroft\.json\.blobs: \[7,7.*; at most 60000 items$/,
    );
  });

  it('of a newer program are refused as such, whatever else they hold, and left untouched', () => {
    const expected = 'this archive was written by a newer program and is left untouched';
    expect(withManifest({ version: 2, format: 'undercroft-archive', streams: [1] })).toBe(
      `undercroft.json.version: 2; at most 1; ${expected}`,
    );
    const [first, ...others] = smallLog();
    const newer = linesOf([{ ...first, version: 3, tags: ['x'] }, ...others]);
    expect(refusal(archiveOf(newer))).toBe(
      'entries.jsonl line 1.version: 3; a record version up to 2; open this job with a newer program',
    );
  });

  it.each<[string, Uint8Array, string]>([
    ['other text', strToU8('hello\n'), 'entries.jsonl line 1: "hello"; a JSON entry ('],
    ['an empty line', joined([LINES, strToU8('\n')]), `entries.jsonl line ${COUNT + 1}: ""; a JSON entry (`],
    ['no entries', zeros(0), 'header: nothing; a header with a title'],
    [
      'bytes that are no text',
      joined([LINES, Uint8Array.of(0xff, 0xfe, 0x0a)]),
      'entries.jsonl: other bytes; text in UTF-8',
    ],
    [
      'half a letter',
      joined([LINES.subarray(0, -2), Uint8Array.of(0xc3)]),
      'entries.jsonl: other bytes; text in UTF-8',
    ],
    ['an entry too little', LINES.subarray(0, LINES.length - 30), `entries.jsonl line ${COUNT}: `],
  ])('with %s are refused', (_, lines, expected) => {
    expect(refusal(archiveOf(lines))).toContain(expected);
  });

  it('may hold the letter that stands for unreadable ones', () => {
    const [first, ...others] = smallLog();
    const lines = linesOf([{ ...first, who: 'Ada \ufffd' }, ...others]);
    expect(refusal(archiveOf(lines))).toBe('it opened');
  });

  it('may lack nothing', () => {
    const [first, second, blob] = parts();
    expect(refusal(zipOf([second, blob]))).toBe('undercroft.json: nothing; the list of contents');
    expect(refusal(zipOf([first, blob]))).toContain('entries.jsonl: nothing; bytes with SHA-256');
    expect(refusal(zipOf([]))).toBe('undercroft.json: nothing; the list of contents');
  });
});
