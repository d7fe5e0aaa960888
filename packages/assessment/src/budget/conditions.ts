import { climate, ground, type moisture, psychrometrics } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import { type Assumptions, measured } from '../assumptions.ts';
import type { ChosenClimate } from '../climate.ts';
import type { SpaceGeometry } from '../geometry.ts';
import type { Origin } from '../origin.ts';
import { meanAir } from '../readings/air.ts';
import { type AirExchange, airExchange, airOfSpace } from './air-exchange.ts';
import { crawlFacts } from './crawl-facts.ts';
import { GROUND_FILM_W_PER_M2K, heatPaths, soilOf, TIED_DEPTH_M } from './heat-paths.ts';
import { type ConditionOrigins, ofHouse, ofReadings } from './origins.ts';

/** One state of air, ground and house for which the water is balanced. */
export interface Conditions {
  readonly title: string;
  readonly pressurePa: number;
  readonly crawlC: moisture.Band;
  /** Read humidity of the space; absent where it is to be solved for. */
  readonly crawlRelativeHumidity?: moisture.Band;
  readonly outdoorC: number;
  readonly outdoorHumidityRatio: moisture.Band;
  readonly houseC: number;
  readonly houseHumidityRatio: moisture.Band;
  readonly groundC: moisture.Band;
  readonly air: AirExchange;
  readonly origins: ConditionOrigins;
  /** Whose word parts of the space are that the drawing does not have, by their ids. */
  readonly said?: ReadonlyMap<string, Origin>;
}

/** Room temperatures of a house where nobody said: heated to 20 °C, cooled to 24 °C (common practice, no source). */
const HEATED_C = 20;
const COOLED_C = 24;
/** Outdoor air below this has the house heated, above it cooled [°C]. */
const CHANGE_OVER_C = 18;
/** Humidity of a lived-in house where nobody measured it. */
const HOUSE_HUMIDITY = { value: 0.5, low: 0.35, high: 0.6 } as const;
/** Middle days of the months, counted from January 1. */
const MIDDLE_DAY = [16, 45, 75, 105, 136, 166, 197, 228, 258, 289, 319, 350];

/** Temperature of the house in a given weather [°C]. */
export function houseAt(job: SurveyedJob, outdoorC: number, assumptions: Assumptions): number {
  const cooling = outdoorC > CHANGE_OVER_C;
  const set = cooling ? job.house.coolingSetC : job.house.heatingSetC;
  if (cooling && job.house.cooled === false) return Math.max(outdoorC, HEATED_C);
  if (set !== undefined) return set;
  const value = cooling ? COOLED_C : HEATED_C;
  assumptions.note('houseTemperature', 'Temperature of the house', value, 'No set-point was entered.', '°C');
  return value;
}

/** Humidity ratio of the house air at its temperature. */
export function houseHumidity(
  job: SurveyedJob,
  houseC: number,
  pressurePa: number,
  assumptions: Assumptions,
): moisture.Band {
  const at = (rh: number) => psychrometrics.humidityRatioFromRelativeHumidity(houseC, rh, pressurePa);
  const known = job.house.indoorRelativeHumidity;
  if (known !== undefined) return measured(at(known));
  const { value, low, high } = HOUSE_HUMIDITY;
  assumptions.band(
    'houseHumidity',
    'Relative humidity of the house',
    { value, low, high, unit: 'fraction' },
    'Not measured indoors.',
  );
  return { value: at(value), low: at(low), high: at(high), assumed: true };
}

const GROUND_SURFACES: readonly string[] = ['ground', 'liner'];

function groundReadings(job: SurveyedJob): SurveyedJob['readings']['surface'] {
  return job.readings.surface.filter((s) => GROUND_SURFACES.includes(s.of));
}

function airReadings(job: SurveyedJob, where: string): SurveyedJob['readings']['air'] {
  return job.readings.air.filter((a) => a.where === where);
}

