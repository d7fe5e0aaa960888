import { requireRange } from '../numerics/require-range.ts';
import type { FlowLaw } from './opening.ts';

/**
 * Pressure, Pa, below outdoors that fans pull in a space of the given flow law, wind and stack left out:
 * dp = (Q/C)^(1/n); above zero is suction, below zero the fans push in more than they draw. A space without leakage
 * has no answer and throws.
 * @param netExhaustM3PerS flow drawn out less flow pushed in, m3/s
 * @throws EngineError for a coefficient of 0 or outside the ranges of `FlowLaw`
 */
export function depressurizationPa(netExhaustM3PerS: number, law: FlowLaw): number {
  const flow = requireRange('net exhaust, m3/s,', netExhaustM3PerS, -1000, 1000);
  const coefficient = requireRange('flow coefficient', law.coefficient, 1e-9, 1e9);
  const exponent = requireRange('flow exponent', law.exponent, 0.5, 1);
  return Math.sign(flow) * (Math.abs(flow) / coefficient) ** (1 / exponent);
}

/**
 * Suction, Pa, from which vented appliances are recalled to spill: 2 for a water heater alone on its chimney, up to 5
 * for a boiler or furnace, so that 2 stands for all natural draft; 15 with a fan in the flue. For caution, never a
 * proof of safety. Source: CAN/CGSB-51.71 and ASTM E1998, from memory.
 */
export const draftLimitPa = { natural: 2, fanAssisted: 15 } as const;
