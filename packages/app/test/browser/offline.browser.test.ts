import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { complaints, type Device, device, PHONE, type Served, serveApp, untilOffline } from './harness.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name, exact: true }).first();

async function keys(page: Page, text: string): Promise<void> {
  for (const key of text.split(' ')) await button(page, key).tap();
}

it('surveys a job without network and server, and has all of it after the browser was killed', async () => {
  const phone = device(PHONE);
  devices.push(phone);
  const context = await phone.open();
  const page = await context.newPage();
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await untilOffline(page);
  served.stop();
  await context.setOffline(true);
  await page.reload();
  const heard = complaints(page);

  await page.getByLabel('New job').fill('Elm Street 12');
  await button(page, 'Start').tap();
  await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  await button(page, 'Draw').tap();
  await button(page, 'From a rectangle').tap();
  await keys(page, '2 4 ft Done');
  await page.getByLabel('Width, bottom to top').waitFor();
  await keys(page, '1 6 ft Done');
  await button(page, 'Close the walls').tap();
  await button(page, 'bare earth').tap();
  await button(page, 'Save the walls').tap();
  await page.getByText('The walls are saved.').first().waitFor();
  await page.locator('.drawing svg').waitFor();
  await page.locator('.draw-sheet').getByRole('button', { name: 'Close', exact: true }).tap();

  await button(page, 'Measure').tap();
  await button(page, /^Air/).tap();
  await keys(page, '6 8');
  await page.getByRole('button', { name: /^Humidity/ }).tap();
  await keys(page, '7 2');
  await page.getByText(/^Dew point/).waitFor();
  await page.getByRole('button', { name: /^Save 68/ }).tap();
  await page.getByText('1 reading saved').waitFor();
  await page.getByText('Saved on this phone').waitFor();
  const address = page.url();
  expect(heard).toEqual([]);
  await phone.kill();

  const again = await phone.open();
  await again.setOffline(true);
  const reopened = await again.newPage();
  await reopened.goto(address);
  await reopened.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  await reopened.locator('.drawing svg').waitFor();
  await reopened
    .locator('.drawing desc', { hasText: 'floor 384 ft²: 4 walls' })
    .waitFor({ state: 'attached' });
  await reopened.goto(address.replace('/space', '/faults'));
  await button(reopened, 'Faults').tap();
  const reading = reopened.locator('.reading-list li');
  await reading.first().waitFor();
  expect(await reading.count()).toBe(1);
  expect(await reading.textContent()).toMatch(/68.*72\s*%/);
});
