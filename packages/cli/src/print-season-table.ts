import { wrap } from './wrap.ts';

/** A table whose first column takes what the figures leave. */
export function table(
  head: readonly string[],
  rows: readonly (readonly [title: string, ...figures: string[]])[],
  columns: number,
): string[] {
  const widths = head.map((text, i) => Math.max(text.length, ...rows.map((row) => row[i + 1]?.length ?? 0)));
  const room = columns - widths.reduce((sum, w) => sum + w + 2, 0);
  const longest = Math.max(...rows.map(([title]) => title.length)) + 3;
  const first = Math.max(24, Math.min(longest, room));
  const figures = (cells: readonly string[]) =>
    cells.map((cell, i) => `  ${cell.padStart(widths[i] ?? 0)}`).join('');
  return [
    `${' '.repeat(first)}${figures(head)}`,
    ...rows.flatMap(([title, ...cells]) => {
      const [line, ...more] = wrap(title, first, '  ');
      return [`${line.padEnd(first)}${figures(cells)}`, ...more.map((text) => `  ${text}`)];
    }),
  ];
}
