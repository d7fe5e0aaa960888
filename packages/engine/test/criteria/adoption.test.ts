import { describe, expect, test } from 'vitest';
import {
  adopt,
  baseCatalogue,
  type Catalogue,
  type CriterionRow,
  cite,
  commonPractice,
  criteria,
  governing,
  judge,
  type Overlay,
  type OverlayChange,
  overlays,
} from '../../src/criteria/index.ts';

const overlay = (id: string): Overlay => {
  const found = overlays.find((each) => each.id === id);
  if (!found) throw new Error(id);
  return found;
};
const rowOf = ({ criteria: rows }: Catalogue, id: string) => rows.find((row) => row.id === id);
const own = (...changes: OverlayChange[]): Overlay => ({
  id: 'our-shop',
  place: 'Our shop',
  origin: 'own-standard',
  changes,
});

describe('built-in local amendments', () => {
  test('are seven, each of law, and all can be made, alone and together', () => {
    expect(overlays.map(({ id }) => id)).toEqual(['J-01', 'J-02', 'J-03', 'J-04', 'J-05', 'J-06', 'J-07']);
    for (const each of overlays) {
      expect(each.origin).toBe('law');
      const adopted = adopt(baseCatalogue, [each]);
      expect(adopted.issues).toEqual([]);
      expect(adopted.amendments).toHaveLength(each.changes.length);
      for (const { after } of adopted.amendments) if (after) expect(after.kind, after.id).toBe('code');
    }
  });

  test('leave the base as it was', () => {
    const before = JSON.stringify(baseCatalogue);
    adopt(baseCatalogue, overlays);
    expect(JSON.stringify(baseCatalogue)).toBe(before);
    expect(baseCatalogue.criteria).toBe(criteria);
  });

  // WAC 51-51-0408 (opened): 1/300 where the model code has 1/150; black 6-mil cover with 6 in lap to the wall.
  test('Washington: half the vent area, the replaced row is kept with the reason', () => {
    const adopted = adopt(baseCatalogue, [overlay('J-01')]);
    expect(rowOf(adopted, 'VNT-01')?.limit?.value).toBe(1 / 300);
    expect(rowOf(adopted, 'VNT-01')?.source.citation).toMatch(/Washington/);
    const amendment = adopted.amendments.find(({ criterionId }) => criterionId === 'VNT-01');
    expect(amendment).toMatchObject({ change: 'replace', place: 'Washington', overlayId: 'J-01' });
    expect(amendment?.before?.limit?.us).toBe('1/150');
    expect(amendment?.after).toEqual(rowOf(adopted, 'VNT-01'));
    const facts = { spaceType: 'vented', groundCoverClassI: false } as const;
    const evidence = [{ id: 'v', quantity: 'ventAreaRatio', value: 1 / 200 }];
    const verdict = (catalogue: Catalogue) => {
      const row = rowOf(catalogue, 'VNT-01');
      return row && judge(row, evidence, facts).verdict;
    };
    expect(verdict(baseCatalogue)).toBe('not-met');
    expect(verdict(adopted)).toBe('met');
    expect(rowOf(adopted, 'J-01a')?.limit?.value).toBeCloseTo(6 * 0.0254e-3, 12);
    expect(rowOf(adopted, 'J-01b')?.limit?.value).toBeCloseTo(6 * 0.0254, 12);
    expect(rowOf(adopted, 'RAD-06')?.comparison).toBe('yes');
  });

  // Oregon 2023 R408.1, R408.3 (quoted): 12 in laps; unvented 6 in if sealed, 12 in if not; 12 in up the wall.
  test('Oregon: the lap hangs on the seal', () => {
    const adopted = adopt(baseCatalogue, [overlay('J-02')]);
    const governs = (sealed: boolean) =>
      governing(adopted.criteria, {
        spaceType: 'closed',
        linerSeamsSealed: sealed,
        linerPresent: false,
        radonSystem: false,
      }).find(({ quantity, direction }) => quantity === 'seamLapWidthM' && direction === 'at-least')?.governs;
    expect(governs(true)?.limit?.value).toBeCloseTo(6 * 0.0254, 12);
    expect(governs(false)?.limit?.value).toBeCloseTo(12 * 0.0254, 12);
    expect(rowOf(adopted, 'UNV-04')).toBeUndefined();
    expect(rowOf(adopted, 'UNV-05')?.limit?.value).toBeCloseTo(12 * 0.0254, 12);
    expect(adopted.amendments.find(({ change }) => change === 'strike-out')).toMatchObject({
      criterionId: 'UNV-04',
      before: { id: 'UNV-04' },
      why: expect.stringContaining('12 in'),
    });
  });

  // R408.2, R409 (quoted): 12 in lap; drains at low spots, apart from gutters; 3-4 in termite gap; sealed doors.
  test('North Carolina: advice elsewhere is law there', () => {
    const adopted = adopt(baseCatalogue, [overlay('J-03')]);
    for (const id of ['ACC-05a', 'ACC-05b', 'ACC-05c', 'ACC-06a', 'TRM-04b']) {
      expect(rowOf(baseCatalogue, id)?.kind).toBe('guide');
      expect(rowOf(adopted, id)?.kind).toBe('code');
    }
    expect(rowOf(adopted, 'J-03a')?.limit?.value).toBeCloseTo(12 * 0.0254, 12);
  });

  // Regulations 8-1217 (opened), 8-1221, 8-1223 (quoted).
  test('South Carolina: no 70 pints, no retarder under batts, a strip of 6 in', () => {
    const adopted = adopt(baseCatalogue, [overlay('J-04')]);
    expect(rowOf(adopted, 'UNV-10')).toBeUndefined();
    expect(rowOf(adopted, 'VNT-08')).toBeUndefined();
    expect(rowOf(adopted, 'TRM-03')?.limit?.value).toBeCloseTo(6 * 0.0254, 12);
    expect(rowOf(adopted, 'J-04a')?.quantity).toBe('linerIsClassA');
  });

  // 675 IAC 14-4.4-54 (opened): pad 16 in by 16 in, receptacle; 2 in of concrete with supply.
  test('Indiana: pad, receptacle, concrete', () => {
    const adopted = adopt(baseCatalogue, [overlay('J-05')]);
    expect(rowOf(adopted, 'J-05a')?.limit?.value).toBeCloseTo(16 * 0.0254, 12);
    expect(rowOf(adopted, 'J-05c')?.limit?.value).toBeCloseTo(2 * 0.0254, 12);
    expect(rowOf(adopted, 'UNV-10')).toBeUndefined();
  });

  test('two places one after the other keep both stories', () => {
    const adopted = adopt(adopt(baseCatalogue, [overlay('J-04')]), [overlay('J-05')]);
    expect(adopted.issues).toEqual([
      {
        path: 'overlay J-05, change 1, criterionId',
        found: 'UNV-10',
        expected: 'the id of a criterion in the catalogue',
      },
    ]);
    expect(adopted.amendments).toHaveLength(
      overlay('J-04').changes.length + overlay('J-05').changes.length - 1,
    );
  });
});

