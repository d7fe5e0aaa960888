import type { coverage as engine } from '@undercroft/engine';
import { criteria } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { ProofShown } from './coverage-assessment.ts';
import type { SpaceScene } from './scene.ts';
import { subjectsNamed, subjectsOfCriterion, subjectsOfPlace } from './subjects.ts';

/** A finding or a claim of "done" that pictures should show. */
export interface ClaimOfJob extends Pick<ProofShown, 'id' | 'of' | 'title' | 'who' | 'when'> {
  /** Empty where nothing says where to look. */
  readonly about: readonly engine.ProofSubject[];
  /** Pictures that its author named. */
  readonly photoIds: readonly string[];
}

/** Title of a criterion by its id; the id where it is none of the catalogue's. */
const criterionTitle = (id: string): string => criteria.criteria.find((c) => c.id === id)?.title ?? id;

/** Everything of a job that wants a picture: its claims of "done" first, then its findings, in the order of the record. */
export function claimsOf(job: SurveyedJob, scene: SpaceScene): ClaimOfJob[] {
  const acceptance = job.acceptance
    .filter((item) => item.claimed)
    .map(({ id, criterion, title, about, photoIds, who, when }): ClaimOfJob => {
      const named = about === undefined ? undefined : subjectsNamed(job, scene, about);
      return {
        id,
        of: 'acceptance',
        title: title ?? criterionTitle(criterion),
        who,
        when,
        about: named ?? subjectsOfCriterion(job, scene, criterion),
        photoIds,
      };
    });
  const steps = job.build
    .filter((step) => step.state === 'done')
    .map(
      ({ id, title, about, photoIds, who, when }): ClaimOfJob => ({
        id,
        of: 'build-step',
        title,
        ...(who === undefined ? {} : { who }),
        ...(when === undefined ? {} : { when }),
        about: subjectsNamed(job, scene, about ?? []),
        photoIds,
      }),
    );
  const findings = job.findings.map(
    ({ id, title, place, photoIds, who, when }): ClaimOfJob => ({
      id,
      of: 'finding',
      title,
      who,
      when,
      about: subjectsOfPlace(job, scene, place),
      photoIds,
    }),
  );
  return [...acceptance, ...steps, ...findings];
}
