import { afterAll, beforeAll, expect, it } from 'vitest';
import { complaints, type Device, device, PHONE, type Served, serveApp } from './harness.ts';
import {
  askCausesAndDrying,
  levelTwoPoints,
  placeFinding,
  stillThere,
  takePicture,
  undoAndRedo,
} from './survey-later-steps.ts';
import { button, closeSheet, drawSpace, type Hand, measureAll } from './survey-steps.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

it('surveys a whole space by touch on a phone, takes steps back and brings them again', async () => {
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
  await closeSheet(hand);
  await measureAll(hand);
  await levelTwoPoints(hand);
  await closeSheet(hand);
  await takePicture(hand);
  await closeSheet(hand);

  const ask = async (question: string) => {
    await button(page, 'Questions').tap();
    await page.getByRole('link', { name: question }).tap();
    await page.locator('.sheet').getByRole('heading', { name: question }).waitFor();
  };
  await ask('What is wrong?');
  await expect.poll(() => page.locator('.reading-list li').count()).toBe(3);
  await closeSheet(hand);
  await placeFinding(hand);
  await closeSheet(hand);
  await askCausesAndDrying(hand, ask);
  await undoAndRedo(hand, ask);
  await stillThere(hand, ask);
  expect(heard).toEqual([]);
});
