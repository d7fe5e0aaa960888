import { describe, expect, test } from 'vitest';
import { picturesShowing, pictureViews, shotAdds } from '../../src/index.ts';
import { demoJob } from '../season/jobs.ts';
import { allRound, photo, roomJob, shownBy } from './jobs.ts';

/** Twice the area of a triangle is base times height: a wedge of 90° from a corner of the room, 3 m deep, is 9π/4 m². */
const CORNER_WEDGE_M2 = (Math.PI * 9) / 4;

describe('a picture that is about to be taken', () => {
  const empty = roomJob({}, { piers: [] });
  const { geometry } = shownBy(empty);

  test('adds what it shows where no other was taken, and leaves the rest', () => {
    // Just off the corner, looking up the diagonal.
    const adds = shotAdds(empty, geometry, {
      at: { xM: 0.001, yM: 0.001 },
      bearingDeg: 45,
      fieldOfViewDeg: 90,
      rangeM: 3,
    });
    expect(adds?.floorM2).toBeGreaterThan(0.99 * CORNER_WEDGE_M2);
    expect(adds?.floorM2).toBeLessThan(1.01 * CORNER_WEDGE_M2);
    expect(adds?.newM2).toBeCloseTo(adds?.floorM2 ?? 0, 1);
    expect(adds?.leftM2).toBeCloseTo(24 - CORNER_WEDGE_M2, 0);
    expect(adds?.unseen.reduce((sum, part) => sum + part.areaM2, 0)).toBeCloseTo(adds?.leftM2 ?? 0, 1);
    expect(adds?.newThings).toEqual([]);
  });

  test('adds nothing where the same was seen before, and what is new where only some was', () => {
    const job = roomJob({ media: { photos: [allRound('a', 1, 3.5)] } });
    const space = shownBy(job);
    const again = { at: { xM: 1, yM: 3.5 }, bearingDeg: 0, fieldOfViewDeg: 360, rangeM: 20 };
    const same = shotAdds(job, space.geometry, again);
    expect(same?.newM2).toBe(0);
    expect(same?.newThings).toEqual([]);
    expect(same?.leftM2).toBeCloseTo(space.floor.areaM2 - space.floor.seenM2, 9);
    const other = shotAdds(job, space.geometry, { ...again, at: { xM: 5.5, yM: 0.5 } });
    // What the pier hid from the first is all that was left.
    expect(other?.newM2).toBeCloseTo(space.floor.areaM2 - space.floor.seenM2, 1);
    expect(other?.newThings).toEqual(['pier 1']);
    expect(other?.leftM2).toBeLessThan(0.1);
  });

  test('leaves the job as it is, and says nothing where it stands outside or no walls are drawn', () => {
    const before = JSON.stringify(empty);
    shotAdds(empty, geometry, { at: { xM: 1, yM: 1 }, bearingDeg: 0 });
    expect(JSON.stringify(empty)).toBe(before);
    expect(shotAdds(empty, geometry, { at: { xM: 60, yM: 1 }, bearingDeg: 0 })).toMatchObject({
      floorM2: 0,
      newM2: 0,
      leftM2: 24,
    });
    const { outline: _, ...plan } = empty.plan;
    expect(shotAdds({ ...empty, plan }, geometry, { at: { xM: 1, yM: 1 }, bearingDeg: 0 })).toBeUndefined();
  });
});

describe('the pictures that show a place', () => {
  const job = roomJob({
    media: {
      photos: [photo('west', [0.5, 2], 90, { fieldOfViewDeg: 60, rangeM: 10 }), allRound('all', 5, 3.5)],
    },
  });
  const views = pictureViews(job, shownBy(job).geometry);

  test('are those whose view holds it, not those that a pier blinds', () => {
    expect(views.map((v) => v.id)).toEqual(['all', 'west']);
    expect(picturesShowing(views, { xM: 2, yM: 2 })).toEqual(['all', 'west']);
    // Behind the pier for the first one.
    expect(picturesShowing(views, { xM: 4, yM: 2 })).toEqual(['all']);
    expect(picturesShowing(views, { xM: 0.2, yM: 3.8 })).toEqual(['all']);
    expect(picturesShowing(views, { xM: -1, yM: 2 })).toEqual([]);
  });

  test('of the doubted liner are none for the place in its corner that nobody looked at', () => {
    const demo = demoJob('doubted-liner');
    const { geometry, unseen } = shownBy(demo);
    const own = pictureViews(demo, geometry);
    const [corner] = unseen;
    expect(corner.areaM2).toBeGreaterThan(3);
    expect(picturesShowing(own, corner.at)).toEqual([]);
    expect(picturesShowing(own, { xM: 2, yM: 2 }).length).toBeGreaterThan(0);
  });
});
