import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { button, closeSheet, type Hand, pressPlan, things } from './survey-steps.ts';

/** Sets the instrument up, reads two points of the floor with the rod, and asks for the fall between them. */
export async function levelTwoPoints(hand: Hand): Promise<void> {
  const { page, press, enter } = hand;
  await press(page.locator('.sheet').getByRole('button', { name: 'Back', exact: true }));
  await press(button(page, /^Levels/));
  await page.getByLabel('Line of sight over the floor, if known').waitFor();
  await enter(['5', '0'], '50');
  await press(button(page, 'Start this set-up'));
  for (const [across, rod] of [
    [4, '42'],
    [20, '48'],
  ] as const) {
    await page.getByText('Tap the plan where it is.').waitFor();
    await pressPlan(hand, across, 3);
    await press(button(page, 'Take its reading'));
    await page.getByLabel('Reading', { exact: true }).waitFor();
    await enter([...rod], rod);
    await press(button(page, /^Save \d/));
  }
  await page.getByText('Tap the plan where it is.').waitFor();
  await press(page.locator('.choice').getByText('Heights, falls'));
  await page.getByText(/^Falls 6" in 1[56]/).waitFor();
}

/** A small picture of a floor with a wet spot, made by the browser. */
function madePicture(page: Page): Promise<Buffer> {
  return page
    .evaluate(async () => {
      const canvas = new OffscreenCanvas(320, 240);
      const pen = canvas.getContext('2d');
      if (pen === null) throw new Error('nothing to draw with');
      pen.fillStyle = '#8a7358';
      pen.fillRect(0, 0, 320, 240);
      pen.fillStyle = '#2b3f52';
      pen.fillRect(90, 120, 150, 70);
      const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer());
      return [...bytes];
    })
    .then((bytes) => Buffer.from(bytes));
}

/** Sets place and direction on the plan, takes a picture, and finds it among all pictures. */
export async function takePicture(hand: Hand): Promise<void> {
  const { page, press } = hand;
  await press(button(page, 'Picture'));
  await press(button(page, /^Place and direction/));
  await pressPlan(hand, 12, 6);
  await page.getByText('Now tap where you look.').waitFor();
  await pressPlan(hand, 18, 6);
  await page.getByText('Place and direction are set.').waitFor();
  await press(button(page, 'Take this place'));
  await button(page, /^Place and direction.*looking (89|90|91)°/).waitFor();
  const chosen = page.waitForEvent('filechooser');
  await press(button(page, 'Take a photo'));
  await (await chosen).setFiles({
    name: 'wet-spot.jpg',
    mimeType: 'image/jpeg',
    buffer: await madePicture(page),
  });
  await page.getByText('Saved: photo').waitFor();
  await press(page.locator('.choice').getByText('All pictures'));
  await page.getByText('1 picture or sound').waitFor();
  await expect
    .poll(() =>
      page
        .locator('.gallery img')
        .first()
        .evaluate((image) => (image as HTMLImageElement).naturalWidth),
    )
    .toBeGreaterThan(0);
}

/** Finds standing water in the catalogue, and puts the finding on the plan. */
export async function placeFinding(hand: Hand): Promise<void> {
  const { page, press } = hand;
  await press(button(page, 'Finding'));
  await page.getByLabel('Search the defects').fill('standing water');
  await press(page.locator('.defect-list li button').first());
  await press(page.locator('.place-button').first());
  await pressPlan(hand, 12, 3);
  await press(button(page, 'Take this place'));
  await press(button(page, 'Save the finding'));
  await page.getByText('Saved as number 1').waitFor();
}

