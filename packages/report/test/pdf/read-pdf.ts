import { inflateSync } from 'node:zlib';

interface PdfObject {
  readonly head: string;
  readonly stream?: string;
  /** The stream as it lies in the file, where it is packed. */
  readonly packed?: string;
}

/** A PDF taken apart as far as the tests look: objects by number, with their streams unpacked. */
export interface ReadPdf {
  readonly source: string;
  readonly objects: ReadonlyMap<number, PdfObject>;
}

export function readPdf(bytes: Uint8Array): ReadPdf {
  const source = Buffer.from(bytes).toString('latin1');
  const objects = new Map<number, PdfObject>();
  for (const m of source.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const [, number, body] = m;
    const at = body.indexOf('stream\n');
    if (at < 0) {
      objects.set(Number(number), { head: body });
      continue;
    }
    const head = body.slice(0, at);
    const raw = body.slice(at + 7, body.lastIndexOf('\nendstream'));
    const isPacked = head.includes('/FlateDecode');
    const stream = isPacked ? inflateSync(Buffer.from(raw, 'latin1')).toString('latin1') : raw;
    objects.set(Number(number), { head, stream, ...(isPacked ? { packed: raw } : {}) });
  }
  return { source, objects };
}

const reference = (head: string, key: string) => Number(new RegExp(`/${key} (\\d+) 0 R`).exec(head)?.[1]);

/** What each glyph of a font reads as. */
function glyphTexts(pdf: ReadPdf, font: number): string[] {
  const cmap = pdf.objects.get(reference(pdf.objects.get(font)?.head ?? '', 'ToUnicode'))?.stream ?? '';
  return [...cmap.matchAll(/\[([^\]]*)\]/g)].flatMap(([, list]) =>
    [...list.matchAll(/<([^>]*)>/g)].map(([, hex]) =>
      String.fromCharCode(
        ...hex
          .trim()
          .split(/\s+/)
          .filter(Boolean)
          .map((h) => Number.parseInt(h, 16)),
      ),
    ),
  );
}

/** The text of each page, a line break after each run. */
export function pageTexts(pdf: ReadPdf): string[] {
  const pages = [...pdf.objects.values()].filter((o) => /\/Type \/Page\b(?!s)/.test(o.head));
  const fonts = new Map<string, string[]>();
  return pages.map((page) => {
    const resources = pdf.objects.get(reference(page.head, 'Resources'))?.head ?? '';
    for (const [, name, number] of resources.matchAll(/\/(F\d+) (\d+) 0 R/g))
      if (!fonts.has(name)) fonts.set(name, glyphTexts(pdf, Number(number)));
    const content = pdf.objects.get(reference(page.head, 'Contents'))?.stream ?? '';
    const runs: string[] = [];
    let glyphs: string[] = [];
    for (const m of content.matchAll(/\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)) {
      if (m[1] !== undefined) glyphs = fonts.get(m[1]) ?? [];
      else
        runs.push(
          [...m[2].matchAll(/<([0-9a-f]*)>/g)]
            .map(([, hex]) =>
              (hex.match(/.{4}/g) ?? []).map((g) => glyphs[Number.parseInt(g, 16)] ?? '').join(''),
            )
            .join(''),
        );
    }
    return runs.join('\n');
  });
}

/** How often each kind of structure element occurs. */
export function structure(pdf: ReadPdf): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { head } of pdf.objects.values()) {
    const kind = /^<<\n\/S \/([A-Za-z0-9]+)/.exec(head)?.[1];
    if (kind !== undefined) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return counts;
}
