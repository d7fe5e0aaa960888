import type { DefectRules } from './proof.ts';
import { accessAndVentRules } from './rules/access-and-vents.ts';
import { dryAirRules } from './rules/dry-air.ts';
import { groundAndWaterRules } from './rules/ground-and-water.ts';
import { linerRules } from './rules/liner.ts';
import { safetyAndPaperRules } from './rules/safety-and-papers.ts';
import { sumpAndDrainRules } from './rules/sump-and-drain.ts';
import { woodAndInsulationRules } from './rules/wood-and-insulation.ts';

/** How each defect of the catalogue is proved and graded, by its key. */
export const defectRules: Readonly<Record<string, DefectRules>> = {
  ...accessAndVentRules,
  ...linerRules,
  ...groundAndWaterRules,
  ...sumpAndDrainRules,
  ...dryAirRules,
  ...woodAndInsulationRules,
  ...safetyAndPaperRules,
};
