import { dehumidifier, moisture, psychrometrics, geometry as shapes } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { BudgetResult } from '../assessment.ts';
import { type Assumptions, measured } from '../assumptions.ts';
import type { SpaceGeometry } from '../geometry.ts';
import type { Conditions } from './conditions.ts';
import { floorParts, groundPaths, slabAreaM2 } from './ground-paths.ts';
import { linerPaths } from './liner-paths.ts';
import { shownPath } from './path-why.ts';
import { slabPath, wallPaths } from './wall-paths.ts';

/** Water of one load of clothes [kg] times loads a day; moisture tables of building research, from memory. */
const DRYER = { value: 1.8, low: 0.6, high: 4, unit: 'kg/day' } as const;
/** Share of the time a machine ran on the survey day, where nobody logged it. */
const RUN_SHARE = { value: 0.4, low: 0.1, high: 1, unit: 'fraction' } as const;

/** Water of a drip or a small leak that reaches the air; an estimate of the trade, no source. */
const LEAK = { value: 2, low: 0.2, high: 20, unit: 'kg/day' } as const;

function leak(job: SurveyedJob, exhaustEnds: boolean, assumptions: Assumptions): moisture.EnteredSource[] {
  const seen = job.readings.observations.some(
    (o) => o.quantity === 'plumbingLeakPresent' && o.value === true,
  );
  const found = job.findings.some((f) => f.defect === 'water-let-in-from-plumbing-or-dryer');
  // A finding of this kind beside an exhaust that ends in the space is about the exhaust.
  if (!seen && (!found || exhaustEnds)) return [];
  const kgPerDay = assumptions.band(
    'leak',
    'Water from pipes or equipment',
    LEAK,
    'Seen and not measured; read the water meter with all taps shut.',
  );
  return [{ key: 'leak', title: 'Pipes or equipment', kgPerDay }];
}

/** Water that enters by use or by fault. */
export function enteredSources(job: SurveyedJob, assumptions: Assumptions): moisture.EnteredSource[] {
  const ends = job.readings.observations.some((o) => o.quantity === 'exhaustEndsInCrawl' && o.value === true);
  const dryer = job.plan.ducts.some((d) => d.carries === 'dryer');
  const leaks = leak(job, ends, assumptions);
  if (!ends || !dryer) return leaks;
  const kgPerDay = assumptions.band(
    'dryer',
    'Water from the clothes dryer',
    DRYER,
    'Its duct ends in the space; loads a day are a guess.',
  );
  return [{ key: 'dryer', title: 'Clothes dryer', kgPerDay }, ...leaks];
}

/** Supply ducts, whose skin may be below the dew point. */
function coldSurfaces(job: SurveyedJob): moisture.WaterSurface[] {
  const read = job.readings.surface.filter((s) => s.of === 'duct').map((s) => s.temperatureC);
  const ducts = job.plan.ducts.filter((d) => d.carries === 'supply');
  if (read.length === 0 || ducts.length === 0) return [];
  const areaM2 = ducts.reduce(
    (sum, d) => sum + 2 * (d.widthM + (d.heightM ?? d.widthM)) * shapes.pathLengthM(d.path),
    0,
  );
  const coldest = Math.min(...read);
  return [
    {
      key: 'ducts',
      title: 'Sweating on supply ducts',
      areaM2: measured(areaM2),
      temperatureC: measured(coldest),
    },
  ];
}

function machine(
  job: SurveyedJob,
  steady: boolean,
  assumptions: Assumptions,
): moisture.Dehumidifier | undefined {
  const found = job.plan.equipment.filter(
    (e) => e.kind === 'dehumidifier' && e.running !== false && e.ratedKgPerDay !== undefined,
  );
  if (found.length === 0) return undefined;
  const rated = found.reduce(
    (sum, e) =>
      sum + dehumidifier.convertCapacity(e.ratedKgPerDay as number, e.ratingPoint ?? '80F-60', '80F-60'),
    0,
  );
  const ratedKgPerDay = measured(rated);
  if (steady) {
    const set = found[0].setRelativeHumidity ?? job.design.targetRelativeHumidity;
    return { kind: 'humidistat', ratedKgPerDay, setRelativeHumidity: set };
  }
  const logged = found.map((e) => e.runShare).filter((share) => share !== undefined);
  if (logged.length === found.length) {
    const share = logged.reduce((sum, one) => sum + one, 0) / logged.length;
    return { kind: 'running', ratedKgPerDay, runFraction: measured(share) };
  }
  const runFraction = assumptions.band(
    'runShare',
    'Share of the time the machine ran',
    RUN_SHARE,
    'Not logged; a run-hour meter or its bucket tells.',
  );
  return { kind: 'running', ratedKgPerDay, runFraction };
}

