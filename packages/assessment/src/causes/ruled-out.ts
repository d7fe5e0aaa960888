import type { causes } from '@undercroft/engine';
import { type CausesSubject, runningMachines } from './subject.ts';

/** A cause that the space cannot have, and why. */
export interface RuledOut {
  readonly key: causes.CauseKey;
  readonly because: string;
}

/** Causes that what is known of the space excludes. What nobody said excludes nothing. */
export function causesRuledOut({ job, facts }: CausesSubject): RuledOut[] {
  const { plan, house } = job;
  const covers = [plan.ground.cover, ...plan.zones.map((z) => z.ground.cover)];
  const lined = covers.includes('liner');
  const out: RuledOut[] = [];
  const rule = (when: boolean, because: string, ...keys: causes.CauseKey[]) => {
    if (when) for (const key of keys) out.push({ key, because });
  };
  rule(!lined, 'There is no liner.', 'open-liner', 'old-liner');
  rule(
    lined && plan.ground.cover === 'liner',
    'The floor is lined; bare patches count as gaps in the liner.',
    'bare-ground',
  );
  rule(plan.ground.cover === 'slab' && !covers.includes('bare-earth'), 'The floor is a slab.', 'bare-ground');
  rule(
    facts.dehumidifierPresent === false,
    'There is no dehumidifier.',
    'machine-pocket',
    'machine-small',
    'machine-wears',
  );
  rule(
    facts.drainPresent === false && facts.sumpPresent === false,
    'There is no drain and no sump.',
    'drain-fails',
  );
  rule(facts.ductsInSpace === false, 'No ducts run through the space.', 'leaky-ducts');
  rule(
    facts.floorBattsPresent === false,
    'There are no batts between the joists.',
    'wet-batts',
    'batts-fall',
  );
  rule(house.spaceType === 'vented', 'The space was not closed.', 'drying-down');
  return out;
}

/** What the space has, or may have, that a measurement needs. */
export function spaceHas(subject: CausesSubject): ReadonlySet<causes.SignNeed> {
  const { job, facts } = subject;
  const { plan } = job;
  const lined = [plan.ground.cover, ...plan.zones.map((z) => z.ground.cover)].includes('liner');
  const open = plan.vents.some((v) => v.state !== 'sealed');
  const has: readonly (readonly [causes.SignNeed, boolean])[] = [
    ['liner', lined],
    ['machine', facts.dehumidifierPresent !== false],
    ['no-machine', runningMachines(subject).length === 0],
    ['drain', facts.drainPresent === true],
    ['sump', facts.sumpPresent === true],
    ['open-vents', open],
    ['ducts', facts.ductsInSpace !== false],
    ['batts', facts.floorBattsPresent !== false],
  ];
  return new Set(has.flatMap(([need, there]) => (there ? [need] : [])));
}
