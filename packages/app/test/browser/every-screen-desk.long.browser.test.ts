import { afterAll, beforeAll, it } from 'vitest';
import { expectNoFaults } from './every-walk.ts';
import { DESK, type Device, device, type Served, serveApp } from './harness.ts';
import { walkerOn } from './walker.ts';

let served: Served;
const devices: Device[] = [];

beforeAll(async () => {
  served = await serveApp();
});
afterAll(async () => {
  for (const one of devices) await one.dispose();
  served?.stop();
});

it('has no accessibility fault anywhere on a desk, in the dark and by daylight', {
  timeout: 400_000,
}, async () => {
  const one = device(DESK);
  devices.push(one);
  await expectNoFaults(await walkerOn(one, served, { ground: 'under' }, true));
});
