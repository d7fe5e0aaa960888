import type { distribution } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { GeometryResult } from '../assessment.ts';
import type { Conditions } from '../budget/conditions.ts';
import { type OpeningAir, placeOfOpening } from './leak-places.ts';
import type { WaterLink } from './water-links.ts';

/** Mass of air per volume that flows of the field are counted at, kg/m³. */
const FIELD_AIR_KG_PER_M3 = 1.2;
const FLOOR: distribution.FieldPlace = { kind: 'floor' };

type Fan = SurveyedJob['plan']['equipment'][number];

/** A fan that blows air of the space outdoors at a place, with its part of all that leaves. */
export interface ExhaustAt {
  readonly fan: Fan;
  readonly flowM3PerS: number;
}

/** Flow that does in the field what an air stream does in the balance, m³/s; 0 where there is none. */
function flowOf(links: readonly WaterLink[], key: string): number {
  return (links.find((l) => l.key === key)?.conductanceKgPerS ?? 0) / FIELD_AIR_KG_PER_M3;
}

/**
 * Air that enters and leaves the space by pressure, place by place. What enters is as much as the steady balance has:
 * outdoor air at the openings, house air through the floor. As much leaves: up through the floor, by exhaust fans, and by
 * the openings for the rest, each as the pressure network has it.
 */
export function siteLeaks(
  job: SurveyedJob,
  geometry: Pick<GeometryResult, 'corners' | 'edges'>,
  conditions: Conditions,
  links: readonly WaterLink[],
  openings: readonly OpeningAir[],
  exhausts: readonly ExhaustAt[],
): distribution.AirLeak[] {
  const outdoors = flowOf(links, 'outside-air');
  const down = flowOf(links, 'house-air');
  const entering = outdoors + down;
  if (entering <= 0) return [];
  const fresh = {
    humidityRatio: conditions.outdoorHumidityRatio.value,
    temperatureC: conditions.outdoorC,
  };
  const house = { humidityRatio: conditions.houseHumidityRatio.value, temperatureC: conditions.houseC };
  const leaks: distribution.AirLeak[] = [];
  const add = (what: string, place: distribution.FieldPlace, flowM3PerS: number, air: typeof fresh) => {
    if (flowM3PerS !== 0) leaks.push({ what, place, flowM3PerS, ...air });
  };
  const shares = (pick: (air: OpeningAir) => number): (readonly [distribution.FieldPlace, number])[] => {
    const total = openings.reduce((sum, one) => sum + pick(one), 0);
    if (total <= 0) return [[{ kind: 'walls' }, 1]];
    return openings
      .filter((one) => pick(one) > 0)
      .map((one) => [placeOfOpening(job, geometry, one.name), pick(one) / total]);
  };
  for (const [place, share] of shares((a) => a.inM3PerS)) add('outdoor air', place, share * outdoors, fresh);
  add('house air', FLOOR, down, house);

  const up = Math.min(entering, Math.max(0, -conditions.air.houseNetM3PerS.value));
  add('air up into the house', FLOOR, -up, house);
  let left = entering - up;
  for (const { fan, flowM3PerS } of exhausts) {
    const flow = Math.min(left, flowM3PerS);
    const place: distribution.FieldPlace = fan.kind === 'soil-gas-fan' ? FLOOR : { kind: 'at', at: fan.at };
    add('exhaust air', place, -flow, fresh);
    left -= flow;
  }
  for (const [place, share] of shares((a) => a.outM3PerS)) {
    add('air out to outdoors', place, -share * left, fresh);
  }
  return leaks;
}
