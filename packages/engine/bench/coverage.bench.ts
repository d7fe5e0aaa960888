import { coverage } from '../src/coverage/coverage.ts';
import { planCrawl } from '../src/coverage/crawl-plan.ts';
import { bigCrawlSpace, manyStations } from '../test/coverage/big-crawl-space.ts';

const scene = bigCrawlSpace();
const stations = manyStations(200);

/** What the runner measures; goals are milliseconds, warm: 280 m² with 60 piers, ducts, vents and an inside wall. */
export const benches = [
  {
    id: 'coverage.stations200',
    goal: 200,
    warm: 5,
    rounds: 15,
    run: () => {
      coverage(scene, stations);
    },
  },
  {
    id: 'coverage.route',
    goal: 2000,
    warm: 2,
    rounds: 5,
    run: () => {
      planCrawl(scene, { xM: 0, yM: 4 });
    },
  },
];
