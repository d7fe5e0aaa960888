import { all, is } from '../condition.ts';
import { criteriaOf } from '../criterion-row.ts';
import { cite } from '../sources.ts';

const line = is('condensateLine', true);
const harm = all(line, is('overflowWouldHarm', true));

/** Condensate of cooling coils and dehumidifiers. */
export const condensate = criteriaOf('condensate', [
  {
    id: 'CON-01',
    title: 'Fall of the condensate line',
    quantity: 'condensateLineSlope',
    comparison: '>=',
    limit: { value: 0.125 / 12, us: '1/8 in per ft', si: '10 mm/m' },
    kind: 'code',
    source: cite('imc', 'read', '307.2.1 (IMC); M1411.3 (IRC)'),
    appliesWhen: line,
    consequence: 'Water stands in the line, slime grows and the pan runs over.',
    remark: 'Written as 1/8 unit in 12, called 1 percent.',
  },
  {
    id: 'CON-02',
    title: 'Size of the condensate line',
    quantity: 'condensatePipeM',
    comparison: '>=',
    limit: { value: 0.01905, us: '3/4 in', si: '19 mm' },
    kind: 'code',
    source: cite('irc', 'quoted', 'M1411.3'),
    appliesWhen: line,
    consequence: 'A small line plugs and the unit overflows.',
    remark: 'Nominal size; never reduced downstream.',
  },
  {
    id: 'CON-03',
    title: 'A failed condensate pump stops the unit',
    quantity: 'condensatePumpCutout',
    comparison: 'yes',
    kind: 'code',
    source: cite('irc', 'read', 'M1411.4', '2018'),
    appliesWhen: is('condensatePump', true),
    consequence: 'The unit goes on making water with nowhere to send it.',
    caution: 'SAF-05',
    licensedTrade: 'mechanical-contractor',
    remark:
      'The section names crawl spaces and speaks of cooling coils and evaporators; whether it reaches a free-standing ' +
      'dehumidifier is for the building official.',
  },
  {
    id: 'CON-04a',
    title: 'Overflow pan, depth',
    quantity: 'overflowPanDepthM',
    comparison: '>=',
    limit: { value: 0.0381, us: '1.5 in', si: '38 mm' },
    kind: 'code',
    source: cite('irc', 'read', 'M1411.3.1', '2018'),
    appliesWhen: harm,
    consequence: 'An overflow runs over the pan into the building.',
  },
  {
    id: 'CON-04b',
    title: 'Overflow pan, margin round the unit',
    quantity: 'overflowPanMarginM',
    comparison: '>=',
    limit: { value: 0.0762, us: '3 in', si: '76 mm' },
    kind: 'code',
    source: cite('irc', 'read', 'M1411.3.1', '2018'),
    appliesWhen: harm,
    consequence: 'Drips miss the pan.',
  },
  {
    id: 'CON-05',
    title: 'Condensate line closed to soil gas',
    quantity: 'condensateLineTrappedOrDaylight',
    comparison: 'yes',
    kind: 'code',
    source: cite('irc', 'read', 'AF103.4.3', '2018'),
    appliesWhen: all(line, is('radonSystem', true)),
    consequence: 'Soil gas enters the rooms through the line.',
    remark: 'Radon appendix; binds only where adopted.',
  },
]);
