import { all, is } from '../condition.ts';
import { criteriaOf } from '../criterion-row.ts';
import { cite } from '../sources.ts';

const heavyFoam = all(is('foamPresent', true), is('termiteZone', 'very-heavy'));
const edgeOnWall = is('linerOnWalls', true);

/** Gaps and strips that keep termites in sight. */
export const termite = criteriaOf('termite', [
  {
    id: 'TRM-01',
    title: 'No foam below grade where termites are very heavy',
    quantity: 'foamBelowGrade',
    comparison: 'no',
    kind: 'code',
    source: cite('irc', 'quoted', 'R318.4'),
    appliesWhen: heavyFoam,
    consequence: 'Termites tunnel through the foam to the sill, out of sight.',
    caution: 'SAF-20',
    licensedTrade: 'pest-control-applicator',
    remark:
      'Exceptions are recalled: treated or non-combustible framing, approved protection, inside of basement walls. The ' +
      'inside of a crawl wall is argued case by case.',
  },
  {
    id: 'TRM-02',
    title: 'Foam above earth where termites are very heavy',
    quantity: 'foamToEarthM',
    comparison: '>=',
    limit: { value: 0.1524, us: '6 in', si: '152 mm' },
    kind: 'code',
    source: cite('irc', 'quoted', 'R318.4'),
    appliesWhen: heavyFoam,
    consequence: 'Termites tunnel from the soil through the foam to the sill, out of sight.',
    licensedTrade: 'pest-control-applicator',
  },
  {
    id: 'TRM-04a',
    title: 'Inspection gap above the liner, least',
    quantity: 'termiteStripM',
    comparison: '>=',
    limit: { value: 0.0762, us: '3 in', si: '76 mm' },
    kind: 'guide',
    source: cite('wyoming', 'read'),
    appliesWhen: edgeOnWall,
    sampling: { atLeast: 4, combine: 'each' },
    consequence: 'Termite tubes to the sill are not seen, and a termite bond may be void.',
    licensedTrade: 'pest-control-applicator',
    remark: 'Given for places where the code wants a gap.',
  },
  {
    id: 'TRM-04b',
    title: 'Inspection gap above the liner, range',
    quantity: 'termiteStripM',
    comparison: 'within',
    limit: { value: [0.0762, 0.1016], us: '3-4 in', si: '76-102 mm' },
    kind: 'guide',
    source: cite('northCarolina', 'quoted', 'R409', '2018, 2024'),
    appliesWhen: edgeOnWall,
    sampling: { atLeast: 4, combine: 'each' },
    consequence: 'Too small a gap hides termite tubes; too large a gap leaves damp wall bare.',
    remark: 'Law in the state that wrote it; advice elsewhere.',
  },
  {
    id: 'TRM-05',
    title: 'Liner off untreated wood',
    quantity: 'linerTouchesUntreatedWood',
    comparison: 'no',
    kind: 'guide',
    source: cite('wyoming', 'read'),
    appliesWhen: is('linerPresent', true),
    consequence: 'Water that forms behind the sheet is held against the wood.',
  },
]);
