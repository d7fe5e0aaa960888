import { accessAndVents } from './access-and-vents.ts';
import type { Defect } from './defect.ts';
import { dryAir } from './dry-air.ts';
import { groundAndWater } from './ground-and-water.ts';
import { insulation } from './insulation.ts';
import { liner } from './liner.ts';
import { papers } from './papers.ts';
import { structureAndSafety } from './structure-and-safety.ts';
import { sumpAndDrain } from './sump-and-drain.ts';
import { woodAndMold } from './wood-and-mold.ts';

/** Every defect that a surveyor can pick, by subject. */
export const defects: readonly Defect[] = [
  ...accessAndVents,
  ...liner,
  ...groundAndWater,
  ...sumpAndDrain,
  ...dryAir,
  ...woodAndMold,
  ...insulation,
  ...structureAndSafety,
  ...papers,
];

const byKey = new Map(defects.map((defect) => [defect.key, defect]));

/** The defect of a key; undefined for one that is not in the catalogue, such as `other`. */
export function defectOf(key: string): Defect | undefined {
  return byKey.get(key);
}
