import { afterAll, beforeAll, expect, it } from 'vitest';
import {
  axeFaults,
  complaints,
  DESK,
  type Device,
  device,
  PHONE,
  type Served,
  serveApp,
  untilOffline,
} from './harness.ts';

let served: Served;
const devices: Device[] = [];

function newDevice(options = PHONE): Device {
  const one = device(options);
  devices.push(one);
  return one;
}

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

it('starts with the demo jobs, goes on without a network, and keeps a job whose page was killed', async () => {
  const phone = newDevice();
  const context = await phone.open();
  const page = await context.newPage();
  const heard = complaints(page);
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await untilOffline(page);

  await context.setOffline(true);
  await page.reload();
  await page.getByLabel('New job').fill('Elm Street 12');
  await page.getByRole('button', { name: 'Start' }).tap();
  await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  await page.getByText('The plan of this space has not been drawn yet.').waitFor();
  await page.getByRole('button', { name: 'Space' }).tap();
  const client = page.getByLabel('Client');
  await client.fill('A. Client');
  await client.press('Enter');
  await page.getByText('Saved on this phone').waitFor();
  await page.getByLabel('Notes').pressSequentially('damp at the nor', { delay: 20 });
  await page.waitForTimeout(1_000);
  const address = page.url();
  expect(heard).toEqual([]);
  await phone.kill();

  const again = await phone.open();
  await again.setOffline(true);
  const reopened = await again.newPage();
  await reopened.goto(address);
  await reopened.getByRole('button', { name: 'Space' }).tap();
  expect(await reopened.getByLabel('Client').inputValue()).toBe('A. Client');
  await expect.poll(() => reopened.getByLabel('Notes').inputValue()).toBe('damp at the nor');
});

it('shows the plan and what is wrong with a demo job on a desk, without accessibility faults', async () => {
  const context = await newDevice(DESK).open();
  const page = await context.newPage();
  const heard = complaints(page);
  await page.goto(served.address);
  await page.locator('.job-row a').first().click();
  await page.locator('.drawing svg').waitFor();
  await page.getByRole('link', { name: /What is wrong/ }).click();
  await page.locator('.criteria li').first().waitFor();
  expect(await page.locator('.headline').textContent()).not.toBe('');
  expect(heard).toEqual([]);
});

it.each(['under', 'daylight', 'sun'] as const)(
  'has no fault that axe finds, on ground %s',
  async (ground) => {
    const context = await newDevice().open();
    const page = await context.newPage();
    await page.addInitScript(
      (value) => localStorage.setItem('undercroft.settings', value),
      JSON.stringify({ ground }),
    );
    await page.goto(served.address);
    await page.locator('.job-row').nth(2).waitFor();
    const job = await page.locator('.job-row a').first().getAttribute('href');
    for (const [hash, ready] of [
      ['#/', '.job-row'],
      [job, '.drawing svg'],
      ['#/settings', 'fieldset'],
      ['#/help', '.help-step'],
      ['#/calculators', '.calculators li'],
      ['#/calculators/air-state', '.calculator-result'],
    ] as const) {
      await page.goto(`${served.address}${hash}`);
      await page.locator(ready).first().waitFor();
      expect(await axeFaults(page), String(hash)).toEqual([]);
    }
  },
);

it.each([
  ['a small phone', { width: 320, height: 640, touch: true }, 'usual'],
  ['a phone at 200 % text', { width: 390, height: 844, touch: true }, 'largest'],
  ['a small window of a desk', { width: 640, height: 400 }, 'largest'],
])('needs no sideways scrolling on %s', async (_name, size, textSize) => {
  const context = await newDevice(size).open();
  const page = await context.newPage();
  await page.addInitScript(
    (value) => localStorage.setItem('undercroft.settings', value),
    JSON.stringify({ textSize, language: 'es' }),
  );
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  const job = await page.locator('.job-row a').first().getAttribute('href');
  for (const hash of ['#/', job, '#/settings', '#/calculators/pipe-fall']) {
    await page.goto(`${served.address}${hash}`);
    await page.locator('h1, h2').first().waitFor();
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(over, String(hash)).toBeLessThanOrEqual(0);
  }
});
