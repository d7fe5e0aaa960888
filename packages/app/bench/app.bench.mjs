// How fast the built app answers, in a Chromium whose processor is slowed down as far as a phone's.
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { ensureChromium } from '../../../scripts/ensure-chromium.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** A phone is about four times slower than the machine of a developer (common practice, no source). */
const SLOWDOWN = 4;

let starting;

/** Builds the app, serves it for as long as this process lives, and gives its address. */
function served() {
  starting ??= new Promise((resolve, reject) => {
    const built = spawnSync('npm', ['run', '--silent', 'build', '-w', '@undercroft/app'], { cwd: root });
    if (built.status !== 0)
      return reject(new Error(`the app was not built:\n${built.stdout}\n${built.stderr}`));
    const server = spawn(process.execPath, ['scripts/serve.mjs', 'packages/app/dist'], { cwd: root });
    server.unref();
    process.on('exit', () => server.kill());
    server.once('error', reject);
    server.stdout.once('data', (text) => {
      // The pipe alone would keep this process alive.
      server.stdout.unref();
      resolve(String(text).trim());
    });
  });
  return starting;
}

async function onDevice(options, act) {
  const { path, fault } = ensureChromium();
  if (path === undefined) throw new Error(fault);
  const profile = mkdtempSync(join(tmpdir(), 'undercroft-bench-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: path,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
    locale: 'en-US',
    ...options,
  });
  try {
    return await act(await context.newPage());
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  }
}

async function slowDown(page) {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
}

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** From a cold start until a letter that somebody types stands in the first field [ms]. */
async function untilInteractive() {
  const address = await served();
  return onDevice(PHONE, async (page) => {
    await slowDown(page);
    const begin = performance.now();
    await page.goto(address, { waitUntil: 'commit' });
    await page.getByLabel('New job').fill('E');
    await page.waitForFunction(() => document.querySelector('.new-job input')?.value === 'E');
    return performance.now() - begin;
  });
}

export const benches = [
  { id: 'app.interactive4x', goal: 1500, rounds: 5, warm: 1, measure: untilInteractive },
];
