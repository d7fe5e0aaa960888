import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** How a person acts on the screen. */
export interface Hand {
  readonly page: Page;
  /** Taps or clicks a control. */
  press(on: Locator): Promise<void>;
  /** Taps or clicks a point of the window [px]. */
  pressAt(x: number, y: number): Promise<void>;
  /** Gives a length or number to the pad: keys of the pad with a finger, text at a desk. */
  enter(keys: readonly string[], text: string): Promise<void>;
}

/** A button by all of its name, or by the beginning of it. */
export const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true }).first();

/** Things of one kind on the plan. */
export const things = (page: Page, kind: string): Locator =>
  page.locator(`.plan-frame [data-layer="${kind}"][data-of]`);

/** Length and width of the floor that these steps draw [ft]. */
const FLOOR_FT = { across: 24, up: 12 + 6.5 / 12 };

/** The plan rests when so many looks, a tenth of a second apart, see the same. */
const LOOKS = 6;

/**
 * Where the floor is drawn once it has come to rest: sheets open, and lines are drawn anew. It is looked at for longer
 * than the app takes two taps near each other for one.
 */
async function floorAtRest(page: Page) {
  const floor = page.locator('[data-layer="floor"]').last();
  const seen: string[] = [];
  let box: Awaited<ReturnType<Locator['boundingBox']>> = null;
  await expect
    .poll(
      async () => {
        box = await floor.boundingBox();
        seen.push(JSON.stringify(box));
        return box !== null && new Set(seen.slice(-LOOKS)).size === 1 && seen.length >= LOOKS;
      },
      { message: 'the plan comes to rest', interval: 100, timeout: 10_000 },
    )
    .toBe(true);
  return box as unknown as { x: number; y: number; width: number; height: number };
}

/** Presses a point of the plan, by its distance from the lower left corner of the walls [ft]. */
export async function pressPlan({ page, pressAt }: Hand, acrossFt: number, upFt: number): Promise<void> {
  const floor = await floorAtRest(page);
  await pressAt(
    floor.x + (acrossFt / FLOOR_FT.across) * floor.width,
    floor.y + floor.height - (upFt / FLOOR_FT.up) * floor.height,
  );
}

/** Closes the sheet that is open; an answer at a desk stands in none. */
export async function closeSheet({ page, press }: Hand): Promise<void> {
  const sheet = page.locator('.sheet');
  if ((await sheet.count()) > 0) await press(sheet.getByRole('button', { name: 'Close', exact: true }));
  await sheet.waitFor({ state: 'detached' });
}

/** Draws walls, piers, door, vent, girder, machine and a floor zone; what each gives is asserted. */
export async function drawSpace(hand: Hand): Promise<void> {
  const { page, press, enter } = hand;
  const back = () => press(page.locator('.draw-sheet').getByRole('button', { name: 'Back', exact: true }));
  await press(button(page, 'Draw'));
  await press(button(page, 'From a rectangle'));
  await page.getByLabel('Length, left to right').waitFor();
  await enter(['2', '4', 'ft'], '24 0');
  await press(button(page, 'Done'));
  await page.getByLabel('Width, bottom to top').waitFor();
  await enter(['1', '2', 'ft', '6', '½ ¼ ⅛', '1/2', 'in'], '12 6 1/2');
  await page.getByText('12 ft 6 1/2 in').first().waitFor();
  await press(button(page, 'Done'));
  await press(button(page, 'Close the walls'));
  await press(button(page, 'bare earth'));
  await press(button(page, 'Save the walls'));
  await page.locator('.drawing desc', { hasText: 'floor 301 ft²' }).waitFor({ state: 'attached' });

  await press(button(page, 'Row of piers'));
  await pressPlan(hand, 4, 6);
  await pressPlan(hand, 20, 6);
  await enter(['8', 'ft'], '8 0');
  await press(button(page, 'Done'));
  await expect.poll(() => things(page, 'pier').count()).toBe(3);
  for (const [kind, layer, points] of [
    ['Access door', 'door', [[0, 6]]],
    ['Vent', 'vent', [[8, 0]]],
    [
      'Girder',
      'girder',
      [
        [1, 6],
        [23, 6],
      ],
    ],
    ['Dehumidifier', 'equipment', [[20, 10]]],
  ] as const) {
    await back();
    await press(button(page, kind));
    for (const [across, up] of points) await pressPlan(hand, across, up);
    await expect.poll(() => things(page, layer).count(), { message: kind }).toBe(1);
  }
  await back();
  await drawDuct(hand);
  await press(button(page, 'Floor zone'));
  for (const [across, up] of [
    [2, 8],
    [10, 8],
    [10, 11],
  ] as const)
    await pressPlan(hand, across, up);
  await press(button(page, 'Finish it'));
  await page.getByLabel('Name', { exact: true }).fill('Liner by the hatch');
  await press(button(page, 'Done'));
  const sheet = page.locator('.draw-sheet');
  await sheet.getByText(/^Placed: /).waitFor();
  await describeLiner(hand);
}

