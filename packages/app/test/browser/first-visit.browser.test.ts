import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, it } from 'vitest';
import {
  appFolder,
  axeFaults,
  complaints,
  type Device,
  device,
  PHONE,
  type Served,
  serveApp,
} from './harness.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

it('loads little before the first screen', async () => {
  const phone = device(PHONE);
  devices.push(phone);
  const page = await (await phone.open()).newPage();
  const scripts = new Set<string>();
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    // What the service worker fetches afterward, for the days without a network, is not waited for.
    if (pathname.endsWith('.js') && response.request().serviceWorker() === null) scripts.add(pathname);
  });
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  const bytes = [...scripts].map((path) => gzipSync(readFileSync(join(appFolder, 'dist', path))).length);
  const total = bytes.reduce((sum, one) => sum + one, 0);
  expect(scripts.size).toBeGreaterThan(0);
  expect(total).toBeLessThan(250_000);
});

it('offers a tour of the demo job on the first visit, and help at any time', async () => {
  const phone = device(PHONE);
  devices.push(phone);
  const page = await (await phone.open()).newPage();
  const heard = complaints(page);
  await page.goto(served.address);
  await page.getByRole('button', { name: 'Show me around' }).tap();
  const tour = page.getByRole('region', { name: 'Tour' });
  await tour.getByText('The plan is the center').waitFor();
  await page.locator('.drawing svg, .plan svg').first().waitFor();
  expect(await axeFaults(page)).toEqual([]);
  await page.reload();
  await tour.getByText('The plan is the center').waitFor();
  while ((await tour.getByRole('button', { name: 'Next' }).count()) > 0) {
    const { height, width } = await tour.boundingBox().then((box) => box ?? { height: 0, width: 0 });
    expect(height).toBeLessThan(844 / 2);
    expect(width).toBeLessThanOrEqual(390);
    await tour.getByRole('button', { name: 'Next' }).tap();
  }
  await page.getByLabel('New job').waitFor();
  await tour.getByRole('button', { name: 'End the tour' }).tap();
  expect(await tour.count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Show me around' }).count()).toBe(0);
  await page.getByRole('link', { name: 'Help' }).tap();
  await page.getByRole('heading', { name: 'Draw the space' }).waitFor();
  expect(await axeFaults(page)).toEqual([]);
  expect(heard).toEqual([]);
});
