import type { season } from '@undercroft/engine';
import type { Assumptions } from '../assumptions.ts';
import { enteredSources } from '../budget/budgets.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { airNetwork, type NetworkCache } from './air.ts';
import { seasonDucts } from './ducts.ts';
import { groundCover } from './ground-cover.ts';
import { seasonHouse } from './house.ts';
import { type PlanFigures, seasonFans, seasonMachines } from './machines.ts';
import type { SeasonSite } from './season-weather.ts';
import { seasonSoil } from './soil.ts';
import type { SpaceState } from './space-state.ts';
import { seasonWalls } from './walls.ts';
import { seasonWood } from './wood.ts';

/** Electricity where no price was entered [cents/kWh]: an average of US homes, from memory. */
const USUAL_TARIFF = 17;

/** What every case of one assessment shares. */
export interface CaseGround {
  readonly space: SpaceGeometry;
  readonly site: SeasonSite;
  readonly networks: NetworkCache;
  /** Plan coefficients from the air on the plan, where that was worked out. */
  readonly planFigures?: PlanFigures;
}

/** Price of electricity at the house, cents/kWh. */
export function tariffCentsPerKWh(state: SpaceState, assumptions: Assumptions): number {
  const given = state.job.house.electricityCentsPerKWh;
  if (given !== undefined) return given;
  assumptions.note('tariff', 'Price of electricity', USUAL_TARIFF, 'None was entered.', 'cents/kWh');
  return USUAL_TARIFF;
}

/**
 * The year's case of a space as it stands or would stand: the record where it says something, assumptions elsewhere,
 * all of them noted. The air comes from the pressure network of outdoors, space and house.
 */
export function seasonCaseOf(
  name: string,
  state: SpaceState,
  shared: CaseGround,
  assumptions: Assumptions,
): season.SeasonCase {
  const { space, site, networks, planFigures } = shared;
  const { base } = site;
  const { job } = state;
  const house = seasonHouse(job, base.house, site.warmMonthsMeanC, assumptions);
  return {
    ...base,
    name,
    planAreaM2: space.result.floorAreaM2,
    heightM: space.heightM.value,
    soil: seasonSoil(job, base.soil, assumptions),
    cover: groundCover(job, space, assumptions),
    walls: seasonWalls(job, space, base.walls, assumptions),
    wood: seasonWood(job, space, house.floorUWPerM2K, assumptions),
    house,
    ducts: seasonDucts(job, base.ducts, assumptions),
    airExchange: { kind: 'network', network: airNetwork(state, space, assumptions, networks).network },
    machines: seasonMachines(state, assumptions, planFigures),
    fans: seasonFans(state.fans),
    otherWaterKgPerDay: enteredSources(job, assumptions).reduce((sum, s) => sum + s.kgPerDay.value, 0),
    tariffCentsPerKWh: tariffCentsPerKWh(state, assumptions),
  };
}
