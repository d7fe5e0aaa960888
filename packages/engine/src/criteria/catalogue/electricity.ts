import { is } from '../condition.ts';
import { criteriaOf } from '../criterion-row.ts';
import { cite } from '../sources.ts';

/** Wiring in the space. Work on it belongs to a licensed electrician. */
export const electricity = criteriaOf('electricity', [
  {
    id: 'ELE-01',
    title: 'Receptacles with ground-fault protection',
    quantity: 'gfciProtected',
    comparison: 'yes',
    kind: 'code',
    source: cite('nec', 'quoted', '210.8(A)(4); IRC E3902.4'),
    appliesWhen: is('receptacleInSpace', true),
    consequence: 'A damaged cord on wet ground can kill.',
    caution: 'SAF-05',
    licensedTrade: 'electrician',
    remark:
      'No exemption for a pump or dehumidifier, so give them an alarm for loss of power. From 2020 on the rule reaches ' +
      '250 V (recalled).',
  },
  {
    id: 'ELE-02',
    title: 'Lights with ground-fault protection',
    quantity: 'lightingGfciProtected',
    comparison: 'yes',
    kind: 'code',
    source: cite('nec', 'quoted', '210.8(E); 210.8(C) in 2020 and 2023 (recalled)', '2017'),
    appliesWhen: is('lightingInSpace', true),
    consequence: 'A broken lamp or wet fixture shocks who touches it.',
    caution: 'SAF-05',
    licensedTrade: 'electrician',
  },
  {
    id: 'ELE-03',
    title: 'Light with its switch at the entry',
    quantity: 'lightSwitchAtEntry',
    comparison: 'yes',
    kind: 'code',
    source: cite('nec', 'quoted', '210.70(A)(3); IRC E3903.4'),
    appliesWhen: is('serviceOrStorage', true),
    consequence: 'People crawl in the dark to reach the equipment.',
    caution: 'SAF-06',
    licensedTrade: 'electrician',
  },
  {
    id: 'ELE-04',
    title: 'No flexible cord as fixed wiring',
    quantity: 'flexibleCordAsWiring',
    comparison: 'no',
    kind: 'code',
    source: cite('nec', 'memory', '400.12', '2020'),
    appliesWhen: is('electricityInSpace', true),
    consequence: 'Cords chafe, get wet and are unplugged; fire and shock follow.',
    caution: 'SAF-05',
    licensedTrade: 'electrician',
  },
]);
