import { distribution as engine, geometry as shapes } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { BODY_M, FAN_TO_ADD } from './arrangement-of-job.ts';
import type { DistributionBand, DistributionState } from './distribution-assessment.ts';
import type { PreparedField } from './prepare-field.ts';
import { type EquipmentIds, shownBand, shownState } from './shown-state.ts';

/** Share of its air flow that a machine keeps with a duct at its outlet (common practice, no source). */
const DUCTED_FLOW_SHARE = 0.8;
/** Left-over of the mass balance that no map shows. */
const QUICK_FLOW = 1e-8;

/** Another arrangement of what stands in a space. What is left out stays as found. */
export interface ArrangementAsked {
  readonly machine?: {
    /** Its middle. */
    readonly at?: Point;
    /** Degrees clockwise from the plan's y axis. */
    readonly bearingDeg?: number;
    /** Where a duct at its outlet ends; null for no duct. */
    readonly ductTo?: Point | null;
    /** Where its humidistat reads the air; null for at the intake. */
    readonly sensor?: Point | null;
    readonly setRelativeHumidity?: number;
    /** Capacity and air flow over those of the machine that was found. */
    readonly sizeBy?: number;
  };
  /** All fans that run; those as found first keep their air flow, others are usual ones. */
  readonly fans?: readonly { readonly at: Point; readonly bearingDeg: number }[];
}

/** The air on the plan of a space, to try other arrangements in. */
export interface AirToTry {
  /**
   * One state at the middle of the band, for somebody who drags: humidities good to some hundredths of a percent, without
   * a plan coefficient. About 40 ms for 130 m².
   * @throws EngineError for places off the floor, and for a machine whose air cannot flow back
   */
  readonly state: (asked: ArrangementAsked) => DistributionState;
  /** The whole band, as the assessment has it for the arrangement as found. @throws EngineError as `state` */
  readonly band: (asked: ArrangementAsked) => DistributionBand;
}

type WithMachine = PreparedField['arrangement'];

function ahead({ xM, yM }: Point, bearingDeg: number, byM: number): Point {
  return { xM: xM + byM * shapes.sinDeg(bearingDeg), yM: yM + byM * shapes.cosDeg(bearingDeg) };
}

function machineAsked(
  found: engine.FieldMachine,
  asked: NonNullable<ArrangementAsked['machine']>,
): engine.FieldMachine {
  const { at, bearingDeg, ductTo, sensor, setRelativeHumidity, sizeBy = 1 } = asked;
  const { sensor: asFound, ...rest } = found;
  const middle = at ?? {
    xM: (found.intake.xM + found.outlet.xM) / 2,
    yM: (found.intake.yM + found.outlet.yM) / 2,
  };
  const toward = bearingDeg ?? found.bearingDeg ?? 0;
  const flowM3PerS = sizeBy * found.flowM3PerS;
  const reads = sensor === undefined ? asFound : (sensor ?? undefined);
  const machine = {
    ...rest,
    intake: ahead(middle, toward, -BODY_M / 2),
    outlet: ahead(middle, toward, BODY_M / 2),
    bearingDeg: toward,
    flowM3PerS,
    outletM2: sizeBy * found.outletM2,
    ratedKgPerDay: sizeBy * found.ratedKgPerDay,
    setPoint: setRelativeHumidity ?? found.setPoint,
    ...(reads === undefined ? {} : { sensor: reads }),
  };
  if (ductTo == null) return machine;
  return { ...machine, outlet: ductTo, bearingDeg: null, flowM3PerS: DUCTED_FLOW_SHARE * flowM3PerS };
}

function arrangementAsked(found: WithMachine, asked: ArrangementAsked): WithMachine {
  const fans = asked.fans?.map(({ at, bearingDeg }, k) => ({
    ...(found.fans?.[k] ?? FAN_TO_ADD),
    at,
    bearingDeg,
  }));
  return {
    ...found,
    machine: asked.machine === undefined ? found.machine : machineAsked(found.machine, asked.machine),
    ...(fans === undefined ? {} : { fans }),
  };
}

/** Makes a prepared field one to try arrangements in; each starts from the state of the one before. */
export function airToTry(
  { model, arrangement: found, mixing }: PreparedField,
  ids: EquipmentIds,
  far: readonly number[],
): AirToTry {
  let near: engine.SteadyField | undefined;
  let known: { readonly arrangement: engine.Arrangement; readonly air: engine.MovedAir } | undefined;
  return {
    state: (asked) => {
      const arrangement = arrangementAsked(found, asked);
      const air = engine.movedAir(model, arrangement, {
        tolerance: QUICK_FLOW,
        ...(known === undefined ? {} : { known }),
      });
      const state = engine.steadyField(model, arrangement, {
        mixingM2PerS: mixing.value,
        accuracy: 'ranking',
        air,
        ...(near === undefined ? {} : { near }),
      });
      known = { arrangement, air };
      near = state;
      return shownState(model, { state, ...engine.fieldResult(model, arrangement, state) }, far);
    },
    band: (asked) => {
      const arrangement = arrangementAsked(found, asked);
      return shownBand(model, arrangement, ids, engine.fieldBand(model, arrangement, mixing), far);
    },
  };
}
