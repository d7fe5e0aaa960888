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
] as const)(
  'names the corner that nobody looked at and plans the way there, on %s',
  async (_name, size, ground) => {
    const one = device(size);
    devices.push(one);
    const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/proof', { ground });
    await page.locator('.coverage .unseen-floor').first().waitFor();
    if (size === PHONE) await page.getByRole('button', { name: 'Proof' }).tap();
    // The demo's far corner holds debris on bare earth, and no picture shows it.
    await page.getByText('Drawn there: Old batts and cans').waitFor();
    await page.getByRole('button', { name: 'Plan for what is missing' }).click();
    await page.getByText(/Stop 1 of \d+/).waitFor();
    expect(await page.locator('.route .stop').count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Next stop' }).click();
    await page.getByText(/Stop 2 of \d+/).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    expect(heard).toEqual([]);
  },
);
