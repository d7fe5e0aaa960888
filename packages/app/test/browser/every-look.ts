import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';

/** Lets everything stand at its full height, so that a picture of the page holds what would scroll. */
const WHOLE = `
  .look-whole .sheet { max-height: none !important; }
  .look-whole .phone, .look-whole .desk { height: auto !important; }
  .look-whole :is(.phone-center, .sheet-body, .desk-center, .desk-answer) { overflow: visible !important; flex: none !important; }
`;

/** Pictures of the page for somebody who wants to look, where a folder is named: as it stands, and all of it. */
export async function lookAt(page: Page, name: string): Promise<void> {
  const folder = process.env.UNDERCROFT_LOOK;
  if (folder === undefined) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: `${folder}/${name}.png` });
  const scrolls = await page.evaluate((css) => {
    if (document.getElementById('look-whole') === null) {
      const style = document.createElement('style');
      style.id = 'look-whole';
      style.textContent = css;
      document.head.append(style);
    }
    const all = [
      document.documentElement,
      ...document.querySelectorAll('.phone-center, .sheet-body, .desk-center, .desk-answer'),
    ];
    // A browser draws no picture that is taller than this.
    return (
      all.every((one) => one.scrollHeight < 12_000) &&
      all.some((one) => one.scrollHeight > one.clientHeight + 8)
    );
  }, WHOLE);
  if (!scrolls) return;
  const whole = (is: boolean) =>
    page.evaluate((on) => document.documentElement.classList.toggle('look-whole', on), is);
  await whole(true);
  await page.screenshot({ path: `${folder}/${name}-whole.png`, fullPage: true }).catch(() => undefined);
  await whole(false);
}
