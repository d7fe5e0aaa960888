import { distribution, type moisture } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { Assumptions } from '../assumptions.ts';
import { budgetInput } from '../budget/budgets.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { airFacts } from '../season/air.ts';
import type { SpaceState } from '../season/space-state.ts';
import type { FieldConditions } from './field-conditions.ts';
import { kindOfPath, type PlacedPlan, placesOfPath } from './path-places.ts';
import { siteHeat } from './site-heat.ts';
import { type ExhaustAt, siteLeaks } from './site-leaks.ts';
import { waterLinks } from './water-links.ts';

const BY_AIR: ReadonlySet<string> = new Set(['outside-air', 'house-air']);

/** The walls, barriers and heights that bound the air, from the drawing. */
export function fieldPlan(job: SurveyedJob, space: SpaceGeometry): distribution.FieldPlan {
  const { plan } = job;
  return {
    outline: space.result.corners,
    interiorWalls: plan.interiorWalls,
    piers: plan.piers,
    // A place to keep out of of which nobody said that it is high takes no room from the air.
    obstacles: plan.obstacles.filter((o) => !(o.noGo && o.heightM === undefined)),
    ducts: plan.ducts,
    girders: plan.girders,
    clearHeights: plan.heights,
    heightM: space.heightM.value,
  };
}

/** A site, and the surfaces that may sweat, whose water is not in it. */
export interface SiteOfJob {
  readonly site: distribution.FieldSite;
  readonly coldSurfaces: readonly moisture.WaterSurface[];
}

/** Fans that blow air of the space outdoors, with what the pressure network has them move. */
function exhausts(state: SpaceState, space: SpaceGeometry): ExhaustAt[] {
  const facts = airFacts(state, space, new Assumptions());
  const flows = (facts.fans ?? []).flatMap((fan) =>
    fan.from === 'crawl' && fan.to === 'outside' && 'flowM3PerS' in fan ? [fan] : [],
  );
  const fans = state.job.plan.equipment.filter(
    (e) => (e.kind === 'exhaust-fan' || e.kind === 'soil-gas-fan') && e.running !== false,
  );
  return fans.flatMap((fan) => {
    const next = flows.findIndex((flow) => flow.name === fan.kind);
    if (next < 0) return [];
    const [flow] = flows.splice(next, 1);
    return [{ fan, flowM3PerS: flow.flowM3PerS }];
  });
}

/**
 * A crawl space as the plan field takes it, all but machine and fans: the drawing, and every source of water and heat at
 * the place where it is, from the same balance and the same year as the rest of the assessment. Wood is at rest with the
 * air in a steady state, so it gives and takes nothing.
 * @param drawn the drawing itself, without what was only said of the space
 * @param aroundRelativeHumidity that the machine holds
 * @param fansW heat of fans that stand in the space
 */
export function siteOfJob(
  state: SpaceState,
  drawn: SurveyedJob['plan'],
  space: SpaceGeometry,
  { conditions, openings, walls }: FieldConditions,
  aroundRelativeHumidity: number,
  fansW: number,
): SiteOfJob {
  const { job } = state;
  const plan: PlacedPlan = { job, drawn, geometry: space.result };
  const budget = budgetInput(job, space, conditions, new Assumptions());
  const links = waterLinks(budget, aroundRelativeHumidity);
  const leaks = siteLeaks(job, space.result, conditions, links, openings, exhausts(state, space));
  const { heat, fixed } = siteHeat(job, space, conditions, walls, leaks, fansW);
  const vapor: distribution.VaporExchange[] = [];
  const given: distribution.FixedSource[] = [...fixed];
  for (const { key, title: what, conductanceKgPerS, humidityRatio, fixedKgPerS } of links) {
    if (BY_AIR.has(key)) continue;
    for (const { place, part } of placesOfPath(plan, key)) {
      if (conductanceKgPerS === 0) given.push({ what, place, waterKgPerS: part * fixedKgPerS });
      else {
        vapor.push({
          what,
          kind: kindOfPath(key),
          place,
          conductanceKgPerS: part * conductanceKgPerS,
          per: 'whole',
          humidityRatio,
        });
      }
    }
  }
  return {
    site: {
      plan: fieldPlan(job, space),
      pressurePa: conditions.pressurePa,
      vapor,
      heat,
      leaks,
      fixed: given,
    },
    coldSurfaces: budget.coldSurfaces ?? [],
  };
}

/**
 * Cells and grids of a site. Sources whose place turned out to have no cell, such as a zone smaller than one, are spread
 * over the whole floor, so that no water is lost.
 */
export function modelOfSite(site: distribution.FieldSite, cellM?: number): distribution.FieldModel {
  const model = distribution.fieldModel(site, cellM);
  const lost = site.vapor.map(
    (one, i) => one.conductanceKgPerS > 0 && model.vapor[i].conductance.every((c) => c === 0),
  );
  if (!lost.includes(true)) return model;
  const vapor = site.vapor.map((one, i) => (lost[i] ? { ...one, place: { kind: 'floor' as const } } : one));
  return distribution.fieldModel({ ...site, vapor }, cellM);
}
