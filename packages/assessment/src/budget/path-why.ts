import { dehumidifier, moisture, psychrometrics, type Source } from '@undercroft/engine';
import type { SurveyedJob } from '@undercroft/record';
import type { Assumptions } from '../assumptions.ts';
import type { Origin } from '../origin.ts';
import type { BudgetPath, PathInputShown, PathStep } from './budget-path.ts';
import type { Conditions } from './conditions.ts';
import { ofSurvey } from './origins.ts';

const SOURCES: ReadonlyMap<string, Source> = new Map(
  [...Object.values(moisture.moistureSources), ...Object.values(dehumidifier.dehumidifierSources)].map(
    (s: Source) => [s.id, s],
  ),
);

/** Assumption behind an input of a path, by the kind of the path and the name that the engine gives the input. */
const GUESSES: readonly (readonly [kind: RegExp, input: string, key: (item: string) => readonly string[]])[] =
  [
    [/^open-ground$/, 'resistance of the dry layer', (id) => [`dryLayer-${id}`]],
    [/^liner-/, 'open share', (id) => [`openFraction-${id}`]],
    [/^liner-/, 'sheet permeance', (id) => [`sheet-${id}`]],
    [/^liner-/, 'resistance of the dry layer', () => ['dryLayerFlooded', 'dryLayerUnderLiner']],
    [/^seam$/, 'gap', () => ['lapGap']],
    [/^seam$/, 'pumping factor', () => ['seamPumping']],
    [/^edge$/, 'gap', () => ['looseEdge']],
    [/^pier$/, 'gap', () => ['barePier']],
    [/^standing-water$/, 'area', (id) => [id]],
    [/^wicking-masonry$/, 'sorptivity', () => ['sorptivity']],
    [/^wicking-masonry$/, 'wet porosity', () => ['wetPorosity']],
    [/^dehumidifier$/, 'share of time running', () => ['runShare']],
    [/^entered$/, 'water', (id) => [id]],
  ];

/** What is said of guesses that no assumption of the job stands for. */
const USUAL: Readonly<Record<string, string>> = {
  flow: 'pressure network of vents, leaks, floor and house; the leakage is a guess',
  permeance: 'table value of the material, a factor of two either way',
  'vapor transfer coefficient': 'usual still air, 0.0014 to 0.0028 m/s',
  'resistance of the dry layer': 'damp soil at the gap',
};

const TEMPERATURES = new Set([
  'ground temperature',
  'water temperature',
  'surface temperature',
  'temperature behind',
]);

type Engine = moisture.BudgetPath;

function originOf(
  path: Engine,
  input: Engine['inputs'][number],
  conditions: Conditions,
  job: SurveyedJob,
  assumptions: Assumptions,
): Origin {
  const [kind, item = ''] = path.key.split(/:(.*)/s);
  const { origins } = conditions;
  // Ducts carry their own readings; every other temperature of a path is that of the ground.
  if (TEMPERATURES.has(input.name) && kind !== 'cold-surface') return origins.ground;
  if (input.name === 'humidity ratio') return kind === 'outside-air' ? origins.outdoor : origins.house;
  if (!input.band.assumed) {
    const said = conditions.said?.get(item);
    if (said !== undefined) return said;
    return kind === 'cold-surface' && TEMPERATURES.has(input.name)
      ? { kind: 'reading', note: 'coldest duct that was read' }
      : ofSurvey(job, 'plan', 'from the plan', item === '' ? undefined : item);
  }
  const keys = GUESSES.filter(([of, name]) => of.test(kind) && name === input.name).flatMap(([, , key]) =>
    key(item),
  );
  const why = assumptions.list().find((a) => keys.includes(a.key))?.why ?? USUAL[input.name];
  return why === undefined ? { kind: 'assumption' } : { kind: 'assumption', note: why };
}

/** What the words of a formula mean in figures, besides its inputs. */
function stepsOf(path: Engine, air: psychrometrics.AirState): PathStep[] {
  const { formula, inputs, key } = path;
  const value = (name: string) => inputs.find((i) => i.name === name)?.band.value;
  const surfaceC = inputs.find((i) => TEMPERATURES.has(i.name))?.band.value;
  const density = moisture.vaporDensityKgPerM3(air.vaporPressurePa, air.temperatureC);
  const steps: PathStep[] = [];
  const add = (name: string, unit: string, figure: number) => steps.push({ name, unit, value: figure });
  const ofDensity = /vapor density/.test(formula) || key.startsWith('wicking-masonry');
  if (surfaceC !== undefined && ofDensity) {
    add('saturated vapor density there', 'kg/m³', moisture.saturationVaporDensityKgPerM3(surfaceC));
  }
  if (ofDensity) add('vapor density of the air', 'kg/m³', density);
  if (/saturation pressure/.test(formula) && surfaceC !== undefined) {
    add('saturation pressure there', 'Pa', psychrometrics.saturationPressurePa(surfaceC));
    add('vapor pressure of the air', 'Pa', air.vaporPressurePa);
  }
  if (/humidity ratio/.test(formula)) {
    add('air density', 'kg/m³', moisture.standardAirKgPerM3(air.pressurePa));
    add('humidity ratio of the crawl air', 'kg/kg', air.humidityRatio);
  }
  if (/diffusivity/.test(formula)) add('vapor diffusivity', 'm²/s', moisture.VAPOR_DIFFUSIVITY_M2_PER_S);
  if (/relative capacity/.test(formula)) {
    const capacity = dehumidifier.relativeCapacity(air.temperatureC, air.relativeHumidity);
    add('relative capacity at the air', 'fraction', capacity);
  }
  const film = value('vapor transfer coefficient');
  if (key.startsWith('wicking-masonry') && surfaceC !== undefined && film !== undefined) {
    const kgPerM2S = moisture.waterEvaporationKgPerM2S(surfaceC, density, film);
    add('evaporation, as a layer of water', 'm/s', moisture.asWaterMPerS(kgPerM2S));
  }
  return steps;
}

/** A path of the engine with everything that it rests on: source, inputs and whose they are, and the steps between. */
export function shownPath(
  path: Engine,
  air: psychrometrics.AirState,
  conditions: Conditions,
  job: SurveyedJob,
  assumptions: Assumptions,
): BudgetPath {
  const { key, title, kgPerDay, low, high, assumed, formula, sourceId } = path;
  const source = SOURCES.get(sourceId);
  if (source === undefined) throw new Error(`no source ${sourceId} for the path ${key}`);
  return {
    key,
    title,
    kgPerDay,
    low,
    high,
    assumed,
    formula,
    source,
    inputs: path.inputs.map(
      (input): PathInputShown => ({
        name: input.name,
        unit: input.unit,
        value: input.band.value,
        low: input.band.low,
        high: input.band.high,
        assumed: input.band.assumed,
        origin: originOf(path, input, conditions, job, assumptions),
      }),
    ),
    steps: stepsOf(path, air),
  };
}
