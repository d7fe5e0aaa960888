/**
 * Sorption of wood as the Wood Handbook puts it: a solution model with two hydrates, one curve for all species.
 * Coefficients for °C, FPL-GTR-282 (2021) ch. 4 eq. 4-5 (p. 4-3, seen in quotation).
 */
function sorptionW(t: number): number {
  return 349 + 1.29 * t + 0.0135 * t * t;
}

function sorptionK(t: number): number {
  return 0.805 + 0.000736 * t - 0.00000273 * t * t;
}

function sorptionK1(t: number): number {
  return 6.27 - 0.00938 * t - 0.000303 * t * t;
}

function sorptionK2(t: number): number {
  return 1.91 + 0.0407 * t - 0.000293 * t * t;
}

/**
 * Equilibrium moisture content of wood in air of constant condition, as a fraction of oven-dry mass.
 *
 * A fast kernel without checks and without allocation, for use inside hourly loops; NaN in gives NaN out. Temperature
 * and humidity are those at the wood surface. The curve lies between drying and wetting wood and between species.
 * Outside -1.1..132.2 °C and 5..95 % RH it extrapolates in silence: `woodEquilibrium` is the front door that says so.
 *
 * @param temperatureC wood temperature [°C]
 * @param relativeHumidity relative humidity of the air at the wood [fraction 0..1]
 * @returns moisture content [fraction]; 0 at 0 RH, 0.288 at 20 °C and RH 1
 * @source Wood Handbook FPL-GTR-282 (2021) ch. 4 eq. 4-5, in the form for °C
 */
export function equilibriumMoistureContent(temperatureC: number, relativeHumidity: number): number {
  const kh = sorptionK(temperatureC) * relativeHumidity;
  const k1 = sorptionK1(temperatureC);
  const k1k2 = k1 * sorptionK2(temperatureC);
  const dissolved = kh / (1 - kh);
  const hydrated = (k1 * kh + 2 * k1k2 * kh * kh) / (1 + k1 * kh + k1k2 * kh * kh);
  return (18 / sorptionW(temperatureC)) * (dissolved + hydrated);
}

/** Relative change of RH at which the inverse stops; well below anything measurable, above rounding. */
const INVERSE_TOLERANCE = 1e-14;
/** Enough halvings to reach the tolerance from 0..1 even if no Newton step is ever taken. */
const INVERSE_STEPS = 100;

/**
 * Relative humidity at which wood of a given moisture content neither dries nor wets: the inverse of
 * `equilibriumMoistureContent`.
 *
 * A fast kernel without checks and without allocation; NaN in gives NaN out. With y = K·h the equation becomes a cubic
 * in y that changes sign once between dry and saturated; Newton steps are kept inside that bracket and fall back to
 * halving, so the search cannot fail to end. A moisture content of 0 or less gives 0; at or above the content in
 * saturated air it gives 1, which reads "wet, humidity says no more".
 *
 * @param temperatureC wood temperature [°C]
 * @param moistureContent fraction of oven-dry mass
 * @returns relative humidity [fraction 0..1]
 * @source Wood Handbook FPL-GTR-282 (2021) ch. 4 eq. 4-5, solved for humidity
 */
export function equilibriumRelativeHumidity(temperatureC: number, moistureContent: number): number {
  if (Number.isNaN(temperatureC) || Number.isNaN(moistureContent)) return Number.NaN;
  if (moistureContent <= 0) return 0;
  if (moistureContent >= equilibriumMoistureContent(temperatureC, 1)) return 1;
  const k = sorptionK(temperatureC);
  const k1 = sorptionK1(temperatureC);
  const k1k2 = k1 * sorptionK2(temperatureC);
  const m = (moistureContent * sorptionW(temperatureC)) / 18;
  const c1 = 1 + k1 - m * (k1 - 1);
  const c2 = 2 * k1k2 - m * (k1k2 - k1);
  const c3 = (m - 1) * k1k2;

  let low = 0;
  let high = k;
  let y = k * Math.min(1, 4 * moistureContent);
  let lastStep = k;
  for (let i = 0; i < INVERSE_STEPS; i++) {
    const value = -m + y * (c1 + y * (c2 + y * c3));
    if (value < 0) low = y;
    else high = y;
    let next = y - value / (c1 + y * (2 * c2 + 3 * y * c3));
    // Halve when Newton leaves the bracket or stops closing in.
    if (!(next > low && next < high) || Math.abs(next - y) > 0.5 * lastStep) next = 0.5 * (low + high);
    lastStep = Math.abs(next - y);
    y = next;
    if (lastStep <= INVERSE_TOLERANCE * k) break;
  }
  return y / k;
}
