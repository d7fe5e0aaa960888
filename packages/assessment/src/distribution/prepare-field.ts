import { distribution as engine, type moisture, type Notice } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { ChosenClimate } from '../climate.ts';
import type { SpaceGeometry } from '../geometry.ts';
import { asFound, type SpaceState } from '../season/space-state.ts';
import { type ArrangementOfJob, arrangementOfJob } from './arrangement-of-job.ts';
import type { DistributionMissing } from './distribution-assessment.ts';
import { DistributionInputs } from './distribution-inputs.ts';
import { designDayField, type FieldConditions } from './field-conditions.ts';
import { modelOfSite, siteOfJob } from './field-site.ts';

/** The space that a field is worked out for. */
export interface DistributionSpace {
  /** The job as the balances take it: the drawing with what findings say where it is silent. */
  readonly job: SurveyedJob;
  /** The drawing itself. */
  readonly drawn: SurveyedJob['plan'];
  readonly space: SpaceGeometry;
  readonly chosen: ChosenClimate;
  /** Of weather that is synthesized. */
  readonly seed: number;
  /** The space as it would be after repairs, of which `job` is the drawing; as found when absent. */
  readonly repaired?: SpaceState;
}

/** The state that a field is worked out for. */
export function stateOf({ job, repaired }: DistributionSpace): SpaceState {
  return repaired ?? asFound(job);
}

/** A field made ready: cells, sources, machine and mixing, to be solved as found or otherwise arranged. */
export interface PreparedField extends ArrangementOfJob {
  readonly model: engine.FieldModel;
  readonly day: FieldConditions;
  readonly mixing: engine.MixingBand;
  readonly inputs: DistributionInputs;
  /** Surfaces that may sweat, whose water is not in the field. */
  readonly coldSurfaces: readonly moisture.WaterSurface[];
  readonly notices: readonly Notice[];
}

/** Heat of the fans of an arrangement, W. */
export function heatOfFans({ fans = [] }: engine.Arrangement): number {
  return fans.reduce((sum, fan) => sum + fan.powerW * (fan.runShare ?? 1), 0);
}

/** Background mixing in the air of a model, with so much outdoor air. */
export function mixingOf({ mesh }: engine.FieldModel, outdoorM3PerS: number): engine.MixingBand {
  const { volumeM3, floorM2 } = mesh;
  return engine.backgroundMixing(volumeM3, volumeM3 / floorM2, (3600 * outdoorM3PerS) / volumeM3);
}

/**
 * Makes the field of a space ready for its most humid day; a reason where no dehumidifier runs.
 * @param cellM side of the cells [m]; 0.25 by default
 * @throws EngineError for sizes or places of the plan that make no sense
 */
export function prepareField(where: DistributionSpace, cellM?: number): PreparedField | DistributionMissing {
  const { job, drawn, space, chosen, seed } = where;
  const inputs = new DistributionInputs();
  const found = arrangementOfJob(job, space.engine.centroid, inputs);
  if (found === undefined) {
    return {
      outcome: 'missing',
      code: 'no-machine',
      why: 'No dehumidifier runs in the space, so there is no dry air to follow.',
    };
  }
  const day = designDayField(stateOf(where), space, chosen, seed);
  const { arrangement, others } = found;
  const made = siteOfJob(
    stateOf(where),
    drawn,
    space,
    day,
    arrangement.machine.setPoint,
    heatOfFans(arrangement),
  );
  const model = modelOfSite(made.site, cellM);
  const left = others.map((e) => e.id).join(', ');
  const alone = {
    code: 'other-machines',
    message: `Several dehumidifiers run; the field has the largest of them and leaves out ${left}.`,
  };
  return {
    ...found,
    model,
    day,
    mixing: mixingOf(model, day.conditions.air.fromOutdoorsM3PerS.value),
    inputs,
    coldSurfaces: made.coldSurfaces,
    notices: [...model.notices, ...(others.length === 0 ? [] : [alone])],
  };
}
