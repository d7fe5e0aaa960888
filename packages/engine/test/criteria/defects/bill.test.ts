import { describe, expect, it } from 'vitest';
import {
  type ClaimedDefect,
  criteria,
  type DefectEvidence,
  detectDefects,
  type Evidence,
  judgeAll,
} from '../../../src/criteria/index.ts';
import { EXTENTS } from './extents.ts';

const facts = { linerPresent: true, spaceType: 'closed', piersPresent: true } as const;

function bill(key: string, given: Partial<DefectEvidence>) {
  const samples = given.samples ?? [];
  const found = detectDefects({
    criteria,
    judgements: judgeAll(criteria, samples, facts),
    samples,
    facts,
    claims: [],
    extents: EXTENTS,
    ...given,
  });
  return found.find((d) => d.key === key)?.bill;
}

const claim = (defect: string, quantity?: string, value?: number, id = 'f1'): ClaimedDefect => ({
  id,
  defect,
  hasProof: true,
  ...(quantity === undefined ? {} : { measured: { quantity, value: value ?? 0 } }),
});

const wraps = (values: readonly number[]): Evidence[] =>
  values.map((value, i) => ({ id: `w${i}`, quantity: 'pierWrapHeightM', item: `p${i}`, value }));

describe('the bill of a defect', () => {
  it('of an edge is the perimeter of 44 m times the loose share', () => {
    const claims = [claim('glued-edge-letting-go', 'share', 0.25)];
    expect(bill('glued-edge-letting-go', { claims })).toMatchObject({ value: 11, unit: 'm', assumed: false });
  });

  it('adds claims of different places, to the whole at most', () => {
    const two = (value: number) => [
      claim('seams-not-sealed', 'lengthM', value, 'f1'),
      claim('seams-not-sealed', 'lengthM', value, 'f2'),
    ];
    expect(bill('seams-not-sealed', { claims: two(9) })).toMatchObject({ value: 18, from: 'as measured' });
    expect(bill('seams-not-sealed', { claims: two(40) })).toMatchObject({ value: 60 });
  });

  it('takes what the drawing says before what was claimed', () => {
    const drawn = [
      { defect: 'seams-not-sealed', amount: 6.4, whole: 31.7 },
      { defect: 'seams-not-sealed', amount: 0.6, whole: 31.7 },
    ];
    const claims = [claim('seams-not-sealed', 'share', 0.9)];
    expect(bill('seams-not-sealed', { drawn, claims })?.value).toBeCloseTo(7, 12);
  });

  it('says that it assumes the whole where no share was measured', () => {
    expect(bill('seams-not-sealed', { claims: [claim('seams-not-sealed')] })).toMatchObject({
      value: 60,
      range: [0, 60],
      unit: 'm',
      assumed: true,
    });
  });

  it('never takes a width or a height for the extent of the fault', () => {
    const claims = [claim('seams-not-sealed', 'seamLapWidthM', 0.1)];
    expect(bill('seams-not-sealed', { claims })).toMatchObject({ value: 60, assumed: true });
  });

  it('counts the piers that fail; those not looked at make the upper end', () => {
    expect(bill('piers-not-wrapped', { samples: wraps([0, 0, 0.2]) })).toMatchObject({
      value: 2,
      range: [2, 11],
      unit: 'each',
    });
    expect(bill('piers-not-wrapped', { claims: [claim('piers-not-wrapped', 'count', 5)] })).toMatchObject({
      value: 5,
      range: [5, 12],
    });
  });

  it('says so where the plan has none of what is counted', () => {
    const extents = { ...EXTENTS, piers: 0, seamM: 0 };
    const claims = [claim('piers-not-wrapped'), claim('seams-not-sealed')];
    expect(bill('piers-not-wrapped', { extents, claims })).toMatchObject({ value: 1, assumed: true });
    expect(bill('piers-not-wrapped', { extents, claims })?.from).toMatch(/no piers, draw them/);
    expect(bill('seams-not-sealed', { extents, claims })?.value).toBeUndefined();
  });

  it('of bare ground is what is drawn bare, else the floor times the share that was measured', () => {
    expect(bill('exposed-earth', {})).toMatchObject({ value: 6, unit: 'm2' });
    const extents = { ...EXTENTS, bareEarthM2: 0 };
    const claims = [claim('exposed-earth', 'exposedEarthFraction', 0.1)];
    expect(bill('exposed-earth', { extents, claims })).toMatchObject({ value: 12, assumed: false });
  });

  it('adds up what was measured in place, and is open where nothing was', () => {
    const claims = [0.5, 1.25].map((value, i) => claim('visible-mold', 'moldAreaM2', value, `f${i}`));
    expect(bill('visible-mold', { claims })).toMatchObject({ value: 1.75, unit: 'm2', assumed: false });
    expect(bill('visible-mold', { claims: [claim('visible-mold')] })?.value).toBeUndefined();
    expect(bill('debris-left', { claims: [claim('debris-left', 'volumeM3', 0.8)] })).toMatchObject({
      value: 0.8,
      unit: 'm3',
    });
  });

  it('of what is done once is one, and of what is no defect nothing', () => {
    expect(bill('dead-zones', {})).toMatchObject({ value: 1 });
    expect(bill('damp-under-liner', {})).toMatchObject({ value: 0 });
  });
});
