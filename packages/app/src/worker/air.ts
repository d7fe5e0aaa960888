import {
  type AirToTry,
  assess,
  type DistributionBand,
  type DistributionState,
  JobError,
} from '@undercroft/assessment';
import { EngineError } from '@undercroft/engine';
import type { AirQuantity } from '@undercroft/report';
import type { AirShown, AssessRequest, Compute } from './api.ts';
import { weatherYear } from './weather.ts';

/** The line whose doubt is drawn. */
const MIDDLE_LINE: Readonly<Record<AirQuantity, number>> = {
  relativeHumidity: 0.7,
  dewPointC: 16,
  woodMoisture: 0.18,
};

/** The space that was last made ready, by the name of its state. */
let ready: { readonly key: string; readonly air?: AirToTry; readonly why?: string } | undefined;

async function makeReady({ job, weather }: AssessRequest, key: string): Promise<NonNullable<typeof ready>> {
  if (ready?.key === key) return ready;
  const year = await weatherYear(weather);
  let air: AirToTry | undefined;
  const { distribution, notices } = assess(job, year, {
    season: 'quick',
    coverage: false,
    air: (given) => {
      air = given;
    },
  });
  const why = distribution?.outcome === 'missing' ? distribution.why : notices.at(-1)?.message;
  ready = { key, ...(air === undefined ? { why: why ?? '' } : { air }) };
  return ready;
}

async function shown(
  state: DistributionState,
  quantity: AirQuantity,
  band?: DistributionBand,
): Promise<AirShown> {
  const { airContours } = await import('./drawing.ts');
  const figure = (value: number) => ({ value });
  return {
    contours: airContours(state.map, quantity),
    ...(band === undefined
      ? {}
      : {
          doubtful: [band.low, band.high].map(
            ({ map }) =>
              airContours(map, quantity).lines.find((line) => line.value === MIDDLE_LINE[quantity])?.rings ??
              [],
          ),
        }),
    figures: {
      intakeRelativeHumidity: band?.ranges.intakeRelativeHumidity ?? figure(state.intakeRelativeHumidity),
      farEndRelativeHumidity: band?.ranges.farEndRelativeHumidity ?? figure(state.farEnd.relativeHumidity),
      dampestRelativeHumidity: band?.ranges.dampestRelativeHumidity ?? figure(state.dampest.relativeHumidity),
      shareAbove70: band?.ranges.shareAbove70 ?? figure(state.shareAbove70),
      shareAbove80: band?.ranges.shareAbove80 ?? figure(state.shareAbove80),
      duty: band?.ranges.duty ?? figure(state.duty),
    },
    energyKWhPerDay: state.energyKWhPerDay,
    outcome: state.outcome,
    dampestAt: state.highest.at,
  };
}

/** Gives the reason of what a person can mend as words. */
async function orReason<T extends { readonly ok: true }>(
  make: () => Promise<T>,
): Promise<T | { readonly ok: false; readonly reason: string }> {
  try {
    return await make();
  } catch (error) {
    if (error instanceof JobError || error instanceof EngineError)
      return { ok: false, reason: error.message };
    throw error;
  }
}

/** The air on the plan: to try arrangements in, and better ones. */
export const airOnPlan: Pick<Compute, 'air' | 'betterAir'> = {
  async air(request, key, asked, whole, quantity) {
    const { air, why = '' } = await makeReady(request, key);
    if (air === undefined) return { ok: false, reason: why };
    return orReason(async () => {
      if (!whole) return { ok: true as const, air: await shown(air.state(asked), quantity) };
      const band = air.band(asked);
      return { ok: true as const, air: await shown(band.value, quantity, band) };
    });
  },
  async betterAir({ job, weather }) {
    const year = await weatherYear(weather);
    const search = () => {
      const { distribution } = assess(job, year, {
        season: 'quick',
        coverage: false,
        distribution: 'search',
      });
      if (distribution?.outcome !== 'worked-out' || distribution.search === undefined) {
        return { ok: false as const, reason: distribution?.outcome === 'missing' ? distribution.why : '' };
      }
      const { suggested, present, screened } = distribution.search;
      return {
        ok: true as const,
        suggested: suggested === undefined ? null : { machine: suggested.machine, fans: suggested.fans },
        costCents: suggested?.costCents ?? 0,
        rank: present.rank,
        screened,
      };
    };
    try {
      return search();
    } catch (error) {
      if (error instanceof JobError || error instanceof EngineError)
        return { ok: false, reason: error.message };
      throw error;
    }
  },
};
