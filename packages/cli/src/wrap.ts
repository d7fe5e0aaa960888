/** Spaces that may end a line: not those between a number and its unit, nor before "RH". */
const BREAKS = /(?<!\d) (?!RH\b)|(?<=\d) (?![A-Za-z]{1,3}\b|\S*[/%°²³·])/;

/** Narrower than this nothing reads well; longer lines then run over. */
const NARROWEST = 30;

/**
 * Breaks text into lines of at most `columns` characters between words.
 * @param first what the first line begins with; the others are indented as far
 * @param columns width of the place; a word that is longer stays whole
 */
export function wrap(text: string, columns: number, first = ''): string[] {
  const indent = ' '.repeat(first.length);
  const room = Math.max(NARROWEST, columns) - first.length;
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(BREAKS)) {
    if (line === '') line = word;
    else if (line.length + 1 + word.length <= room) line += ` ${word}`;
    else {
      lines.push(line);
      line = word;
    }
  }
  lines.push(line);
  return lines.map((l, i) => (i === 0 ? first : indent) + l);
}

/** Two columns: names and what they mean. Where a name is too long, its meaning stands below it. */
export function columnsOf(
  rows: readonly (readonly [name: string, meaning: string])[],
  columns: number,
): string[] {
  const longest = Math.max(0, ...rows.map(([name]) => name.length));
  const width = Math.min(longest, Math.floor(columns / 3));
  return rows.flatMap(([name, meaning]) =>
    name.length <= width
      ? wrap(meaning, columns, `  ${name.padEnd(width)}  `)
      : [`  ${name}`, ...wrap(meaning, columns, ' '.repeat(width + 4))],
  );
}

/** A heading with a line under it and an empty one before. */
export function heading(text: string): string[] {
  return ['', text, '-'.repeat(text.length)];
}
