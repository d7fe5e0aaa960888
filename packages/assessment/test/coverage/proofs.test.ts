import type { ClaimSubject, JobInput } from '@undercroft/record';
import { describe, expect, test } from 'vitest';
import { allRound, photo, roomJob, shownBy } from './jobs.ts';

type AcceptanceInput = NonNullable<JobInput['acceptance']>[number];
const signed = { when: '2031-06-02T15:00:00-04:00', who: 'Crew of May' };

const claim = (id: string, criterion: string, more: Partial<AcceptanceInput> = {}): AcceptanceInput => ({
  id,
  criterion,
  claimed: true,
  ...signed,
  ...more,
});

/** Pictures from three sides of the pier: its right face (toward +x) is in none. */
const threeSides = [allRound('west', 1.4, 1.9), allRound('south', 3.1, 0.7), allRound('north', 2.9, 3.3)];

const proofsWith = (job: Partial<JobInput>, plan: Parameters<typeof roomJob>[1] = {}) =>
  shownBy(roomJob({ media: { photos: threeSides }, ...job }, plan)).proofs;

describe('a claim of "piers wrapped"', () => {
  test('is not proved by three of four faces, whichever way it is made', () => {
    const ways: AcceptanceInput[] = [
      claim('by-criterion', 'LIN-08a'),
      claim('all', 'in our own words', { about: [{ all: 'piers' }] }),
      claim('one', 'in our own words', { about: [{ kind: 'pier', id: 'p1' }] }),
    ];
    for (const proof of proofsWith({ acceptance: ways })) {
      expect(proof.verdict, proof.id).toBe('partly');
      expect(proof.share).toBeCloseTo(0.75, 9);
      // Face 1 looks to +x of the plan, whose y axis points 10° east of north.
      expect(proof.missing).toEqual([
        { kind: 'pier', id: 'p1', name: 'pier 1', face: 1, facingDeg: 100, share: 0 },
      ]);
      expect(proof.says).toBe('The pictures do not show the east face of pier 1 (3 of 4 faces are shown).');
      expect(proof.pictures).toEqual(['west', 'south', 'north'].sort());
    }
  });

  test('is proved by the fourth', () => {
    const [proof] = proofsWith({
      media: { photos: [...threeSides, allRound('east', 4.6, 2.1)] },
      acceptance: [claim('c', 'LIN-08a')],
    });
    expect(proof).toMatchObject({ verdict: 'proved', share: 1, missing: [], named: false });
    expect(proof.says).toContain('someone has to look');
  });

  test('rests on the pictures named for it, and others that show more are listed apart', () => {
    const [proof] = proofsWith({ acceptance: [claim('c', 'LIN-08a', { photoIds: ['west'] })] });
    expect(proof).toMatchObject({ verdict: 'partly', named: true, pictures: ['west'] });
    expect(proof.others).toEqual(['north', 'south']);
    expect(proof.missing.map((m) => m.face)).toEqual([0, 1, 2]);
  });

  test('that names a picture without a place has none', () => {
    const [proof] = proofsWith({
      media: { photos: [...threeSides, photo('lost', undefined, undefined)] },
      acceptance: [claim('c', 'LIN-08a', { photoIds: ['lost'] })],
    });
    expect(proof).toMatchObject({ verdict: 'no-picture', share: 0, pictures: [] });
    expect(proof.says).toMatch(/^No picture named for it shows .* 3 other pictures show some of it\.$/);
  });

  test('is no claim until somebody makes it', () => {
    expect(proofsWith({ acceptance: [claim('c', 'LIN-08a', { claimed: false })] })).toEqual([]);
  });
});

