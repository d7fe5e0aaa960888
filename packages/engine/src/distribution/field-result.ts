import type { Point } from '../geometry/point.ts';
import { humidityRatioFromRelativeHumidity } from '../psychrometrics/humidity-ratio.ts';
import type { Arrangement } from './arrangement.ts';
import { middleOf } from './field-grid.ts';
import { type FieldMaps, fieldMaps } from './field-maps.ts';
import type { FieldModel, SpreadExchange } from './field-model.ts';
import { LANES } from './lanes.ts';
import { AIR_J_PER_KG_K, AIR_KG_PER_M3 } from './mixing.ts';
import { reachLengthM } from './reach.ts';
import type { SteadyField } from './steady-state.ts';

/** A part of the floor with a figure. */
export interface FloorPart {
  readonly areaM2: number;
  /** Mean over the part, fraction. */
  readonly relativeHumidity: number;
  /** Its dampest place. */
  readonly at: Point;
}

/** Numbers of one state. Shares are of the floor area, humidities fractions. */
export interface FieldNumbers {
  readonly meanRelativeHumidity: number;
  readonly meanHumidityRatio: number;
  readonly meanTemperatureC: number;
  readonly meanWoodMoisture: number;
  readonly highest: { readonly relativeHumidity: number; readonly at: Point };
  readonly lowest: { readonly relativeHumidity: number; readonly at: Point };
  /** The dampest twentieth of the floor. */
  readonly dampest: FloorPart;
  /** The bay (reached without passing a face that is less than half open) with the highest mean, of 1 m² and more. */
  readonly worstBay: FloorPart;
  readonly bayCount: number;
  readonly shareAbove60: number;
  readonly shareAbove70: number;
  readonly shareAbove80: number;
  /** Floor where the air would hold more than it can. */
  readonly shareSaturated: number;
  readonly reach: {
    /** All sources together, kg/(m²·s) per unit of humidity ratio. */
    readonly sourceKgPerM2S: number;
    /** Mixing where the machine stirs, mean over its running and resting time, m²/s. */
    readonly mixingM2PerS: number;
    /** λ: length over which the drying of one place fades, m. */
    readonly lengthM: number;
    /** From the intake, or the middle of the floor without a machine, to the farthest place, m. */
    readonly farM: number;
    /** Far over λ: 0.5 and less is well reached, above 2 most of the drying stays near the machine. */
    readonly ratio: number;
  };
  /**
   * (W_off − W_mean)/(W_off − W_intake): 1 when the air of the whole plan reaches the intake equally, below 1 when the
   * machine dries its own pocket. Means by volume. Null where the machine removes nothing.
   */
  readonly planCoefficient: number | null;
  /**
   * The same with the humidity that a humidistat would read as now in air of the mean temperature in place of the intake's:
   * the machine's own heat at its humidistat is then in it. This is what the season takes as its plan coefficient.
   */
  readonly seasonPlanCoefficient: number | null;
  readonly signature: DistributionSignature;
  /** Water into the air by what gives it, kg/day, and heat, W; negative takes. Leaks by pressure are one row. */
  readonly water: readonly { readonly what: string; readonly kgPerDay: number }[];
  readonly heat: readonly { readonly what: string; readonly watts: number }[];
}

/** Whether the state bears the mark of dry air that does not get about: little running, and a wet corner. */
export interface DistributionSignature {
  readonly present: boolean;
  /** Duty now, and duty if the air were mixed; NaN without a machine. */
  readonly duty: number;
  readonly mixedDuty: number;
  /** Dampest twentieth of the floor less the set-point. */
  readonly excess: number;
}

/** Maps and numbers of one state. */
export interface FieldResult {
  readonly maps: FieldMaps;
  readonly numbers: FieldNumbers;
}

/** Part of the floor that counts as its dampest. */
const DAMPEST_SHARE = 0.05;
/** A bay smaller than this is a corner behind a pier, m². */
const LEAST_BAY_M2 = 1;
/** Duty below this share of the mixed one, and so much above the set-point in the dampest part, mark a pocket. */
const SIGNATURE_DUTY_SHARE = 0.8;
const SIGNATURE_EXCESS = 0.1;

