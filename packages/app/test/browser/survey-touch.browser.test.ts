import { afterAll, beforeAll, expect, it } from 'vitest';
import { complaints, type Device, device, PHONE, type Served, serveApp } from './harness.ts';
import { button, drawSpace, type Hand, measureAll, pressPlan } from './survey-steps.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

it('draws, measures and finds by touch on a phone, and takes the last step back', async () => {
  const phone = device(PHONE);
  devices.push(phone);
  const page = await (await phone.open()).newPage();
  const heard = complaints(page);
  const hand: Hand = {
    page,
    press: (on) => on.tap(),
    pressAt: (x, y) => page.touchscreen.tap(x, y),
    enter: async (keys) => {
      for (const key of keys) await page.locator('.pad-keys').getByText(key, { exact: true }).tap();
    },
  };
  await page.goto(served.address);
  await page.getByLabel('New job').fill('Elm Street 12');
  await button(page, 'Start').tap();
  await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  await drawSpace(hand);
  await page.locator('.draw-sheet').getByRole('button', { name: 'Close', exact: true }).tap();
  await measureAll(hand);

  await page.locator('.sheet').getByRole('button', { name: 'Close', exact: true }).tap();
  await button(page, 'Faults').or(button(page, 'Questions')).first().tap();
  await page.getByRole('link', { name: /What is wrong/ }).tap();
  await expect.poll(() => page.locator('.reading-list li').count()).toBe(3);
  await page.locator('.sheet').getByRole('button', { name: 'Close', exact: true }).tap();
  await button(page, 'Finding').tap();
  await page.getByLabel('Search the defects').fill('standing water');
  await page.locator('.defect-list li button').first().tap();
  await page.locator('.place-button').first().tap();
  await pressPlan(hand, 12, 3);
  await button(page, 'Take this place').tap();
  await button(page, 'Save the finding').tap();
  await page.getByText('Saved as number 1').waitFor();

  await page.getByText('Saved on this phone').waitFor();
  await button(page, 'Undo').tap();
  await page.getByText('Saved as number 1').waitFor({ state: 'detached' });
  expect(heard).toEqual([]);
});
