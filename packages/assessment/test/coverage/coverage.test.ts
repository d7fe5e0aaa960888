import type { JobInput } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { assess } from '../../src/index.ts';
import { allRound, photo, roomJob, shownBy } from './jobs.ts';

const withPhotos = (...photos: NonNullable<NonNullable<JobInput['media']>['photos']>) =>
  roomJob({ media: { photos } });

describe('what pictures show', () => {
  test('nothing without pictures, and that is said', () => {
    const { floor, pictures, unseen, notices } = shownBy(roomJob());
    expect(floor.seenM2).toBe(0);
    // The room less its pier, exactly.
    expect(floor.areaM2).toBeCloseTo(6 * 4 - 0.4 * 0.4, 9);
    expect(pictures).toEqual([]);
    expect(unseen).toHaveLength(1);
    expect(unseen[0].areaM2).toBeCloseTo(floor.areaM2, 6);
    expect(notices[0].code).toBe('no-pictures');
  });

  test('a corner that the pier hides, with what stands there', () => {
    const job = roomJob(
      { media: { photos: [allRound('a', 0.5, 2)] } },
      {
        zones: [
          {
            id: 'z',
            name: 'Bare strip',
            outline: [
              { xM: 5, yM: 1.8 },
              { xM: 5.8, yM: 1.8 },
              { xM: 5.8, yM: 2.2 },
              { xM: 5, yM: 2.2 },
            ],
            ground: { cover: 'bare-earth' },
          },
        ],
        equipment: [{ id: 'pump', kind: 'condensate-pump', at: { xM: 4.5, yM: 2 } }],
      },
    );
    const { floor, unseen, piers, notices } = shownBy(job);
    // Behind a pier 0.4 m wide whose near face is 2.3 m off, to the wall 5.5 m off, less the pier itself.
    const shadowM2 = ((5.5 ** 2 - 2.3 ** 2) / 2) * (0.4 / 2.3) - 0.4 * 0.4;
    expect(floor.areaM2 - floor.seenM2).toBeGreaterThan(0.97 * shadowM2);
    expect(floor.areaM2 - floor.seenM2).toBeLessThan(1.03 * shadowM2);
    expect(unseen).toHaveLength(1);
    expect(unseen[0].covers).toEqual(['bare-earth']);
    expect(unseen[0].standsIn.map((s) => `${s.kind} ${s.name}`)).toEqual([
      'zone Bare strip',
      'equipment condensate pump',
      'pier pier 1',
      'wall east wall',
    ]);
    expect(piers[0]).toMatchObject({ facesShown: 1, facesOpen: 4 });
    // Face 3 looks to −x of the plan, whose y axis points 10° east of north.
    expect(piers[0].faces[3]).toEqual({ face: 3, facingDeg: 280, share: 1, pictures: ['a'] });
    expect(notices[0]).toMatchObject({ code: 'unseen-floor' });
    expect(notices[0].message).toContain(
      'drawn as bare earth, the plan shows: Bare strip and condensate pump',
    );
  });

  test('pictures are numbered as they were taken, each with what it adds and shows', () => {
    const { pictures } = shownBy(
      withPhotos(
        { ...allRound('late', 5.5, 2), takenAt: '2031-05-14T09:30:00-04:00' },
        // Earlier, though its clock reads later: another zone.
        { ...allRound('early', 0.5, 2), takenAt: '2031-05-14T13:25:00+00:00' },
      ),
    );
    expect(pictures.map((p) => [p.number, p.id])).toEqual([
      [1, 'early'],
      [2, 'late'],
    ]);
    const [early, late] = pictures;
    expect(early.newM2).toBeCloseTo(early.floorM2, 9);
    expect(late.newM2).toBeLessThan(0.2 * late.floorM2);
    expect(late.shows).toContainEqual({ kind: 'pier', id: 'p1', faces: [1] });
    expect(early.shows).toContainEqual({ kind: 'vent', id: 'v1' });
    expect(early.shows).toContainEqual({ kind: 'wall', id: 'north' });
  });

  test('a picture without a direction or a place counts for nothing, and is named', () => {
    const { pictures, unplaced, notices } = shownBy(
      withPhotos(
        photo('nowhere', undefined, 90),
        photo('whither', [1, 1], undefined),
        photo('ok', [1, 1], 45),
      ),
    );
    expect(pictures.map((p) => p.id)).toEqual(['ok']);
    expect(unplaced.map((u) => u.id)).toEqual(['nowhere', 'whither']);
    expect(unplaced[0].why).toContain('no place');
    expect(unplaced[1].why).toContain('pointed');
    expect(notices.map((n) => n.code)).toContain('picture-unplaced');
  });

  test('what nobody noted of a picture is assumed, once for all of them', () => {
    const { pictures, assumptions } = shownBy(
      withPhotos(photo('a', [1, 1], 45), photo('b', [1, 3], 90, { rangeM: 3 })),
    );
    expect(pictures.map((p) => p.assumed)).toEqual([['fieldOfViewDeg', 'rangeM'], ['fieldOfViewDeg']]);
    expect(pictures[0]).toMatchObject({ fieldOfViewDeg: 65, rangeM: 4 });
    const own = assumptions.filter((a) => a.key.startsWith('picture'));
    expect(own.map((a) => [a.key, a.value, a.unit])).toEqual([
      ['pictureFieldOfView', 65, '°'],
      ['pictureRange', 4, 'm'],
    ]);
    expect(own[1].why).toContain('1 of 2 pictures');
  });

  test('a clip shows what lies along its way', () => {
    const clip = {
      ...photo('film', undefined, undefined, { fieldOfViewDeg: 90, rangeM: 3 }),
      mediaType: 'video/mp4',
      marks: [
        { id: 'm1', atS: 0, at: { xM: 0.5, yM: 0.6 } },
        { id: 'm2', atS: 8, at: { xM: 5.5, yM: 0.6 } },
      ],
    };
    const { pictures, floor, piers } = shownBy(roomJob({ media: { clips: [clip] } }));
    expect(pictures).toHaveLength(1);
    expect(pictures[0]).toMatchObject({ kind: 'clip', at: { xM: 0.5, yM: 0.6 }, bearingDeg: 90 });
    expect(pictures[0].floorM2).toBeCloseTo(floor.seenM2, 6);
    expect(pictures[0].newM2).toBeCloseTo(floor.seenM2, 6);
    expect(piers[0].faces[0].pictures).toEqual(['film']);
    // It looks the way it goes, so the wall it comes from is not in it.
    expect(floor.share).toBeLessThan(0.9);
  });

  test('a place to keep out of hides nothing unless it has a height', () => {
    const outline = [
      { xM: 4.4, yM: 0.6 },
      { xM: 5.4, yM: 0.6 },
      { xM: 5.4, yM: 3.4 },
      { xM: 4.4, yM: 3.4 },
    ];
    const shareWith = (heightM?: number) =>
      shownBy(
        roomJob(
          { media: { photos: [allRound('a', 0.5, 0.5), allRound('b', 0.5, 3.5)] } },
          {
            obstacles: [
              { id: 'o', what: 'Spill', outline, noGo: true, ...(heightM === undefined ? {} : { heightM }) },
            ],
          },
        ),
      );
    const open = shareWith();
    expect(open.floor.areaM2).toBeCloseTo(6 * 4 - 0.16, 9);
    expect(open.floor.coveredM2).toBe(0);
    const high = shareWith(1.2);
    expect(high.floor.coveredM2).toBeCloseTo(1 * 2.8, 6);
    expect(high.floor.share).toBeLessThan(open.floor.share);
  });

  test('several runs of joists are not guessed at', () => {
    const run = { bearingDeg: 0, clearanceM: 0.8 };
    const { bays, notices } = shownBy(
      roomJob(
        { media: { photos: [allRound('a', 1, 2)] } },
        {
          joists: [
            { id: 'j1', ...run },
            { id: 'j2', ...run, bearingDeg: 90 },
          ],
        },
      ),
    );
    expect(bays).toEqual([]);
    expect(notices.map((n) => n.code)).toContain('joist-runs-unplaced');
    const one = shownBy(
      roomJob({ media: { photos: [allRound('a', 1, 2)] } }, { joists: [{ id: 'j1', ...run }] }),
    );
    expect(one.bays.length).toBe(Math.round(6 / 0.406));
    expect(one.bays.filter((b) => (b.share ?? 0) > 0).length).toBeGreaterThan(0);
  });
});

test('is left out when nobody asks, and where sizes make no sense, with the reason', () => {
  expect(assess(roomJob(), undefined, { season: 'none', coverage: false }).coverage).toBeUndefined();
  const job = roomJob({}, { joists: [{ id: 'j', bearingDeg: 0, spacingM: 0.02 }] });
  const result = assess(job, undefined, { season: 'none' });
  expect(result.coverage).toBeUndefined();
  expect(result.notices.map((n) => n.message).join()).toMatch(
    /What the pictures show was not worked out: .*spacing/,
  );
});
