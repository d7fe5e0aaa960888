import { all, is } from '../condition.ts';
import type { Overlay } from '../overlay.ts';
import { cite } from '../sources.ts';

/** South Carolina: strongest sheet, dehumidifier sized by its maker, inspection strip at the sill. */
export const southCarolina: Overlay = {
  id: 'J-04',
  place: 'South Carolina',
  origin: 'law',
  changes: [
    {
      change: 'add',
      subject: 'liner-material',
      why: 'The state names the class of the sheet.',
      row: {
        id: 'J-04a',
        title: 'Ground cover of the strongest tested class',
        quantity: 'linerIsClassA',
        comparison: 'yes',
        kind: 'code',
        source: cite('southCarolina', 'quoted', '8-1221'),
        appliesWhen: is('spaceType', 'closed'),
        consequence: 'A weaker sheet is torn by crawling.',
        remark: 'ASTM E1745 class A.',
      },
    },
    {
      change: 'strike-out',
      criterionId: 'UNV-10',
      why: 'The state drops the 70 pints and leaves the size to the maker.',
      source: cite('southCarolina', 'quoted', '8-1221'),
    },
    {
      change: 'add',
      subject: 'unvented',
      why: 'The state drops the 70 pints and leaves the size to the maker.',
      row: {
        id: 'J-04b',
        title: 'Dehumidifier sized by its maker',
        quantity: 'dehumidifierSizedByMaker',
        comparison: 'yes',
        kind: 'code',
        source: cite('southCarolina', 'quoted', '8-1221'),
        appliesWhen: all(is('spaceType', 'closed'), is('dryingOption', 'dehumidifier')),
        consequence: 'The machine runs without pause and the humidity stays high.',
      },
    },
    {
      change: 'strike-out',
      criterionId: 'VNT-08',
      why: 'The state does not adopt the section on retarders under floor batts.',
      source: cite('southCarolina', 'quoted', '8-1223'),
    },
    {
      change: 'add',
      subject: 'termite',
      why: 'The state asks for an inspection strip in foam walls.',
      row: {
        id: 'TRM-03',
        title: 'Inspection strip over foam at the sill',
        quantity: 'inspectionStripM',
        comparison: '>=',
        limit: { value: 0.1524, us: '6 in', si: '152 mm' },
        kind: 'code',
        source: cite('southCarolina', 'read', '8-1217 (R318.5)'),
        appliesWhen: is('foamPresent', true),
        consequence: 'Termite tubes to the sill are not seen.',
        licensedTrade: 'pest-control-applicator',
        remark: 'Centered on the sill plate.',
      },
    },
  ],
};
