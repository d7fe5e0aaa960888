import { afterAll, beforeAll, expect, it } from 'vitest';
import { complaints, DESK, type Device, device, type Served, serveApp } from './harness.ts';
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

it('surveys a whole space with mouse and keyboard at a desk, takes steps back and brings them again', async () => {
  const desk = device(DESK);
  devices.push(desk);
  const page = await (await desk.open()).newPage();
  const heard = complaints(page);
  const hand: Hand = {
    page,
    press: (on) => on.click(),
    pressAt: (x, y) => page.mouse.click(x, y),
    // Typing goes on where a pad has the focus; else its field is clicked first.
    enter: async (_keys, text) => {
      const field = page.locator('.pad .is-active input, .pad-head input').first();
      if (!(await field.evaluate((input) => input === document.activeElement))) await field.click();
      await page.keyboard.type(text);
    },
  };
  await page.goto(served.address);
  await page.getByLabel('New job').fill('Elm Street 12');
  await button(page, 'Start').click();
  await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  await drawSpace(hand);
  await closeSheet(hand);
  await measureAll(hand);
  await levelTwoPoints(hand);
  await closeSheet(hand);
  await takePicture(hand);
  await closeSheet(hand);

  const ask = async (question: string) => {
    await page.getByRole('navigation', { name: 'Questions' }).getByRole('link', { name: question }).click();
    await page.locator('.desk-answer').getByRole('heading', { name: question, exact: true }).waitFor();
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
