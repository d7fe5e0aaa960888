// How fast the built app answers, in a Chromium whose processor is slowed down as far as a phone's.
import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { DEMO_JOBS, entriesOfJob, JobLog, JobSchema, writeArchive } from '@undercroft/record';
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

/** Objects on the plan in which a pier is dragged. */
const OBJECTS = 500;

/** A job whose plan holds so many piers and heights, as an archive file. */
function crowdedArchive() {
  const demo = DEMO_JOBS.find(({ name }) => name === 'sound-closed');
  const job = structuredClone(JobSchema.parse(demo.job));
  const corners = [
    { id: 'c1', at: { xM: 0, yM: 0 } },
    { id: 'c2', at: { xM: 26, yM: 0 } },
    { id: 'c3', at: { xM: 26, yM: 21 } },
    { id: 'c4', at: { xM: 0, yM: 21 } },
  ];
  const piers = Array.from({ length: OBJECTS }, (_, i) => ({
    id: `p${i}`,
    at: { xM: 0.5 + (i % 25), yM: 0.5 + Math.floor(i / 25) },
  }));
  const crowded = JobSchema.parse({
    ...job,
    id: 'crowded',
    header: { ...job.header, title: 'A crowded plan' },
    plan: { northDeg: 0, outline: { kind: 'corners', corners }, ground: job.plan.ground, piers },
    findings: [],
    media: {},
    readings: {},
    acceptance: [],
    build: [],
    design: {},
    prices: [],
    watch: [],
  });
  const author = { who: 'Bench', device: 'bench1', nowMs: 1.9e12, deviceTime: '2030-03-17T17:46:40+00:00' };
  return writeArchive(new JobLog('crowded', entriesOfJob(crowded, author)), new Map());
}

/** The longest time between two frames while a pier is dragged across a crowded plan, processor slowed down [ms]. */
async function longestDragFrame() {
  const address = await served();
  return onDevice({ viewport: { width: 1440, height: 900 } }, async (page) => {
    await page.goto(address);
    await page.locator('.job-row').nth(2).waitFor();
    await page.getByLabel('Import file').setInputFiles({
      name: 'crowded.undercroft',
      mimeType: 'application/zip',
      buffer: Buffer.from(crowdedArchive()),
    });
    await page.waitForURL(/job\/crowded\/space/);
    await page.goto(`${address}#/job/crowded/space/pier%3Ap262`);
    const pier = page.locator('[data-of="pier p262"]').first();
    await pier.waitFor({ state: 'attached' });
    // The plan is drawn, the year is worked out, nothing else is on the way.
    await page.waitForTimeout(4_000);
    const box = await pier.boundingBox();
    const from = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    await slowDown(page);
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 8, from.y);
    await page.evaluate(() => {
      const times = [];
      globalThis.frames4x = times;
      const next = (now) => {
        times.push(now);
        requestAnimationFrame(next);
      };
      requestAnimationFrame(next);
    });
    for (let i = 1; i <= 60; i += 1) await page.mouse.move(from.x + 8 + i * 3, from.y + i * 2);
    const times = await page.evaluate(() => [...globalThis.frames4x]);
    const moved = await page.evaluate(() => document.querySelector('.ghost')?.getAttribute('transform'));
    if (!moved) throw new Error('nothing was dragged');
    await page.mouse.up();
    return Math.max(...times.slice(1).map((time, i) => time - times[i]));
  });
}

/** From taking a repair out or in until the figures of the year with the repairs stand anew [ms]. */
async function editToResult() {
  const address = await served();
  return onDevice({ viewport: { width: 1440, height: 900 } }, async (page) => {
    await page.goto(address);
    await page.locator('.job-row').nth(2).waitFor();
    await page.goto(`${address}#/job/demo-neglected-vented/drying`);
    await page.locator('.before-after').waitFor();
    await page
      .getByText(/Alone: \d+ days/)
      .first()
      .waitFor();
    const times = [];
    // The liner and the machine, each out and in again; the first rounds warm the worker up.
    for (const index of [2, 2, 6, 6, 2, 2, 6, 6]) {
      times.push(
        await page.evaluate(
          (i) =>
            new Promise((resolve) => {
              const begin = performance.now();
              const seen = new MutationObserver(() => {
                seen.disconnect();
                requestAnimationFrame(() => resolve(performance.now() - begin));
              });
              seen.observe(document.querySelector('.before-after'), {
                subtree: true,
                childList: true,
                characterData: true,
              });
              document.querySelectorAll('.repairs input[type=checkbox]')[i].click();
            }),
          index,
        ),
      );
      await page.waitForTimeout(1_500);
    }
    const warm = times.slice(4).sort((a, b) => a - b);
    return warm[Math.floor(warm.length / 2)];
  });
}

export const benches = [
  { id: 'app.interactive4x', goal: 1500, rounds: 5, warm: 1, measure: untilInteractive },
  { id: 'app.dragFrame4x', goal: 33, rounds: 3, warm: 0, measure: longestDragFrame },
  { id: 'app.editToResult', goal: 150, rounds: 3, warm: 0, measure: editToResult },
];
