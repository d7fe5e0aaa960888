import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page } from 'playwright-core';

const root = fileURLToPath(new URL('../../../..', import.meta.url));
/** Folder of the app's package. */
export const appFolder = join(root, 'packages/app');

/** The browser of the environment, else the system's, else the one of the test library. */
function browserPath(): string | undefined {
  const named = process.env.UNDERCROFT_CHROMIUM;
  if (named !== undefined) return named;
  return ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(existsSync);
}

const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Builds the app once, unless `UNDERCROFT_APP_BUILT` says that it is built. */
export function buildApp(): void {
  if (process.env.UNDERCROFT_APP_BUILT && existsSync(join(appFolder, 'dist/index.html'))) return;
  const built = spawnSync('npm', ['run', '--silent', 'build', '-w', '@undercroft/app'], {
    cwd: root,
    encoding: 'utf8',
  });
  if (built.status !== 0) throw new Error(`the app was not built:\n${built.stdout}\n${built.stderr}`);
}

/** The built app behind its own server. */
export interface Served {
  readonly address: string;
  stop(): void;
}

/** Serves the built app at a free port of this machine. */
export function serveApp(): Promise<Served> {
  const server: ChildProcess = spawn(process.execPath, ['scripts/serve.mjs', 'packages/app/dist'], {
    cwd: root,
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.stderr?.once('data', (text) => reject(new Error(String(text))));
    server.stdout?.once('data', (text) =>
      resolve({ address: String(text).trim(), stop: () => void server.kill() }),
    );
  });
}

/** A phone or desk with a profile of its own, which outlives its browser. */
export interface Device {
  /** Starts the browser; a second time it finds what the first one left. */
  open(): Promise<BrowserContext>;
  /** Ends the browser at once, as a dead battery does. */
  kill(): Promise<void>;
  dispose(): Promise<void>;
}

export interface DeviceOptions {
  readonly width: number;
  readonly height: number;
  readonly touch?: boolean;
}

export const PHONE: DeviceOptions = { width: 390, height: 844, touch: true };
export const DESK: DeviceOptions = { width: 1440, height: 900 };

export function device({ width, height, touch = false }: DeviceOptions): Device {
  const profile = mkdtempSync(join(tmpdir(), 'undercroft-profile-'));
  let context: BrowserContext | undefined;
  const close = async () => {
    await context?.close().catch(() => undefined);
    context = undefined;
  };
  return {
    async open() {
      const path = browserPath();
      context = await chromium.launchPersistentContext(profile, {
        ...(path === undefined ? {} : { executablePath: path }),
        headless: true,
        args: FLAGS,
        viewport: { width, height },
        hasTouch: touch,
        isMobile: touch,
        locale: 'en-US',
      });
      context.setDefaultTimeout(20_000);
      return context;
    },
    async kill() {
      if (context === undefined) return;
      const session = await context.browser()?.newBrowserCDPSession();
      if (session === undefined) throw new Error('the browser does not tell its process');
      const { processInfo } = await session.send('SystemInfo.getProcessInfo');
      const browser = processInfo.find(({ type }) => type === 'browser');
      if (browser === undefined) throw new Error('the browser does not tell its process');
      // No process gets a chance to save anything.
      process.kill(browser.id, 'SIGKILL');
      await close();
    },
    async dispose() {
      await close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

/** A demo job opened at an address within the app, and what the page complains about meanwhile. */
export async function openDemo(
  served: Served,
  one: Device,
  at: string,
  settings: { readonly ground?: string; readonly language?: string } = {},
): Promise<{ readonly page: Page; readonly heard: string[] }> {
  const page = await (await one.open()).newPage();
  const heard = complaints(page);
  await page.addInitScript(
    (value) => localStorage.setItem('undercroft.settings', value),
    JSON.stringify({ tour: 'off', ...settings }),
  );
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await page.goto(`${served.address}#/job/${at}`);
  return { page, heard };
}

/** Waits until the app is kept on the device, so that it works without a network. */
export async function untilOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    if (registration.active?.state !== 'activated') {
      await new Promise((done) => registration.active?.addEventListener('statechange', done, { once: true }));
    }
  });
}

/** What axe finds against the page as it stands: rule and first element of each. */
export async function axeFaults(page: Page): Promise<string[]> {
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'));
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    return (await axe.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

/** Collects what the page complains about. */
export function complaints(page: Page): string[] {
  const heard: string[] = [];
  page.on('pageerror', (error) => heard.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') heard.push(message.text());
  });
  return heard;
}
