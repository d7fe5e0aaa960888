import { crawlNetwork } from '../src/airflow/build.ts';
import { defaultSeasonCase } from '../src/season/default-case.ts';
import { fixed } from './figures.ts';
import { crawlFacts } from './parameter-set.ts';
import { studySources as s } from './sources.ts';
import type { Finding, Study } from './study.ts';

/** Years of building: one in each group of the leakage survey behind the default. */
const YEARS = [1950, 1970, 1990, 2005] as const;
/** Net free area of the vents, over plan: the code's rule, and its rule where the ground is covered. */
const VENTS = [150, 1500] as const;
const cm2 = (m2: number) => fixed(1e4 * m2, 0);

/** Nine houses tested with two fan doors. */
export const tennessee: Study = {
  id: 'V13',
  study: 'Nine houses in Tennessee, crawl space and house tested with fan doors, 1988.',
  published: [
    {
      level: 'A',
      says: 'Even with its vents closed every crawl space leaked more than the house on it.',
      source: s.tennessee,
    },
    {
      level: 'A',
      says: 'Leakage through the floor was a large part of the whole, and much larger with ducts in the space.',
      source: s.tennessee,
    },
  ],
  given: ['Vents closed, not sealed.'],
  assumed: [
    'Default plan; vents of 1/150 and 1/1500, shut by their own dampers; house of the usual leakage of its years.',
    'The network adds leaks that nobody saw where the known parts of an untested space leak less than the house; it took that from this very study, so such rows cannot fail and are no gate.',
    'Leakage areas alone; no year is run.',
  ],
  cases: [],
  evaluate: () => VENTS.flatMap((vents) => YEARS.map((year) => row(year, vents))),
};

function row(year: number, vents: number): Finding {
  const base = defaultSeasonCase();
  const { leakage, assumptions } = crawlNetwork({
    ...crawlFacts(base),
    house: { builtYear: year },
    vents: [{ netFreeAreaM2: base.planAreaM2 / vents, state: 'closed' }],
  });
  const unseen = assumptions.find((one) => one.key === 'unseenCrawlLeakageM2')?.value ?? 0;
  const pass = unseen > 0 ? null : leakage.crawlVentsShutM2 >= leakage.houseM2;
  const share = Math.round((100 * leakage.floorM2) / leakage.houseM2);
  return {
    quantity: `house of ${year}: leakage area of the crawl space with closed vents of 1/${vents}`,
    level: 'A',
    published: 'not below that of the house',
    ours:
      `${cm2(leakage.crawlVentsShutM2)} cm² against ${cm2(leakage.houseM2)} cm², floor ${share} % of the house; ` +
      (unseen > 0
        ? `${cm2(unseen)} cm² of it added as leaks that nobody saw`
        : 'from its parts alone, nothing added'),
    pass,
    ...(pass === false ? { why: 'Not explained.' } : {}),
  };
}
