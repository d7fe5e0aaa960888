import { EngineError } from '@undercroft/engine';
import { expect, it } from 'vitest';
import { type AirToTry, type Assessment, assess, traceOf } from '../../src/index.ts';
import { demoJob } from '../season/jobs.ts';

const job = demoJob('doubted-liner');
let toTry: AirToTry | undefined;
const assessment: Assessment = assess(job, undefined, {
  season: 'none',
  coverage: false,
  distribution: 'present',
  air: (air) => {
    toTry = air;
  },
});
const air = toTry!;
const field = assessment.distribution;
if (field?.outcome !== 'worked-out') throw new Error(field?.why);
const { found } = field;

it('is the arrangement as found where nothing is asked', () => {
  const state = air.state({});
  // The quick state is good to some hundredths of a percent.
  expect(state.farEnd.relativeHumidity).toBeCloseTo(found.value.farEnd.relativeHumidity, 3);
  expect(state.duty).toBeCloseTo(found.value.duty, 3);
  expect(air.band({})).toEqual(found);
});

it('dries the far end better turned into the room, and with a duct to it; not with twice the size', () => {
  const far = (asked: Parameters<AirToTry['state']>[0]) => air.state(asked).farEnd.relativeHumidity;
  const asFound = far({});
  const turned = far({ machine: { bearingDeg: 90 } });
  expect(turned).toBeLessThan(asFound - 0.03);
  expect(
    far({ machine: { bearingDeg: 90 }, fans: [{ at: { xM: 8, yM: 2 }, bearingDeg: 270 }] }),
  ).toBeLessThan(turned);
  expect(far({ machine: { ductTo: { xM: 10.2, yM: 6.4 } } })).toBeLessThan(turned);
  expect(far({ machine: { sizeBy: 2 } })).toBeGreaterThan(asFound - 0.005);
  expect(far({ machine: { sensor: { xM: 13, yM: 2 }, setRelativeHumidity: 0.6 } })).toBeLessThan(asFound);
});

it('says how a moved machine stands, and refuses one that stands outside', () => {
  const { machine, fans } = air.band({
    machine: { at: { xM: 6, yM: 6 }, bearingDeg: 135 },
    fans: [{ at: { xM: 12, yM: 2 }, bearingDeg: 0 }],
  });
  expect(machine.id).toBe('dh');
  expect((machine.intake.xM + machine.outlet.xM) / 2).toBeCloseTo(6, 9);
  expect(machine.outlet.xM).toBeGreaterThan(6);
  expect(machine.outlet.yM).toBeLessThan(6);
  expect(fans).toEqual([{ at: { xM: 12, yM: 2 }, bearingDeg: 0, airflowM3PerS: 0.1, powerW: 25 }]);
  expect(() => air.state({ machine: { at: { xM: 40, yM: 40 } } })).toThrow(EngineError);
});

it('rests on the drawing, the climate and what was taken', () => {
  const { sources, items, assumptions } = traceOf(job, assessment, 'distribution');
  expect(sources.map((s) => s.id)).toContain('cheng-2011-mixing');
  expect(items).toContainEqual({ kind: 'equipment', id: 'dh' });
  expect(assumptions).toContain('Speed of the air at the outlet');
});
