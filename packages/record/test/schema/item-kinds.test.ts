import { describe, expect, it } from 'vitest';
import type * as z from 'zod';
import { JobSchema } from '../../src/index.ts';
import { CREATE, ORDER, REMOVED } from '../../src/log/entry.ts';
import { ITEM_KINDS } from '../../src/log/item-kinds.ts';

/** Fields of the job itself that no item holds. */
const OWN = ['format', 'version', 'id'];

/** What a field's schema says once defaults and optionality are taken off. */
function inner(schema: z.core.$ZodType): z.core.$ZodType {
  const { def } = schema._zod;
  return 'innerType' in def ? inner(def.innerType as z.core.$ZodType) : schema;
}

function shapeOf(schema: z.core.$ZodType): Readonly<Record<string, z.core.$ZodType>> | undefined {
  const { def } = inner(schema)._zod;
  return def.type === 'object' ? (def as z.core.$ZodObjectDef).shape : undefined;
}

/** The schema of the items of a list, where they have ids. */
function itemOf(schema: z.core.$ZodType): z.core.$ZodType | undefined {
  const { def } = inner(schema)._zod;
  if (def.type !== 'array') return undefined;
  const { element } = def as z.core.$ZodArrayDef;
  return shapeOf(element)?.id === undefined ? undefined : element;
}

interface Found {
  readonly lists: Map<string, z.core.$ZodType>;
  readonly singles: Map<string, string[]>;
}

/** Walks the schema of a job: the lists of items, and what each section holds beside them. */
function walk(): Found {
  const found: Found = { lists: new Map(), singles: new Map() };
  for (const [section, schema] of Object.entries(JobSchema.shape)) {
    if (OWN.includes(section)) continue;
    const item = itemOf(schema);
    if (item !== undefined) found.lists.set(section, item);
    const own: string[] = [];
    for (const [name, part] of Object.entries(shapeOf(schema) ?? {})) {
      const listed = itemOf(part);
      if (listed === undefined) own.push(name);
      else found.lists.set(`${section}.${name}`, listed);
    }
    if (own.length > 0) found.singles.set(section, own.sort());
  }
  return found;
}

const { lists, singles } = walk();
const kinds = Object.entries(ITEM_KINDS);

describe('the kinds of items', () => {
  it('are one for each list of a job, with the schema of its items', () => {
    const known = kinds.filter(([, kind]) => !kind.single).map(([, kind]) => kind.path.join('.'));
    expect([...known].sort()).toEqual([...lists.keys()].sort());
    for (const [name, kind] of kinds) {
      if (!kind.single) expect(lists.get(kind.path.join('.')), name).toBe(kind.schema);
    }
  });

  it('are one for what each section holds beside its lists, with the same fields', () => {
    const known = kinds.filter(([, kind]) => kind.single);
    expect(known.map(([, kind]) => kind.path.join('.')).sort()).toEqual([...singles.keys()].sort());
    for (const [name, { path, schema }] of known) {
      expect(path).toEqual([name]);
      expect(Object.keys(schema.shape).sort()).toEqual(singles.get(name));
    }
  });

  it('have names and fields that an entry can carry, and none that the log needs for itself', () => {
    for (const [name, { schema }] of kinds) {
      expect(name).toMatch(/^[a-z][a-z-]{0,39}$/);
      for (const field of Object.keys(schema.shape)) {
        expect(field).toMatch(/^[a-z][A-Za-z0-9]{0,59}$/);
        expect([CREATE, ORDER, REMOVED]).not.toContain(field);
      }
    }
  });
});
