import type { Job } from '../schema/job.ts';
import { RECORD_VERSION } from '../schema/job.ts';
import { nextStamp } from './clock.ts';
import { CREATE, type Entry, ORDER } from './entry.ts';
import { ITEM_KINDS } from './item-kinds.ts';
import { keysFor } from './order-key.ts';
import type { Author } from './write-entry.ts';

function partAt(job: Job, path: readonly string[]): unknown {
  let value: unknown = job;
  for (const part of path) value = (value as Record<string, unknown>)[part];
  return value;
}

/**
 * The log that a job without a history begins with: one creating entry for each item, all by one author. Folding them
 * gives the job back.
 */
export function entriesOfJob(job: Job, author: Author): Entry[] {
  const entries: Entry[] = [];
  let newest: string | null = null;
  const create = (kind: string, item: string, value: Record<string, unknown>) => {
    newest = nextStamp(newest, author.nowMs, author.device);
    entries.push({
      id: newest,
      version: RECORD_VERSION,
      who: author.who,
      deviceTime: author.deviceTime,
      kind,
      item,
      field: CREATE,
      value,
      seen: [],
    });
  };
  for (const [name, kind] of Object.entries(ITEM_KINDS)) {
    const part = partAt(job, kind.path);
    if (kind.single) {
      const fields = Object.keys(kind.schema.shape);
      const own = Object.entries(part as Record<string, unknown>).filter(([key]) => fields.includes(key));
      create(name, name, Object.fromEntries(own));
      continue;
    }
    const items = part as ({ id: string } & Record<string, unknown>)[];
    const keys = keysFor(items.length);
    items.forEach(({ id, ...value }, index) => {
      create(name, id, { ...value, [ORDER]: keys[index] });
    });
  }
  return entries;
}
