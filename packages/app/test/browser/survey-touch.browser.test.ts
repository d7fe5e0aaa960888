import { afterAll, beforeAll, expect, it } from 'vitest';
import { complaints, type Device, device, PHONE, type Served, serveApp } from './harness.ts';
import { askCausesAndDrying, levelTwoPoints, placeFinding, takePicture } from './survey-later-steps.ts';
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
  const look = (name: string) => page.screenshot({ path: `/tmp/look/survey-phone-${name}.png` });
  try {
    await page.goto(served.address);
    await page.getByLabel('New job').fill('Elm Street 12');
    await button(page, 'Start').tap();
    await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
    await drawSpace(hand);
    await look('drawn');
    await closeSheet(hand);
    await look('plan');
    await measureAll(hand);
    await look('wood');
    await levelTwoPoints(hand);
    await look('levels');
    await closeSheet(hand);
    await takePicture(hand);
    await look('gallery');
    await closeSheet(hand);

    const ask = async (question: string) => {
      await button(page, 'Questions').tap();
      await page.getByRole('link', { name: question }).tap();
      await page.locator('.sheet').getByRole('heading', { name: question }).waitFor();
    };
    await ask('What is wrong?');
    await expect.poll(() => page.locator('.reading-list li').count()).toBe(3);
    await look('faults');
    await closeSheet(hand);
    await placeFinding(hand);
    await look('finding');
    await closeSheet(hand);
    await look('all');
    await askCausesAndDrying(hand, ask);
    await look('drying');
    expect(heard).toEqual([]);
  } catch (error) {
    await look('failed');
    throw error;
  }
});
