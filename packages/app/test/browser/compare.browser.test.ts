import { afterAll, beforeAll, expect, it } from 'vitest';
import { axeFaults, DESK, type Device, device, openDemo, PHONE, type Served, serveApp } from './harness.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

it.each([
  ['a phone', PHONE, 'under'],
  ['a desk', DESK, 'daylight'],
] as const)('sets an earlier survey beside this one, on %s', async (_name, size, ground) => {
  const one = device(size);
  devices.push(one);
  const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/proof', { ground });
  await page.locator('.coverage .unseen-floor').first().waitFor();
  if (size === PHONE) await page.getByRole('button', { name: 'Proof' }).tap();
  const earlier = page.getByLabel('Earlier survey');
  const other = await earlier.locator('option', { hasText: 'Tannery Lane' }).getAttribute('value');
  await earlier.selectOption(other);
  await page.getByRole('heading', { name: 'What was claimed as done' }).waitFor();
  await page.getByText('Piers wrapped').first().waitFor();
  // The two demo jobs are of two spaces, and that is said.
  await page.getByText('check that both surveys are of one space').waitFor();
  const folder = process.env.UNDERCROFT_LOOK;
  if (folder !== undefined)
    await page
      .locator('.compared')
      .screenshot({ path: `${folder}/compare-${size === PHONE ? 'phone' : 'desk'}.png` });
  // Long lists are folded, so that the answer stays one that can be read.
  const height = await page.locator('.compared').evaluate((element) => element.clientHeight);
  expect(height).toBeLessThan(2500);
  await page.getByText(/^Criteria that turned \(\d+\)/).click();
  expect(await axeFaults(page)).toEqual([]);
  expect(heard).toEqual([]);
});
