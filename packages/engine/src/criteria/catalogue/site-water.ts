import { is } from '../condition.ts';
import { criteriaOf } from '../criterion-row.ts';
import { cite, commonPractice } from '../sources.ts';

/** Water outside: grade, paving, roof. */
export const siteWater = criteriaOf('site-water', [
  {
    id: 'SIT-01',
    title: 'Ground falls away from the wall',
    quantity: 'outsideGradeFallRatio',
    comparison: '>=',
    limit: { value: 0.05, us: '6 in in 10 ft', si: '152 mm in 3.05 m' },
    kind: 'code',
    source: cite('irc', 'quoted', 'R401.3', '2021'),
    sampling: { atLeast: 4, combine: 'each' },
    consequence: 'Surface water runs to the wall and into the space.',
    remark: 'A swale or drain where the lot line is too near.',
  },
  {
    id: 'SIT-02',
    title: 'Paving falls away from the wall',
    quantity: 'pavingFallRatio',
    comparison: '>=',
    limit: { value: 0.02, us: '2 %', si: '2 %' },
    kind: 'code',
    source: cite('irc', 'memory', 'R401.3 exception', '2018'),
    appliesWhen: is('pavingAtWall', true),
    consequence: 'Water from the paving runs down the wall.',
  },
  {
    id: 'SIT-03a',
    title: 'Roof water away from the wall on expansive soil',
    quantity: 'roofWaterDischargeM',
    comparison: '>=',
    limit: { value: 1.524, us: '5 ft', si: '1.52 m' },
    kind: 'code',
    source: cite('irc', 'quoted', 'R801.3', '2021'),
    appliesWhen: is('expansiveSoil', true),
    consequence: 'Soil at the wall swells and shrinks, and water comes in.',
  },
  {
    id: 'SIT-03b',
    title: 'Roof water away from the wall on any soil',
    quantity: 'roofWaterDischargeM',
    comparison: '>=',
    limit: { value: 1.524, us: '5 ft', si: '1.52 m' },
    kind: 'practice',
    source: commonPractice,
    consequence: 'One roof face can put more water at the wall than all other paths together.',
  },
]);
