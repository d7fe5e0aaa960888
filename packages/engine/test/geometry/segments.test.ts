import { describe, expect, test } from 'vitest';
import { distanceToBoundaryM, distanceToPolygonM } from '../../src/geometry/distance.ts';
import type { Point } from '../../src/geometry/point.ts';
import { distanceToSegmentM, nearestOnSegment } from '../../src/geometry/segment-distance.ts';
import { segmentMeeting } from '../../src/geometry/segment-intersection.ts';
import { polygonContacts } from '../../src/geometry/simple-polygon.ts';

const p = (xM: number, yM: number): Point => ({ xM, yM });

describe('how segments meet', () => {
  test.each([
    ['through each other', p(0, 0), p(6, 4), p(0, 4), p(6, 0), { kind: 'cross', at: p(3, 2) }],
    ['clear of each other', p(0, 0), p(1, 1), p(5, 0), p(4, 9), { kind: 'none' }],
    ['parallel', p(0, 0), p(6, 0), p(1, 1), p(7, 1), { kind: 'none' }],
    ['on one line, apart', p(0, 0), p(2, 0), p(3, 0), p(7, 0), { kind: 'none' }],
    ['on one line, end to end', p(0, 0), p(2, 0), p(2, 0), p(7, 0), { kind: 'touch', at: p(2, 0) }],
    [
      'on one line, in part',
      p(0, 0),
      p(5, 0),
      p(3, 0),
      p(7, 0),
      { kind: 'overlap', from: p(5, 0), to: p(3, 0) },
    ],
    [
      'one within the other',
      p(0, 0),
      p(9, 0),
      p(5, 0),
      p(3, 0),
      { kind: 'overlap', from: p(5, 0), to: p(3, 0) },
    ],
    ['end on the other', p(4, 0), p(4, 5), p(0, 0), p(9, 0), { kind: 'touch', at: p(4, 0) }],
    ['a point on a segment', p(4, 0), p(4, 0), p(0, 0), p(9, 0), { kind: 'touch', at: p(4, 0) }],
    ['a point off a segment', p(4, 1), p(4, 1), p(0, 0), p(9, 0), { kind: 'none' }],
    ['the same point twice', p(4, 1), p(4, 1), p(4, 1), p(4, 1), { kind: 'touch', at: p(4, 1) }],
    ['lines meet past an end', p(0, 0), p(3, 0), p(4, -1), p(4, 5), { kind: 'none' }],
  ] as const)('%s', (_, a, b, c, d, expected) => {
    expect(segmentMeeting(a, b, c, d)).toEqual(expected);
  });

  test('an end just short of the other segment touches within the tolerance only', () => {
    const meet = (gap: number) => segmentMeeting(p(4, gap), p(4, 5), p(0, 0), p(9, 0), 0.02).kind;
    expect(meet(0.02)).toBe('touch');
    expect(meet(0.0201)).toBe('none');
    expect(meet(-0.02)).toBe('touch');
    expect(meet(-0.0201)).toBe('cross');
  });
});

describe('where a polygon meets itself', () => {
  test('a simple one, in any form, has no contacts', () => {
    expect(polygonContacts([p(0, 0), p(6, 0), p(6, 3), p(0, 3)])).toEqual([]);
    expect(polygonContacts([p(0, 0), p(0, 0), p(6, 0), p(6, 3), p(0, 3), p(0, 0)])).toEqual([]);
    expect(polygonContacts([p(0, 0), p(3, 0), p(6, 0), p(6, 3)])).toEqual([]);
  });

  test('two corners swapped: which sides cross, and where', () => {
    expect(polygonContacts([p(0, 0), p(6, 4), p(6, 0), p(0, 4)])).toEqual([
      { edgeA: 0, edgeB: 2, kind: 'cross', at: p(3, 2) },
    ]);
  });

  test('edge numbers are those of the given corners, repeats counted', () => {
    expect(polygonContacts([p(0, 0), p(0, 0), p(6, 4), p(6, 0), p(0, 4)])).toEqual([
      { edgeA: 1, edgeB: 3, kind: 'cross', at: p(3, 2) },
    ]);
  });

  test('a corner on another wall is one touch', () => {
    expect(polygonContacts([p(0, 0), p(8, 0), p(8, 5), p(4, 0), p(0, 5)])).toEqual([
      { edgeA: 0, edgeB: 2, kind: 'touch', at: p(4, 0) },
    ]);
  });

  test('two corners in one place are one touch', () => {
    const bow = [p(0, 0), p(3, 2), p(7, 0), p(7, 5), p(3, 2), p(0, 5)];
    expect(polygonContacts(bow)).toEqual([{ edgeA: 0, edgeB: 3, kind: 'touch', at: p(3, 2) }]);
  });

  test('a wall that folds back on its neighbor is an overlap', () => {
    expect(polygonContacts([p(0, 0), p(9, 0), p(5, 0), p(5, 4)])).toEqual([
      { edgeA: 0, edgeB: 1, kind: 'overlap', at: p(9, 0) },
      { edgeA: 0, edgeB: 2, kind: 'touch', at: p(5, 0) },
    ]);
  });

  test('fewer than three places have no contacts', () => {
    expect(polygonContacts([])).toEqual([]);
    expect(polygonContacts([p(0, 0), p(5, 1), p(0, 0)])).toEqual([]);
  });
});

describe('distances', () => {
  test('to a segment', () => {
    expect(distanceToSegmentM(p(3, 4), p(0, 0), p(9, 0))).toBe(4);
    expect(distanceToSegmentM(p(-3, 4), p(0, 0), p(9, 0))).toBe(5);
    expect(distanceToSegmentM(p(3, 4), p(0, 0), p(0, 0))).toBe(5);
    expect(nearestOnSegment(p(3, 4), p(0, 0), p(9, 0))).toEqual(p(3, 0));
    expect(nearestOnSegment(p(12, 4), p(0, 0), p(9, 0))).toEqual(p(9, 0));
  });

  test('to a polygon: negative inside, zero on a wall, positive outside', () => {
    const room = [p(0, 0), p(8, 0), p(8, 6), p(0, 6)];
    expect(distanceToPolygonM(p(3, 2), room)).toBe(-2);
    expect(distanceToPolygonM(p(8, 2), room)).toBe(0);
    expect(distanceToPolygonM(p(11, 10), room)).toBe(5);
    expect(distanceToBoundaryM(p(3, 2), room)).toBe(2);
    expect(distanceToBoundaryM(p(3, 2), [])).toBe(Number.POSITIVE_INFINITY);
  });
});
