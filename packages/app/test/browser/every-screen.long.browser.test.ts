import { afterAll, beforeAll, it } from 'vitest';
import { expectNoFaults, expectRoom } from './every-walk.ts';
import { type Device, device, PHONE, type Served, serveApp } from './harness.ts';
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

it('has no accessibility fault anywhere on a phone, in the dark and by daylight', {
  timeout: 400_000,
}, async () => {
  const one = device(PHONE);
  devices.push(one);
  await expectNoFaults(await walkerOn(one, served, { ground: 'under' }, false));
});

it.each([
  [320, 640, 'largest'],
  [390, 844, 'largest'],
  [320, 640, 'usual'],
] as const)(
  'has room for everything on a phone of %d x %d, with text %s, in Spanish',
  {
    timeout: 400_000,
  },
  async (width, height, textSize) => {
    const one = device({ width, height, touch: true });
    devices.push(one);
    const walker = await walkerOn(one, served, { language: 'es', textSize }, false);
    await expectRoom(walker, `narrow-${width}-${textSize}`);
  },
);
