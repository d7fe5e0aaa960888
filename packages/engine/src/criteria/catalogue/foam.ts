import { all, is } from '../condition.ts';
import { type CriterionRow, criteriaOf } from '../criterion-row.ts';
import type { FactValue } from '../facts.ts';
import { cite } from '../sources.ts';

const foamPresent = is('foamPresent', true);
const serviceOnly = is('foamEntryOnlyForService', true);
const bareAtRim = all(foamPresent, is('bareSprayFoamAtRim', true));
const facings = is('exposedFacings', true);

function ignitionBarrier(
  letter: string,
  covering: FactValue<'ignitionBarrier'>,
  title: string,
  limit: CriterionRow['limit'],
): CriterionRow {
  return {
    id: `FOM-04${letter}`,
    title,
    quantity: 'ignitionBarrierThicknessM',
    comparison: '>=',
    limit,
    kind: 'code',
    source: cite('irc', 'quoted', 'R316.5.4'),
    appliesWhen: all(foamPresent, serviceOnly, is('ignitionBarrier', covering)),
    consequence: 'The covering burns through before anybody notices the fire.',
    remark: 'Or a tested product used exactly as listed.',
  };
}

/** Foam plastic and exposed facings: how they burn and what covers them. */
export const foam = criteriaOf('foam', [
  {
    id: 'FOM-01a',
    title: 'Foam, flame spread',
    quantity: 'foamFlameSpreadIndex',
    comparison: '<=',
    limit: { value: 75, us: '75', si: '75' },
    kind: 'code',
    source: cite('irc', 'memory', 'R316.3', '2018'),
    appliesWhen: foamPresent,
    consequence: 'The foam carries fire through the space quickly.',
  },
  {
    id: 'FOM-01b',
    title: 'Foam, smoke',
    quantity: 'foamSmokeIndex',
    comparison: '<=',
    limit: { value: 450, us: '450', si: '450' },
    kind: 'code',
    source: cite('irc', 'memory', 'R316.3', '2018'),
    appliesWhen: foamPresent,
    consequence: 'Smoke reaches the rooms above before people wake.',
  },
  {
    id: 'FOM-02',
    title: 'Thermal barrier over foam',
    quantity: 'foamThermalBarrierFitted',
    comparison: 'yes',
    kind: 'code',
    source: cite('irc', 'memory', 'R316.4', '2018'),
    appliesWhen: all(foamPresent, is('foamEntryOnlyForService', false)),
    consequence: 'Foam facing a used space takes fire within minutes.',
    remark: '1/2 in (12.7 mm) gypsum board or its equal.',
  },
  {
    id: 'FOM-03',
    title: 'Ignition barrier over foam in a space entered only for service',
    quantity: 'foamIgnitionBarrierFitted',
    comparison: 'yes',
    kind: 'code',
    source: cite('irc', 'quoted', 'R316.5.4 (older number R314.5.4)'),
    appliesWhen: all(foamPresent, serviceOnly),
    consequence: 'A spark or pilot flame can light the bare foam.',
    remark: 'For foam plugs in vents the building official decides between this and a full barrier.',
  },
  ignitionBarrier('a', 'mineral-fiber', 'Ignition barrier of mineral fiber', {
    value: 0.0381,
    us: '1 1/2 in',
    si: '38 mm',
  }),
  ignitionBarrier('b', 'wood-panel', 'Ignition barrier of wood panel', {
    value: 0.00635,
    us: '1/4 in',
    si: '6.4 mm',
  }),
  ignitionBarrier('c', 'particleboard', 'Ignition barrier of particleboard', {
    value: 0.009525,
    us: '3/8 in',
    si: '9.5 mm',
  }),
  ignitionBarrier('d', 'hardboard', 'Ignition barrier of hardboard', {
    value: 0.00635,
    us: '1/4 in',
    si: '6.4 mm',
  }),
  ignitionBarrier('e', 'gypsum', 'Ignition barrier of gypsum board', {
    value: 0.009525,
    us: '3/8 in',
    si: '9.5 mm',
  }),
  ignitionBarrier('f', 'steel', 'Ignition barrier of steel sheet', {
    value: 0.0004064,
    us: '0.016 in',
    si: '0.4 mm',
  }),
  {
    id: 'FOM-05a',
    title: 'Bare spray foam at rim and sill, thickness',
    quantity: 'sprayFoamThicknessM',
    comparison: '<=',
    limit: { value: 0.08255, us: '3 1/4 in', si: '83 mm' },
    kind: 'code',
    source: cite('irc', 'quoted', 'R316.5.11'),
    appliesWhen: bareAtRim,
    consequence: 'More foam than tested feeds a fire at the rim.',
    caution: 'SAF-21',
  },
  {
    id: 'FOM-05b',
    title: 'Bare spray foam at rim and sill, density',
    quantity: 'sprayFoamDensityKgM3',
    comparison: 'within',
    limit: { value: [8.0092317, 32.036927], us: '0.5-2.0 lb/ft³', si: '8-32 kg/m³' },
    kind: 'code',
    source: cite('irc', 'quoted', 'R316.5.11'),
    appliesWhen: bareAtRim,
    consequence: 'Foam of another density was not tested bare.',
  },
  {
    id: 'FOM-05c',
    title: 'Bare spray foam at rim and sill, flame spread',
    quantity: 'foamFlameSpreadIndex',
    comparison: '<=',
    limit: { value: 25, us: '25', si: '25' },
    kind: 'code',
    source: cite('irc', 'quoted', 'R316.5.11'),
    appliesWhen: bareAtRim,
    consequence: 'Bare foam carries fire along the rim.',
  },
  {
    id: 'FOM-05d',
    title: 'Bare spray foam at rim and sill, smoke',
    quantity: 'foamSmokeIndex',
    comparison: '<=',
    limit: { value: 450, us: '450', si: '450' },
    kind: 'code',
    source: cite('irc', 'memory', 'R316.5.11'),
    appliesWhen: bareAtRim,
    consequence: 'Smoke reaches the rooms above before people wake.',
  },
  {
    id: 'FOM-06a',
    title: 'Exposed facing, flame spread',
    quantity: 'facingFlameSpreadIndex',
    comparison: '<=',
    limit: { value: 25, us: '25', si: '25' },
    kind: 'code',
    source: cite('irc', 'memory', 'R302.10.1', '2018'),
    appliesWhen: facings,
    consequence: 'The facing carries fire along the floor.',
    remark: 'Ordinary kraft facing fails; ask for the listing of the liner too.',
  },
  {
    id: 'FOM-06b',
    title: 'Exposed facing, smoke',
    quantity: 'facingSmokeIndex',
    comparison: '<=',
    limit: { value: 450, us: '450', si: '450' },
    kind: 'code',
    source: cite('irc', 'memory', 'R302.10.1', '2018'),
    appliesWhen: facings,
    consequence: 'Smoke reaches the rooms above before people wake.',
  },
]);
