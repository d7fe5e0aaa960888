import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { sha256Hex } from '../../src/index.ts';

/** The archive again, with its entries edited and the list of contents mended, so that every hash fits. */
export function forged(bytes: Uint8Array, edit: (lines: string[]) => string[]): Uint8Array {
  const files = unzipSync(bytes);
  const lines = edit(strFromU8(files['entries.jsonl']).trimEnd().split('\n'));
  const text = strToU8(lines.map((l) => `${l}\n`).join(''));
  const manifest = JSON.parse(strFromU8(files['undercroft.json']));
  const all = {
    ...files,
    'entries.jsonl': text,
    'undercroft.json': strToU8(
      JSON.stringify({ ...manifest, entriesSha256: sha256Hex(text), entryCount: lines.length }),
    ),
  };
  return zipSync(
    Object.fromEntries(
      Object.entries(all).map(([n, b]) => [n, [b, { level: n.startsWith('blobs/') ? 0 : 6 }]]),
    ),
  );
}

/** The archive with entries edited and the list of contents left as it was. */
export function spoiled(bytes: Uint8Array, edit: (lines: string[]) => string[]): Uint8Array {
  const files = unzipSync(bytes);
  const lines = edit(strFromU8(files['entries.jsonl']).trimEnd().split('\n'));
  return zipSync({ ...files, 'entries.jsonl': strToU8(lines.map((l) => `${l}\n`).join('')) }, { level: 0 });
}
