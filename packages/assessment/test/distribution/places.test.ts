import { expect, it } from 'vitest';
import { placeOfOpening } from '../../src/distribution/leak-places.ts';
import { placesOfPath } from '../../src/distribution/path-places.ts';
import { demoJob } from '../season/jobs.ts';
import { fieldOf, spaceOf } from './spaces.ts';

const job = demoJob('doubted-liner');
const { space } = spaceOf(job);
const plan = { job, drawn: job.plan, geometry: space.result };
const places = (key: string) => placesOfPath(plan, key);

it('has each path where the plan has what gives the water', () => {
  const corner = job.plan.zones[0].outline;
  expect(places('open-ground:far-corner')).toEqual([{ place: { kind: 'floor', within: corner }, part: 1 }]);
  const [rest] = places('liner-open:elsewhere');
  expect(rest.place).toMatchObject({ kind: 'floor', except: [corner, job.plan.zones[1].outline] });
  // Wall 1 of the outline is the one that begins at the corner `right`.
  expect(places('wicking-masonry:w-right')).toEqual([{ place: { kind: 'walls', edges: [1] }, part: 1 }]);
  expect(places('edge:w-back')).toEqual([{ place: { kind: 'walls', edges: [2] }, part: 1 }]);
  expect(places('seam:se2')).toEqual([
    { place: { kind: 'line', from: job.plan.seams[1].path[0], to: job.plan.seams[1].path[1] }, part: 1 },
  ]);
  // The middle of the door is 22 ft and half its 32 in along the left wall, which runs from the back to the front.
  const [frame] = places('edge:door');
  const { at } = frame.place as { at: { xM: number; yM: number } };
  expect(at.xM).toBeCloseTo(0, 9);
  expect(at.yM).toBeCloseTo((28 - 22 - 32 / 24) * 0.3048, 6);
});

it('splits the water round bare piers by their girth', () => {
  const bare = job.plan.piers.filter((p) => p.wrapHeightM === 0 || p.wrapSealed === false);
  const parts = places('pier:bare-piers');
  expect(parts.map((p) => p.place)).toEqual(bare.map(({ at }) => ({ kind: 'at', at })));
  expect(parts.reduce((sum, p) => sum + p.part, 0)).toBeCloseTo(1, 12);
});

it('spreads what lies nowhere for certain over the floor without a zone, or over all of it', () => {
  const [rest] = places('liner-open:elsewhere');
  expect(places('open-ground:said-bare')).toEqual([rest]);
  expect(places('seam:said-seam')).toEqual([{ place: { kind: 'floor' }, part: 1 }]);
  expect(places('entered:leak')).toEqual([{ place: { kind: 'floor' }, part: 1 }]);
});

it('has vents and doors at their places in the walls, and the rest of a wall along it', () => {
  const of = (name: string) => placeOfOpening(job, space.result, name);
  const vent = of('vf2') as { at: { xM: number; yM: number } };
  expect(vent.at.xM).toBeCloseTo((26 + 8 / 12) * 0.3048, 6);
  expect(vent.at.yM).toBeCloseTo(0, 9);
  expect(of('door')).toMatchObject({ kind: 'at' });
  expect(of('crawl wall and rim, back')).toEqual({ kind: 'walls', edges: [2] });
  expect(of('something else')).toEqual({ kind: 'walls' });
});

it('lets wind from all four sides in and out of every opening', () => {
  const { openings } = fieldOf(job, 0.5).day;
  expect(openings.map((o) => o.name).sort()).toEqual(
    [
      'crawl wall and rim, back',
      'crawl wall and rim, front',
      'crawl wall and rim, left',
      'crawl wall and rim, right',
      'door',
      'vb1',
      'vb2',
      'vf1',
      'vf2',
      'vf3',
      'vl1',
    ].sort(),
  );
  for (const { inM3PerS, outM3PerS } of openings) {
    expect(inM3PerS).toBeGreaterThan(0);
    expect(outM3PerS).toBeGreaterThan(0);
  }
  // Vents of one wall are alike.
  const [a, b] = ['vf1', 'vf3'].map((name) => openings.find((o) => o.name === name));
  expect(a?.inM3PerS).toBeCloseTo(b?.inM3PerS ?? 0, 12);
});