describe('where a claim says what it is about', () => {
  const plan: Parameters<typeof roomJob>[1] = {
    walls: [{ id: 'facts', wallId: 'north' }],
    interiorWalls: [{ id: 'iw', from: { xM: 5, yM: 0 }, to: { xM: 5, yM: 1 } }],
    girders: [{ id: 'g', from: { xM: 0, yM: 3.6 }, to: { xM: 6, yM: 3.6 } }],
    ducts: [
      {
        id: 'd',
        path: [
          { xM: 1, yM: 3.8 },
          { xM: 5, yM: 3.8 },
        ],
        widthM: 0.2,
        heightM: 0.2,
        clearanceM: 0.6,
      },
    ],
    equipment: [{ id: 'sump', kind: 'sump', at: { xM: 0.4, yM: 0.4 } }],
    obstacles: [
      {
        id: 'o',
        what: 'Boxes',
        heightM: 0.2,
        outline: [
          { xM: 0.2, yM: 2.8 },
          { xM: 0.6, yM: 2.8 },
          { xM: 0.6, yM: 3.2 },
          { xM: 0.2, yM: 3.2 },
        ],
      },
    ],
    zones: [
      {
        id: 'z',
        name: 'Left half',
        ground: { cover: 'liner' },
        outline: [
          { xM: 0, yM: 0 },
          { xM: 2, yM: 0 },
          { xM: 2, yM: 4 },
          { xM: 0, yM: 4 },
        ],
      },
    ],
    drains: [{ id: 'dr', path: [{ at: { xM: 1, yM: 0.3 } }, { at: { xM: 2, yM: 0.3 } }] }],
  };
  const things: [string, ClaimSubject[]][] = [
    ['the floor', [{ all: 'floor' }]],
    ['all walls', [{ all: 'walls' }]],
    ['all vents', [{ all: 'vents' }]],
    ['a wall by its corner', [{ kind: 'wall', id: 'west' }]],
    ['a wall by its facts', [{ kind: 'wall', id: 'facts' }]],
    ['an interior wall', [{ kind: 'interior-wall', id: 'iw' }]],
    ['a vent', [{ kind: 'vent', id: 'v1' }]],
    ['a girder', [{ kind: 'girder', id: 'g' }]],
    ['a duct', [{ kind: 'duct', id: 'd' }]],
    ['a machine', [{ kind: 'equipment', id: 'sump' }]],
    ['a door', [{ kind: 'door', id: 'door' }]],
    ['a zone', [{ kind: 'zone', id: 'z' }]],
    ['a drain', [{ kind: 'drain', id: 'dr' }]],
  ];
  const everywhere = [
    ...threeSides,
    allRound('east', 4.6, 2.1),
    ...[0.3, 5.7].flatMap((x) => [0.3, 3.7].map((y) => allRound(`c${10 * x}-${10 * y}`, x, y))),
  ];

  test.each(things)('%s is proved where everything is in a picture', (_, about) => {
    const [proof] = proofsWith(
      { media: { photos: everywhere }, acceptance: [claim('c', 'x', { about })] },
      plan,
    );
    expect(proof).toMatchObject({ verdict: 'proved', missing: [] });
  });

  test.each(things)('%s is in no picture that shows only the far left corner', (_, about) => {
    const blind = photo('blind', [0.3, 3.9], 0, { fieldOfViewDeg: 20, rangeM: 0.2 });
    const [proof] = proofsWith(
      { media: { photos: [blind] }, acceptance: [claim('c', 'x', { about })] },
      plan,
    );
    expect(proof.verdict).toMatch(/no-picture|partly/);
    expect(proof.share).toBeLessThan(0.05);
    expect(proof.says).toMatch(/show/);
  });

  test('what is not drawn, or is of a criterion that no picture shows, is unplaced', () => {
    const proofs = proofsWith({
      acceptance: [
        claim('gone', 'x', { about: [{ kind: 'vent', id: 'no-such-vent' }] }),
        claim('air', 'AIR-01'),
        claim('free', 'left clean'),
      ],
    });
    expect(proofs.map((p) => p.verdict)).toEqual(['unplaced', 'unplaced', 'unplaced']);
    expect(proofs[2].title).toBe('left clean');
  });

  test('a criterion stands for what it is about', () => {
    const of = (criterion: string) => proofsWith({ acceptance: [claim('c', criterion)] }, plan)[0];
    expect(of('DRN-02a').verdict).toBe('unplaced');
    expect(of('LIN-01').missing.map((m) => m.kind)).toEqual(['floor']);
    expect(of('LIN-05a').title).not.toBe('LIN-05a');
    expect(of('LIN-08a').missing[0].kind).toBe('pier');
  });
});

describe('steps of the build and findings', () => {
  test('only steps that are done claim anything', () => {
    const step = (id: string, state: 'open' | 'done' | 'stopped') => ({
      id,
      title: `Step ${id}`,
      state,
      about: [{ all: 'vents' as const }],
    });
    const proofs = proofsWith({ build: [step('a', 'open'), step('b', 'done'), step('c', 'stopped')] });
    expect(proofs.map((p) => [p.id, p.of, p.verdict])).toEqual([['b', 'build-step', 'proved']]);
  });

  test('a step that says nothing of what it is about is unplaced, with or without pictures', () => {
    const step = { id: 'a', title: 'Swept', state: 'done' as const };
    expect(proofsWith({ build: [step] })[0].says).toContain('No picture is named');
    expect(proofsWith({ build: [{ ...step, photoIds: ['west'] }] })[0].says).toContain('its picture has');
  });

  test('a finding is shown where its place is, or what it hangs on', () => {
    const finding = (id: string, place: NonNullable<JobInput['findings']>[number]['place']) => ({
      id,
      defect: 'other',
      title: `Finding ${id}`,
      place,
      ...signed,
    });
    const proofs = proofsWith({
      media: { photos: [allRound('west', 0.5, 2)] },
      findings: [
        finding('open', { at: { xM: 1, yM: 1 } }),
        finding('behind', { at: { xM: 4.2, yM: 2 } }),
        finding('pier', { on: { kind: 'pier', id: 'p1' } }),
        finding('words', { words: 'somewhere' }),
      ],
    });
    expect(proofs.map((p) => p.verdict)).toEqual(['proved', 'no-picture', 'partly', 'unplaced']);
    expect(proofs[1]).toMatchObject({
      says: 'No picture shows the place.',
      missing: [{ kind: 'place', share: 0 }],
    });
  });
});
