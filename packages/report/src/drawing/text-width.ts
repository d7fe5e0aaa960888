import type { Face } from './display-list.ts';

/** Advance widths of the figures face for the characters from space to tilde [1/1000 of the size]. */
const FIGURES = [
  232, 262, 416, 583, 524, 794, 653, 229, 306, 306, 499, 525, 259, 308, 259, 383, 524, 524, 524, 524, 524,
  524, 524, 524, 524, 524, 260, 260, 525, 525, 525, 405, 815, 587, 596, 569, 658, 503, 477, 663, 674, 332,
  270, 571, 479, 850, 706, 704, 555, 704, 576, 502, 501, 663, 559, 866, 541, 522, 503, 322, 383, 322, 531,
  439, 296, 521, 566, 443, 566, 520, 324, 566, 571, 253, 253, 509, 253, 858, 571, 554, 566, 566, 385, 435,
  344, 571, 477, 741, 488, 478, 418, 376, 498, 376, 525,
];

const SIGNS: Readonly<Record<string, number>> = { '°': 405, '²': 344, '³': 344, '·': 259, '’': 194 };

/** Any other character: about the widest lower-case letter, so that labels get room rather than too little. */
const OTHER = 600;

/** How much wider the text faces run than the figures face, on ordinary words. */
const WIDER = { figures: 1, text: 1.1, strong: 1.16 } as const;

/**
 * Width of a text in drawing units, near enough to keep labels apart: exact but for kerning in the figures face, an
 * estimate on the wide side in the text faces.
 */
export function textWidth(text: string, size: number, face: Face = 'figures'): number {
  let sum = 0;
  for (const sign of text) sum += FIGURES[(sign.codePointAt(0) as number) - 32] ?? SIGNS[sign] ?? OTHER;
  return (sum * size * WIDER[face]) / 1000;
}

/** Text cut to a width, with an ellipsis where something is missing. */
export function fitText(text: string, width: number, size: number, face: Face = 'figures'): string {
  if (textWidth(text, size, face) <= width) return text;
  const signs = [...text];
  while (signs.length > 0 && textWidth(`${signs.join('')}...`, size, face) > width) signs.pop();
  return `${signs.join('').trimEnd()}...`;
}

/** Text broken at spaces into lines of at most this width; a longer word stands alone and is cut. */
export function breakText(text: string, width: number, size: number, face: Face = 'figures'): string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(/\s+/).filter((w) => w !== '')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (current === '' || textWidth(longer, size, face) <= width) current = longer;
    else {
      lines.push(current);
      current = word;
    }
  }
  if (current !== '') lines.push(current);
  return lines.map((l) => fitText(l, width, size, face));
}
