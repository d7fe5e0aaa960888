import { expect, test } from 'vitest';
import { namesOf } from '../../src/coverage/names.ts';
import { roomJob, shownBy } from './jobs.ts';

const at = (xM: number, yM: number) => ({ xM, yM });

test('walls are named by the side that they are on, whichever way round they were drawn', () => {
  const corners = [
    { id: 'a', at: at(0, 0) },
    { id: 'b', at: at(8, 0) },
    { id: 'c', at: at(8, 4) },
    { id: 'd', at: at(4, 4) },
    { id: 'e', at: at(4, 6) },
    { id: 'f', at: at(0, 6) },
  ];
  const outline = { kind: 'corners' as const, corners };
  const job = roomJob({}, { northDeg: 0, outline, vents: [], doors: [] });
  const { walls } = shownBy(job);
  expect(walls.map((w) => `${w.id} ${w.name}`)).toEqual([
    'a south wall',
    'b east wall 1',
    'c north wall 1',
    'd east wall 2',
    'e north wall 2',
    'f west wall',
  ]);
  const reversed = { kind: 'corners' as const, corners: [...corners].reverse() };
  const back = shownBy(roomJob({}, { northDeg: 90, outline: reversed, vents: [], doors: [] }));
  // The plan's y axis points east now; the wall from corner b to a has the lower side of the plan outside.
  expect(back.walls.find((w) => w.id === 'b')?.name).toBe('west wall');
});

test('other things are named by their own name, or by kind and number', () => {
  const outline = [at(1, 1), at(2, 1), at(2, 2)];
  const job = roomJob(
    {},
    {
      piers: [
        { id: 'x7', at: at(1, 2) },
        { id: 'q2', at: at(3, 2) },
      ],
      equipment: [
        { id: 's1', kind: 'sump', at: at(1, 1) },
        { id: 's2', kind: 'sump', at: at(5, 1) },
        { id: 'dh', kind: 'dehumidifier', at: at(5, 3) },
      ],
      obstacles: [{ id: 'o', what: 'Old boiler', outline, heightM: 0.4 }],
    },
  );
  const nameOf = namesOf(job, shownBy(job).geometry);
  expect(
    [
      ['pier', 'q2'],
      ['equipment', 's2'],
      ['equipment', 'dh'],
      ['obstacle', 'o'],
      ['door', 'door'],
      ['vent', 'v1'],
      ['bay', 'j1-12'],
      ['pier', 'gone'],
    ].map(([kind, id]) => nameOf(kind, id)),
  ).toEqual([
    'pier 2',
    'sump 2',
    'dehumidifier',
    'Old boiler',
    'access door',
    'vent 1',
    'joist bay 12',
    'pier gone',
  ]);
});
