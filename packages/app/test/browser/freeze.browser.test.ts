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
  'freezes a state and holds it against the entries when opened again, on %s',
  async (_n, size, ground) => {
    const one = device(size);
    devices.push(one);
    const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/proof', { ground });
    const openAnswer = async () => {
      await page.locator('.coverage .unseen-floor').first().waitFor();
      if (size === PHONE) await page.getByRole('button', { name: 'Proof' }).tap();
    };
    await openAnswer();
    await page.getByRole('button', { name: 'Freeze this state' }).click();
    await page.locator('.frozen .hash').waitFor();
    const hash = await page.locator('.frozen .hash').textContent();
    expect(hash).toMatch(/^[0-9a-f]{64}$/);
    await page.reload();
    await openAnswer();
    await page.getByText('Every entry is still there, unchanged.').waitFor();
    expect(await page.locator('.frozen .hash').textContent()).toBe(hash);
    expect(await axeFaults(page)).toEqual([]);
    expect(heard).toEqual([]);
  },
);
