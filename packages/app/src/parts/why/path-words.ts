import type { BudgetPath } from '@undercroft/assessment';
import type { Settings } from '../../settings/settings.ts';

type Words = readonly [en: string, es: string];

/** Kinds of paths in Spanish; `{item}` is the part of the floor, the wall or the seam that it belongs to. */
const PATHS: Readonly<Record<string, string>> = {
  'open-ground': 'Tierra sin cubrir{item}',
  'liner-sheet': 'A través de la lámina{item}',
  'liner-open': 'Por los huecos de la lámina{item}',
  seam: 'Traslape sin sellar{item}',
  edge: 'Orilla suelta de la lámina{item}',
  pier: 'Alrededor de los pilares sin envoltura sellada',
  'standing-water': 'Agua estancada{item}',
  'damp-masonry': 'Vapor a través del muro o la losa{item}',
  'wicking-masonry': 'Muro que sube agua{item}',
  'cold-surface': 'Condensación en los conductos fríos',
  'outside-air': 'Aire de afuera',
  'house-air': 'Aire de la casa',
  air: 'Otro aire{item}',
  entered: 'Secadora de ropa',
  dehumidifier: 'Deshumidificador',
  excess: 'Se condensa del aire saturado',
  shortfall: 'Piden las salidas y no está',
};

/** Names of what goes into a path, as the engine gives them, and what a reader sees. */
const NAMES: Readonly<Record<string, Words>> = {
  area: ['Area', 'Área'],
  length: ['Length', 'Largo'],
  gap: ['Gap', 'Abertura'],
  lap: ['Lap', 'Traslape'],
  flow: ['Air flow', 'Flujo de aire'],
  water: ['Water', 'Agua'],
  thickness: ['Thickness', 'Espesor'],
  sorptivity: ['Sorptivity', 'Sortividad'],
  permeance: ['Permeance', 'Permeancia'],
  'sheet permeance': ['Permeance of the sheet', 'Permeancia de la lámina'],
  'open share': ['Open share', 'Parte abierta'],
  'pumping factor': ['Pumping factor', 'Factor de bombeo'],
  'face height': ['Height of the face', 'Altura de la cara'],
  'wet porosity': ['Wet porosity', 'Porosidad húmeda'],
  'ground temperature': ['Ground temperature', 'Temperatura del suelo'],
  'water temperature': ['Water temperature', 'Temperatura del agua'],
  'surface temperature': ['Surface temperature', 'Temperatura de la superficie'],
  'temperature behind': ['Temperature behind', 'Temperatura detrás'],
  'humidity ratio': ['Humidity ratio of that air', 'Razón de humedad de ese aire'],
  'resistance of the dry layer': ['Resistance of the dry layer', 'Resistencia de la capa seca'],
  'vapor transfer coefficient': ['Vapor transfer coefficient', 'Coeficiente de transferencia de vapor'],
  'capacity at 80 °F/60 %': ['Capacity at 80 °F/60 %', 'Capacidad a 80 °F/60 %'],
  'share of time running': ['Share of time running', 'Parte del tiempo encendido'],
  'water collected': ['Water collected', 'Agua recogida'],
  'saturated vapor density there': ['Saturated vapor density there', 'Densidad del vapor saturado ahí'],
  'vapor density of the air': ['Vapor density of the air', 'Densidad de vapor del aire'],
  'saturation pressure there': ['Saturation pressure there', 'Presión de saturación ahí'],
  'vapor pressure of the air': ['Vapor pressure of the air', 'Presión de vapor del aire'],
  'air density': ['Air density', 'Densidad del aire'],
  'humidity ratio of the crawl air': [
    'Humidity ratio of the crawl air',
    'Razón de humedad del aire del espacio',
  ],
  'vapor diffusivity': ['Vapor diffusivity', 'Difusividad del vapor'],
  'relative capacity at the air': ['Relative capacity at the air', 'Capacidad relativa en ese aire'],
  'evaporation, as a layer of water': ['Evaporation, as a layer of water', 'Evaporación, como capa de agua'],
};

/** The part of the floor, wall or seam that a path belongs to, as the surveyor called it in the English title. */
function partOf(kind: string, item: string, title: string): string {
  if (kind.endsWith('masonry')) return /^Wall (.+?)(?: draws up water|,|$)/.exec(title)?.[1] ?? item;
  if (kind === 'edge') return /at wall (.+)$/.exec(title)?.[1] ?? item;
  if (kind === 'seam') return item;
  if (item === 'elsewhere') return '';
  return title.replace(/, through (the sheet|open spots)$/, '').split(/, (.*)/s)[1] ?? item;
}

/** Title of a path of water. Titles of the engine are English; in Spanish the kind of the path is named. */
export function pathTitle(
  { key, title }: Pick<BudgetPath, 'key' | 'title'>,
  language: Settings['language'],
): string {
  if (language === 'en') return title;
  const [kind, item = ''] = key.split(/:(.*)/s);
  const named = PATHS[kind];
  const part = partOf(kind, item, title);
  const shown = part === '' || part === 'elsewhere' ? '' : `, ${part}`;
  return named === undefined ? title : named.replace('{item}', shown);
}

/** Name of an input or step of a path. */
export function inputName(name: string, language: Settings['language']): string {
  return NAMES[name]?.[language === 'en' ? 0 : 1] ?? name;
}

/** Paths below this, also at the ends of their ranges, are named instead of drawn [kg/day]. */
const SMALLEST = 0.05;

/** Whether a path is worth a bar of its own. */
export function isDrawn({ kgPerDay, low, high }: BudgetPath): boolean {
  return Math.max(Math.abs(kgPerDay), Math.abs(low), Math.abs(high)) >= SMALLEST;
}

/** A path first by what it brings, those that carry water away last. */
export function byFlow(paths: readonly BudgetPath[]): BudgetPath[] {
  return [...paths].sort((a, b) => b.kgPerDay - a.kgPerDay);
}
