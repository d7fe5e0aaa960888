import { convert } from '../units/convert.ts';

/** Portable machines stand in the room they dry; whole-home machines are meant for ducts. */
export type MachineKind = 'portable' | 'whole-home';

/** Least water per energy of a class of machines, L/kWh. */
export interface EfficiencyFloor {
  readonly kind: MachineKind;
  readonly title: string;
  /** Largest capacity of the class at the federal test air, kg/day; portable machines. */
  readonly upToKgPerDay?: number;
  /** Largest case of the class, m³; whole-home machines. */
  readonly upToCaseM3?: number;
  /** Federal minimum from 13 June 2019. */
  readonly federalLPerKWh: number;
  readonly federalSourceId: string;
  /** EPA voluntary specification 5.0; from memory. */
  readonly voluntaryLPerKWh: number;
}

const pints = (perDay: number) => convert(perDay, 'pint/day', 'kg/day');
const FEDERAL = 'federal-minimum-2019';
const WHOLE_HOME = 'federal-minimum-2019-whole-home';

/** Efficiency floors of dehumidifiers sold in the United States, on the federal test (65 or 73 °F, 60 %), standby included. */
export const EFFICIENCY_FLOORS: readonly EfficiencyFloor[] = [
  {
    kind: 'portable',
    title: 'Portable, to 25 pints/day',
    upToKgPerDay: pints(25),
    federalLPerKWh: 1.3,
    federalSourceId: FEDERAL,
    voluntaryLPerKWh: 1.57,
  },
  {
    kind: 'portable',
    title: 'Portable, over 25 to 50 pints/day',
    upToKgPerDay: pints(50),
    federalLPerKWh: 1.6,
    federalSourceId: FEDERAL,
    voluntaryLPerKWh: 1.8,
  },
  {
    kind: 'portable',
    title: 'Portable, over 50 pints/day',
    federalLPerKWh: 2.8,
    federalSourceId: FEDERAL,
    voluntaryLPerKWh: 3.3,
  },
  {
    kind: 'whole-home',
    title: 'Whole-home, case to 8 ft³',
    upToCaseM3: convert(8, 'ft3', 'm3'),
    federalLPerKWh: 1.77,
    federalSourceId: WHOLE_HOME,
    voluntaryLPerKWh: 2.09,
  },
  {
    kind: 'whole-home',
    title: 'Whole-home, case over 8 ft³',
    federalLPerKWh: 2.41,
    federalSourceId: WHOLE_HOME,
    voluntaryLPerKWh: 3.3,
  },
];

/**
 * The efficiency floor that a machine falls under.
 * @param kind portable or whole-home
 * @param size capacity at the federal test air in kg/day of a portable machine, or case volume in m³ of a whole-home one
 */
export function efficiencyFloor(kind: MachineKind, size: number): EfficiencyFloor {
  return EFFICIENCY_FLOORS.find(
    (floor) =>
      floor.kind === kind &&
      size <= ((kind === 'portable' ? floor.upToKgPerDay : floor.upToCaseM3) ?? Infinity) * (1 + 1e-9),
  )!;
}
