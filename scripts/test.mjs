// Everything that must hold before a change is good: format, types, arrows, unused code, tests.
// Ends with one line "N passed, N failed".
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

let passed = 0;
let failed = 0;

function check(name, command, args) {
  const run = spawnSync(command, args, { stdio: 'inherit' });
  const ok = run.status === 0;
  if (ok) passed += 1;
  else failed += 1;
  console.log(`${ok ? 'ok  ' : 'FAIL'} ${name}`);
}

check('format and lint', 'npx', ['biome', 'check', '.']);
check('types', 'npm', ['run', '--silent', 'check:types']);
check('import arrows', 'npm', ['run', '--silent', 'check:arrows']);
check('unused code and dependencies', 'npx', ['knip']);

if (!process.env.UNDERCROFT_SHARED) {
  console.log('NOTE: UNDERCROFT_SHARED is not set: the suites over shared reference data do not run.');
}
const report = join(mkdtempSync(join(tmpdir(), 'undercroft-test-')), 'vitest.json');
const vitest = spawnSync(
  'npx',
  ['vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile=${report}`],
  {
    stdio: 'inherit',
  },
);
try {
  const result = JSON.parse(readFileSync(report, 'utf8'));
  passed += result.numPassedTests;
  failed += result.numFailedTests;
  const emptySuites = result.testResults.filter(
    (s) => s.status === 'failed' && s.assertionResults.length === 0,
  );
  failed += emptySuites.length;
  // Errors outside any test, such as an unhandled rejection, end vitest with another code than 0.
  if (failed === 0 && (vitest.status !== 0 || result.numPassedTests === 0)) failed += 1;
} catch {
  console.error('The test run left no report: it did not finish.');
  failed += 1;
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
