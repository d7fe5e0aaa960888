import { join } from 'node:path';
import type { Page } from 'playwright-core';
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

const look = async (page: Page, name: string) => {
  const folder = process.env.UNDERCROFT_LOOK;
  if (folder !== undefined) await page.screenshot({ path: join(folder, `gallery-${name}.png`) });
};

/** Presses a place of a plan, by its share of the floor's width and height from the lower left. */
async function pressFloor(page: Page, plan: string, across: number, up: number): Promise<void> {
  // The sheet rises and the plan is drawn at its size.
  await page.waitForTimeout(700);
  const floor = await page.locator(`${plan} [data-layer="floor"]`).last().boundingBox();
  if (floor === null) throw new Error('no plan is drawn');
  await page.mouse.click(floor.x + across * floor.width, floor.y + (1 - up) * floor.height);
}

it.each([
  ['phone', PHONE, 'under'],
  ['desk', DESK, 'daylight'],
] as const)(
  'finds the pictures that show a place, opens one with what it shows, and says what the next would add, on a %s',
  async (name, size, ground) => {
    const one = device(size);
    devices.push(one);
    const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/proof', { ground });
    await page.locator('.coverage .unseen-floor').first().waitFor();
    await page.getByRole('button', { name: 'Picture', exact: true }).click();
    await page.getByText('All pictures', { exact: true }).click();
    await page.locator('.gallery-plan .station').nth(5).waitFor();
    await page.locator('.tile-number').nth(5).waitFor();
    const all = await page.locator('.gallery > li').count();
    // Pictures that were taken at one place stand as one mark.
    const marks = await page.locator('.gallery-plan .station text').allTextContents();
    const told = marks.reduce((sum, mark) => sum + 1 + Number(/\+(\d+)/.exec(mark)?.[1] ?? 0), 0);
    expect(told).toBe(all);
    await look(page, `${name}-all`);
    expect(await axeFaults(page)).toEqual([]);

    // The corner of the demo that nobody looked at.
    await pressFloor(page, '.gallery-plan', 0.985, 0.95);
    await page.getByText('No picture shows this.').waitFor();
    expect(await page.locator('.gallery > li').count()).toBe(0);
    await page.getByRole('button', { name: 'Show all' }).click();

    // Every picture in the list of a pier stands out on the plan.
    await page.getByLabel('Which pictures').selectOption({ label: 'that show pier 14' });
    await expect.poll(() => page.locator('.gallery > li').count()).toBeLessThan(all);
    const some = await page.locator('.gallery > li').count();
    expect(some).toBeGreaterThan(1);
    expect(await page.locator('.stations .is-meant .nose').count()).toBe(some);
    await look(page, `${name}-pier`);

    await page.locator('.gallery button').first().click();
    await page.locator('.detail-plan .picture-view .lit').first().waitFor({ state: 'attached' });
    await page.getByText(/^Picture \d+\. Shows/).waitFor();
    await page
      .getByText(/pier 14/)
      .first()
      .waitFor();
    expect(await page.locator('.detail-plan .is-meant').count()).toBe(1);
    const number = await page.locator('.detail-plan .is-meant text').textContent();
    await look(page, `${name}-one`);
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Picture before' }).click();
    await expect
      .poll(() => page.locator('.detail-plan .is-meant text').textContent())
      .toBe(String(Number(number) - 1));

    // From the unseen corner the next picture adds floor; from where others stand it does not.
    await page.locator('.sheet').getByRole('button', { name: 'Back', exact: true }).click();
    await page.getByText('Take', { exact: true }).click();
    await page.getByRole('button', { name: /^Place and direction/ }).click();
    await pressFloor(page, '.place-plan', 0.9, 0.8);
    await pressFloor(page, '.place-plan', 0.985, 0.95);
    await page.getByText(/From here it adds \d+ ft² of floor\./).waitFor();
    await page.getByText(/No picture shows \d+ ft² of floor then\.|Then every part/).waitFor();
    await look(page, `${name}-next`);
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Take this place' }).click();
    await page.getByText(/From here it adds \d+ ft² of floor\./).waitFor();
    const added = await page.locator('.shot-adds strong').textContent();

    // Once it is taken, the same view adds nothing, and what nobody looked at has shrunk.
    const before = await page.locator('.coverage .unseen-floor').count();
    const chosen = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'From files' }).click();
    const png = await page.screenshot({ clip: { x: 0, y: 0, width: 60, height: 40 } });
    await (await chosen).setFiles({ name: 'corner.png', mimeType: 'image/png', buffer: png });
    await page.getByText('Saved: photo').waitFor();
    await page.getByText('From here it adds no floor that other pictures do not show.').waitFor();
    expect(added).toMatch(/adds \d+/);
    if (size === DESK)
      expect(await page.locator('.coverage .unseen-floor').count()).toBeLessThanOrEqual(before);
    expect(heard).toEqual([]);
  },
);

it('opens the pictures of a finding from the board', async () => {
  const one = device(PHONE);
  devices.push(one);
  const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/faults');
  await page.getByRole('button', { name: 'Faults', exact: true }).tap();
  await page.getByRole('button', { name: 'Pictures of finding 1, with the plan' }).tap();
  await page.locator('.gallery > li').first().waitFor();
  const chosen = page.getByLabel('Which pictures').locator('option:checked');
  expect(await chosen.textContent()).toMatch(/^finding 1: /);
  const shown = await page.locator('.gallery > li').count();
  expect(shown).toBeGreaterThan(0);
  await expect.poll(() => page.locator('.stations .is-meant .nose').count()).toBe(shown);
  expect(heard).toEqual([]);
});
