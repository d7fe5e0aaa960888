import { all, is } from '../condition.ts';
import { type CriterionRow, criteriaOf } from '../criterion-row.ts';
import { cite, commonPractice } from '../sources.ts';

const linerPresent = is('linerPresent', true);
const e1745 = cite('astmE1745', 'quoted', 'table 1', '17');
const scope =
  'The standard is written for sheets under slabs; it reaches a crawl floor only where another text calls it up.';

function classRow(
  id: string,
  sheetClass: 'A' | 'B' | 'C',
  title: string,
  quantity: CriterionRow['quantity'],
  limit: CriterionRow['limit'],
): CriterionRow {
  return {
    id,
    title,
    quantity,
    comparison: '>=',
    limit,
    kind: 'standard',
    source: e1745,
    appliesWhen: all(linerPresent, is('linerClass', sheetClass)),
    consequence: 'The sheet is weaker than the class it is sold as.',
    remark: scope,
  };
}

/** What the liner is made of. */
export const linerMaterial = criteriaOf('liner-material', [
  {
    id: 'MAT-01',
    title: 'Permeance of a classed sheet, new and after conditioning',
    quantity: 'linerPermeanceNg',
    comparison: '<=',
    limit: { value: 5.7213489, us: '0.1 perm', si: '5.7 ng/(s·m²·Pa)' },
    kind: 'standard',
    source: e1745,
    appliesWhen: all(linerPresent, is('linerClass', 'A', 'B', 'C')),
    consequence: 'Soil vapor passes through the sheet itself.',
    remark: scope,
  },
  classRow('MAT-02a', 'A', 'Tensile strength, class A', 'linerTensileNPerM', {
    value: 7880.7076,
    us: '45 lbf/in',
    si: '7.9 kN/m',
  }),
  classRow('MAT-02b', 'B', 'Tensile strength, class B', 'linerTensileNPerM', {
    value: 5253.8051,
    us: '30 lbf/in',
    si: '5.3 kN/m',
  }),
  classRow('MAT-02c', 'C', 'Tensile strength, class C', 'linerTensileNPerM', {
    value: 2381.725,
    us: '13.6 lbf/in',
    si: '2.4 kN/m',
  }),
  classRow('MAT-03a', 'A', 'Puncture resistance, class A', 'linerPunctureDartKg', {
    value: 2.2,
    us: '2200 g',
    si: '2200 g',
  }),
  classRow('MAT-03b', 'B', 'Puncture resistance, class B', 'linerPunctureDartKg', {
    value: 1.7,
    us: '1700 g',
    si: '1700 g',
  }),
  classRow('MAT-03c', 'C', 'Puncture resistance, class C', 'linerPunctureDartKg', {
    value: 0.475,
    us: '475 g',
    si: '475 g',
  }),
  {
    id: 'MAT-04',
    title: 'Permeance of the ground film, weatherization work',
    quantity: 'linerPermeanceNg',
    comparison: '<=',
    limit: { value: 5.7213489, us: '0.1 perm', si: '5.7 ng/(s·m²·Pa)' },
    kind: 'guide',
    source: cite('doeSws2017', 'read', '2.0403.1', '2017'),
    appliesWhen: linerPresent,
    consequence: 'Soil vapor passes through the sheet itself.',
    remark:
      'Tear and puncture of a tested class go with it. Tell the owner that plain plastic ages far sooner than the house.',
  },
  {
    id: 'MAT-05a',
    title: 'Thickness of the film',
    quantity: 'linerThicknessM',
    comparison: '>=',
    limit: { value: 0.0001524, us: '6 mil', si: '0.15 mm' },
    kind: 'guide',
    source: cite('wyoming', 'read'),
    appliesWhen: all(linerPresent, is('linerCrossLaminated', false)),
    consequence: 'Thin film tears under knees and stones.',
    remark: 'Heavier or protected where it is stored on or serviced over.',
  },
  {
    id: 'MAT-05b',
    title: 'Thickness of cross-laminated film',
    quantity: 'linerThicknessM',
    comparison: '>=',
    limit: { value: 0.0000762, us: '3 mil', si: '0.08 mm' },
    kind: 'code',
    source: cite('irc', 'read', 'AF102 (older edition)'),
    appliesWhen: all(linerPresent, is('radonSystem', true), is('linerCrossLaminated', true)),
    consequence: 'Thin film tears under knees and stones.',
    remark: 'Radon appendix; binds only where adopted.',
  },
  {
    id: 'MAT-06',
    title: 'Thickness of a liner that is crawled on',
    quantity: 'linerThicknessM',
    comparison: '>=',
    limit: { value: 0.0003048, us: '12 mil', si: '0.30 mm' },
    kind: 'practice',
    source: commonPractice,
    appliesWhen: all(linerPresent, is('linerTrafficked', true)),
    consequence: 'The sheet is worn through on the way to the equipment.',
    remark: 'Reinforced, 12 to 20 mil (0.30 to 0.51 mm); 6 to 8 mil only as a layer that is given up.',
  },
  {
    id: 'MAT-07',
    title: 'Class of the sealant',
    quantity: 'sealantMovementClass',
    comparison: '>=',
    limit: { value: 25, us: '25', si: '25' },
    kind: 'standard',
    source: cite('cc1000', 'read', '6.4.3 (ASTM C920)'),
    appliesWhen: all(linerPresent, is('radonSystem', true)),
    consequence: 'The bead tears when sheet and wall move.',
    remark: 'It must also suit the film; many sealants do not hold polyethylene.',
  },
  {
    id: 'MAT-08',
    title: 'Thickness of a sheet beside a slab',
    quantity: 'linerThicknessM',
    comparison: '>=',
    limit: { value: 0.000254, us: '10 mil', si: '0.25 mm' },
    kind: 'guide',
    source: cite('aci302', 'memory'),
    appliesWhen: all(linerPresent, is('floorSurface', 'slab')),
    consequence: 'The sheet is punctured when concrete is placed.',
    remark: 'Slab floors only; cite with care.',
  },
]);