/** A duct along the far wall, and its clearance from the tape. */
async function drawDuct(hand: Hand): Promise<void> {
  const { page, press, enter } = hand;
  const sheet = page.locator('.draw-sheet');
  const step = () => press(sheet.getByRole('button', { name: 'Back', exact: true }));
  await press(button(page, 'Duct or pipe'));
  await pressPlan(hand, 12, 9);
  await pressPlan(hand, 22, 9);
  await press(button(page, 'Finish it'));
  await expect.poll(() => things(page, 'duct').count()).toBe(1);
  await press(button(page, 'Details'));
  await press(button(page, /^Clearance to the ground/));
  await enter(['1', '4', 'in'], '14 in');
  await press(button(page, 'Done'));
  await expect
    .poll(() => button(page, /^Clearance to the ground/).textContent())
    .toBe('Clearance to the ground1\' 2"');
  await step();
  await step();
}

/** The facts of the zone that was drawn last: a liner, how it was laid, and the water on it. */
async function describeLiner({ page, press }: Hand): Promise<void> {
  await press(button(page, 'Details'));
  for (const [fact, choice] of [
    ['What covers the floor', 'ground liner'],
    ['How the liner was laid', 'torn or short'],
    ['Water on the liner', 'droplets'],
  ] as const) {
    await press(button(page, new RegExp(`^${fact}`)));
    await press(page.locator('.draw-choice').getByRole('button', { name: choice, exact: true }));
    await button(page, new RegExp(`^${fact}\\s*${choice}$`)).waitFor();
  }
}

/** Takes readings of air, surface and wood. */
export async function measureAll(hand: Hand): Promise<void> {
  const { page, press, enter } = hand;
  const again = () => press(page.locator('.sheet').getByRole('button', { name: 'Back', exact: true }));
  await press(button(page, 'Measure'));
  await press(button(page, /^Air/));
  await enter(['7', '2'], '72');
  await press(page.locator('.pad-row').getByRole('button', { name: /^Humidity/ }));
  await enter(['8', '1'], '81');
  await page.getByText(/^Dew point/).waitFor();
  await press(button(page, /^Save 72/));
  await page.getByText('1 reading saved').waitFor();
  await again();
  await press(button(page, /^Surface/));
  await enter(['6', '0'], '60');
  await page.getByText('Wet now').waitFor();
  await press(button(page, /^Save 60/));
  await page.getByText('1 reading saved').waitFor();
  await again();
  await press(button(page, /^Wood/));
  await page.getByLabel('Species of the wood').selectOption({ index: 2 });
  await enter(['2', '2'], '22');
  await page
    .getByText(/too wet|watch it/)
    .first()
    .waitFor();
  await press(button(page, /^Save 22/));
  await page.getByText('1 reading saved').waitFor();
}
