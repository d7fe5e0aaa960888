import type { Figure, Notice } from '../numerics/notice.ts';
import { requireRange } from '../numerics/require-range.ts';
import { equilibriumMoistureContent, equilibriumRelativeHumidity } from './equilibrium.ts';

/** Conditions over which the Wood Handbook tabulates its equation (Table 4-2): 30 to 270 °F, 5 to 95 % RH. */
const TABULATED = { minC: -1.1, maxC: 132.2, minRelativeHumidity: 0.05, maxRelativeHumidity: 0.95 } as const;

/** The equation fails outside: its hydrate coefficients turn negative near -37 °C, and it has a pole above 133 °C. */
const MEANINGFUL = { minC: -35, maxC: TABULATED.maxC } as const;

/** Green wood reaches about 2; more than this is a percentage given for a fraction. */
const MAX_MOISTURE_CONTENT = 3;

/** Best that can be said of RH inferred from wood: 2 % MC of reading doubt over the slope of the curve near 18 % MC. */
const RH_DOUBT = 0.05;

function percent(fraction: number, digits = 0): string {
  return `${(100 * fraction).toFixed(digits)} %`;
}

function temperatureNotices(temperatureC: number): Notice[] {
  if (temperatureC >= TABULATED.minC) return [];
  return [
    {
      code: 'outside-range',
      message: `Wood at ${temperatureC} °C lies outside the tabulated ${TABULATED.minC} to ${TABULATED.maxC} °C; the curve is extrapolated.`,
    },
  ];
}

/** Air at the wood. */
export interface WoodAirInput {
  /** Wood surface temperature [°C], -35..132.2. */
  readonly temperatureC: number;
  /** Relative humidity of the air at the wood [fraction 0..1], not that of the zone when the wood is colder. */
  readonly relativeHumidity: number;
}

/**
 * Moisture content that wood settles at, with what must be known about it.
 *
 * Above 95 % RH the value is `null` with the notice `near-fiber-saturation`: species scatter there is too large for a
 * number. Below 5 % RH and below -1.1 °C the number comes with the notice `outside-range`.
 *
 * @returns moisture content [fraction of oven-dry mass], or null
 * @throws EngineError `not-finite`, `out-of-range` for temperatures outside -35..132.2 °C or RH outside 0..1
 * @source Wood Handbook FPL-GTR-282 (2021) ch. 4 eq. 4-5 and Table 4-2 (`woodSources.woodHandbookCh4`)
 */
export function woodEquilibrium(input: WoodAirInput): Figure<number | null> {
  const t = requireRange('wood temperature (°C)', input.temperatureC, MEANINGFUL.minC, MEANINGFUL.maxC);
  const h = requireRange('relative humidity (fraction)', input.relativeHumidity, 0, 1);
  const notices = temperatureNotices(t);
  if (h > TABULATED.maxRelativeHumidity) {
    notices.push({
      code: 'near-fiber-saturation',
      message: `At ${percent(h, 1)} RH wood is near fiber saturation; the curve gives no usable number above ${percent(TABULATED.maxRelativeHumidity)}.`,
    });
    return { value: null, notices };
  }
  if (h < TABULATED.minRelativeHumidity) {
    notices.push({
      code: 'outside-range',
      message: `${percent(h, 1)} RH lies below the tabulated ${percent(TABULATED.minRelativeHumidity)}; the curve is extrapolated.`,
    });
  }
  return { value: equilibriumMoistureContent(t, h), notices };
}

/** A moisture content to be read as a humidity. */
export interface WoodHumidityInput {
  /** Wood temperature [°C], -35..132.2. */
  readonly temperatureC: number;
  /** Corrected moisture content [fraction of oven-dry mass], 0..3. */
  readonly moistureContent: number;
}

/**
 * Relative humidity that wood of a moisture content speaks of, with what must be known about it.
 *
 * The notice `hysteresis` is always there: drying wood sits above the curve and wetting wood below it (1 to 4 % MC
 * apart at 50 % RH), so the answer is good to about 5 % RH. Above 95 % RH it carries `near-fiber-saturation`; at or
 * above the content in saturated air the value is 1 with `at-saturation`. Temperatures below -1.1 °C and
 * answers below 5 % RH carry `outside-range`.
 *
 * @returns relative humidity [fraction 0..1]
 * @throws EngineError `not-finite`, `out-of-range` for temperatures outside -35..132.2 °C or contents outside 0..3
 * @source Wood Handbook FPL-GTR-282 (2021) ch. 4 eq. 4-5, solved for humidity (`woodSources.woodHandbookCh4`)
 */
export function woodHumidity(input: WoodHumidityInput): Figure {
  const t = requireRange('wood temperature (°C)', input.temperatureC, MEANINGFUL.minC, MEANINGFUL.maxC);
  const mc = requireRange(
    'wood moisture content (fraction, 0.18 for 18 %)',
    input.moistureContent,
    0,
    MAX_MOISTURE_CONTENT,
  );
  const value = equilibriumRelativeHumidity(t, mc);
  const notices = temperatureNotices(t);
  notices.push({
    code: 'hysteresis',
    message: `Drying wood holds more and wetting wood less than the curve says; take the humidity as good to ${percent(RH_DOUBT)} RH at best.`,
  });
  if (value >= 1) {
    notices.push({
      code: 'at-saturation',
      message: `${percent(mc, 1)} MC is at or above what saturated air can give at ${t} °C; look for liquid water.`,
    });
  } else if (value > TABULATED.maxRelativeHumidity) {
    notices.push({
      code: 'near-fiber-saturation',
      message: `${percent(mc, 1)} MC is near fiber saturation; above ${percent(TABULATED.maxRelativeHumidity)} RH the curve is only a hint.`,
    });
  } else if (value < TABULATED.minRelativeHumidity) {
    notices.push({
      code: 'outside-range',
      message: `${percent(mc, 1)} MC lies below the tabulated ${percent(TABULATED.minRelativeHumidity)} RH; the curve is extrapolated.`,
    });
  }
  return { value, notices };
}