function monthOf(job: SurveyedJob): number | undefined {
  const first = job.readings.air.find((a) => a.where === 'crawl')?.when ?? job.header.surveyedOn;
  const month = first === undefined ? Number.NaN : Number(first.slice(5, 7));
  return month >= 1 && month <= 12 ? month : undefined;
}

/** The day of the survey, where the air of the space was read; undefined where it was not. */
export function surveyDay(
  job: SurveyedJob,
  space: SpaceGeometry,
  chosen: ChosenClimate,
  pressurePa: number,
  assumptions: Assumptions,
): Conditions | undefined {
  const crawl = meanAir(job.readings.air, 'crawl', pressurePa);
  const month = monthOf(job);
  if (crawl === undefined || month === undefined) return undefined;
  const usual = chosen.monthly.months[month - 1];
  const outdoor = meanAir(job.readings.air, 'outdoor', pressurePa);
  const house = meanAir(job.readings.air, 'house', pressurePa);
  const outdoorC = outdoor?.temperatureC ?? usual.temperatureMeanC;
  if (outdoor === undefined) {
    assumptions.note(
      'outdoorOnDay',
      'Outdoor air on the survey day',
      `mean of ${climate.MONTH_NAMES[month - 1]}`,
      'Not read on the day.',
    );
  }
  const houseC = house?.temperatureC ?? houseAt(job, outdoorC, assumptions);
  const humidity = psychrometrics.relativeHumidityFromHumidityRatio(
    crawl.temperatureC,
    crawl.humidityRatio,
    pressurePa,
  );
  const read = groundReadings(job);
  const groundRead =
    read.length === 0 ? undefined : read.reduce((sum, s) => sum + s.temperatureC, 0) / read.length;
  const groundC =
    groundRead === undefined
      ? assumptions.band(
          'groundOnDay',
          'Ground temperature on the survey day',
          {
            value: crawl.temperatureC - 1.5,
            low: crawl.temperatureC - 4,
            high: crawl.temperatureC + 1,
            unit: '°C',
          },
          'Not read; the ground lies a little below the air in the warm half of the year.',
        )
      : measured(groundRead);
  assumptions.note(
    'windOnDay',
    'Wind on the survey day',
    usual.windSpeedMPerS.toFixed(1),
    `Mean of ${climate.MONTH_NAMES[month - 1]} at the station.`,
    'm/s',
  );
  const day =
    job.header.surveyedOn ?? job.readings.air.find((a) => a.where === 'crawl')?.when.slice(0, 10) ?? '';
  return {
    title: `survey day, ${day}`,
    pressurePa,
    crawlC: measured(crawl.temperatureC),
    crawlRelativeHumidity: {
      value: humidity,
      low: Math.max(0.01, humidity - 0.03),
      high: Math.min(1, humidity + 0.03),
      assumed: false,
    },
    outdoorC,
    outdoorHumidityRatio: measured(outdoor?.humidityRatio ?? usual.humidityRatioMean),
    houseC,
    houseHumidityRatio:
      house === undefined
        ? houseHumidity(job, houseC, pressurePa, assumptions)
        : measured(house.humidityRatio),
    groundC,
    air: airExchange(
      crawlFacts(job, space),
      { outdoorC, crawlC: crawl.temperatureC, houseC, windMPerS: usual.windSpeedMPerS },
      assumptions,
    ),
    origins: {
      crawl: ofReadings(airReadings(job, 'crawl'), 'air of the space') ?? { kind: 'assumption' },
      outdoor: ofReadings(airReadings(job, 'outdoor'), 'outdoor air') ?? {
        kind: 'climate',
        note: `mean of ${climate.MONTH_NAMES[month - 1]} at ${chosen.place.name}`,
      },
      house: ofReadings(airReadings(job, 'house'), 'air of the house') ?? ofHouse(job),
      ground: ofReadings(read, 'surface of ground or liner') ?? {
        kind: 'assumption',
        note: 'a little below the air, which was read',
      },
    },
  };
}

/** Volume flow of air times its heat per kelvin [J/(m³·K)] at 1.2 kg/m³ and 1006 J/(kg·K). */
const AIR_J_PER_M3K = 1.2 * 1006;

