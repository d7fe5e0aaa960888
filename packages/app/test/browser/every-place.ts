import type { Walker } from './walker.ts';

/** Somewhere that a person can be, reached from wherever they were before. */
export interface Place {
  readonly name: string;
  reach(walker: Walker): Promise<void>;
}

export const PLAN_JOB = 'demo-doubted-liner';

/** A question of the demo job with its answer and every fold open. */
function question(key: string, ready: string, view = ''): Place {
  return {
    name: view === '' ? key : `${key}-${view}`,
    async reach({ at, page, isDesk, settle, unfold }) {
      await at(`job/${PLAN_JOB}/${key}${view === '' ? '' : `/${view}`}`);
      if (!isDesk) await page.locator('.tools .button.main').click();
      await page.locator(ready).first().waitFor();
      await settle();
      await unfold();
      await settle();
    },
  };
}

/** The middle of a question with every fold open, on a phone under its answer. */
function middle(key: string, ready: string, view = ''): Place {
  return {
    name: `${key}-middle${view === '' ? '' : `-${view}`}`,
    async reach({ at, page, settle, unfold }) {
      await at(`job/${PLAN_JOB}/${key}${view === '' ? '' : `/${view}`}`);
      await page.locator(ready).first().waitFor();
      await settle();
      await unfold();
      await settle();
    },
  };
}

const plain = (name: string, hash: string, ready: string): Place => ({
  name,
  async reach({ at, page, unfold, settle }) {
    await at(hash);
    await page.locator(ready).first().waitFor();
    await unfold();
    await settle();
  },
});

/** Screens without a job. */
const AROUND: readonly Place[] = [
  plain('jobs', '', '.job-row'),
  {
    name: 'jobs-removed',
    async reach({ at, page, press, unfold }) {
      await at('');
      await page.getByRole('textbox').first().fill('Elm Street 12');
      await page.locator('.job-row').first().waitFor();
      await unfold();
      if ((await page.locator('.removed').count()) === 0) {
        const other = page.locator(`.job-row:not(:has(a[href*="${PLAN_JOB}"]))`);
        await press(other.locator('.actions .button:last-child'));
      }
      await page.locator('.removed summary').waitFor();
      await unfold();
      await press(page.locator('.removed .button.quiet'));
      await page.locator('.removed .notice').waitFor();
    },
  },
  plain('settings', 'settings', 'fieldset'),
  plain('help', 'help', '.help-step'),
  plain('calculators', 'calculators', '.calculators li'),
  plain('calculator', 'calculators/air-state', '.calculator-result'),
  plain('calculator-pipe', 'calculators/pipe-fall', '.calculator-result'),
  plain('no-such-job', 'job/none-of-ours', '.notice'),
];

const QUESTIONS: readonly Place[] = [
  question('space', '.answer h3'),
  middle('space', '.drawing svg'),
  question('faults', '.criteria li'),
  question('causes', '.results h3'),
  middle('causes', '.chain-part'),
  question('proof', '.proof h3'),
  middle('proof', '.coverage .unseen-floor'),
  question('drying', '.results h3'),
  middle('drying', '.chart-figure'),
  middle('drying', '.air-bands path', 'air'),
  middle('drying', '.machine-verdicts', 'machine'),
  middle('drying', '.results-center .chart-figure', 'ranking'),
  {
    name: 'questions',
    async reach({ at, page, isDesk }) {
      await at(`job/${PLAN_JOB}/space`);
      await page.locator('.drawing svg').waitFor();
      if (!isDesk) await page.locator('.tools .button').first().click();
      await page.locator('.questions').waitFor();
    },
  },
];

/** The drawing sheet of the demo job at a step. */
const drawn = (name: string, go: (walker: Walker) => Promise<void>): Place => ({
  name: `draw-${name}`,
  async reach(walker) {
    await walker.at(`job/${PLAN_JOB}/space`);
    await walker.page.locator('.drawing svg').waitFor();
    await walker.tool(0);
    await walker.page.locator('.draw-grid').first().waitFor();
    await go(walker);
  },
});

