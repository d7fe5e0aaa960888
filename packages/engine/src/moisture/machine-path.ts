import { coldFactor } from '../dehumidifier/frost.ts';
import { dehumidifierSources } from '../dehumidifier/sources.ts';
import { relativeCapacity } from '../dehumidifier/surfaces.ts';
import type { Band } from './band.ts';
import type { Dehumidifier } from './budget-input.ts';
import type { CrawlAir } from './crawl-air.ts';
import { type PathModel, pathInput } from './path-model.ts';
import { moistureSources } from './sources.ts';

const TITLE = 'Dehumidifier';
export const DEHUMIDIFIER_KEY = 'dehumidifier';

/** A machine with a capacity, whatever switches it. */
export type CapacityMachine = Exclude<Dehumidifier, { kind: 'collected' }>;

/** Share of the rated capacity that the machine removes from this air while it runs, 0 or more. */
export function machineFactor(machine: Pick<CapacityMachine, 'cold' | 'lowestAirC'>, air: CrawlAir): number {
  const cold = machine.cold ? coldFactor(air.temperatureC, machine.cold, machine.lowestAirC) : 1;
  return cold * relativeCapacity(air.temperatureC, air.relativeHumidity);
}

/** Path of a machine whose removal follows from what is known of it, with its run share in hand. */
export function machinePath(machine: Dehumidifier, runFraction: Band | undefined): PathModel {
  if (machine.kind === 'collected') {
    return {
      key: DEHUMIDIFIER_KEY,
      title: TITLE,
      formula: '- water collected',
      sourceId: moistureSources.massBalance.id,
      inputs: [pathInput(TITLE, 'water collected', 'kg/day', machine.kgPerDay, 0, 1000)],
      kgPerS: (v) => -v[0]! / 86_400,
    };
  }
  const run = machine.kind === 'running' ? machine.runFraction : runFraction!;
  return {
    key: DEHUMIDIFIER_KEY,
    title: TITLE,
    formula:
      '- capacity at 80 °F/60 % x relative capacity at the air x share of time that cold leaves x share of time it runs',
    sourceId: dehumidifierSources.genericSurface.id,
    inputs: [
      pathInput(TITLE, 'capacity at 80 °F/60 %', 'kg/day', machine.ratedKgPerDay, 0, 1000),
      pathInput(TITLE, 'share of time running', 'fraction', run, 0, 1),
    ],
    kgPerS: (v, air) => (-v[0]! * v[1]! * machineFactor(machine, air)) / 86_400,
  };
}