/** What a steady state says. */
export function fieldResult(model: FieldModel, arrangement: Arrangement, state: SteadyField): FieldResult {
  const maps = fieldMaps(model, state);
  const { mesh } = model;
  const { areaM2, heightM, count } = mesh;
  const rh = maps.relativeHumidity;
  const sums = {
    rh: 0,
    wood: 0,
    above60: 0,
    above70: 0,
    above80: 0,
    saturated: 0,
    water: 0,
    heat: 0,
    volume: 0,
  };
  let wettest = 0;
  let driest = 0;
  for (let i = 0; i < count; i += 1) {
    const a = areaM2[i]!;
    const v = a * heightM[i]!;
    sums.rh += a * rh[i]!;
    sums.wood += a * maps.woodMoisture[i]!;
    if (rh[i]! > 0.6) sums.above60 += a;
    if (rh[i]! > 0.7) sums.above70 += a;
    if (rh[i]! > 0.8) sums.above80 += a;
    if (rh[i]! > 1) sums.saturated += a;
    sums.water += v * state.humidityRatio[i]!;
    sums.heat += v * state.temperatureC[i]!;
    sums.volume += v;
    if (rh[i]! > rh[wettest]!) wettest = i;
    if (rh[i]! < rh[driest]!) driest = i;
  }
  const floor = mesh.floorM2;
  const at = (cell: number): Point => middleOf(mesh.grid, mesh.column[cell]!, mesh.row[cell]!);
  const dampest = dampestPart(model, rh, DAMPEST_SHARE * floor, at);
  const meanHumidityRatio = sums.water / sums.volume;
  const meanTemperatureC = sums.heat / sums.volume;
  const setPoint = arrangement.machine?.setPoint ?? Number.NaN;
  const duty = state.machine?.duty ?? Number.NaN;
  const mixedDuty = state.mixed?.machine.duty ?? Number.NaN;
  const excess = dampest.relativeHumidity - setPoint;
  return {
    maps,
    numbers: {
      meanRelativeHumidity: sums.rh / floor,
      meanHumidityRatio,
      meanTemperatureC,
      meanWoodMoisture: sums.wood / floor,
      highest: { relativeHumidity: rh[wettest]!, at: at(wettest) },
      lowest: { relativeHumidity: rh[driest]!, at: at(driest) },
      dampest,
      worstBay: worstBay(model, rh, at),
      bayCount: mesh.bayVolumeM3.length,
      shareAbove60: sums.above60 / floor,
      shareAbove70: sums.above70 / floor,
      shareAbove80: sums.above80 / floor,
      shareSaturated: sums.saturated / floor,
      reach: reachOf(model, state),
      ...coefficients(model, state, meanHumidityRatio, meanTemperatureC),
      signature: {
        present:
          (state.outcome === 'holds' || state.outcome === 'idle') &&
          duty < SIGNATURE_DUTY_SHARE * mixedDuty &&
          excess > SIGNATURE_EXCESS,
        duty,
        mixedDuty,
        excess,
      },
      water: waterPaths(model, state),
      heat: model.heat.map((e) => ({
        what: e.what,
        watts: AIR_KG_PER_M3 * AIR_J_PER_KG_K * exchanged(e, state.temperatureC),
      })),
    },
  };
}

/** Mean humidity of the dampest part of the floor of a size. */
export function dampestPart(
  { mesh }: FieldModel,
  relativeHumidity: Float64Array,
  sizeM2: number,
  at: (cell: number) => Point,
): FloorPart {
  const order = Array.from(relativeHumidity.keys()).sort(
    (a, b) => relativeHumidity[b]! - relativeHumidity[a]! || a - b,
  );
  let area = 0;
  let sum = 0;
  for (const cell of order) {
    const part = Math.min(mesh.areaM2[cell]!, sizeM2 - area);
    if (part <= 0) break;
    area += part;
    sum += part * relativeHumidity[cell]!;
  }
  return { areaM2: area, relativeHumidity: sum / area, at: at(order[0]!) };
}

function worstBay({ mesh }: FieldModel, rh: Float64Array, at: (cell: number) => Point): FloorPart {
  const bays = mesh.bayVolumeM3.map(() => ({ area: 0, sum: 0, wettest: -1 }));
  for (let i = 0; i < mesh.count; i += 1) {
    const bay = bays[mesh.bay[i]!]!;
    bay.area += mesh.areaM2[i]!;
    bay.sum += mesh.areaM2[i]! * rh[i]!;
    if (bay.wettest < 0 || rh[i]! > rh[bay.wettest]!) bay.wettest = i;
  }
  const counted = bays.filter((bay) => bay.area >= LEAST_BAY_M2);
  const worst = (counted.length > 0 ? counted : bays).reduce((a, b) =>
    b.sum / b.area > a.sum / a.area ? b : a,
  );
  return { areaM2: worst.area, relativeHumidity: worst.sum / worst.area, at: at(worst.wettest) };
}

