import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Device, device, PHONE, type Served, serveApp } from './harness.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

/** A picture of noise, which no disk stores smaller. */
function noisyPicture(page: Page): Promise<Buffer> {
  return page
    .evaluate(async () => {
      const canvas = new OffscreenCanvas(900, 900);
      const pen = canvas.getContext('2d');
      if (pen === null) throw new Error('nothing to draw with');
      const picture = pen.createImageData(900, 900);
      let state = 1;
      for (let i = 0; i < picture.data.length; i++) {
        state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
        picture.data[i] = i % 4 === 3 ? 255 : state >> 16;
      }
      pen.putImageData(picture, 0, 0);
      const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
      let text = '';
      for (const byte of bytes) text += String.fromCharCode(byte);
      return btoa(text);
    })
    .then((text) => Buffer.from(text, 'base64'));
}

it('refuses a picture and an entry when the storage is full, loses nothing, and goes on afterward', async () => {
  const phone = device(PHONE);
  devices.push(phone);
  const context = await phone.open();
  const page = await context.newPage();
  await page.goto(served.address);
  await page.locator('.job-row').nth(2).waitFor();
  await page.getByLabel('New job').fill('Elm Street 12');
  await page.getByRole('button', { name: 'Start' }).tap();
  await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  await page.getByRole('button', { name: 'Space' }).tap();
  await page.getByLabel('Client').fill('A. Client');
  await page.getByLabel('Client').press('Enter');
  await page.getByText('Saved on this phone').waitFor();

  // The browser believes for a while in the room it saw last, until the data was let go.
  const address = page.url();
  await page.goto('about:blank');
  await page.waitForTimeout(4_000);
  const disk = await context.newCDPSession(page);
  const origin = new URL(served.address).origin;
  await disk.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1_000 });
  await page.goto(address);
  await page.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  await page.getByRole('button', { name: 'Picture', exact: true }).tap();
  const files = page.locator('.capture input[type=file]').last();
  await files.setInputFiles({
    name: 'north-wall.png',
    mimeType: 'image/png',
    buffer: await noisyPicture(page),
  });
  await page.getByText('Not on the disk').waitFor();
  await page.getByText(/The storage is full. What you took is kept while this page is open/).waitFor();

  await page.locator('.sheet').getByRole('button', { name: 'Close', exact: true }).tap();
  await page.getByRole('button', { name: 'Space' }).tap();
  await page.getByLabel('Address').fill('12 Elm Street');
  await page.getByLabel('Address').press('Enter');
  await page.getByText('The storage of this phone is full.').first().waitFor();
  await page.getByText('Not saved', { exact: true }).first().waitFor();
  expect(await page.getByText('Saved on this phone').count()).toBe(0);

  // One change, whether the field was kept by Enter or by leaving it. It is said over the sheet that is open.
  const unsaved = page.locator('.phone-notices').getByText('One change is not on the disk');
  await expect
    .poll(() =>
      unsaved.evaluate((text) => {
        const { x, y, width, height } = text.getBoundingClientRect();
        return document.elementFromPoint(x + width / 2, y + height / 2) === text;
      }),
    )
    .toBe(true);
  await page.locator('.sheet').getByRole('button', { name: 'Close', exact: true }).tap();

  // Room again: what waits goes to the disk.
  await disk.send('Storage.overrideQuotaForOrigin', { origin });
  await page.locator('.phone-notices').getByRole('button', { name: 'Try again' }).tap();
  await page.getByText('Saved on this phone').waitFor();
  await page.getByRole('button', { name: 'Picture (1 not saved)' }).tap();
  await page.locator('.pictures').getByRole('button', { name: 'Try again' }).tap();
  await page.getByText('Not on the disk').waitFor({ state: 'detached' });
  await page.getByText('Saved on this phone').waitFor();

  await page.reload();
  await page.getByRole('button', { name: 'Space' }).tap();
  await expect.poll(() => page.getByLabel('Client').inputValue()).toBe('A. Client');
  await expect.poll(() => page.getByLabel('Address').inputValue()).toBe('12 Elm Street');
  await page.locator('.sheet').getByRole('button', { name: 'Close', exact: true }).tap();
  await page.getByRole('button', { name: 'Picture', exact: true }).tap();
  await page.getByText('All pictures').tap();
  await expect.poll(() => page.locator('.pictures img').count()).toBe(1);
});
