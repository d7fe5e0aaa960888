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
  'stands each finding with its proof, its criterion and what mending it does, on %s',
  async (_name, size, ground) => {
    const one = device(size);
    devices.push(one);
    const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/faults', { ground });
    const openAnswer = async () => {
      if (size === PHONE) await page.getByRole('button', { name: 'Faults', exact: true }).tap();
    };
    await openAnswer();
    const row = page
      .locator('.board li')
      .filter({ has: page.getByRole('button', { name: /^1 ?Seams lapped/ }) });
    await row.locator('.proof-state').waitFor();
    expect(await row.locator('.broken a').count()).toBeGreaterThan(0);
    await page
      .getByText(/If only this were mended:.*design month/)
      .first()
      .waitFor();
    await page.locator('.board').getByText('Did somebody else build this?').first().click();
    await page
      .getByText(/it is no legal advice/)
      .first()
      .waitFor();
    expect(await axeFaults(page)).toEqual([]);

    await page.locator('.board').getByText('by subject').click();
    await page.reload();
    await openAnswer();
    await page.getByRole('radio', { name: 'by subject' }).waitFor();
    expect(await page.getByRole('radio', { name: 'by subject' }).isChecked()).toBe(true);

    await row.getByRole('link', { name: 'Show its place on the plan' }).click();
    await page.locator('.finding-ring').waitFor();
    expect(page.url()).toContain('/faults/f1');
    expect(await axeFaults(page)).toEqual([]);
    expect(heard).toEqual([]);
  },
);

it('says in Spanish how far a finding is proved, and teaches where none was taken', async () => {
  const one = device(PHONE);
  devices.push(one);
  const { page, heard } = await openDemo(served, one, 'demo-doubted-liner/faults', {
    ground: 'under',
    language: 'es',
  });
  await page.locator('.tools .button.main').tap();
  await page
    .getByText(/Si solo se arreglara esto:/)
    .first()
    .waitFor();
  await page.goto(`${served.address}#/job/demo-sound-closed/faults`);
  await page.locator('.tools .button.main').tap();
  await page.getByText('Todavía no hay hallazgos.').waitFor();
  expect(await axeFaults(page)).toEqual([]);
  expect(heard).toEqual([]);
});