/** Flows without a range, for those who ask for none. */
function asBands(air: Readonly<Record<keyof AirExchange, number>>): AirExchange {
  const narrow = (value: number) => ({ value, low: value, high: value, assumed: true });
  return {
    fromOutdoorsM3PerS: narrow(air.fromOutdoorsM3PerS),
    fromHouseM3PerS: narrow(air.fromHouseM3PerS),
    houseNetM3PerS: narrow(air.houseNetM3PerS),
  };
}

/**
 * The most humid month of the climate, with the temperature of the space worked out from its steady heat balance.
 * @param range whether the flows of air are given with their range, which takes most of the time
 */
export function designMonth(
  job: SurveyedJob,
  space: SpaceGeometry,
  chosen: ChosenClimate,
  assumptions: Assumptions,
  range = true,
): Conditions {
  const month = climate.designMonth(chosen.monthly);
  const name = climate.MONTH_NAMES[month.month - 1];
  const outdoorC = month.temperatureMeanC;
  const houseC = houseAt(job, outdoorC, assumptions);
  const soil = soilOf(job);
  const wave = ground.annualWaveFromMonthlyMeans(chosen.monthly.months.map((m) => m.temperatureMeanC));
  const diffusivity = ground.soilDiffusivityM2PerS(soil);
  const deepC = ground.undisturbedGroundC(wave, TIED_DEPTH_M, MIDDLE_DAY[month.month - 1], diffusivity);
  const heat = heatPaths(job, space, soil);
  const weather = { outdoorC, houseC, windMPerS: month.windSpeedMPerS };
  const facts = crawlFacts(job, space);
  let crawlC = (outdoorC + houseC + deepC) / 3;
  const { middle, withRange } = airOfSpace(facts, assumptions);
  const drive = (air: number) => ({ ...weather, crawlC: air });
  let air = middle(drive(crawlC));
  // Stack flow depends on the temperature and the temperature on the flow; three rounds settle it to a few hundredths of a kelvin.
  for (let round = 0; round < 3; round += 1) {
    crawlC = ground.steadyTemperatureC([
      { conductanceWPerK: heat.floorW, temperatureC: houseC },
      { conductanceWPerK: heat.wallW, temperatureC: outdoorC },
      { conductanceWPerK: heat.groundW, temperatureC: deepC },
      { conductanceWPerK: AIR_J_PER_M3K * air.fromOutdoorsM3PerS, temperatureC: outdoorC },
      { conductanceWPerK: AIR_J_PER_M3K * air.fromHouseM3PerS, temperatureC: houseC },
    ]);
    air = middle(drive(crawlC));
  }
  const groundC =
    crawlC + ((deepC - crawlC) * heat.groundW) / (space.result.floorAreaM2 * GROUND_FILM_W_PER_M2K);
  return {
    title: `design month, ${name}`,
    pressurePa: month.pressurePa,
    crawlC: assumptions.band(
      'crawlTemperature',
      `Temperature of the space in ${name}`,
      { value: crawlC, low: crawlC - 1.5, high: crawlC + 1.5, unit: '°C' },
      'Steady heat balance of floor, walls, ground and air; the hourly year refines it.',
    ),
    outdoorC,
    outdoorHumidityRatio: measured(month.humidityRatioMean),
    houseC,
    houseHumidityRatio: houseHumidity(job, houseC, month.pressurePa, assumptions),
    groundC: assumptions.band(
      'groundTemperature',
      `Ground temperature in ${name}`,
      { value: groundC, low: groundC - 1.5, high: groundC + 1.5, unit: '°C' },
      'From the undisturbed ground at 1 m and the air of the space.',
    ),
    air: range ? withRange(drive(crawlC)) : asBands(air),
    origins: {
      crawl: { kind: 'assumption', note: 'steady balance of heat' },
      outdoor: { kind: 'climate', note: `mean of ${name} at ${chosen.place.name}` },
      house: ofHouse(job),
      ground: { kind: 'assumption', note: 'from the undisturbed ground at 1 m and the air of the space' },
    },
  };
}
