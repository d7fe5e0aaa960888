import { distanceM } from '../geometry/point.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Arrangement } from './arrangement.ts';
import { dampestPlaces, isDucted, middleOfMachine } from './arrangement-candidates.ts';
import { type ArrangementOptions, USUAL_PRICES } from './arrangement-options.ts';
import type { RankedArrangement } from './arrangement-rank.ts';
import { placeText } from './arrangement-words.ts';
import type { FieldMesh } from './mesh.ts';

/** A changed arrangement, with what the change costs. */
export interface Variant {
  readonly arrangement: Arrangement;
  readonly what: string;
  readonly costCents: number;
}

const DUCT_ENDS = 4;
const DUCT_ENDS_APART_M = 2;
const SHORTEST_DUCT_M = 1.5;
const DUCTED_FLOW_SHARE = 0.8;

/** The outlet ducted to each of the dampest places that a duct reaches. */
export function ductVariants(
  mesh: FieldMesh,
  base: RankedArrangement,
  relativeHumidity: Float64Array,
  { prices = USUAL_PRICES, ductedFlowShare = DUCTED_FLOW_SHARE }: ArrangementOptions,
  longestDuctM: number,
): Variant[] {
  const { machine } = base.arrangement;
  if (machine === undefined || isDucted(machine)) return [];
  const share = requireRange('air flow with a duct (share)', ductedFlowShare, 0.1, 1);
  return dampestPlaces(mesh, relativeHumidity, DUCT_ENDS_APART_M, 3 * DUCT_ENDS)
    .map((end) => ({ end, lengthM: distanceM(machine.intake, end) }))
    .filter(({ lengthM }) => lengthM <= longestDuctM && lengthM > SHORTEST_DUCT_M)
    .slice(0, DUCT_ENDS)
    .map(({ end, lengthM }) => ({
      arrangement: {
        ...base.arrangement,
        machine: { ...machine, outlet: end, bearingDeg: null, flowM3PerS: share * machine.flowM3PerS },
      },
      what: `${base.what}; its outlet ducted ${lengthM.toFixed(1)} m to ${placeText(end)}`,
      costCents: Math.round(prices.ductFixed + prices.ductPerM * lengthM),
    }));
}

/** A humidistat in the dampest place, and other set-points. */
export function controlVariants(
  mesh: FieldMesh,
  base: RankedArrangement,
  relativeHumidity: Float64Array,
  { prices = USUAL_PRICES, remoteSetPoint, setPoints = [] }: ArrangementOptions,
): Variant[] {
  const { machine } = base.arrangement;
  if (machine === undefined) return [];
  const variants: Variant[] = [];
  const [sensor] = dampestPlaces(mesh, relativeHumidity, 1, 1);
  if (remoteSetPoint !== undefined && sensor !== undefined && machine.sensor === undefined) {
    variants.push({
      arrangement: { ...base.arrangement, machine: { ...machine, sensor, setPoint: remoteSetPoint } },
      what: `${base.what}; humidistat at ${placeText(sensor)}, set to ${(100 * remoteSetPoint).toFixed(0)} %`,
      costCents: prices.remoteSensor,
    });
  }
  for (const setPoint of setPoints) {
    if (setPoint === machine.setPoint || machine.sensor !== undefined) continue;
    variants.push({
      arrangement: { ...base.arrangement, machine: { ...machine, setPoint } },
      what: `${base.what}; set to ${(100 * setPoint).toFixed(0)} %`,
      costCents: 0,
    });
  }
  return variants;
}

/** The kinds of change between two arrangements of the same machine; null where one has none. */
export function changeKinds(from: Arrangement, to: Arrangement): string[] | null {
  const stands = from.machine;
  const other = to.machine;
  if (stands === undefined || other === undefined) return null;
  const kinds: string[] = [];
  if (isDucted(other) && !isDucted(stands)) {
    kinds.push('duct');
    if (distanceM(stands.intake, other.intake) > SAME_SPOT_M) kinds.push('move');
  } else if (distanceM(middleOfMachine(stands), middleOfMachine(other)) > SAME_SPOT_M) kinds.push('move');
  else if (stands.bearingDeg !== other.bearingDeg) kinds.push('turn');
  const more = (to.fans?.length ?? 0) - (from.fans?.length ?? 0);
  if (more > 0) kinds.push(more === 1 ? 'fan' : `${more} fans`);
  if (other.sensor !== undefined && stands.sensor === undefined) kinds.push('remote humidistat');
  else if (other.setPoint !== stands.setPoint) {
    kinds.push(`set-point ${(100 * other.setPoint).toFixed(0)} %`);
  }
  return kinds;
}

/** A machine that moved less stands where it stood, m. */
const SAME_SPOT_M = 0.5;
