import type * as z from 'zod';
import { FrozenState } from '../schema/frozen.ts';
import { Header, House } from '../schema/house.ts';
import { AudioNote, Clip, Finding, Photo } from '../schema/media.ts';
import * as plan from '../schema/plan.ts';
import * as readings from '../schema/readings.ts';
import * as works from '../schema/works.ts';

/** One kind of item: its schema and where it stands in the job. */
export interface ItemKind {
  readonly schema: z.ZodObject;
  /** Path in the job: a section, or a section and its list. */
  readonly path: readonly string[];
  /** True for the parts of a job that exist once; their item id is the name of the kind. */
  readonly single: boolean;
}

const single = (schema: z.ZodObject, section: string): ItemKind => ({
  schema,
  path: [section],
  single: true,
});
const list = (schema: z.ZodObject, ...path: string[]): ItemKind => ({ schema, path, single: false });

/** Every kind of item that a log of entries can hold. Adding a kind is safe; renaming one needs a migration. */
export const ITEM_KINDS: Readonly<Record<string, ItemKind>> = {
  header: single(Header, 'header'),
  house: single(House, 'house'),
  plan: single(plan.PlanFields, 'plan'),
  design: single(works.DesignFields, 'design'),

  height: list(plan.HeightSample, 'plan', 'heights'),
  wall: list(plan.WallFacts, 'plan', 'walls'),
  'interior-wall': list(plan.InteriorWall, 'plan', 'interiorWalls'),
  pier: list(plan.Pier, 'plan', 'piers'),
  girder: list(plan.Girder, 'plan', 'girders'),
  joists: list(plan.Joists, 'plan', 'joists'),
  duct: list(plan.Duct, 'plan', 'ducts'),
  vent: list(plan.Vent, 'plan', 'vents'),
  door: list(plan.Door, 'plan', 'doors'),
  equipment: list(plan.Equipment, 'plan', 'equipment'),
  obstacle: list(plan.Obstacle, 'plan', 'obstacles'),
  zone: list(plan.GroundZone, 'plan', 'zones'),
  drain: list(plan.Drain, 'plan', 'drains'),
  seam: list(plan.Seam, 'plan', 'seams'),

  instrument: list(readings.Instrument, 'readings', 'instruments'),
  'level-setup': list(readings.LevelSetup, 'readings', 'levelSetups'),
  level: list(readings.LevelReading, 'readings', 'levels'),
  air: list(readings.AirReading, 'readings', 'air'),
  surface: list(readings.SurfaceReading, 'readings', 'surface'),
  wood: list(readings.WoodReading, 'readings', 'wood'),
  observation: list(readings.Observation, 'readings', 'observations'),
  answer: list(readings.Answer, 'readings', 'answers'),

  photo: list(Photo, 'media', 'photos'),
  clip: list(Clip, 'media', 'clips'),
  audio: list(AudioNote, 'media', 'audio'),

  finding: list(Finding, 'findings'),
  repair: list(works.RepairChoice, 'design', 'repairs'),
  machine: list(works.Machine, 'design', 'machines'),
  price: list(works.PriceLine, 'prices'),
  'build-step': list(works.BuildStep, 'build'),
  acceptance: list(works.AcceptanceItem, 'acceptance'),
  watch: list(works.WatchEvent, 'watch'),
  frozen: list(FrozenState, 'frozen'),
};
