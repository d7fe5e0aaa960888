import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { DEMO_JOBS, entryJsonSchema, jobJsonSchema, readJob } from '../../src/index.ts';
import { smallLog } from '../small-job.ts';

/** Formats are checked by the patterns that stand beside them. */
const ajv = new Ajv2020({ strict: true, strictTypes: false, validateFormats: false, allErrors: true });
const isJob = ajv.compile(jobJsonSchema());
const isEntry = ajv.compile(entryJsonSchema());

type Schema = { readonly type?: unknown; readonly properties?: Readonly<Record<string, Schema>> } & Readonly<
  Record<string, unknown>
>;

/** The names of all fields that hold numbers. */
function numberNames(schema: Schema, name: string, found = new Set<string>()): Set<string> {
  const types = [schema.type].flat();
  if (types.includes('number') || types.includes('integer')) found.add(name);
  for (const [key, part] of Object.entries(schema.properties ?? {})) numberNames(part, key, found);
  for (const branches of [schema.anyOf, schema.oneOf, schema.allOf, schema.items]) {
    for (const branch of [branches ?? []].flat()) numberNames(branch as Schema, name, found);
  }
  return found;
}

const UNIT =
  /(M|M2|M3|Nm|nm|C|S|W|Deg|Rsi|Cents|cents|bytes|KgPerDay|PerKWh|M3PerS|M3PerH50|KgPerM2SPa|CentsPerKWh)$/;

/** Numbers without a unit in their name, and why. */
const UNITLESS: Readonly<Record<string, string>> = {
  version: 'a count',
  yearBuilt: 'a year',
  stories: 'a count',
  entryCount: 'a count',
  severity: 'a class, 0 to 4',
  indoorRelativeHumidity: 'a fraction',
  relativeHumidity: 'a fraction',
  setRelativeHumidity: 'a fraction',
  targetRelativeHumidity: 'a fraction',
  openFraction: 'a fraction',
  runShare: 'a fraction',
  shown: 'a fraction of dry mass',
  value: 'in the unit that the name of the quantity carries',
  plusMinus: 'in the unit of the value beside it',
};

describe('the JSON Schema', () => {
  it.each(DEMO_JOBS)('takes the demo job $name, as written and as read', ({ job }) => {
    expect(isJob(job), ajv.errorsText(isJob.errors)).toBe(true);
    const read = readJob(job);
    expect(read.ok && isJob(read.job), ajv.errorsText(isJob.errors)).toBe(true);
  });

  it('takes entries', () => {
    for (const entry of smallLog()) expect(isEntry(entry), ajv.errorsText(isEntry.errors)).toBe(true);
  });

  it('refuses what the reader refuses', () => {
    const [{ job }] = DEMO_JOBS;
    expect(isJob({ ...job, version: 3 })).toBe(false);
    expect(isJob({ ...job, color: 'red' })).toBe(false);
    expect(isJob({ ...job, header: { title: 7 } })).toBe(false);
    expect(isJob({ ...job, plan: { ...job.plan, piers: [{ id: 'p1', at: { xM: 'far', yM: 0 } }] } })).toBe(
      false,
    );
    expect(isEntry({ ...smallLog()[0], id: 'today' })).toBe(false);
    expect(isEntry({ ...smallLog()[0], field: '__proto__' })).toBe(false);
  });

  it('says the unit of every number in its name', () => {
    const bare = [...numberNames(jobJsonSchema(), '')].filter((name) => !UNIT.test(name));
    expect(bare.sort()).toEqual(Object.keys(UNITLESS).sort());
  });
});