describe("a firm's own standard", () => {
  const row: CriterionRow = {
    id: 'shop-lap',
    title: 'Our lap',
    quantity: 'seamLapWidthM',
    comparison: '>=',
    limit: { value: 0.4572, us: '18 in', si: '457 mm' },
    kind: 'practice',
    source: commonPractice,
    consequence: 'We come back for nothing.',
  };
  const add = (changes: Partial<CriterionRow>): OverlayChange => ({
    change: 'add',
    subject: 'liner',
    row: { ...row, ...changes },
    why: 'fewer call-backs',
  });

  test('adds a stricter row, which then governs without binding', () => {
    const adopted = adopt(baseCatalogue, [own(add({}))]);
    expect(adopted.issues).toEqual([]);
    expect(rowOf(adopted, 'shop-lap')).toMatchObject({
      subject: 'liner',
      unit: 'm',
      sampling: { atLeast: 1 },
    });
    const group = governing(adopted.criteria, { spaceType: 'closed', linerPresent: true }).find(
      ({ quantity }) => quantity === 'seamLapWidthM',
    );
    expect(group?.governs.id).toBe('shop-lap');
    expect(group?.binding?.id).toBe('UNV-03');
  });

  test('changes and strikes out practice rows', () => {
    const adopted = adopt(baseCatalogue, [
      own(
        {
          change: 'replace',
          criterionId: 'DHU-01',
          fields: { limit: { value: [0.4, 0.5], us: '40-50 %', si: '40-50 %' } },
          why: 'hardwood floors',
          source: commonPractice,
        },
        { change: 'strike-out', criterionId: 'DHU-10', why: 'inverter units', source: commonPractice },
      ),
    ]);
    expect(adopted.issues).toEqual([]);
    expect(rowOf(adopted, 'DHU-01')?.limit?.value).toEqual([0.4, 0.5]);
    expect(rowOf(adopted, 'DHU-10')).toBeUndefined();
    expect(adopted.amendments.map(({ why }) => why)).toEqual(['hardwood floors', 'inverter units']);
  });

  test.each<[string, OverlayChange, string, RegExp]>([
    [
      'loosen the code',
      {
        change: 'replace',
        criterionId: 'UNV-03',
        fields: { limit: { value: 0.05, us: '2 in', si: '51 mm' } },
        why: 'x',
        source: commonPractice,
      },
      'criterionId',
      /guide or practice/,
    ],
    [
      'strike out the code',
      { change: 'strike-out', criterionId: 'FLD-01', why: 'x', source: commonPractice },
      'criterionId',
      /guide or practice/,
    ],
    [
      'pass off practice as code',
      {
        change: 'replace',
        criterionId: 'DHU-01',
        fields: { kind: 'code' },
        why: 'x',
        source: commonPractice,
      },
      'criterionId',
      /guide or practice/,
    ],
    ['make law', add({ kind: 'code', source: cite('irc', 'read') }), 'row.kind', /practice/],
    ['take an id', add({ id: 'LIN-01' }), 'row.id', /no criterion has yet/],
    ['judge the unknown', add({ quantity: 'lapInches' as 'seamLapWidthM' }), 'row.quantity', /registered/],
    ['compare without a limit', add({ limit: undefined }), 'limit', /one number/],
    ['compare with NaN', add({ limit: { value: Number.NaN, us: '', si: '' } }), 'limit', /one number/],
    ['answer a number', add({ comparison: 'yes' }), 'comparison', /number/],
    ['answer with a number', add({ quantity: 'seamsSealed' }), 'comparison', /yes or no/],
    [
      'turn a range round',
      add({ comparison: 'within', limit: { value: [0.3, 0.2], us: '', si: '' } }),
      'limit',
      /lower first/,
    ],
    [
      'change what is not there',
      { change: 'strike-out', criterionId: 'LIN-99', why: 'x', source: commonPractice },
      'criterionId',
      /catalogue/,
    ],
  ])('cannot %s', (_name, change, path, expected) => {
    const adopted = adopt(baseCatalogue, [own(change, add({ id: 'fine' }))]);
    expect(adopted.issues).toHaveLength(1);
    expect(adopted.issues[0].path).toBe(`overlay our-shop, change 1, ${path}`);
    expect(adopted.issues[0].expected).toMatch(expected);
    expect(adopted.amendments.map(({ criterionId }) => criterionId)).toEqual(['fine']);
    expect(adopted.criteria).toHaveLength(criteria.length + 1);
  });
});

test('law may turn a measured row into another limit and drop it', () => {
  const law: Overlay = {
    id: 'town',
    place: 'Some town',
    origin: 'law',
    changes: [
      {
        change: 'replace',
        criterionId: 'SMP-01b',
        fields: { limit: { value: 0.762, us: '30 in', si: '762 mm' } },
        why: 'the town asks for a deeper pit',
        source: cite('chicago', 'read', '18-29-1113'),
      },
      { change: 'strike-out', criterionId: 'SMP-01b', why: 'repealed', source: cite('chicago', 'read') },
    ],
  };
  const adopted = adopt(baseCatalogue, [law]);
  expect(rowOf(adopted, 'SMP-01b')).toBeUndefined();
  expect(adopted.amendments.map(({ before }) => before?.limit?.us)).toEqual(['24 in', '30 in']);
});
