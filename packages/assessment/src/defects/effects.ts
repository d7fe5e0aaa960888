import { EngineError, moisture } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { BudgetResult } from '../assessment.ts';
import { Assumptions } from '../assumptions.ts';
import { budgetInput } from '../budget/budgets.ts';
import { type Conditions, designMonth } from '../budget/conditions.ts';
import type { ChosenClimate } from '../climate.ts';
import type { SaidSpace } from './as-said.ts';
import type { DefectResult, MendedEffect } from './defect-result.ts';
import { IN_WORKMANSHIP, mender, sameWater } from './mend.ts';

/** Less water than this is none [kg/day]. */
const NOTHING_KG = 1e-9;

/** A defect with the job in which only it is mended. */
export interface Mend {
  readonly key: string;
  readonly job: SurveyedJob;
}

/** Jobs in which one defect each is mended, for the defects that are there and change the balance of water. */
export function mendsOf(
  said: SaidSpace,
  drawn: SurveyedJob,
  defects: readonly Pick<DefectResult, 'key' | 'state'>[],
): Mend[] {
  const mended = mender(said.job, drawn);
  return defects.flatMap(({ key, state }) => {
    if (state !== 'shown' && state !== 'claimed') return [];
    const job = mended(key);
    return job === undefined ? [] : [{ key, job }];
  });
}

const band = (value: number): moisture.Band => ({ value, low: value, high: value, assumed: false });

/** True where mending changed nothing that moves air or heat, so that the month has the same temperatures and flows. */
function sameAir(a: SurveyedJob, b: SurveyedJob): boolean {
  const doors = (job: SurveyedJob) => job.plan.doors.map((d) => d.weatherstripped === true).join();
  return a.house === b.house && a.plan.vents === b.plan.vents && doors(a) === doors(b);
}

/** The same input with every band at its middle: the range of the balance, most of its work, is not asked for. */
function atMiddle<T>(input: T): T {
  if (Array.isArray(input)) return input.map(atMiddle) as T;
  if (typeof input !== 'object' || input === null) return input;
  const record = input as Readonly<Record<string, unknown>>;
  if (typeof record.value === 'number' && 'low' in record) {
    return { value: record.value, low: record.value, high: record.value, assumed: false } as T;
  }
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, atMiddle(value)])) as T;
}

function balance(job: SurveyedJob, { space }: SaidSpace, conditions: Conditions): moisture.MoistureBudget {
  const input = atMiddle(budgetInput(job, space, conditions, new Assumptions()));
  return moisture.moistureBudget({
    ...input,
    state: input.state.kind === 'steady' ? { kind: 'steady', range: false } : input.state,
    surfaceTransferMPerS: band(moisture.SURFACE_TRANSFER_M_PER_S.value),
  });
}

/** Water of all paths but the machine's, with the air of a state that is held [kg/day]. */
function waterAt(
  job: SurveyedJob,
  said: SaidSpace,
  held: Conditions,
  air: Conditions['air'],
): { readonly net: number; readonly entering: number } {
  const { paths } = balance(job, said, { ...held, air });
  const others = paths.filter((path) => !path.key.startsWith('dehumidifier'));
  const sum = (some: typeof others) => some.reduce((total, path) => total + path.kgPerDay, 0);
  return { net: sum(others), entering: sum(others.filter((path) => path.kgPerDay > 0)) };
}

/**
 * What mending each defect alone does to the design month: its water with the air of the month as found, so that a path
 * counts for what it brings and not for what the air makes of it; and the humidity that the space then comes to.
 */
export function monthEffects(
  mends: readonly Mend[],
  said: SaidSpace,
  chosen: ChosenClimate,
  found: BudgetResult,
): ReadonlyMap<string, MendedEffect> {
  const month = designMonth(said.job, said.space, chosen, new Assumptions());
  const held = { ...month, crawlRelativeHumidity: band(found.crawl.relativeHumidity) };
  const before = waterAt(said.job, said, held, month.air);
  const known = new Map<SurveyedJob, Omit<MendedEffect, 'sharesWith'>>();
  const effectOf = (job: SurveyedJob): Omit<MendedEffect, 'sharesWith'> => {
    const after = sameAir(job, said.job)
      ? month
      : designMonth(job, said.space, chosen, new Assumptions(), false);
    const { net } = waterAt(job, said, held, after.air);
    const { relativeHumidity } = balance(job, said, after);
    const waterKgPerDay = Math.abs(before.net - net) < NOTHING_KG ? 0 : before.net - net;
    return {
      waterKgPerDay,
      ...(before.entering > 0 ? { waterShare: waterKgPerDay / before.entering } : {}),
      relativeHumidity: relativeHumidity - found.crawl.relativeHumidity,
    };
  };
  const keys = mends.map((mend) => mend.key);
  return new Map(
    mends.map(({ key, job }): [string, MendedEffect] => {
      const effect = known.get(job) ?? effectOf(job);
      known.set(job, effect);
      return [key, { ...effect, sharesWith: sameWater(key, keys) }];
    }),
  );
}

/** The effects, or none where the engine refuses a figure of a mended space. */
export function effectsOr(
  work: () => ReadonlyMap<string, MendedEffect>,
  problems: string[],
): ReadonlyMap<string, MendedEffect> {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    problems.push(`What mending single defects does was not worked out: ${error.message}.`);
    return new Map();
  }
}

/** Why nothing is said of what mending a defect does. */
function whyNot(
  { key, state }: DefectResult,
  effect: MendedEffect | undefined,
  counted: boolean,
): string | undefined {
  if (state !== 'shown' && state !== 'claimed') return 'Nobody has shown that it is there.';
  if (IN_WORKMANSHIP.has(key) && !counted) {
    return 'How the liner was laid stands for it in the balance; count the open ground by area to tell it apart.';
  }
  if (effect !== undefined) return undefined;
  if (key === 'sweating-ducts') {
    return 'Sweat takes water out of the air and drips it elsewhere; the balance does not follow it.';
  }
  return 'It brings no water of its own into the balance.';
}

/** Defects with what mending each alone does, or why that is not said. */
export function withEffects(
  defects: readonly DefectResult[],
  effects: ReadonlyMap<string, MendedEffect>,
  said: SaidSpace,
): DefectResult[] {
  const { cover, liner } = said.job.plan.ground;
  const counted =
    cover === 'liner' &&
    (liner?.openAreaM2 !== undefined || liner?.openFraction !== undefined || liner?.workmanship === 'sealed');
  return defects.map((defect) => {
    if (defect.mendedNot !== undefined) return defect;
    const effect = effects.get(defect.key);
    const not = whyNot(defect, effect, counted);
    if (not !== undefined) return { ...defect, mendedNot: not };
    return effect === undefined ? defect : { ...defect, mended: effect };
  });
}
