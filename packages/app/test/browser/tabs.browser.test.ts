import { afterAll, beforeAll, expect, it } from 'vitest';
import { complaints, type Device, device, PHONE, type Served, serveApp } from './harness.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

it('shows in one tab what another wrote, and asks a person where two wrote unseen', async () => {
  const phone = device(PHONE);
  devices.push(phone);
  const context = await phone.open();
  const one = await context.newPage();
  const heard = complaints(one);
  await one.goto(served.address);
  await one.getByLabel('New job').fill('Elm Street 12');
  await one.getByRole('button', { name: 'Start' }).tap();
  await one.getByRole('heading', { name: 'Elm Street 12' }).waitFor();
  const two = await context.newPage();
  await two.goto(one.url());
  for (const tab of [one, two]) await tab.getByRole('button', { name: 'Space' }).tap();

  await one.getByLabel('Client').fill('A. Client');
  await one.getByLabel('Client').press('Enter');
  await expect.poll(() => two.getByLabel('Client').inputValue()).toBe('A. Client');

  // A tab that hears nothing of the other, as a device that was out of reach.
  const deaf = await context.newPage();
  await deaf.addInitScript(() => Reflect.deleteProperty(globalThis, 'BroadcastChannel'));
  await deaf.goto(one.url());
  await deaf.getByRole('button', { name: 'Space' }).tap();
  await expect.poll(() => deaf.getByLabel('Client').inputValue()).toBe('A. Client');
  await deaf.getByLabel('Address').fill('12 Elm Street');
  await deaf.getByLabel('Address').press('Enter');
  await one.getByLabel('Address').fill('12 Elm Street, rear house');
  await one.getByLabel('Address').press('Enter');
  await one.getByText('Saved on this phone').waitFor();
  await deaf.getByText('Saved on this phone').waitFor();

  // Both are on the disk; whoever opens the job now is asked, and both values are there.
  await one.reload();
  await one.getByText('Two people said different things').waitFor();
  await one.getByRole('button', { name: 'Keep 12 Elm Street, rear house' }).waitFor();
  await one.getByRole('button', { name: 'Keep 12 Elm Street', exact: true }).tap();
  await one.getByText('Two people said different things').waitFor({ state: 'detached' });
  await one.getByRole('button', { name: 'Space' }).tap();
  await expect.poll(() => one.getByLabel('Address').inputValue()).toBe('12 Elm Street');
  await one.reload();
  await one.getByRole('button', { name: 'Space' }).tap();
  await expect.poll(() => one.getByLabel('Address').inputValue()).toBe('12 Elm Street');
  expect(await one.getByText('Two people said different things').count()).toBe(0);
  expect(heard).toEqual([]);
});
