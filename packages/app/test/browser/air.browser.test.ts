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

/** A picture of the page for somebody who wants to look, where a folder is named. */
async function look(page: Page, name: string): Promise<void> {
  const folder = process.env.UNDERCROFT_LOOK;
  if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
}

async function openAir(size: typeof PHONE, ground: string, language = 'en') {
  const one = device(size);
  devices.push(one);
  const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/drying/air', { ground, language });
  await page.locator('.air-bands path').nth(2).waitFor();
  return { page, heard };
}

/** Percent in a cell of the table of figures: row by its name, 0 as found, 1 as tried. */
async function figure(page: Page, row: string, column: 0 | 1): Promise<number> {
  const cell = page.locator('.air-view tr', { hasText: row }).locator('td').nth(column);
  return Number.parseInt((await cell.textContent()) ?? '', 10);
}

const settled = (page: Page) => page.locator('.air-view [aria-busy="false"]').waitFor();

it('shows the dry pocket and the wet far end; who drags the machine sees the air follow, and can undo it', async () => {
  const { page, heard } = await openAir(DESK, 'daylight');
  await settled(page);
  expect(await figure(page, 'Humidity at the intake', 0)).toBe(55);
  expect(await figure(page, 'Humidity at the far end', 0)).toBeGreaterThan(75);
  expect(await figure(page, 'Humidity at the far end', 1)).toBe(
    await figure(page, 'Humidity at the far end', 0),
  );
  const wasAbove = await figure(page, 'Floor above 80%', 1);
  await look(page, 'air-desk-found');
  const body = page.locator('.blower.chosen .air-body');
  const from = await body.boundingBox();
  const plan = await page.locator('.air-plan').boundingBox();
  if (from === null || plan === null) throw new Error('the machine is not on the plan');
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  const target = { x: plan.x + plan.width / 2, y: plan.y + plan.height / 2 + 20 };
  await page.mouse.move(from.x + 60, from.y + 20, { steps: 4 });
  await page.mouse.move(target.x, target.y, { steps: 8 });
  await page.mouse.up();
  await settled(page);
  const moved = await body.boundingBox();
  expect(Math.abs((moved?.x ?? 0) + 12 - target.x)).toBeLessThan(12);
  await page.waitForFunction(
    (was) => {
      const row = [...document.querySelectorAll('.air-view tr')].find((r) =>
        r.textContent?.includes('Floor above 80%'),
      );
      return Number.parseInt(row?.querySelectorAll('td')[1]?.textContent ?? '', 10) < was;
    },
    wasAbove,
    { timeout: 20_000 },
  );
  await look(page, 'air-desk-moved');
  await page.locator('.air-tools').getByRole('button', { name: 'Undo' }).click();
  await settled(page);
  expect(await figure(page, 'Floor above 80%', 1)).toBe(wasAbove);
  for (const [drawn, scale] of [
    ['Dew point', '61 °F'],
    ['Moisture that wood comes to', '18%'],
  ] as const) {
    await page.getByLabel('What is drawn').selectOption(drawn);
    await page.getByRole('list', { name: drawn }).getByText(scale).waitFor();
    await settled(page);
    await page.locator('.air-bands path').nth(1).waitFor();
    await look(page, `air-desk-${scale.slice(0, 2)}`);
  }
  // The keyboard alone does the same.
  await page.getByRole('application').focus();
  for (const key of ['ArrowRight', 'ArrowRight', 'r', 'f']) await page.keyboard.press(key);
  await page.locator('.blower').nth(1).waitFor();
  await settled(page);
  expect(await axeFaults(page)).toEqual([]);
  expect(heard).toEqual([]);
});

it('finds a better arrangement and shows it, on a phone, in Spanish too', async () => {
  const { page, heard } = await openAir(PHONE, 'under');
  await settled(page);
  await look(page, 'air-phone-found');
  await page.getByRole('button', { name: 'Find a better arrangement' }).tap();
  await page.getByText(/the best of \d+ arrangements/).waitFor({ timeout: 60_000 });
  await settled(page);
  expect(await figure(page, 'Humidity at the far end', 1)).toBeLessThan(75);
  await look(page, 'air-phone-better');
  expect(await axeFaults(page)).toEqual([]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wide).toBeLessThanOrEqual(0);
  expect(heard).toEqual([]);
  const spanish = await openAir({ ...PHONE, width: 320, height: 640 }, 'sun', 'es');
  await spanish.page.getByText('Como se encontró').first().waitFor();
  expect(await spanish.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  await look(spanish.page, 'air-phone-es');
  expect(spanish.heard).toEqual([]);
});
