import type { Notice } from '../numerics/notice.ts';
import type { Arrangement } from './arrangement.ts';
import type { FieldModel } from './field-model.ts';
import { type FieldResult, fieldResult } from './field-result.ts';
import type { MixingBand } from './mixing.ts';
import { movedAir } from './moved-air.ts';
import { steadyField } from './steady-field.ts';
import type { SteadyField } from './steady-state.ts';
import { validityNotices } from './validity.ts';

/** One arrangement at the low, the middle and the high end of what mixing may be. */
export interface FieldBand {
  readonly mixing: MixingBand;
  readonly low: FieldResult & { readonly state: SteadyField };
  readonly value: FieldResult & { readonly state: SteadyField };
  readonly high: FieldResult & { readonly state: SteadyField };
  /** Limits of what the maps can say, at the middle of the band. */
  readonly limits: readonly Notice[];
}

/**
 * The steady state of an arrangement over the whole band of mixing. A figure of the plan field is to be shown with this
 * band, never alone. More mixing does not always dry more: where the jet alone keeps a part dry, it may bring damp air in.
 * @param near a state to start from
 * @throws EngineError for figures or places that make no sense
 */
export function fieldBand(
  model: FieldModel,
  arrangement: Arrangement,
  mixing: MixingBand,
  near?: Pick<SteadyField, 'lanes' | 'machine'>,
): FieldBand {
  const air = movedAir(model, arrangement);
  const at = (mixingM2PerS: number, from: typeof near) => {
    const state = steadyField(model, arrangement, {
      mixingM2PerS,
      air,
      ...(from === undefined ? {} : { near: from }),
    });
    return { state, ...fieldResult(model, arrangement, state) };
  };
  const value = at(mixing.value, near);
  return {
    mixing,
    low: at(mixing.low, value.state),
    value,
    high: at(mixing.high, value.state),
    limits: validityNotices(model, arrangement, value.state),
  };
}
