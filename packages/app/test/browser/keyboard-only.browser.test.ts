import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { complaints, DESK, type Device, device, type Served, serveApp } from './harness.ts';
import { things } from './survey-steps.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

/** What has the focus: its name for those who do not see it, and how it shows that it has it. */
interface Focused {
  readonly name: string;
  readonly isBody: boolean;
  readonly isShown: boolean;
}

function focused(page: Page): Promise<Focused> {
  return page.evaluate(() => {
    const element = document.activeElement as HTMLElement | null;
    if (element === null || element === document.body) return { name: '', isBody: true, isShown: false };
    const byId = (ids: string | null) =>
      (ids ?? '')
        .split(' ')
        .map((id) => document.getElementById(id)?.textContent ?? '')
        .join(' ')
        .trim();
    const labels = 'labels' in element ? [...((element as HTMLInputElement).labels ?? [])] : [];
    const name =
      element.getAttribute('aria-label') ||
      byId(element.getAttribute('aria-labelledby')) ||
      labels.map((label) => label.textContent ?? '').join(' ') ||
      (element.textContent ?? '');
    // A radio button or a box is drawn by what stands around it.
    const shows = (one: Element | null) => {
      if (one === null) return false;
      const style = getComputedStyle(one);
      const hasOutline = style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) > 0;
      return hasOutline || style.boxShadow !== 'none';
    };
    return { name: name.trim(), isBody: false, isShown: shows(element) || shows(element.closest('label')) };
  });
}

/** Presses Tab until something of a name has the focus; all that had it on the way has to show it. */
async function tabTo(page: Page, name: string | RegExp, { most = 60, back = false } = {}): Promise<void> {
  const passed: string[] = [];
  const fits = (text: string) => (typeof name === 'string' ? text === name : name.test(text));
  for (let i = 0; i <= most; i++) {
    const now = await focused(page);
    if (!now.isBody && i > 0) expect(now.isShown, `the focus shows on "${now.name}"`).toBe(true);
    if (fits(now.name) && (i > 0 || now.isShown)) return;
    passed.push(now.name.slice(0, 40));
    await page.keyboard.press(back ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`no ${name} within ${most} tabs: ${passed.join(' | ')}`);
}

/** Goes to something and presses a key there. */
async function use(page: Page, name: string | RegExp, key = 'Enter'): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press(key);
}

/** Holds that what has the focus has a name. */
const hasFocus = (page: Page, name: string | RegExp) =>
  expect.poll(async () => (await focused(page)).name, { message: `focus on ${name}` }).toMatch(name);

it('makes a job and surveys it with nothing but a keyboard', async () => {
  const desk = device(DESK);
  devices.push(desk);
  const page = await (await desk.open()).newPage();
  const heard = complaints(page);
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await tabTo(page, 'New job');
  await page.keyboard.type('Elm Street 12');
  await use(page, 'Start');
  await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();

  // Walls, from a rectangle.
  await use(page, 'Draw');
  await use(page, 'From a rectangle', 'Space');
  await hasFocus(page, /^Length, left to right/);
  await page.keyboard.type('24 0');
  await page.keyboard.press('Enter');
  await hasFocus(page, /^Width, bottom to top/);
  await page.keyboard.type('12 6');
  await page.keyboard.press('Enter');
  await use(page, 'Close the walls');
  await use(page, 'bare earth');
  await use(page, 'Save the walls');
  await page.locator('.drawing desc', { hasText: 'floor 300 ft²' }).waitFor({ state: 'attached' });

  // A pier by the keys of the plan: the crosshair starts in the middle.
  await use(page, 'Pier');
  await tabTo(page, 'Plan of the space, to draw on', { back: true });
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Enter');
  await expect.poll(() => things(page, 'pier').count()).toBe(1);
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Enter');
  await expect.poll(() => things(page, 'pier').count()).toBe(2);
  await page.keyboard.press('?');
  await page.getByRole('heading', { name: 'Keys of the plan' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('heading', { name: 'Draw', exact: true }).waitFor();
  await page.keyboard.press('Escape');
  await page.locator('.draw-sheet').waitFor({ state: 'detached' });
  await page.keyboard.press('Control+z');
  await expect.poll(() => things(page, 'pier').count()).toBe(1);
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(() => things(page, 'pier').count()).toBe(2);

  // Each tool opens a sheet; Escape closes it and the focus stands where it was.
  for (const tool of ['Draw', 'Measure', 'Picture']) {
    await use(page, tool);
    await page.locator('.sheet').waitFor();
    await tabTo(page, 'Close');
    await page.keyboard.press('Escape');
    await page.locator('.sheet').waitFor({ state: 'detached' });
    await hasFocus(page, new RegExp(`^${tool}$`));
  }

  // A reading of the air.
  await use(page, 'Measure');
  await page.locator('.measure-kinds').waitFor();
  await use(page, /^Air/);
  await hasFocus(page, /^Temperature/);
  await page.keyboard.type('72');
  await page.keyboard.press('Enter');
  await hasFocus(page, /^Humidity/);
  await page.keyboard.type('81');
  await page.getByText(/^Dew point/).waitFor();
  await use(page, /^Save 72/);
  await page.getByText('1 reading saved').waitFor();
  await page.keyboard.press('Escape');
  await hasFocus(page, /^Measure$/);

  // Every question, and a finding at one of them.
  for (const [link, heading, sign] of [
    [/^Faults/, 'What is wrong?', '.criteria li'],
    [/^Causes/, 'Why?', '.results .headline'],
    [/^Drying/, 'What will dry it?', '[data-figure="daysAbove80"]'],
    [/^Proof/, 'Is it done?', '.desk-answer h3'],
    [/^Space/, 'What is there?', '.desk-answer h3'],
    [/^Faults/, 'What is wrong?', '.criteria li'],
  ] as const) {
    await tabTo(page, link, { back: true, most: 120 });
    await page.keyboard.press('Enter');
    await page.locator('.desk-answer').getByRole('heading', { name: heading, exact: true }).waitFor();
    await page.locator(sign).first().waitFor({ timeout: 60_000 });
  }
  await use(page, 'Finding');
  await page.locator('.sheet').waitFor();
  await tabTo(page, 'Search the defects');
  await page.keyboard.type('standing water');
  await expect.poll(() => page.locator('.defect-list li').count()).toBeGreaterThan(0);
  const first = (await page.locator('.defect-list li button').first().textContent()) ?? '';
  await use(page, first.trim());
  await use(page, /^Place/);
  await tabTo(page, 'Place on the plan');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowUp');
  await page.getByText(/^The place is set/).waitFor();
  await use(page, 'Take this place');
  await use(page, 'Save the finding');
  await page.getByText('Saved as number 1').waitFor();
  await page.keyboard.press('Escape');
  await hasFocus(page, /^Finding$/);
  expect(await page.locator('.board-row .flag').count()).toBe(1);
  expect(heard).toEqual([]);
});
