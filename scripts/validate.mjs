// npm run validate
// Runs the engine against published field studies and writes docs/validation.md.
// With UNDERCROFT_SHARED (the path of the shared reference data) it takes the weather files there; without, it synthesizes
// hours from the built-in monthly statistics, and the page says so. Same data, same page, byte for byte.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gunzipSync } from 'node:zlib';

const root = fileURLToPath(new URL('..', import.meta.url));

function fail(code, text) {
  console.error(text);
  process.exit(code);
}

/** Finds the file of a station among the shared weather files; undefined when there are none. */
function weatherFiles() {
  const shared = process.env.UNDERCROFT_SHARED;
  if (!shared) {
    console.log('NOTE: UNDERCROFT_SHARED is not set: the weather is synthesized from monthly statistics.');
    return undefined;
  }
  const folder = join(shared, 'data', 'weather');
  const names = readdirSync(folder);
  return (station) => {
    const name = names.find((one) => one.startsWith(`${station}.`) && one.endsWith('.gz'));
    return name && { name, bytes: gunzipSync(readFileSync(join(folder, name))) };
  };
}

/** Runs the tests against printed values and counts them by file and group. */
function countChecks(files) {
  const folder = mkdtempSync(join(tmpdir(), 'undercroft-validate-'));
  const report = join(folder, 'vitest.json');
  const run = spawnSync('npx', ['vitest', 'run', ...files, '--reporter=json', `--outputFile=${report}`], {
    cwd: root,
    encoding: 'utf8',
  });
  if (!existsSync(report)) fail(3, `The tests of the check values left no report:\n${run.stderr}`);
  const { testResults } = JSON.parse(readFileSync(report, 'utf8'));
  rmSync(folder, { recursive: true });
  const counts = new Map();
  for (const { name, assertionResults } of testResults) {
    const file = relative(root, name);
    for (const { ancestorTitles, status } of assertionResults) {
      const topic = ancestorTitles[0] ?? '';
      const key = `${file}\n${topic}`;
      const count = counts.get(key) ?? { file, topic, passed: 0, total: 0 };
      count.total += 1;
      if (status === 'passed') count.passed += 1;
      counts.set(key, count);
    }
  }
  return [...counts.values()];
}

const built = spawnSync('npx', ['tsc', '-p', 'tsconfig.validation.json'], { cwd: root, encoding: 'utf8' });
if (built.status !== 0) fail(2, built.stdout);
const folder = `${root}/out/validation/packages/engine/validation`;
const { validationPage } = await import(pathToFileURL(`${folder}/page.js`).href);
const { CHECKED } = await import(pathToFileURL(`${folder}/check-values.js`).href);
const checks = countChecks(CHECKED.flatMap(({ files }) => files));
for (const { file, topic, passed, total } of checks) {
  if (passed < total) console.error(`${file}: ${total - passed} of ${total} checks fail: ${topic}`);
}
const { version } = JSON.parse(readFileSync(join(root, 'packages/engine/package.json'), 'utf8'));
const page = validationPage({ engineVersion: version, fileOf: weatherFiles(), checks });
writeFileSync(join(root, 'docs/validation.md'), page);
const verdict = page.split('\n').find((line) => line.startsWith('**') && line.includes('gates'));
console.log(`docs/validation.md: ${verdict?.replaceAll('*', '')}`);
