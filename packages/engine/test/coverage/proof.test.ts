import { describe, expect, test } from 'vitest';
import { type Claim, proofOf } from '../../src/coverage/proof.ts';
import type { CoverageScene } from '../../src/coverage/scene.ts';
import { allRound, box, room } from './rooms.ts';

const scene: CoverageScene = {
  ...room(6, 4),
  piers: [{ id: 'p1', at: { xM: 3, yM: 2 }, widthM: 0.4, depthM: 0.4 }],
  vents: [{ id: 'v1', edge: 3, offsetM: 1.8, widthM: 0.4 }],
  interiorWalls: [{ id: 'iw', from: { xM: 5, yM: 0 }, to: { xM: 5, yM: 1 } }],
};
const stations = [allRound('west', 1.4, 1.9), allRound('south', 3.1, 0.7), allRound('north', 2.9, 3.3)];
const east = allRound('east', 4.6, 2.1);
const claim = (id: string, about: Claim['about'], stationIds?: string[]): Claim => ({
  id,
  about,
  ...(stationIds ? { stationIds } : {}),
});

describe('proof of claims and findings', () => {
  test('piers wrapped: three of four faces do not prove it, the fourth does', () => {
    const wrapped = claim('wrapped', { kind: 'piers' });
    const [three] = proofOf(scene, stations, [wrapped]);
    expect(three!.verdict).toBe('partly-shown');
    expect(three!.share).toBeCloseTo(0.75, 9);
    expect(three!.missing).toEqual([{ kind: 'pier', id: 'p1', face: 1, share: 0 }]);
    expect(three!.stations).toEqual(['west', 'south', 'north']);
    const [four] = proofOf(scene, [...stations, east], [wrapped]);
    expect(four).toMatchObject({ verdict: 'shown', share: 1, missing: [] });
    // Named pictures alone count, even when others would show more.
    const named = claim('wrapped', { kind: 'pier', id: 'p1' }, ['east', 'west']);
    expect(proofOf(scene, [...stations, east], [named])[0]).toMatchObject({
      verdict: 'partly-shown',
      missing: [{ face: 0 }, { face: 2 }],
      stations: ['west', 'east'],
    });
  });

  test('a claim about several things needs each of them', () => {
    const both = claim('both', [
      { kind: 'pier', id: 'p1', face: 3 },
      { kind: 'pier', id: 'p1', face: 1 },
    ]);
    expect(proofOf(scene, stations, [both])[0]).toMatchObject({
      verdict: 'partly-shown',
      share: 0.5,
      missing: [{ kind: 'pier', id: 'p1', face: 1 }],
    });
    expect(proofOf(scene, [...stations, east], [both])[0]!.verdict).toBe('shown');
    expect(proofOf(scene, stations, [claim('none', [])])[0]).toMatchObject({
      verdict: 'not-shown',
      notices: [{ code: 'nothing-to-show' }],
    });
  });

  test('no picture named, no proof', () => {
    const [none] = proofOf(scene, stations, [claim('wrapped', { kind: 'piers' }, [])]);
    expect(none).toMatchObject({ verdict: 'not-shown', share: 0, stations: [] });
    expect(none!.missing).toHaveLength(4);
  });

  test('a pier face flush with a wall needs no proof', () => {
    const flush = { ...scene, piers: [{ id: 'p2', at: { xM: 0.2, yM: 2 }, widthM: 0.4, depthM: 0.4 }] };
    const [proof] = proofOf(
      flush,
      [allRound('a', 1.4, 3.1), allRound('b', 1.4, 0.9)],
      [claim('wrapped', { kind: 'piers' })],
    );
    expect(proof).toMatchObject({ verdict: 'shown', missing: [] });
  });

  test('the floor, a zone of it, a wall, a vent, an interior wall, a place', () => {
    const claims = [
      claim('floor', { kind: 'floor' }),
      claim('zone', { kind: 'floor', outline: box(0.1, 0.1, 2, 1) }),
      claim('corner', { kind: 'floor', outline: box(5.2, 0.1, 5.9, 0.6) }),
      claim('wall', { kind: 'wall', edge: 3 }),
      claim('vent', { kind: 'vent', id: 'v1' }),
      claim('inside', { kind: 'interior-wall', id: 'iw' }),
      claim('seen', { kind: 'place', at: { xM: 2, yM: 2.1 } }),
      claim('hidden', { kind: 'place', at: { xM: 5.9, yM: 0.1 } }),
      claim('face', { kind: 'pier', id: 'p1', face: 3 }),
    ];
    const proofs = new Map(proofOf(scene, stations.slice(0, 2), claims).map((p) => [p.id, p]));
    const verdict = (id: string) => proofs.get(id)!.verdict;
    expect(verdict('floor')).toBe('partly-shown');
    expect(verdict('zone')).toBe('shown');
    expect(verdict('corner')).toBe('not-shown');
    expect(proofs.get('corner')!.missing[0]!.at!.xM).toBeGreaterThan(5);
    expect(verdict('wall')).toBe('shown');
    expect(verdict('vent')).toBe('shown');
    expect(proofs.get('inside')).toMatchObject({
      verdict: 'partly-shown',
      missing: [{ kind: 'interior-wall', id: 'iw', side: 'right', share: 0 }],
    });
    expect(proofs.get('seen')).toMatchObject({ verdict: 'shown', stations: ['west', 'south'] });
    expect(verdict('hidden')).toBe('not-shown');
    expect(verdict('face')).toBe('shown');
  });

  test('how much is enough is a matter of the options', () => {
    const near = [{ ...allRound('s', 3, 2.9), rangeM: 3 }];
    const about = claim('north', { kind: 'wall', edge: 2 });
    // Within 3 m of (3, 2.9) and no flatter than 75°: the north wall y = 4 from x = 0.21 to 5.79, 93 % of it.
    const share = Math.sqrt(9 - 1.21) / 3;
    expect(proofOf(scene, near, [about])[0]).toMatchObject({ verdict: 'shown', missing: [] });
    expect(proofOf(scene, near, [about])[0]!.share).toBeCloseTo(share, 9);
    expect(proofOf(scene, near, [about], { enoughOfLine: 0.94 })[0]!.verdict).toBe('partly-shown');
  });

  test('what is not on the plan cannot be shown, and strangers are named', () => {
    const [proof] = proofOf(scene, stations, [claim('c', { kind: 'vent', id: 'v9' }, ['west', 'photo-77'])]);
    expect(proof).toMatchObject({ verdict: 'not-shown', share: 0, missing: [] });
    expect(proof!.notices.map((n) => n.code)).toEqual(['unknown-station', 'nothing-to-show']);
    expect(proof!.notices[0]!.message).toContain('photo-77');
    expect(proof!.notices[0]!.message).not.toContain('west');
  });

  test('a place behind a low pile is not shown', () => {
    const pile = { ...room(6, 4), obstacles: [{ id: 'o', outline: box(3, 0, 3.5, 4), heightM: 0.15 }] };
    // Hidden to 3.5 · 0.3 / 0.15 = 7 m from x = 0: all the rest.
    const behind = claim('c', { kind: 'place', at: { xM: 5, yM: 1 } });
    expect(proofOf(pile, [allRound('s', 0, 2)], [behind])[0]!.verdict).toBe('not-shown');
    expect(proofOf(pile, [{ ...allRound('s', 0, 2), heightM: 0.7 }], [behind])[0]!.verdict).toBe('shown');
  });
});
