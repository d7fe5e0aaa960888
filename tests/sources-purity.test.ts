import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

function sourcesOf(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .map((file) => join(folder, file))
    .sort();
}

/** The code without comments, which may name what the code must not use. Texts in quotes stay. */
function codeOf(path: string): string {
  return readFileSync(join(root, path), 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(^|\s)\/\/.*$/gm, '');
}

/** What would make the same input give another answer at another time or place, or reach out of the engine. */
const IMPURE: readonly (readonly [what: string, pattern: RegExp])[] = [
  ['the clock', /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b/],
  ['unseeded chance', /\bMath\.random\b|\bcrypto\./],
  ['the process', /\bprocess\.(?!\d)|\bglobalThis\.process\b/],
  ['the console', /\bconsole\./],
  ['the network or a timer', /\bfetch\(|\bsetTimeout\(|\bsetInterval\(/],
  ['the language of the machine', /\.toLocale[A-Z]\w*\(\)|\bIntl\./],
];

describe('what must be pure is pure', () => {
  const files = ['packages/engine/src', 'packages/assessment/src', 'packages/report/src'].flatMap(sourcesOf);

  test('there are sources to look at', () => {
    expect(files.length).toBeGreaterThan(100);
  });

  test.each(IMPURE)('no source uses %s', (_, pattern) => {
    const found = files.filter((file) => pattern.test(codeOf(file)));
    expect(found).toEqual([]);
  });

  test('the patterns find what they look for', () => {
    const sample = `const a = Date.now(); Math.random(); process.env; console.log(1); fetch('x'); (1).toLocaleString();`;
    for (const [, pattern] of IMPURE) expect(sample).toMatch(pattern);
  });
});