/** Fills the engine's balance from the record and the conditions. */
export function budgetInput(
  job: SurveyedJob,
  space: SpaceGeometry,
  conditions: Conditions,
  assumptions: Assumptions,
): moisture.BudgetInput {
  const { groundC, air } = conditions;
  const parts = floorParts(job, space.result);
  const ground = groundPaths(parts, groundC, assumptions);
  const liner = linerPaths(job, groundC, assumptions);
  const walls = wallPaths(job, space.result, groundC, assumptions);
  const read = conditions.crawlRelativeHumidity;
  const runs = machine(job, read === undefined, assumptions);
  return {
    state: read === undefined ? { kind: 'steady' } : { kind: 'read', relativeHumidity: read },
    airTemperatureC: conditions.crawlC,
    pressurePa: conditions.pressurePa,
    ...ground,
    ...liner,
    dampMasonry: [...walls.dampMasonry, ...slabPath(slabAreaM2(parts), groundC)],
    wickingMasonry: walls.wickingMasonry,
    coldSurfaces: coldSurfaces(job),
    outsideAir: {
      key: 'outside-air',
      title: 'Outdoor air',
      flowM3PerS: air.fromOutdoorsM3PerS,
      humidityRatio: conditions.outdoorHumidityRatio,
    },
    houseAir: {
      key: 'house-air',
      title: 'House air',
      flowM3PerS: air.houseNetM3PerS,
      humidityRatio: conditions.houseHumidityRatio,
    },
    entered: enteredSources(job, assumptions),
    ...(runs === undefined ? {} : { dehumidifier: runs }),
  };
}

/** The balance of one state, in the words and figures of an assessment. */
export function budgetOf(
  job: SurveyedJob,
  space: SpaceGeometry,
  conditions: Conditions,
  assumptions: Assumptions,
): BudgetResult {
  const budget = moisture.moistureBudget(budgetInput(job, space, conditions, assumptions));
  const { pressurePa, outdoorC, outdoorHumidityRatio } = conditions;
  const outdoorPa = psychrometrics.vaporPressureFromHumidityRatioPa(outdoorHumidityRatio.value, pressurePa);
  const spread = budget.relativeHumiditySpread;
  const air = psychrometrics.airState({
    temperatureC: budget.airTemperatureC,
    relativeHumidity: budget.relativeHumidity,
    pressurePa,
  });
  return {
    title: conditions.title,
    crawl: {
      temperatureC: budget.airTemperatureC,
      relativeHumidity: budget.relativeHumidity,
      dewPointC: budget.dewPointC,
    },
    outdoor: {
      temperatureC: outdoorC,
      relativeHumidity: Math.min(1, outdoorPa / psychrometrics.saturationPressurePa(outdoorC)),
      dewPointC: psychrometrics.dewPointC(outdoorPa),
    },
    groundTemperatureC: conditions.groundC.value,
    airChangesPerHour: (3600 * conditions.air.fromOutdoorsM3PerS.value) / space.result.volumeM3,
    origins: conditions.origins,
    paths: budget.paths.map((path) => shownPath(path, air, conditions, job, assumptions)),
    totalInKgPerDay: budget.totalInKgPerDay,
    unexplainedKgPerDay: budget.unexplainedKgPerDay,
    ...(spread === undefined
      ? {}
      : { relativeHumidityRange: { low: spread.likelyLow, high: spread.likelyHigh } }),
    notices: budget.notices,
  };
}
