import type { Point, SurveyedJob } from '@undercroft/record';
import type { NameOf } from '../coverage/names.ts';
import type { FieldChange, ItemChange } from './comparison.ts';
import { changeWords } from './field-words.ts';
import { type Placed, pairUp } from './pairs.ts';

type Plain = string | number | boolean;
type Fields = ReadonlyMap<string, Plain>;

/** Fields that say where a thing is or is told in words of their own. */
const NOT_COMPARED = new Set(['id', 'at', 'note', 'name', 'what', 'wallId']);

/** Every plain value of a thing by its path, parts of parts with a point; lists are left aside. */
function fieldsOf(value: object, prefix = ''): [string, Plain][] {
  return Object.entries(value).flatMap(([key, part]): [string, Plain][] => {
    if (NOT_COMPARED.has(key) || Array.isArray(part)) return [];
    if (typeof part === 'object' && part !== null) return fieldsOf(part, `${prefix}${key}.`);
    return part === undefined || part === null ? [] : [[`${prefix}${key}`, part as Plain]];
  });
}

/** Numbers that differ by less come from rounding, not from a change. */
const LEAST_CHANGE = 1e-6;

const alike = (a: Plain | undefined, b: Plain | undefined): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= LEAST_CHANGE : a === b;

function changesBetween(before: Fields, after: Fields): FieldChange[] {
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((field) => !alike(before.get(field), after.get(field)))
    .map((field) => {
      const [was, is] = [before.get(field), after.get(field)];
      return {
        field,
        ...(was === undefined ? {} : { before: was }),
        ...(is === undefined ? {} : { after: is }),
      };
    });
}

const middle = (points: readonly Point[]): Point => ({
  xM: points.reduce((sum, p) => sum + p.xM, 0) / points.length,
  yM: points.reduce((sum, p) => sum + p.yM, 0) / points.length,
});

type Thing = Placed<object>;

/** Everything of a plan that may change, kind by kind. Vents and doors are placed along their wall. */
function thingsOf({ plan }: SurveyedJob): Map<string, Thing[]> {
  const along = (offsetM: number | undefined): { at: Point } | object =>
    offsetM === undefined ? {} : { at: { xM: offsetM, yM: 0 } };
  const path = (points: readonly Point[]) => ({ at: middle(points) });
  return new Map<string, Thing[]>([
    ['wall', plan.walls.map((w) => ({ id: w.wallId, sort: 'wall', item: w }))],
    ['pier', plan.piers.map((p) => ({ id: p.id, at: p.at, sort: 'pier', item: p }))],
    [
      'interior-wall',
      plan.interiorWalls.map((w) => ({ id: w.id, ...path([w.from, w.to]), sort: '', item: w })),
    ],
    ['girder', plan.girders.map((g) => ({ id: g.id, ...path([g.from, g.to]), sort: '', item: g }))],
    ['duct', plan.ducts.map((d) => ({ id: d.id, ...path(d.path), sort: '', item: d }))],
    ['vent', plan.vents.map((v) => ({ id: v.id, ...along(v.offsetM), sort: v.wallId, item: v }))],
    ['door', plan.doors.map((d) => ({ id: d.id, ...along(d.offsetM), sort: d.wallId ?? '', item: d }))],
    ['equipment', plan.equipment.map((e) => ({ id: e.id, at: e.at, sort: e.kind, item: e }))],
    ['obstacle', plan.obstacles.map((o) => ({ id: o.id, ...path(o.outline), sort: '', item: o }))],
    ['zone', plan.zones.map((z) => ({ id: z.id, ...path(z.outline), sort: '', item: z }))],
    ['drain', plan.drains.map((d) => ({ id: d.id, ...path(d.path.map((p) => p.at)), sort: '', item: d }))],
    ['seam', plan.seams.map((s) => ({ id: s.id, ...path(s.path), sort: '', item: s }))],
  ]);
}

/** What was said of the floor wherever no zone says otherwise. */
function groundChange(before: SurveyedJob, after: SurveyedJob): ItemChange[] {
  const fields = changesBetween(new Map(fieldsOf(before.plan.ground)), new Map(fieldsOf(after.plan.ground)));
  if (fields.length === 0) return [];
  const name = 'floor outside the zones';
  return [{ kind: 'ground', name, change: 'changed', fields, says: changeWords(name, fields) }];
}

/**
 * Things of the plan that are new, gone or not as they were. Matched by id, else by sort and place.
 * @param names what things are called, before and after
 */
export function itemChanges(
  before: SurveyedJob,
  after: SurveyedJob,
  names: { readonly before: NameOf; readonly after: NameOf },
  withinM: number,
): ItemChange[] {
  const [was, is] = [thingsOf(before), thingsOf(after)];
  const changes = [...was].flatMap(([kind, things]): ItemChange[] => {
    const { pairs, gone, fresh } = pairUp(things, is.get(kind) ?? [], withinM, true);
    const changed = pairs.flatMap(({ before: a, after: b }): ItemChange[] => {
      const fields = changesBetween(new Map(fieldsOf(a.item)), new Map(fieldsOf(b.item)));
      if (fields.length === 0) return [];
      const name = names.after(kind, b.id);
      return [
        {
          kind,
          beforeId: a.id,
          afterId: b.id,
          name,
          change: 'changed',
          fields,
          says: changeWords(name, fields),
        },
      ];
    });
    return [
      ...changed,
      ...gone.map(({ id }): ItemChange => {
        const name = names.before(kind, id);
        return { kind, beforeId: id, name, change: 'gone', fields: [], says: `No longer drawn: ${name}.` };
      }),
      ...fresh.map(({ id }): ItemChange => {
        const name = names.after(kind, id);
        return { kind, afterId: id, name, change: 'new', fields: [], says: `Drawn now: ${name}.` };
      }),
    ];
  });
  return [...groundChange(before, after), ...changes];
}
