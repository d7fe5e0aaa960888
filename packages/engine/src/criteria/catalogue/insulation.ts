import { all, any, type Condition, is } from '../condition.ts';
import { type CriterionRow, criteriaOf } from '../criterion-row.ts';
import { cite, commonPractice } from '../sources.ts';

const table = cite('iecc', 'read', 'R402.1 (IRC N1102.1)', '2021');
const continuous = is('crawlWallInsulation', 'continuous');
const cavity = is('crawlWallInsulation', 'cavity');
const both = is('crawlWallInsulation', 'cavity-and-continuous');
const floorInsulated = all(is('spaceType', 'vented'), is('floorBattsPresent', true));

const warm = is('climateZone', '1', '2');
const zone3 = is('climateZone', '3');
const zone4 = all(is('climateZone', '4'), is('marineZone', false));
const zone4To6 = any(is('climateZone', '5', '6'), all(is('climateZone', '4'), is('marineZone', true)));
const cold = is('climateZone', '7', '8');

function row(
  id: string,
  title: string,
  quantity: CriterionRow['quantity'],
  limit: CriterionRow['limit'],
  appliesWhen: Condition,
  remark?: string,
): CriterionRow {
  return {
    id,
    title,
    quantity,
    comparison: '>=',
    limit,
    kind: 'code',
    source: table,
    appliesWhen,
    consequence: 'Wall or floor is cold: heat is lost, and moist air can condense on it.',
    ...(remark === undefined ? {} : { remark }),
  };
}

const R5 = { value: 0.88055092, us: 'R-5', si: 'RSI 0.88' };
const R10 = { value: 1.7611018, us: 'R-10', si: 'RSI 1.76' };
const R13 = { value: 2.2894324, us: 'R-13', si: 'RSI 2.29' };
const R15 = { value: 2.6416528, us: 'R-15', si: 'RSI 2.64' };
const R19 = { value: 3.3460935, us: 'R-19', si: 'RSI 3.35' };
const R30 = { value: 5.2833055, us: 'R-30', si: 'RSI 5.28' };
const R38 = { value: 6.692187, us: 'R-38', si: 'RSI 6.69' };

/** Insulation of crawl walls and of floors over vented spaces, by climate zone. Wall values of 2024 are believed equal. */
export const insulation = criteriaOf('insulation', [
  row(
    'INS-01',
    'Floor over a vented space, zones 1 and 2',
    'floorInsulationRsi',
    R13,
    all(warm, floorInsulated),
  ),
  row(
    'INS-02a',
    'Continuous wall insulation, zone 3',
    'crawlWallContinuousRsi',
    R5,
    all(zone3, continuous),
    'A footnote treats warm-humid places apart.',
  ),
  row('INS-02b', 'Cavity wall insulation, zone 3', 'crawlWallCavityRsi', R13, all(zone3, cavity)),
  row('INS-02c', 'Floor over a vented space, zone 3', 'floorInsulationRsi', R19, all(zone3, floorInsulated)),
  row('INS-03a', 'Continuous wall insulation, zone 4', 'crawlWallContinuousRsi', R10, all(zone4, continuous)),
  row('INS-03b', 'Cavity wall insulation, zone 4', 'crawlWallCavityRsi', R13, all(zone4, cavity)),
  row('INS-03c', 'Floor over a vented space, zone 4', 'floorInsulationRsi', R19, all(zone4, floorInsulated)),
  row(
    'INS-04a',
    'Continuous wall insulation, zones 4 marine, 5, 6',
    'crawlWallContinuousRsi',
    R15,
    all(zone4To6, continuous),
  ),
  row(
    'INS-04b',
    'Cavity wall insulation, zones 4 marine, 5, 6',
    'crawlWallCavityRsi',
    R19,
    all(zone4To6, cavity),
  ),
  row(
    'INS-04c',
    'Cavity part of combined wall insulation, zones 4 marine, 5, 6',
    'crawlWallCavityRsi',
    R13,
    all(zone4To6, both),
    'Together with INS-04d; the combination came with the 2021 edition.',
  ),
  row(
    'INS-04d',
    'Continuous part of combined wall insulation, zones 4 marine, 5, 6',
    'crawlWallContinuousRsi',
    R5,
    all(zone4To6, both),
    'Together with INS-04c; the combination came with the 2021 edition.',
  ),
  row(
    'INS-04e',
    'Floor over a vented space, zones 4 marine, 5, 6',
    'floorInsulationRsi',
    R30,
    all(zone4To6, floorInsulated),
  ),
  row(
    'INS-05a',
    'Continuous wall insulation, zones 7, 8',
    'crawlWallContinuousRsi',
    R15,
    all(cold, continuous),
  ),
  row('INS-05b', 'Cavity wall insulation, zones 7, 8', 'crawlWallCavityRsi', R19, all(cold, cavity)),
  row(
    'INS-05c',
    'Cavity part of combined wall insulation, zones 7, 8',
    'crawlWallCavityRsi',
    R13,
    all(cold, both),
    'Together with INS-05d; the combination came with the 2021 edition.',
  ),
  row(
    'INS-05d',
    'Continuous part of combined wall insulation, zones 7, 8',
    'crawlWallContinuousRsi',
    R5,
    all(cold, both),
    'Together with INS-05c; the combination came with the 2021 edition.',
  ),
  row(
    'INS-05e',
    'Floor over a vented space, zones 7, 8',
    'floorInsulationRsi',
    R38,
    all(cold, floorInsulated),
  ),
  {
    id: 'INS-06',
    title: 'Wall insulation past outside grade',
    quantity: 'wallInsulationBelowGradeM',
    comparison: '>=',
    limit: { value: 0.6096, us: '24 in', si: '610 mm' },
    kind: 'code',
    source: cite('irc', 'memory', 'N1102.2.11', '2018'),
    appliesWhen: is('crawlWallInsulation', 'continuous', 'cavity', 'cavity-and-continuous'),
    consequence: 'Heat leaves through the wall just below grade.',
    remark: 'From the sill down to outside grade, then this much more down or along the floor.',
  },
  {
    id: 'ISR-02',
    title: 'Floor batts touch the subfloor',
    quantity: 'floorBattsFullContact',
    comparison: 'yes',
    kind: 'guide',
    source: cite('closedCrawlGuide', 'read'),
    appliesWhen: is('floorBattsPresent', true),
    consequence: 'Air moves above the batts and they do little.',
  },
  {
    id: 'ISR-03',
    title: 'Rim insulation that can be taken out',
    quantity: 'rimBattRemovable',
    comparison: 'yes',
    kind: 'guide',
    source: cite('closedCrawlGuide', 'read'),
    appliesWhen: is('crawlWallInsulation', 'continuous', 'cavity', 'cavity-and-continuous'),
    consequence: 'Rot and termites at the band stay hidden.',
  },
  {
    id: 'ISR-01',
    title: 'No wet or fallen floor batts',
    quantity: 'wetBattsPresent',
    comparison: 'no',
    kind: 'practice',
    source: commonPractice,
    appliesWhen: is('floorBattsPresent', true),
    consequence: 'Wet batts hold water on the wood and rodents nest in them.',
    caution: 'SAF-09',
    remark: 'A fallen batt with its facing down is a fire matter too: FOM-06.',
  },
]);
