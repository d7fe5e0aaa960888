import type { Locator, Page } from 'playwright-core';
import type { Settings } from '../../src/settings/settings.ts';
import { complaints, type Device, type Served } from './harness.ts';

/** A person who walks from place to place with one window. */
export interface Walker {
  readonly page: Page;
  readonly isDesk: boolean;
  /** What the page complained about on the way. */
  readonly heard: readonly string[];
  /** The app at an address within it, with no sheet open. */
  at(hash: string): Promise<void>;
  press(on: Locator): Promise<void>;
  /** The sheet of a tool by the number of its button, at its first step. */
  tool(number: 0 | 1 | 2): Promise<void>;
  /** One step back within the sheet. */
  back(): Promise<void>;
  /** Opens every fold in sight. */
  unfold(): Promise<void>;
  /** Waits until nothing is being computed or loaded. */
  settle(): Promise<void>;
  /** Puts other colors on the page as it stands. */
  wear(ground: Settings['ground']): Promise<void>;
}

/** Starts the app on a device, with the demo jobs on it. */
export async function walkerOn(
  one: Device,
  served: Served,
  first: Partial<Settings>,
  isDesk: boolean,
): Promise<Walker> {
  const page = await (await one.open()).newPage();
  page.setDefaultTimeout(15_000);
  const heard = complaints(page);
  await page.addInitScript(
    (value) => {
      if (localStorage.getItem('undercroft.settings') === null) {
        localStorage.setItem('undercroft.settings', value);
      }
    },
    JSON.stringify({ tour: 'off', ...first }),
  );
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  const sheetHead = page.locator('.sheet > header .button');
  const walker: Walker = {
    page,
    isDesk,
    heard,
    async at(hash) {
      while ((await sheetHead.count()) > 0) await sheetHead.last().click();
      await page.goto(`${served.address}#/${hash}`);
    },
    press: (on) => on.first().click(),
    async tool(number) {
      // The first two buttons of a phone are those of every question.
      await page
        .locator(isDesk ? '.desk-tools > .button' : '.tools > .button')
        .nth(isDesk ? number : number + 2)
        .click();
      await page.locator('.sheet > header').waitFor();
      while ((await sheetHead.count()) > 1) await sheetHead.first().click();
    },
    back: () => sheetHead.first().click(),
    async unfold() {
      // A fold may hold folds that are made when it is opened.
      for (let opened = 1; opened > 0; ) {
        opened = await page.evaluate(() => {
          const closed = document.querySelectorAll<HTMLDetailsElement>('details:not([open])');
          for (const fold of closed) fold.open = true;
          return closed.length;
        });
      }
    },
    async settle() {
      await page.waitForFunction(() => {
        const words = /^(Computing …|Opening …|Calculando …|Abriendo …)$/;
        const busy = document.querySelector('[aria-busy="true"]');
        const said = [...document.querySelectorAll('p')].some((p) => words.test(p.textContent ?? ''));
        return busy === null && !said && document.querySelector('main') !== null;
      });
    },
    wear: (ground) =>
      page.evaluate((to) => {
        const key = 'undercroft.settings';
        const newValue = JSON.stringify({ ...JSON.parse(localStorage.getItem(key) ?? '{}'), ground: to });
        localStorage.setItem(key, newValue);
        dispatchEvent(new StorageEvent('storage', { key, newValue }));
      }, ground),
  };
  return walker;
}
