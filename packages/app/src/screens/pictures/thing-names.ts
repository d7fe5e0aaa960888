import type { CoverageAssessment, SeenThing } from '@undercroft/assessment';
import type { Settings } from '../../settings/settings.ts';

const COMPASS: Readonly<Record<string, string>> = {
  north: 'norte',
  northeast: 'noreste',
  east: 'este',
  southeast: 'sureste',
  south: 'sur',
  southwest: 'suroeste',
  west: 'oeste',
  northwest: 'noroeste',
};

const SPANISH: readonly (readonly [RegExp, (number: string) => string])[] = [
  [/^inside wall (\d+)$/, (n) => `muro interior ${n}`],
  [/^pier (\d+)$/, (n) => `pilar ${n}`],
  [/^vent (\d+)$/, (n) => `rejilla ${n}`],
  [/^joist bay (\d+)$/, (n) => `entre viguetas ${n}`],
];

/** A thing of the plan in the language of the screen; what somebody named keeps its name. */
export function thingName(name: string, language: Settings['language']): string {
  if (language === 'en') return name;
  const wall = /^(\w+) wall( \d+)?$/.exec(name);
  const side = wall?.[1] === undefined ? undefined : COMPASS[wall[1]];
  if (side !== undefined) return `muro ${side}${wall?.[2] ?? ''}`;
  for (const [form, say] of SPANISH) {
    const number = form.exec(name)?.[1];
    if (number !== undefined) return say(number);
  }
  return name;
}

/** Walls, piers and vents with their names, in the order in which a list shows them. */
export function namedThings(
  coverage: CoverageAssessment,
): readonly (SeenThing & { readonly name: string })[] {
  const of = (kind: SeenThing['kind'], list: readonly { readonly id: string; readonly name: string }[]) =>
    list.map(({ id, name }) => ({ kind, id, name }));
  const { walls, interiorWalls, piers, vents } = coverage;
  const all = [
    ...of('wall', walls),
    ...of('interior-wall', interiorWalls),
    ...of('pier', piers),
    ...of('vent', vents),
  ];
  // An inside wall stands in the list once for each of its sides.
  return [...new Map(all.map((thing) => [`${thing.kind} ${thing.id}`, thing])).values()];
}