/** A way to draw the first walls, in a job that has none. */
const walls = (name: string, way: number, go: (walker: Walker) => Promise<void>): Place => ({
  name: `walls-${name}`,
  async reach(walker) {
    const { page, at } = walker;
    await at('');
    const mine = page.locator('.job-row a', { hasText: 'Oak Lane 3' });
    if ((await mine.count()) === 0) {
      await page.getByRole('textbox').first().fill('Oak Lane 3');
      await page.locator('.new-job .button').click();
    } else await mine.click();
    await page.locator('.strip').waitFor();
    await walker.tool(0);
    await page.locator('.draw-way').first().waitFor();
    if (way >= 0) await page.locator('.draw-way .button').nth(way).click();
    await go(walker);
  },
});

const DRAWING: readonly Place[] = [
  drawn('menu', async () => undefined),
  drawn('list', async ({ page, press }) => {
    await press(page.locator('.draw-grid').last().locator('.button').last());
    await page.locator('.kind-head .button').first().click();
    await page.locator('.draw-sheet .facts').waitFor();
  }),
  drawn('floor', async ({ page, press }) => {
    await press(page.locator('.draw-grid').last().locator('.button').nth(1));
    await page.locator('.draw-sheet .facts').waitFor();
  }),
  drawn('thing-facts', async ({ page, press }) => {
    await press(page.locator('.draw-grid').last().locator('.button').last());
    await page.locator('.kind-head .button').nth(2).click();
    await press(page.locator('.draw-sheet .facts .button'));
    await page.locator('.draw-away').waitFor();
  }),
  drawn('thing-fact', async ({ page, press }) => {
    await press(page.locator('.draw-grid').last().locator('.button').last());
    await page.locator('.kind-head .button').nth(2).click();
    await press(page.locator('.draw-sheet .facts .button'));
    await page.locator('.draw-away').waitFor();
    await press(page.locator('.draw-sheet .facts .button'));
  }),
  drawn('selected', async ({ page }) => {
    await page.locator('.plan-frame').focus();
    await page.keyboard.press(']');
    await page.locator('.draw-row').waitFor();
  }),
  drawn('move', async ({ page }) => {
    await page.locator('.plan-frame').focus();
    await page.keyboard.press(']');
    await page.locator('.draw-row .button:not([data-disabled])').nth(1).click();
    await page.locator('.draw-row').waitFor({ state: 'detached' });
  }),
  drawn('keys', async ({ page }) => {
    await page.locator('.plan-frame').focus();
    await page.keyboard.press('?');
    await page.locator('.draw-sheet dl, .draw-sheet kbd').first().waitFor();
  }),
  drawn('place', async ({ page, press }) => {
    await press(page.locator('.draw-grid').first().locator('.button'));
    await page.locator('.draw-grid').waitFor({ state: 'detached' });
  }),
  walls('ways', -1, async () => undefined),
  walls('tape', 0, ({ page }) => page.locator('.pad').first().waitFor()),
  walls('corners', 1, ({ page }) => page.locator('.draw-way').waitFor({ state: 'detached' })),
  walls('rectangle', 2, ({ page }) => page.locator('.pad').first().waitFor()),
];

/** The sheet of a tool of a question at a step. */
const sheet = (
  name: string,
  [key, tool]: readonly [string, 0 | 1 | 2],
  go: (walker: Walker) => Promise<void>,
): Place => ({
  name,
  async reach(walker) {
    await walker.at(`job/${PLAN_JOB}/${key}`);
    await walker.page.locator('.drawing svg').waitFor();
    await walker.tool(tool);
    await go(walker);
    await walker.settle();
  },
});

const MEASURE = ['space', 1] as const;
const PICTURE = ['space', 2] as const;
const FINDING = ['faults', 0] as const;

