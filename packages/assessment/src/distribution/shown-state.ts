import { type distribution, geometry as shapes } from '@undercroft/engine';
import type {
  DistributionBand,
  DistributionState,
  FanPlaced,
  FieldGridMap,
  FieldRange,
  MachinePlaced,
} from './distribution-assessment.ts';
import { partOfCells } from './far-end.ts';

/** Intake and outlet farther apart than this are joined by a duct, m. */
const LONGEST_BODY_M = 1.2;

/** Maps are rounded to so many parts of one: far finer than they are known, and short to write. */
const FRACTION_STEPS = 10_000;
const KELVIN_STEPS = 100;

/** What names the equipment of an arrangement in the record. */
export interface EquipmentIds {
  readonly machine: string;
  /** In the order of the arrangement's fans; those beyond are only proposed. */
  readonly fans: readonly string[];
}

/** A machine with how far its jet reaches, where that is known. */
export function machinePlaced(
  machine: distribution.FieldMachine,
  id: string,
  jet?: distribution.JetInSpace | null,
): MachinePlaced {
  const { intake, outlet, bearingDeg, sensor, setPoint, ratedKgPerDay, ratedLPerKWh, flowM3PerS } = machine;
  return {
    id,
    intake: { xM: intake.xM, yM: intake.yM },
    outlet: { xM: outlet.xM, yM: outlet.yM },
    bearingDeg,
    ducted: shapes.distanceM(intake, outlet) > LONGEST_BODY_M,
    ...(sensor === undefined ? {} : { sensor: { xM: sensor.xM, yM: sensor.yM } }),
    setRelativeHumidity: setPoint,
    ratedKgPerDay,
    litersPerKWh: ratedLPerKWh,
    airflowM3PerS: flowM3PerS,
    ...(jet == null ? {} : { throwM: jet.throwM, throwEndedBy: jet.endedBy }),
  };
}

/** The fans of an arrangement; those that the record has bear its ids. */
export function fansPlaced(
  fans: readonly distribution.FieldFan[] | undefined,
  ids: readonly string[],
): FanPlaced[] {
  return (fans ?? []).map(({ at, bearingDeg, flowM3PerS, powerW }, k) => ({
    ...(ids[k] === undefined ? {} : { id: ids[k] }),
    at: { xM: at.xM, yM: at.yM },
    bearingDeg,
    airflowM3PerS: flowM3PerS,
    powerW,
  }));
}

function mapOf({ mesh }: distribution.FieldModel, maps: distribution.FieldMaps): FieldGridMap {
  const { grid, cellAt } = mesh;
  const spread = (values: Float64Array, steps: number) =>
    Array.from(cellAt, (cell) => (cell < 0 ? null : Math.round(steps * values[cell]) / steps));
  return {
    originXM: grid.minXM,
    originYM: grid.minYM,
    cellXM: grid.cellXM,
    cellYM: grid.cellYM,
    columns: grid.columns,
    rows: grid.rows,
    relativeHumidity: spread(maps.relativeHumidity, FRACTION_STEPS),
    dewPointC: spread(maps.dewPointC, KELVIN_STEPS),
    woodMoisture: spread(maps.woodMoisture, FRACTION_STEPS),
  };
}

/** Rows of one name as one. */
function summed(rows: distribution.FieldNumbers['water']): { what: string; kgPerDay: number }[] {
  const sums = new Map<string, number>();
  for (const { what, kgPerDay } of rows) sums.set(what, (sums.get(what) ?? 0) + kgPerDay);
  return [...sums].map(([what, kgPerDay]) => ({ what, kgPerDay }));
}

/** A steady state with a machine in the words of the assessment. */
export function shownState(
  model: distribution.FieldModel,
  { maps, numbers, state }: distribution.FieldResult & { readonly state: distribution.SteadyField },
  far: readonly number[],
): DistributionState {
  const { machine, mixed } = state;
  if (machine === null || mixed === null) throw new Error('a field to show needs a machine');
  const { seasonPlanCoefficient: coefficient } = numbers;
  return {
    mixingM2PerS: state.mixingM2PerS,
    outcome: state.outcome,
    duty: machine.duty,
    mixedDuty: mixed.machine.duty,
    signature: numbers.signature.present,
    removedKgPerDay: 86_400 * machine.removalKgPerS,
    energyKWhPerDay: 0.024 * machine.electricW,
    intakeRelativeHumidity: machine.intakeRelativeHumidity,
    sensorRelativeHumidity: machine.sensorRelativeHumidity,
    farEnd: partOfCells(model.mesh, far, maps.relativeHumidity),
    dampest: numbers.dampest,
    worstBay: numbers.worstBay,
    bayCount: numbers.bayCount,
    highest: numbers.highest,
    lowest: numbers.lowest,
    meanRelativeHumidity: numbers.meanRelativeHumidity,
    meanTemperatureC: numbers.meanTemperatureC,
    meanWoodMoisture: numbers.meanWoodMoisture,
    shareAbove60: numbers.shareAbove60,
    shareAbove70: numbers.shareAbove70,
    shareAbove80: numbers.shareAbove80,
    shareSaturated: numbers.shareSaturated,
    reachM: numbers.reach.lengthM,
    farM: numbers.reach.farM,
    ...(coefficient === null ? {} : { planCoefficient: coefficient }),
    water: summed(numbers.water),
    map: mapOf(model, maps),
  };
}

/** A figure at the middle of the band, and its least and greatest over the three states. */
function rangeOf(
  states: readonly [DistributionState, DistributionState, DistributionState],
  pick: (state: DistributionState) => number,
): FieldRange {
  const values = states.map(pick);
  return { low: Math.min(...values), value: values[1], high: Math.max(...values) };
}

/** An arrangement over the band of mixing, in the words of the assessment. */
export function shownBand(
  model: distribution.FieldModel,
  arrangement: distribution.Arrangement & { readonly machine: distribution.FieldMachine },
  ids: EquipmentIds,
  band: distribution.FieldBand,
  far: readonly number[],
): DistributionBand {
  const low = shownState(model, band.low, far);
  const value = shownState(model, band.value, far);
  const high = shownState(model, band.high, far);
  const range = (pick: (state: DistributionState) => number) => rangeOf([low, value, high], pick);
  const all = [low, value, high].every((s) => s.planCoefficient !== undefined);
  return {
    machine: machinePlaced(arrangement.machine, ids.machine, band.value.state.air.machine?.jet),
    fans: fansPlaced(arrangement.fans, ids.fans),
    low,
    value,
    high,
    ranges: {
      duty: range((s) => s.duty),
      mixedDuty: range((s) => s.mixedDuty),
      intakeRelativeHumidity: range((s) => s.intakeRelativeHumidity),
      farEndRelativeHumidity: range((s) => s.farEnd.relativeHumidity),
      dampestRelativeHumidity: range((s) => s.dampest.relativeHumidity),
      meanRelativeHumidity: range((s) => s.meanRelativeHumidity),
      shareAbove60: range((s) => s.shareAbove60),
      shareAbove70: range((s) => s.shareAbove70),
      shareAbove80: range((s) => s.shareAbove80),
      reachM: range((s) => s.reachM),
      ...(all ? { planCoefficient: range((s) => s.planCoefficient as number) } : {}),
    },
  };
}
