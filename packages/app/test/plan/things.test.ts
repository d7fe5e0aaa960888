import { describe, expect, it } from 'vitest';
import { hitsAt, nextHit } from '../../src/plan/hit.ts';
import { movedFields, movesBy } from '../../src/plan/move.ts';
import { snap, snapTargets, tapeLines } from '../../src/plan/snap.ts';
import { findThing, type Thing } from '../../src/plan/things.ts';
import { planned } from './a-plan.ts';

const { job, walls } = planned({
  piers: [
    { id: 'p1', at: { xM: 2, yM: 3 }, widthM: 0.4, depthM: 0.4 },
    { id: 'p2', at: { xM: 5, yM: 3.5 }, widthM: 0.4, depthM: 0.4 },
  ],
  girders: [{ id: 'g', from: { xM: 0, yM: 3 }, to: { xM: 10, yM: 3 } }],
  vents: [{ id: 'v', wallId: 'south', offsetM: 4, widthM: 0.4, heightM: 0.2 }],
  zones: [
    {
      id: 'z',
      name: 'Wet end',
      outline: [
        { xM: 0, yM: 0 },
        { xM: 4, yM: 0 },
        { xM: 4, yM: 6 },
        { xM: 0, yM: 6 },
      ],
      ground: { cover: 'gravel' },
    },
  ],
});
const thing = (kind: Thing['kind'], id: string) => findThing(job, { kind, id }) as Thing;
const idsAt = (xM: number, yM: number, reachM: number) =>
  hitsAt(job, walls, { xM, yM }, reachM).map(({ value }) => value.id);

describe('what a tap means', () => {
  it('means the pier before the girder under it and before the zone that both lie in', () => {
    expect(idsAt(2, 3, 0.3)).toEqual(['p1', 'g', 'z']);
  });

  it('means a zone only inside of it, and nothing out of reach', () => {
    expect(idsAt(4.2, 1, 0.3)).toEqual([]);
    expect(idsAt(3.9, 1, 0.3)).toEqual(['z']);
  });

  it('goes on to what lies below when it is tapped again, and around', () => {
    const hits = hitsAt(job, walls, { xM: 2, yM: 3 }, 0.3);
    expect(nextHit(hits, null)?.value.id).toBe('p1');
    expect(nextHit(hits, { kind: 'pier', id: 'p1' })?.value.id).toBe('g');
    expect(nextHit(hits, { kind: 'zone', id: 'z' })?.value.id).toBe('p1');
    expect(nextHit([], null)).toBeNull();
  });
});

describe('where a thing goes', () => {
  it('moves a pier by as much, without digits that no tape has', () => {
    expect(movedFields(thing('pier', 'p1'), { xM: 0.1, yM: 0.2 }, walls)).toEqual({
      at: { xM: 2.1, yM: 3.2 },
    });
  });

  it('keeps a vent in a wall, whole', () => {
    const vent = thing('vent', 'v');
    expect(movedFields(vent, { xM: 0.5, yM: 0.3 }, walls)).toEqual({ wallId: 'south', offsetM: 4.5 });
    expect(movedFields(vent, { xM: 5.7, yM: 0.05 }, walls)).toEqual({ wallId: 'south', offsetM: 9.6 });
    expect(movesBy(vent, { xM: 0.5, yM: 0.3 }, walls)).toEqual({ xM: 0.5, yM: 0 });
  });

  it('moves a vent onto the wall that it is nearest to', () => {
    const moved = movedFields(thing('vent', 'v'), { xM: 5.7, yM: 2 }, walls);
    expect(moved).toEqual({ wallId: 'east', offsetM: 1.8 });
  });
});

describe('what a place is drawn to', () => {
  const targets = snapTargets(job, walls, 0.25, { kind: 'pier', id: 'p1' });

  it('is a corner before anything else', () => {
    expect(snap(targets, { xM: 9.8, yM: 5.9 }, 0.4)).toMatchObject({
      at: { xM: 10, yM: 6 },
      to: ['corner'],
    });
  });

  it('is a row with another pier, but not with itself', () => {
    expect(snap(targets, { xM: 7.1, yM: 3.4 }, 0.4).at).toEqual({ xM: 7, yM: 3.5 });
    expect(snap(targets, { xM: 2.1, yM: 1.1 }, 0.4).at).toEqual({ xM: 2, yM: 1 });
  });

  it('is a wall, else the grid', () => {
    expect(snap(targets, { xM: 3.33, yM: 0.1 }, 0.4)).toMatchObject({
      at: { xM: 3.33, yM: 0 },
      to: ['wall'],
    });
    expect(snap(targets, { xM: 3.33, yM: 1.66 }, 0.4).at).toEqual({ xM: 3.25, yM: 1.75 });
  });

  it('is in one line with the place before, from farther away', () => {
    const path = { ...targets, last: { xM: 3.1, yM: 1.3 } };
    expect(snap(path, { xM: 3.4, yM: 4.4 }, 0.4).at.xM).toBe(3.1);
    expect(snap(path, { xM: 3.51, yM: 4.4 }, 0.4).at.xM).toBe(3.5);
  });

  it('is a short side away from the place before, along one axis, and that place itself only on top of it', () => {
    const path = { ...targets, last: { xM: 3.1, yM: 1.3 } };
    expect(snap(path, { xM: 3.15, yM: 1.66 }, 0.4).at).toEqual({ xM: 3.1, yM: 1.75 });
    expect(snap(path, { xM: 3.4, yM: 1.4 }, 0.4).at).toEqual({ xM: 3.5, yM: 1.3 });
    expect(snap(path, { xM: 3.15, yM: 1.4 }, 0.4).at).toEqual({ xM: 3.1, yM: 1.3 });
  });
});

it('measures to the walls to the left and below', () => {
  expect(tapeLines(walls, { xM: 2, yM: 3 })).toEqual([
    [
      { xM: 2, yM: 3 },
      { xM: 0, yM: 3 },
    ],
    [
      { xM: 2, yM: 3 },
      { xM: 2, yM: 0 },
    ],
  ]);
});