/** Reads why the space is wet, and chooses a repair that changes its year. */
export async function askCausesAndDrying(
  hand: Hand,
  ask: (question: string) => Promise<void>,
): Promise<void> {
  const { page, press } = hand;
  await ask('Why?');
  const sentence = page.locator('.results .headline');
  await sentence.waitFor({ timeout: 40_000 });
  expect(await sentence.textContent()).toMatch(/most comes by .+: [\d.]+\spint of [\d.]+\spint a day/);

  await ask('What will dry it?');
  const days = page.locator('[data-figure="daysAbove80"] summary .figure');
  await days.first().waitFor({ timeout: 60_000 });
  const found = await days.first().textContent();
  expect(found).toMatch(/\d/);
  await page.getByLabel('Another repair').selectOption({ label: 'Ground liner' });
  await press(button(page, 'Add: Ground liner'));
  await expect.poll(() => days.last().textContent(), { timeout: 60_000 }).toMatch(/With the repairs: \d/);
  const wood = page.locator('[data-figure="highestDay"] summary .figure');
  expect((await wood.last().textContent())?.replace('With the repairs: ', '')).not.toBe(
    (await wood.first().textContent())?.replace('As found: ', ''),
  );
}

/** How many things of each kind stand on the plan. */
const STANDING = {
  pier: 3,
  door: 1,
  vent: 1,
  girder: 1,
  duct: 1,
  equipment: 1,
  photo: 1,
} as const;

/** The flags of findings stand together in a layer. */
const findings = (page: Page) => page.locator('.plan-frame [data-layer="findings"] text');

/** Holds that everything of the survey stands on the plan. */
export async function everythingStands(page: Page): Promise<void> {
  for (const [kind, count] of Object.entries(STANDING)) {
    // A duct is drawn twice: itself, and its clearance.
    const names = () =>
      things(page, kind).evaluateAll((drawn) => drawn.map((one) => one.getAttribute('data-of')));
    await expect.poll(async () => new Set(await names()).size, { message: kind }).toBe(count);
  }
  await expect.poll(() => findings(page).count(), { message: 'findings' }).toBe(1);
}

/** Holds how many points were leveled; the sheet stands where it was left, and is closed again. */
async function expectLeveled(hand: Hand, count: number): Promise<void> {
  const { page, press } = hand;
  await press(button(page, 'Measure'));
  const sheet = page.locator('.sheet');
  await press(sheet.locator('.choice').getByText('Heights, falls'));
  await expect
    .poll(() => sheet.getByRole('button', { name: /^Remove point \d$/ }).count(), {
      message: 'leveled points',
    })
    .toBe(count);
  await closeSheet(hand);
}

/** Takes the repair, the finding, the photo and the last leveled point back, and brings them again. */
export async function undoAndRedo(hand: Hand, ask: (question: string) => Promise<void>): Promise<void> {
  const { page, press } = hand;
  const undo = () => press(button(page, 'Undo'));
  const redo = () => press(button(page, 'Redo'));
  await undo();
  await page.getByText('No repair is on the list yet.').waitFor();
  await ask('What is wrong?');
  await closeSheet(hand);
  await everythingStands(page);
  await undo();
  await expect.poll(() => findings(page).count()).toBe(0);
  expect(await things(page, 'photo').count()).toBe(1);
  await undo();
  await expect.poll(() => things(page, 'photo').count()).toBe(0);
  await expectLeveled(hand, 2);
  await undo();
  await expectLeveled(hand, 1);

  await redo();
  await expectLeveled(hand, 2);
  expect(await things(page, 'photo').count()).toBe(0);
  await redo();
  await expect.poll(() => things(page, 'photo').count()).toBe(1);
  expect(await findings(page).count()).toBe(0);
  await redo();
  await expect.poll(() => findings(page).count()).toBe(1);
  await redo();
  await expect.poll(() => button(page, 'Redo').isDisabled()).toBe(true);
}

/** Holds that the survey is there after the page was loaded anew. */
export async function stillThere(hand: Hand, ask: (question: string) => Promise<void>): Promise<void> {
  const { page, press } = hand;
  await page.reload();
  await everythingStands(page);
  await expectLeveled(hand, 2);
  await press(button(page, 'Picture'));
  await press(page.locator('.choice').getByText('All pictures'));
  await expect.poll(() => page.locator('.gallery img').count()).toBe(1);
  await closeSheet(hand);
  await ask('What is wrong?');
  await expect.poll(() => page.locator('.reading-list li').count()).toBe(3);
  await expect.poll(() => page.locator('.board-row .flag').count()).toBe(1);
  await ask('What will dry it?');
  await expect
    .poll(() => page.getByRole('checkbox', { name: 'Ground liner: do it' }).isChecked(), { timeout: 60_000 })
    .toBe(true);
}
