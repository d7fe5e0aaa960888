// Everything that must hold before a change is good: format, types, arrows, unused code, tests, tests in a browser.
// Ends with one line "N passed, N failed".
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureChromium } from './ensure-chromium.mjs';

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
/** Runs a suite and counts its tests; a suite that ran none, or died, counts as failed. */
function suite(name, args, env = {}) {
  const report = join(mkdtempSync(join(tmpdir(), 'undercroft-test-')), 'vitest.json');
  const vitest = spawnSync(
    'npx',
    ['vitest', 'run', ...args, '--reporter=default', '--reporter=json', `--outputFile=${report}`],
    { stdio: 'inherit', env: { ...process.env, ...env } },
  );
  try {
    const result = JSON.parse(readFileSync(report, 'utf8'));
    const empty = result.testResults.filter((s) => s.status === 'failed' && s.assertionResults.length === 0);
    const faults = result.numFailedTests + empty.length;
    passed += result.numPassedTests;
    failed += faults;
    // Errors outside any test, such as an unhandled rejection, end vitest with another code than 0.
    if (faults === 0 && (vitest.status !== 0 || result.numPassedTests === 0)) failed += 1;
  } catch {
    console.error(`${name}: the run left no report: it did not finish.`);
    failed += 1;
  }
}

suite('tests', []);

const chromium = ensureChromium();
if (chromium.path === undefined) {
  console.error(`FAIL tests in a browser: ${chromium.fault}`);
  failed += 1;
} else {
  suite('tests in a browser', ['--root', 'packages/app', '--config', 'vitest.browser.config.ts'], {
    UNDERCROFT_CHROMIUM: chromium.path,
  });
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