/** One kind of measurement; `go` leads further within it. */
const measured = (name: string, number: number, go?: (walker: Walker) => Promise<void>): Place =>
  sheet(`measure-${name}`, MEASURE, async (walker) => {
    const { page } = walker;
    await page.locator('.measure-kinds .button').nth(number).click();
    await page.locator('.measure-kinds').waitFor({ state: 'detached' });
    await walker.unfold();
    await go?.(walker);
  });

const SHEETS: readonly Place[] = [
  sheet('measure', MEASURE, ({ page }) => page.locator('.measure-kinds').waitFor()),
  measured('air', 0),
  measured('air-place', 0, async ({ page, press }) => {
    await press(page.locator('.sheet .place-button'));
    await page.locator('.sheet .place-picker').waitFor();
  }),
  measured('surface', 1),
  measured('wood', 2),
  measured('levels', 3),
  measured('heights', 3, async ({ page, press }) => {
    await press(page.locator('.level-form .choice label').nth(1));
  }),
  measured('quantities', 4, ({ page }) => page.locator('.quantity-list').waitFor()),
  measured('quantity', 4, async ({ page, press, unfold }) => {
    await press(page.locator('.quantity-list li .button'));
    await page.locator('.reading-foot').waitFor();
    await unfold();
  }),
  measured('instruments', 5),
  sheet('picture', PICTURE, async ({ page, unfold }) => {
    await page.locator('.sheet .place-button').waitFor();
    await unfold();
  }),
  sheet('picture-place', PICTURE, async ({ page, press }) => {
    await press(page.locator('.sheet .place-button'));
    await page.locator('.sheet .place-picker').waitFor();
  }),
  sheet('gallery', PICTURE, async ({ page, press }) => {
    await press(page.locator('.pictures .choice label').nth(1));
    await page.locator('.gallery .tile').first().waitFor();
  }),
  sheet('picture-one', PICTURE, async ({ page, press, unfold }) => {
    await press(page.locator('.pictures .choice label').nth(1));
    await press(page.locator('.gallery li .button, .gallery li button'));
    await page.locator('.gallery').waitFor({ state: 'detached' });
    await unfold();
  }),
  sheet('finding', FINDING, ({ page }) => page.locator('.defect-list li').first().waitFor()),
  sheet('finding-editor', FINDING, async ({ page, press, unfold }) => {
    await press(page.locator('.defect-list li .button').nth(1));
    await page.locator('.reading-foot').waitFor();
    await unfold();
  }),
  {
    name: 'finding-one',
    async reach({ at, page, isDesk, press, settle, unfold }) {
      await at(`job/${PLAN_JOB}/faults`);
      if (!isDesk) await page.locator('.tools .button.main').click();
      await press(page.locator('.board li .button.quiet'));
      await page.locator('.sheet .reading-foot').waitFor();
      await settle();
      await unfold();
    },
  },
];

/** On a phone only: the lock against a wet cloth. */
const LOCK: Place = {
  name: 'wipe-lock',
  async reach({ at, page }) {
    await at(`job/${PLAN_JOB}/space`);
    await page.locator('.strip .button').last().click();
    await page.locator('dialog.wipe-lock').waitFor();
  },
};

/** The tour of the demo job, at its first stop. */
const TOUR: Place = {
  name: 'tour',
  async reach({ at, page }) {
    await at('help');
    await page.evaluate(() => {
      const key = 'undercroft.settings';
      const newValue = JSON.stringify({ ...JSON.parse(localStorage.getItem(key) ?? '{}'), tour: 0 });
      localStorage.setItem(key, newValue);
      dispatchEvent(new StorageEvent('storage', { key, newValue }));
    });
    await at(`job/${PLAN_JOB}/space`);
    await page.locator('.tour .button').first().waitFor();
    await page.locator('.drawing svg').waitFor();
  },
};

/** Every place where a person can be, on a phone or a desk. The lock and the tour lie over all else and come last. */
export function everyPlace(isDesk: boolean): readonly Place[] {
  return [...AROUND, ...QUESTIONS, ...DRAWING, ...SHEETS, ...(isDesk ? [TOUR] : [TOUR, LOCK])];
}
