import { describe, expect, test } from 'vitest';
import { type MarkedClip, stationsOfClip } from '../../src/coverage/clip-stations.ts';
import { EngineError } from '../../src/numerics/engine-error.ts';

const clip: MarkedClip = {
  id: 'c1',
  fieldOfViewDeg: 60,
  rangeM: 4,
  heightM: 0.35,
  marks: [
    { atS: 0, at: { xM: 1, yM: 1 } },
    { atS: 20, at: { xM: 1, yM: 3 } },
  ],
};

describe('stations along a clip', () => {
  test('every half meter, looking the way it goes', () => {
    const { stations, notices } = stationsOfClip(clip);
    expect(notices).toEqual([]);
    expect(stations.map((s) => [s.id, s.at.xM, s.at.yM, s.bearingDeg])).toEqual([
      ['c1@0s', 1, 1, 0],
      ['c1@5s', 1, 1.5, 0],
      ['c1@10s', 1, 2, 0],
      ['c1@15s', 1, 2.5, 0],
      ['c1@20s', 1, 3, 0],
    ]);
    for (const s of stations) expect(s).toMatchObject({ fieldOfViewDeg: 60, rangeM: 4, heightM: 0.35 });
  });

  test('turns the shorter way through north, in steps of a third of the view', () => {
    const marks = [
      { atS: 0, at: { xM: 2, yM: 2 }, bearingDeg: 350 },
      { atS: 6, at: { xM: 2, yM: 2 }, bearingDeg: 50 },
    ];
    const bearings = stationsOfClip({ ...clip, marks }).stations.map(
      (s) => Math.round(s.bearingDeg * 1e6) / 1e6,
    );
    expect(bearings).toEqual([350, 10, 30, 50]);
    const back = [marks[1]!, { ...marks[0]!, atS: 12 }];
    const turned = stationsOfClip({ ...clip, marks: back }).stations.map((s) => Math.round(s.bearingDeg));
    expect(turned).toEqual([50, 30, 10, 350]);
  });

  test('marks are taken in the order of their times; an own bearing goes before the way', () => {
    const marks = [
      { atS: 9, at: { xM: 4, yM: 1 } },
      { atS: 3, at: { xM: 4, yM: 1.2 }, bearingDeg: 270 },
    ];
    const { stations } = stationsOfClip({ ...clip, marks });
    expect(stations[0]).toMatchObject({ id: 'c1@3s', bearingDeg: 270 });
    // The last mark keeps the way from the one before: south.
    expect(stations.at(-1)).toMatchObject({ id: 'c1@9s', bearingDeg: 180 });
  });

  test('a clip that stands still without a bearing shows nothing for certain', () => {
    const { stations, notices } = stationsOfClip({ ...clip, marks: [clip.marks[0]!] });
    expect(stations).toEqual([]);
    expect(notices).toMatchObject([{ code: 'no-direction' }]);
    expect(stationsOfClip({ ...clip, marks: [clip.marks[0]!], bearingDeg: 12 }).stations).toHaveLength(1);
    expect(stationsOfClip({ ...clip, marks: [] })).toEqual({ stations: [], notices: [] });
  });

  test('refuses a view of no width and a time before the start', () => {
    expect(() => stationsOfClip({ ...clip, fieldOfViewDeg: 0 })).toThrow(EngineError);
    expect(() => stationsOfClip({ ...clip, marks: [{ ...clip.marks[0]!, atS: -1 }] })).toThrow(
      /time of a mark/,
    );
  });
});
