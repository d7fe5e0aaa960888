import { JobSchema } from '@undercroft/record';
import { describe, expect, it } from 'vitest';
import { wallsOf } from '../../../src/plan/walls.ts';
import { nextPlace, nextWords, stepOf, wayOf } from '../../../src/screens/measure/line-of-joists.ts';

function jobWith(joists: readonly object[]) {
  return JobSchema.parse({
    format: 'undercroft-job',
    version: 2,
    id: 'joists',
    header: { title: 'Joists' },
    plan: {
      outline: {
        kind: 'corners',
        corners: [
          { id: 'a', at: { xM: 0, yM: 0 } },
          { id: 'b', at: { xM: 4, yM: 0 } },
          { id: 'c', at: { xM: 4, yM: 6 } },
          { id: 'd', at: { xM: 0, yM: 6 } },
        ],
      },
      joists,
    },
  });
}

describe('a line of joists', () => {
  const up = jobWith([{ id: 'j', bearingDeg: 0, spacingM: 0.4 }]);

  it('steps across the drawn joists by their spacing', () => {
    expect(stepOf(up, [])).toEqual({ xM: 0.4, yM: 0 });
    expect(stepOf(jobWith([{ id: 'j', bearingDeg: 90, spacingM: 0.6 }]), [])).toEqual({ xM: 0, yM: -0.6 });
  });

  it('goes on as between the last two where no joists are drawn', () => {
    const job = jobWith([]);
    expect(stepOf(job, [{ xM: 1, yM: 1 }])).toBeNull();
    expect(
      stepOf(job, [
        { xM: 9, yM: 9 },
        { xM: 1, yM: 1 },
        { xM: 1, yM: 1.5 },
      ]),
    ).toEqual({ xM: 0, yM: 0.5 });
  });

  it('takes the place and its number on, and stops at a wall', () => {
    const walls = wallsOf(up);
    const step = stepOf(up, []);
    const place = { at: { xM: 3.4, yM: 2 }, words: 'joist 9', heightM: 0.7 };
    const next = nextPlace(place, step, 1, walls);
    expect(next).toEqual({ at: { xM: 3.8, yM: 2 }, words: 'joist 10', heightM: 0.7 });
    expect(nextPlace(next ?? {}, step, 1, walls)).toBeNull();
    expect(nextPlace(place, step, -1, walls)).toEqual({
      at: { xM: 3, yM: 2 },
      words: 'joist 8',
      heightM: 0.7,
    });
    expect(nextPlace({ words: 'bay 2' }, null, 1, null)).toEqual({ words: 'bay 3' });
  });

  it('counts words up and down, and leaves words without a number', () => {
    expect(nextWords('joist 1', -1)).toBe('joist 1');
    expect(nextWords('by the hatch', 1)).toBe('by the hatch');
  });

  it('names the way as the plan is drawn', () => {
    expect(wayOf({ xM: 0.4, yM: 0.1 }, 1)).toBe('right');
    expect(wayOf({ xM: 0.4, yM: 0.1 }, -1)).toBe('left');
    expect(wayOf({ xM: 0, yM: -0.6 }, 1)).toBe('down');
  });
});
