import { access } from './catalogue/access.ts';
import { air } from './catalogue/air.ts';
import { appliances } from './catalogue/appliances.ts';
import { condensate } from './catalogue/condensate.ts';
import { drain } from './catalogue/drain.ts';
import { drainagePractice } from './catalogue/drainage-practice.ts';
import { electricity } from './catalogue/electricity.ts';
import { flood } from './catalogue/flood.ts';
import { foam } from './catalogue/foam.ts';
import { ground } from './catalogue/ground.ts';
import { insulation } from './catalogue/insulation.ts';
import { liner } from './catalogue/liner.ts';
import { linerMaterial } from './catalogue/liner-material.ts';
import { mold } from './catalogue/mold.ts';
import { radon } from './catalogue/radon.ts';
import { rot } from './catalogue/rot.ts';
import { safety } from './catalogue/safety.ts';
import { siteWater } from './catalogue/site-water.ts';
import { sump } from './catalogue/sump.ts';
import { termite } from './catalogue/termite.ts';
import { unvented } from './catalogue/unvented.ts';
import { ventilation } from './catalogue/ventilation.ts';
import { wood } from './catalogue/wood.ts';
import { woodMoisture } from './catalogue/wood-moisture.ts';
import type { Criterion } from './criterion.ts';

/**
 * Every built-in criterion, before local amendments. Model codes bind nobody until a place adopts them, usually
 * amended: put the amendments of the place on top with `adopt`.
 */
export const criteria: readonly Criterion[] = [
  ...ventilation,
  ...unvented,
  ...access,
  ...ground,
  ...flood,
  ...appliances,
  ...electricity,
  ...condensate,
  ...sump,
  ...drain,
  ...siteWater,
  ...wood,
  ...termite,
  ...foam,
  ...insulation,
  ...radon,
  ...linerMaterial,
  ...liner,
  ...drainagePractice,
  ...air,
  ...woodMoisture,
  ...mold,
  ...rot,
  ...safety,
];
