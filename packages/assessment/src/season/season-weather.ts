import { climate, psychrometrics, season } from '@undercroft/engine';
import type { ChosenClimate } from '../climate.ts';
import type { SeasonWeatherUsed } from './season-assessment.ts';

/** The hours that years are run in. */
export interface SeasonSite {
  readonly weather: climate.ClimateYear;
  readonly used: SeasonWeatherUsed;
  /** Mean outdoor temperature of the months in which a house is cooled, or of the warmest month [°C]. */
  readonly warmMonthsMeanC: number;
  /** The engine's default space in this weather. */
  readonly base: season.SeasonCase;
}

/** Years that were synthesized last, by the statistics of their station: making one takes as long as running several. */
const SYNTHESIZED = new WeakMap<
  climate.MonthlyClimate,
  { readonly seed: number; readonly year: climate.ClimateYear }
>();

function synthesized(chosen: ChosenClimate, seed: number): climate.ClimateYear {
  const kept = SYNTHESIZED.get(chosen.monthly);
  if (kept?.seed === seed) return kept.year;
  const year = climate.synthesizeYear(chosen.monthly, chosen.place, seed);
  SYNTHESIZED.set(chosen.monthly, { seed, year });
  return year;
}

function weatherUsed(chosen: ChosenClimate, weather: climate.ClimateYear, seed: number): SeasonWeatherUsed {
  const { source, kind, notices } = weather;
  const used = { name: weather.place.name, source, kind };
  if (chosen.year !== undefined) return { ...used, notices };
  const made = {
    code: 'synthesized-weather',
    message: `No weather file was given: the hours are synthesized from the monthly statistics of ${weather.place.name} (seed ${seed}). A file of the place has sharper single days.`,
  };
  const others = notices.filter((n) => n.code !== 'synthesized-hours');
  return { ...used, seed, notices: [made, ...others] };
}

/** Mean of the warm months of a climate, by which a house without cooling goes [°C]. */
function warmMonthsMeanC(monthly: climate.MonthlyClimate, changeoverC: number): number {
  const means = monthly.months.map((m) => m.temperatureMeanC);
  const warm = means.filter((t) => t >= changeoverC);
  return warm.length === 0 ? Math.max(...means) : warm.reduce((sum, t) => sum + t, 0) / warm.length;
}

/** The weather of the given year, or of one synthesized from the monthly statistics, which a notice says. */
export function seasonSite(chosen: ChosenClimate, seed: number): SeasonSite {
  const weather = chosen.year ?? synthesized(chosen, seed);
  const base = season.defaultSeasonCase(weather);
  return {
    weather,
    used: weatherUsed(chosen, weather, seed),
    base,
    warmMonthsMeanC: warmMonthsMeanC(chosen.monthly, base.house.changeoverC),
  };
}

/** The same weather some kelvins warmer at the same relative humidity, so with more water in warm years. */
export function warmerWeather(year: climate.ClimateYear, byK: number): season.SeasonWeather {
  const temperatureC = year.temperatureC.map((t) => t + byK);
  return {
    temperatureC,
    humidityRatio: year.humidityRatio.map((w, i) => {
      const now = psychrometrics.saturationPressurePa(year.temperatureC[i]);
      const p = psychrometrics.vaporPressureFromHumidityRatioPa(w, year.pressurePa[i]);
      const then = (p / now) * psychrometrics.saturationPressurePa(temperatureC[i]);
      return psychrometrics.humidityRatioFromVaporPressure(then, year.pressurePa[i]);
    }),
    pressurePa: year.pressurePa,
    windSpeedMPerS: year.windSpeedMPerS,
    globalHorizontalWPerM2: year.globalHorizontalWPerM2,
  };
}
