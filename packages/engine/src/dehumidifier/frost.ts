import type { Notice } from '../numerics/notice.ts';

/** How a machine takes cold air: `household` cuts out, `low-temperature` defrosts by itself. */
export type ColdBehavior = 'household' | 'low-temperature';

/** Below this a household machine cuts out or ices, °C. Common practice, no source; 16 to 18 is heard. */
const HOUSEHOLD_LIMIT_C = 18;
/** Low-temperature machines defrost down to 4 to 7 °C; middle taken. Common practice, no source. */
const LOW_TEMPERATURE_LIMIT_C = 5.5;
/** From here down they lose 10 to 25 % of their time to defrost; middle taken. Common practice, no source. */
const DEFROST_FROM_C = 13;
const DEFROST_LOSS = { value: 0.175, low: 0.1, high: 0.25 };

/**
 * Share of the running time that removes water in cold air, 0..1: 0 below the machine's limit, 0.825 where a
 * low-temperature machine defrosts, else 1.
 *
 * Kernel: unchecked, nothing allocated. Common practice, no source: a maker's figure is better whenever there is one.
 * @param temperatureC air at the intake, °C
 * @param behavior kind of machine
 * @param limitC coldest air the maker allows, °C; 18 for household and 5.5 for low-temperature machines when absent
 */
export function coldFactor(temperatureC: number, behavior: ColdBehavior, limitC?: number): number {
  const household = behavior === 'household';
  if (temperatureC < (limitC ?? (household ? HOUSEHOLD_LIMIT_C : LOW_TEMPERATURE_LIMIT_C))) return 0;
  return !household && temperatureC < DEFROST_FROM_C ? 1 - DEFROST_LOSS.value : 1;
}

/**
 * What a reader must know about a machine in cold air; empty when there is nothing to say.
 * @param temperatureC air at the intake, °C
 * @param relativeHumidity fraction 0..1
 */
export function coldNotices(
  temperatureC: number,
  relativeHumidity: number,
  behavior: ColdBehavior,
  limitC?: number,
): readonly Notice[] {
  const household = behavior === 'household';
  const limit = limitC ?? (household ? HOUSEHOLD_LIMIT_C : LOW_TEMPERATURE_LIMIT_C);
  const stated = limitC === undefined ? 'common practice' : 'its maker';
  if (temperatureC < limit) {
    return [
      {
        code: 'too-cold',
        message: `Air of ${temperatureC.toFixed(1)} °C is below the ${limit.toFixed(1)} °C at which this machine stops removing water (${stated}).`,
      },
    ];
  }
  const notices: Notice[] = [];
  if (temperatureC < 18 && relativeHumidity < 0.5) {
    notices.push({
      code: 'coil-may-freeze',
      message:
        'Below about 18 °C and 50 % the coil runs under 0 °C: expect frost (common practice, no published source).',
    });
  }
  if (!household && temperatureC < DEFROST_FROM_C) {
    notices.push({
      code: 'defrost-time',
      message: 'Defrosting takes 10 to 25 % of the time below 13 °C; 17.5 % was taken (common practice).',
    });
  }
  return notices;
}
