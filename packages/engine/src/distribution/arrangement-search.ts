import { distanceM, type Point } from '../geometry/point.ts';
import type { Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import type { Arrangement, FieldMachine } from './arrangement.ts';
import {
  directionsAt,
  type ExcludedPlace,
  type FanPlace,
  fanPlaces,
  machineAt,
  machinePlaces,
  middleOfMachine,
} from './arrangement-candidates.ts';
import { type ArrangementOptions, USUAL_PRICES } from './arrangement-options.ts';
import { arrangementOrder, figuresOf, type RankedArrangement } from './arrangement-rank.ts';
import { changeKinds, controlVariants, ductVariants, type Variant } from './arrangement-variants.ts';
import { placeText } from './arrangement-words.ts';
import { fieldMaps } from './field-maps.ts';
import { type FieldModel, fieldModel } from './field-model.ts';
import { type MovedAirOptions, movedAir } from './moved-air.ts';
import { cellOfPlace } from './places.ts';
import { type PlacingVerdict, placingRules } from './placing-rules.ts';
import { steadyField } from './steady-field.ts';
import type { SteadyField } from './steady-state.ts';

/** Better arrangements for a crawl space. */
export interface ArrangementSearch {
  /** The best, worked out on the model's own cells, in order. */
  readonly ranked: readonly RankedArrangement[];
  /** The arrangement as found, on the same cells, and its rank among all that were screened; null without one. */
  readonly present: (RankedArrangement & { readonly rank: number }) | null;
  /** The best single change of each kind to the arrangement as found, alone, on the same cells. */
  readonly changes: readonly (RankedArrangement & { readonly kind: string })[];
  /** Arrangements that were worked out. */
  readonly screened: number;
  /** Every place that was left out, and which rule did it. */
  readonly excluded: readonly ExcludedPlace[];
  readonly notices: readonly Notice[];
}

const SPACING_M = 1;
const SCREENING_CELL_M = 0.5;
const REFINED = 16;
/** Best places that are tried with ducts, humidistats and set-points. */
const LEADERS = 6;
const FAN_SPACING_M = 3.5;
/** A further fan must lower the dampest part by so much, fraction. */
const FAN_GAIN = 0.005;

/**
 * Looks for the arrangement that dries best: places and directions for the machine that the rules allow, then for the best
 * of them and the one as found a duct to a far place, up to three fans one after the other, a humidistat in the dampest
 * place, and other set-points. All candidates are worked out on coarse cells, the best of them and the arrangement as found
 * again on the model's own. It ranks; the band of mixing around each figure is wider than the steps between neighbors in
 * the list.
 * @throws EngineError for figures or places that make no sense
 */
export function searchArrangements(model: FieldModel, options: ArrangementOptions): ArrangementSearch {
  const { machine, site, present: found } = options;
  const spacingM = requireRange('distance between places (m)', options.spacingM ?? SPACING_M, 0.25, 5);
  const coarse = fieldModel(model.site, options.screeningCellM ?? SCREENING_CELL_M);
  const rules = placingRules(model, site);
  const places = machinePlaces(model.mesh, machine, rules, spacingM);
  const { allowed } = places;
  const excluded = [...places.excluded];
  const judge = judgeOn(coarse, options);
  const seen: RankedArrangement[] = [];
  const order = arrangementOrder(options.dryEnough);
  const best = (count: number) => [...seen].sort(order).slice(0, count);

  const stands = found?.machine === undefined ? null : middleOfMachine(found.machine);
  const verdict = stands === null ? null : rules.place(stands);
  const present =
    found === null ? null : judge({ arrangement: found, what: 'as found', costCents: 0 }, placeOf(verdict));
  if (present !== null) seen.push(present);
  const turns =
    stands === null
      ? []
      : directionsAt(machine, stands, rules).tried.map((bearingDeg) => ({
          at: stands,
          bearingDeg,
          ...placeOf(verdict),
        }));
  for (const place of [...turns, ...allowed]) {
    const variant = {
      arrangement: {
        ...(found?.fans === undefined ? {} : { fans: found.fans }),
        machine: machineAt(machine, place.at, place.bearingDeg),
      },
      what: `machine at ${placeText(place.at)}, blowing ${place.bearingDeg}°`,
      costCents: moveCost(options, stands, place),
    };
    const tried = judge(variant, place);
    if (tried === null) {
      excluded.push({
        at: place.at,
        bearingDeg: place.bearingDeg,
        rule: 'no-return-path',
        why: 'no opening lets its air flow back from outlet to intake',
      });
    } else seen.push(tried);
  }
  const add = (base: RankedArrangement, variants: readonly Variant[]): void => {
    for (const variant of variants) {
      const tried = judge({ ...variant, costCents: base.costCents + variant.costCents }, base);
      if (tried !== null) seen.push(tried);
    }
  };
  const withPresent = (bases: readonly RankedArrangement[]) =>
    present === null || bases.includes(present) ? bases : [...bases, present];
  const humidity = (base: RankedArrangement): Float64Array => {
    const state = steadyField(coarse, base.arrangement, {
      mixingM2PerS: options.mixingM2PerS,
      accuracy: 'ranking',
    });
    return fieldMaps(coarse, state).relativeHumidity;
  };
  for (const base of withPresent(best(LEADERS))) {
    add(base, ductVariants(coarse.mesh, base, humidity(base), options, rules.longestDuctM));
  }
  const fans = fanPlaces(model.mesh, model.site.plan.interiorWalls ?? [], rules, FAN_SPACING_M);
  for (const base of withPresent(best(1))) addFans(base, fans, options, judge, seen);
  for (const base of withPresent(best(LEADERS))) {
    add(base, controlVariants(coarse.mesh, base, humidity(base), options));
  }

  const inOrder = [...seen].sort(order);
  const fine = judgeOn(model, options);
  const again = (tried: RankedArrangement): RankedArrangement => fine(tried, tried) ?? tried;
  return {
    ranked: inOrder
      .slice(0, options.refined ?? REFINED)
      .map(again)
      .sort(order),
    present: present === null ? null : { ...again(present), rank: inOrder.indexOf(present) + 1 },
    changes:
      present === null
        ? []
        : singleChanges(present, inOrder).map(({ kind, ...tried }) => ({ ...again(tried), kind })),
    screened: seen.length,
    excluded,
    notices: noticesOf(options, allowed.length, verdict),
  };
}

interface Access {
  readonly wayM: number;
  readonly pumped: boolean;
}

type Judge = (variant: Variant, access: Access) => RankedArrangement | null;

/** Left-over of the mass balance that no ranking feels. */
const RANKING_FLOW = 1e-8;

/** Works arrangements out on a mesh, each from the state of the one before; null for one whose air can't flow back. */
function judgeOn(model: FieldModel, { mixingM2PerS }: ArrangementOptions): Judge {
  let near: SteadyField | undefined;
  let known: MovedAirOptions['known'];
  return ({ arrangement, what, costCents }, { wayM, pumped }) => {
    const { machine } = arrangement;
    if (machine !== undefined && !canReturn(model, machine)) return null;
    const air = movedAir(model, arrangement, {
      tolerance: RANKING_FLOW,
      ...(known === undefined ? {} : { known }),
    });
    known = { arrangement, air };
    const state = steadyField(model, arrangement, {
      mixingM2PerS,
      accuracy: 'ranking',
      air,
      ...(near === undefined ? {} : { near }),
    });
    near = state;
    return { arrangement, what, wayM, pumped, costCents, ...figuresOf(model, arrangement, state) };
  };
}

function canReturn({ mesh, space }: FieldModel, machine: FieldMachine): boolean {
  const intake = cellOfPlace(mesh, machine.intake, 'dehumidifier, intake');
  const outlet = cellOfPlace(mesh, machine.outlet, 'dehumidifier, outlet');
  return space[intake] === space[outlet];
}

function placeOf(verdict: PlacingVerdict | null): Access {
  return verdict?.ok === true
    ? { wayM: verdict.wayM, pumped: verdict.pumped }
    : { wayM: Number.NaN, pumped: false };
}

function moveCost(
  { prices = USUAL_PRICES }: ArrangementOptions,
  stands: Point | null,
  { at, pumped }: { readonly at: Point; readonly pumped: boolean },
): number {
  if (stands === null) return pumped ? prices.pump : 0;
  if (distanceM(stands, at) < 0.5) return prices.turnMachine;
  return prices.moveMachine + (pumped ? prices.pump : 0);
}

/** Adds the fan that helps most, again and again while one helps. */
function addFans(
  base: RankedArrangement,
  places: readonly FanPlace[],
  { fan, mostFans = 3, prices = USUAL_PRICES }: ArrangementOptions,
  judge: Judge,
  seen: RankedArrangement[],
): void {
  if (fan === undefined) return;
  let best = base;
  for (let k = 0; k < mostFans; k += 1) {
    const before = best;
    for (const { at, bearingDeg } of places) {
      if (isTaken(before.arrangement, at)) continue;
      const tried = judge(
        {
          arrangement: {
            ...before.arrangement,
            fans: [...(before.arrangement.fans ?? []), { ...fan, at, bearingDeg }],
          },
          what: `${before.what}; fan at ${placeText(at)}, blowing ${bearingDeg.toFixed(0)}°`,
          costCents: before.costCents + prices.fan,
        },
        base,
      );
      if (tried === null) continue;
      seen.push(tried);
      if (tried.dampestRelativeHumidity < best.dampestRelativeHumidity) best = tried;
    }
    if (before.dampestRelativeHumidity - best.dampestRelativeHumidity < FAN_GAIN) return;
  }
}

/** Fans stand at least so far from the machine and from each other, m. */
const FAN_APART_M = 1;

function isTaken({ machine, fans = [] }: Arrangement, at: Point): boolean {
  if (machine !== undefined && distanceM(middleOfMachine(machine), at) < FAN_APART_M) return true;
  return fans.some((fan) => distanceM(fan.at, at) < FAN_APART_M);
}

/** Of all that was screened, the best of each kind that differs from the arrangement as found by that kind only. */
function singleChanges(
  present: RankedArrangement,
  order: readonly RankedArrangement[],
): (RankedArrangement & { readonly kind: string })[] {
  const kinds = new Map<string, RankedArrangement & { readonly kind: string }>();
  for (const tried of order) {
    const [kind, ...others] = changeKinds(present.arrangement, tried.arrangement) ?? [];
    if (kind !== undefined && others.length === 0 && !kinds.has(kind)) kinds.set(kind, { ...tried, kind });
  }
  return [...kinds.values()];
}

function noticesOf({ site }: ArrangementOptions, allowed: number, present: PlacingVerdict | null): Notice[] {
  const notices: Notice[] = [];
  if (present !== null && !present.ok) {
    notices.push({
      code: 'present-breaks-rule',
      message: `Where the machine stands it breaks a rule (${present.rule}): ${present.why}.`,
    });
  }
  if (site.drains === undefined) {
    notices.push({
      code: 'drains-unknown',
      message: 'Nobody said where water can be let off; places were not judged by it.',
    });
  }
  if (site.power === undefined) {
    notices.push({
      code: 'power-unknown',
      message: 'Nobody said where power is; places were not judged by it.',
    });
  }
  if (allowed === 0) {
    notices.push({
      code: 'no-place',
      message:
        'No place on the plan meets all rules; the list of excluded places says which rule forbids each.',
    });
  }
  return notices;
}
