import type { CauseArrow } from '@undercroft/assessment';
import type { Settings } from '../../settings/settings.ts';

/** Name of a node of the chain. */
export type NodeKey = CauseArrow['from'];

const TITLES: Readonly<Record<NodeKey, readonly [en: string, es: string]>> = {
  'outdoor-air': ['Humid outdoor air', 'Aire húmedo de afuera'],
  'bare-ground': ['Bare earth', 'Tierra descubierta'],
  'open-liner': ['Gaps in the liner', 'Huecos en la membrana'],
  'surface-water': ['Rain and roof water', 'Lluvia y agua del techo'],
  'ground-water': ['Ground water', 'Agua del subsuelo'],
  'drain-fails': ['Drain or pump fails', 'Falla el drenaje o la bomba'],
  'plumbing-leak': ['Leaking pipe', 'Fuga de tubo'],
  'dryer-exhaust': ['Dryer or fan blows in', 'Secadora o ventilador sopla adentro'],
  condensate: ['Condensate spills', 'Se derrama el condensado'],
  'masonry-draws': ['Masonry draws up water', 'El muro chupa agua'],
  'cold-ducts': ['Cold ducts and pipes', 'Ductos y tubos fríos'],
  'leaky-ducts': ['Leaking ducts', 'Ductos con fugas'],
  'winter-cold-edge': ['Cold rim in winter', 'Borde frío en invierno'],
  'machine-pocket': ['Machine dries a pocket', 'La máquina seca un rincón'],
  'machine-small': ['Machine too small or set wrong', 'Máquina chica o mal ajustada'],
  'air-blocked': ['Air cannot get round', 'El aire no da la vuelta'],
  organics: ['Wood scraps and droppings', 'Restos de madera y excremento'],
  'old-liner': ['Wet layer between sheets', 'Capa mojada entre membranas'],
  'floor-leaks': ['Air rises through the floor', 'Sube aire por el piso'],
  'soil-way-in': ['Soil gas finds a way', 'El gas del suelo halla camino'],
  'wood-touches': ['Wood near earth or in block', 'Madera junto a tierra o bloque'],
  'wet-batts': ['Batts hold water', 'El aislante guarda agua'],
  'drying-down': ['Still drying since the work', 'Todavía se seca desde la obra'],
  'free-water': ['Water lies in the space', 'Hay agua en el espacio'],
  'damp-masonry': ['Damp walls and piers', 'Muros y pilares húmedos'],
  'humid-air': ['The air is too humid', 'El aire está muy húmedo'],
  sweating: ['Surfaces sweat', 'Las superficies sudan'],
  'damp-far-end': ['One end stays damp', 'Un extremo sigue húmedo'],
  'wet-wood': ['The framing is wet', 'La madera está mojada'],
  'wet-bearing': ['Wood on masonry is wettest', 'Lo más mojado apoya en el muro'],
  smell: ['Musty smell', 'Olor a humedad'],
  'soil-gas': ['Radon is high', 'El radón está alto'],
  mold: ['Mold', 'Moho'],
  decay: ['Decay', 'Pudrición'],
  insects: ['Termites and beetles', 'Termitas y escarabajos'],
  'floor-moves': ['Floor cups or sags', 'El piso se comba o se hunde'],
  'bearing-fails': ['A bearing gives way', 'Cede un apoyo'],
  'air-upstairs': ['Air of the space in the rooms', 'Aire de abajo en los cuartos'],
  'batts-fall': ['Insulation is lost', 'Se pierde el aislante'],
  'machine-wears': ['Machine runs and wears', 'La máquina trabaja y se gasta'],
  'lung-dose': ['Radon is breathed', 'Se respira radón'],
};

/** Title of a node in a language. */
export function nodeTitle(key: NodeKey, language: Settings['language']): string {
  return TITLES[key][language === 'en' ? 0 : 1];
}

/** Titles of all nodes in a language, for the drawing. */
export function nodeTitles(language: Settings['language']): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.keys(TITLES).map((key) => [key, nodeTitle(key as NodeKey, language)]));
}
