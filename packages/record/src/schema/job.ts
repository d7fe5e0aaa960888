import * as z from 'zod';
import { FrozenState } from './frozen.ts';
import { Header, House } from './house.ts';
import { Finding, Media } from './media.ts';
import { Plan } from './plan.ts';
import { Readings } from './readings.ts';
import { Id } from './scalars.ts';
import { AcceptanceItem, BuildStep, Design, PriceLine, WatchEvent } from './works.ts';

/** Version of the record that this code writes. Older ones are migrated, newer ones refused. */
export const RECORD_VERSION = 2;

/** Everything people saw, said, measured and decided about one space. */
export const Job = z.strictObject({
  format: z.literal('undercroft-job'),
  version: z.literal(RECORD_VERSION),
  id: Id,
  header: Header,
  house: House.prefault({}),
  plan: Plan,
  readings: Readings.prefault({}),
  media: Media.prefault({}),
  findings: z.array(Finding).default([]),
  design: Design.prefault({}),
  prices: z.array(PriceLine).default([]),
  build: z.array(BuildStep).default([]),
  acceptance: z.array(AcceptanceItem).default([]),
  watch: z.array(WatchEvent).default([]),
  frozen: z.array(FrozenState).default([]),
});
export type Job = z.infer<typeof Job>;
/** A job as written in a file: what has a default may be left out. */
export type JobInput = z.input<typeof Job>;
