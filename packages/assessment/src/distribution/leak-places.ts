import { airflow, type distribution, geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import type { Assumptions } from '../assumptions.ts';
import { leakageValues } from '../budget/air-exchange.ts';
import { doorPlace } from '../coverage/subjects.ts';

/** Wind this far off every wall tells the openings of each wall apart, degrees. */
const OFF_EVERY_WALL_DEG = 17.3;
/** Directions of the wind over a day: square onto the first wall, and a quarter, a half and three quarters round. */
const WINDS_DEG = [0, 90, 180, 270];

/** Air through one opening to outdoors, mean over the directions of the wind, m³/s of standard air, both 0 or more. */
export interface OpeningAir {
  /** As the network calls it: the id of a vent or door, or `crawl wall and rim, <wall>`. */
  readonly name: string;
  readonly inM3PerS: number;
  readonly outM3PerS: number;
}

/** Weather and temperatures that drive the air, and the facts of the network. */
export interface LeakDrive {
  readonly facts: airflow.CrawlFacts;
  readonly outdoorC: number;
  readonly crawlC: number;
  readonly houseC: number;
  readonly windMPerS: number;
}

const STANDARD_AIR_KG_PER_M3 = 1.2;
const BETWEEN = '; ';

/** Names of what the network joined into one opening, each with its part; walls by their length, others alike. */
function partsOf(name: string, weights: ReadonlyMap<string, number>): (readonly [string, number])[] {
  const names = name.split(BETWEEN);
  const weight = names.map((one) => weights.get(one) ?? 1);
  const total = weight.reduce((sum, w) => sum + w, 0);
  return names.map((one, i) => [one, total > 0 ? weight[i] / total : 1 / names.length]);
}

/** Coefficients of single openings, from a network in which the wind meets every wall differently. */
function weightsOf(facts: airflow.CrawlFacts, chosen: airflow.ChosenValues, firstDeg: number) {
  const { network } = airflow.crawlNetwork({ ...facts, windFromDeg: firstDeg + OFF_EVERY_WALL_DEG }, chosen);
  const weights = new Map<string, number>();
  for (const { name = '', to, coefficient } of network.openings) {
    if (to !== 'crawl') continue;
    const names = name.split(BETWEEN);
    for (const one of names) weights.set(one, coefficient / names.length);
  }
  return weights;
}

/**
 * Air that enters and leaves at each opening between the space and outdoors. The wind turns in the course of a day, so it
 * is taken from four sides alike: an opening may let air in from one side and out with another.
 */
export function openingAir(drive: LeakDrive, assumptions: Assumptions): OpeningAir[] {
  const { facts } = drive;
  const chosen: airflow.ChosenValues = Object.fromEntries(
    leakageValues(facts, assumptions).map(({ key, value }) => [key, value]),
  );
  const firstDeg = facts.faces?.[0]?.bearingDeg ?? 0;
  const weights = weightsOf(facts, chosen, firstDeg);
  const air = new Map<string, { inM3PerS: number; outM3PerS: number }>();
  for (const turned of WINDS_DEG) {
    const { network: input } = airflow.crawlNetwork({ ...facts, windFromDeg: firstDeg + turned }, chosen);
    const network = airflow.createNetwork(input);
    const state = airflow.solveNetwork(
      network,
      {
        outdoorTemperatureC: drive.outdoorC,
        crawlTemperatureC: drive.crawlC,
        houseTemperatureC: drive.houseC,
        windMPerS: drive.windMPerS,
      },
      airflow.createNetworkState(network),
    );
    if (!state.ending.converged) continue;
    input.openings.forEach(({ name = '', from, to }, i) => {
      if (from !== 'outside' || to !== 'crawl') return;
      const flow = state.openingKgPerS[i] / STANDARD_AIR_KG_PER_M3 / WINDS_DEG.length;
      for (const [one, part] of partsOf(name, weights)) {
        const sum = air.get(one) ?? { inM3PerS: 0, outM3PerS: 0 };
        if (flow > 0) sum.inM3PerS += flow * part;
        else sum.outM3PerS -= flow * part;
        air.set(one, sum);
      }
    });
  }
  return [...air].map(([name, flows]) => ({ name, ...flows }));
}

/** Where an opening of the network is on the plan; the outside walls as a whole where nothing says. */
export function placeOfOpening(
  { plan }: SurveyedJob,
  { corners, edges }: Pick<GeometryResult, 'corners' | 'edges'>,
  name: string,
): distribution.FieldPlace {
  const edgeOf = new Map(edges.map((edge, index) => [edge.id, index]));
  const vent = plan.vents.find((v) => v.id === name);
  if (vent !== undefined) {
    const edge = edges.find((e) => e.id === vent.wallId);
    if (edge !== undefined) {
      const share = Math.min(1, (vent.offsetM + vent.widthM / 2) / edge.lengthM);
      const { from, to } = edge;
      const at = { xM: from.xM + share * (to.xM - from.xM), yM: from.yM + share * (to.yM - from.yM) };
      return { kind: 'at', at };
    }
  }
  const door = plan.doors.find((d) => d.id === name);
  if (door !== undefined) {
    const at = doorPlace(door, { scene: { outline: corners }, edgeOf });
    if (at !== undefined && shapes.distanceToBoundaryM(at, corners) < 1) return { kind: 'at', at };
  }
  const face = edgeOf.get(name.replace(/^.*, /, ''));
  return face === undefined ? { kind: 'walls' } : { kind: 'walls', edges: [face] };
}
