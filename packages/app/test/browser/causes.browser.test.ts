import { afterAll, beforeAll, expect, it } from 'vitest';
import { axeFaults, complaints, DESK, type Device, device, PHONE, type Served, serveApp } from './harness.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

/** The chain of causes of a demo job, drawn. */
async function chainOf(job: string, options: typeof DESK) {
  const one = device(options);
  devices.push(one);
  const context = await one.open();
  const page = await context.newPage();
  const heard = complaints(page);
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await page.goto(`${served.address}#/job/${job}/causes`);
  await page.locator('.chain-drawing [data-layer="boxes"]').waitFor();
  return { page, heard };
}

it('draws the chain, and a tapped arrow tells what speaks for and against it', async () => {
  const { page, heard } = await chainOf('demo-neglected-vented', DESK);
  const number = page.locator('[data-layer="number"][data-of="arrow 4"] circle');
  await number.scrollIntoViewIfNeeded();
  const box = await number.boundingBox();
  if (box === null) throw new Error('the arrow is not on the page');
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  const open = page.locator('.open-arrow');
  await open.waitFor();
  expect(await open.locator('.speaks-for').count()).toBeGreaterThan(0);
  expect(await open.locator('.speaks-against').count()).toBeGreaterThan(0);
  await open.getByRole('button', { name: 'Close' }).click();
  expect(await open.count()).toBe(0);
  expect(await axeFaults(page)).toEqual([]);
  expect(heard).toEqual([]);
});

it('draws one finding at a time on a phone, in Spanish too, without sideways scrolling', async () => {
  const one = device(PHONE);
  devices.push(one);
  const page = await (await one.open()).newPage();
  await page.addInitScript(
    (value) => localStorage.setItem('undercroft.settings', value),
    JSON.stringify({ language: 'es' }),
  );
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await page.goto(`${served.address}#/job/demo-doubted-liner/causes`);
  await page.locator('.chain-drawing [data-layer="boxes"]').waitFor();
  await page.getByLabel('Hallazgo').selectOption('humid-air');
  await page
    .locator('.chain-drawing svg title', { hasText: 'Por qué está así' })
    .waitFor({ state: 'attached' });
  await expect
    .poll(() =>
      page.locator('.chain-drawing').evaluate((e) => e.textContent?.includes('El aire está') ?? false),
    )
    .toBe(true);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
  expect(wide).toBe(false);
});

it('says of a sound space that nothing wants an explanation', async () => {
  const one = device(DESK);
  devices.push(one);
  const page = await (await one.open()).newPage();
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await page.goto(`${served.address}#/job/demo-sound-closed/causes`);
  await page.getByText('Nothing was found that wants an explanation.').waitFor();
  expect(await page.locator('.chain-drawing').count()).toBe(0);
});
