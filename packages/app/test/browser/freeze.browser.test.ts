import { readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { forged, spoiled } from '../../../record/test/freeze/forge.ts';
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
    await page.getByText('Saved on this').waitFor();
    expect(await page.locator('.frozen .hash').textContent()).toBe(hash);
    expect(await axeFaults(page)).toEqual([]);
    expect(heard).toEqual([]);
  },
);

it('names what was altered in an archive file that is taken in, and takes in what is whole', async () => {
  const one = device(DESK);
  devices.push(one);
  const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/proof');
  await page.getByRole('button', { name: 'Freeze this state' }).click();
  await page.getByText('Every entry is still there, unchanged.').waitFor();
  await page.goto(`${served.address}#/`);
  const row = page.locator('.job-row', { has: page.locator('a[href*="demo-doubted-liner"]') });
  await row.locator('summary').click();
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    row.getByRole('button', { name: 'Export file' }).click(),
  ]);
  const whole = readFileSync(await file.path());
  const fake = (lines: string[]) => lines.map((line) => line.replace('"shown":0.', '"shown":0.0'));
  const given = async (name: string, bytes: Uint8Array) => {
    const path = join(tmpdir(), `undercroft-${process.pid}-${name}`);
    writeFileSync(path, bytes);
    await page.goto(`${served.address}#/`);
    await page.getByLabel('Import file').setInputFiles(path);
  };
  const refused = page.locator('.notice', { hasText: 'This file was not taken in. Nothing was changed.' });

  await given('spoiled.undercroft', spoiled(whole, fake));
  await refused.getByText(/entries\.jsonl: found [0-9a-f]{64}, expected bytes with SHA-256/).waitFor();

  // Every hash in the file is mended: only the frozen state still knows.
  await given('forged.undercroft', forged(whole, fake));
  await refused
    .getByText(/entry \S+, frozen .*: found other content/)
    .first()
    .waitFor();

  await given('whole.undercroft', whole);
  // Demo pictures that were not drawn yet are said to be missing, and the list stays in view.
  await page
    .getByText(/^Taken in\./)
    .or(page.locator('.drawing svg'))
    .first()
    .waitFor();
  expect(await refused.count()).toBe(0);
  await page.goto(`${served.address}#/job/demo-doubted-liner/proof`);
  await page.getByText('Every entry is still there, unchanged.').waitFor();
  expect(heard).toEqual([]);
});