function reachOf({ mesh, totals, leak }: FieldModel, state: SteadyField): FieldNumbers['reach'] {
  let entering = 0;
  let leaving = 0;
  for (let i = 0; i < leak.length; i += 1) {
    if (leak[i]! > 0) entering += leak[i]!;
    else leaving -= leak[i]!;
  }
  // Air that leaves is among the losses; air that enters is what binds the humidity in its place.
  const source = (AIR_KG_PER_M3 * (totals.loss[0]! - leaving + entering)) / mesh.floorM2;
  const { machine } = state.air;
  const running = state.machine === null ? 0 : state.machine.circulation;
  const mixingM2PerS = state.mixingM2PerS + running * (machine?.mixingM2PerS ?? 0);
  const heightM = mesh.volumeM3 / mesh.floorM2;
  const lengthM = reachLengthM(AIR_KG_PER_M3, heightM, mixingM2PerS, source);
  const { grid, column, row, areaM2 } = mesh;
  let fromX = 0;
  let fromY = 0;
  if (machine !== null) {
    fromX = column[machine.intake]! + 0.5;
    fromY = row[machine.intake]! + 0.5;
  } else {
    for (let i = 0; i < mesh.count; i += 1) {
      fromX += (areaM2[i]! * (column[i]! + 0.5)) / mesh.floorM2;
      fromY += (areaM2[i]! * (row[i]! + 0.5)) / mesh.floorM2;
    }
  }
  let farM = 0;
  for (let i = 0; i < mesh.count; i += 1) {
    const dx = (column[i]! + 0.5 - fromX) * grid.cellXM;
    const dy = (row[i]! + 0.5 - fromY) * grid.cellYM;
    farM = Math.max(farM, Math.hypot(dx, dy));
  }
  return { sourceKgPerM2S: source, mixingM2PerS, lengthM, farM, ratio: farM / lengthM };
}

/** Humidity that is no difference, kg/kg. */
const NO_DIFFERENCE = 1e-7;

function coefficients(
  { pressurePa }: FieldModel,
  { machine, outcome, offHumidityRatio: off }: SteadyField,
  mean: number,
  meanC: number,
): Pick<FieldNumbers, 'planCoefficient' | 'seasonPlanCoefficient'> {
  if (machine === null || outcome === 'idle' || outcome === 'too-cold' || Number.isNaN(off)) {
    return { planCoefficient: null, seasonPlanCoefficient: null };
  }
  const over = (seen: number): number | null =>
    off - seen > NO_DIFFERENCE ? (off - mean) / (off - seen) : null;
  return {
    planCoefficient: over(machine.intakeHumidityRatio),
    seasonPlanCoefficient: over(
      humidityRatioFromRelativeHumidity(meanC, machine.sensorRelativeHumidity, pressurePa),
    ),
  };
}

function waterPaths(model: FieldModel, state: SteadyField): FieldNumbers['water'] {
  const perDay = 86_400 * AIR_KG_PER_M3;
  const rows = model.vapor.map((e) => ({
    what: e.what,
    kgPerDay: perDay * exchanged(e, state.humidityRatio),
  }));
  // What is neither exchange nor machine: leaks by pressure and fixed sources.
  let total = 0;
  for (let i = 0; i < model.mesh.count; i += 1) {
    total += model.waterGiven[i]! - model.loss[LANES * i]! * state.humidityRatio[i]!;
  }
  const rest = perDay * total - rows.reduce((sum, row) => sum + row.kgPerDay, 0);
  const others = (model.site.leaks?.length ?? 0) + (model.site.fixed?.length ?? 0);
  if (others > 0) rows.push({ what: 'air by pressure and fixed sources', kgPerDay: rest });
  if (state.machine !== null) {
    rows.push({ what: 'dehumidifier', kgPerDay: -86_400 * state.machine.removalKgPerS });
  }
  return rows;
}

/** m³/s times humidity ratio or °C that an exchange gives to the air. */
function exchanged({ cells, conductance, drawnTo }: SpreadExchange, state: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < cells.length; k += 1) sum += conductance[k]! * (drawnTo - state[cells[k]!]!);
  return sum;
}
