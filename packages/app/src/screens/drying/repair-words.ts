import type { RepairKey } from '@undercroft/assessment';
import type { Settings } from '../../settings/settings.ts';

/** What a repair is called and what it is taken to change, in each language. */
interface RepairWords {
  readonly title: readonly [en: string, es: string];
  readonly does: readonly [en: string, es: string];
}

/** Every kind of repair in the order in which a space is mended. The English words are those of the assessment. */
const WORDS: Readonly<Record<RepairKey, RepairWords>> = {
  regrade: {
    title: ['Grading and roof water', 'Pendiente y agua del techo'],
    does: [
      'Wet walls become damp and damp walls dry; where water stood the ground is only wet.',
      'Los muros mojados quedan húmedos y los húmedos secos; donde había agua el suelo solo queda mojado.',
    ],
  },
  drain: {
    title: ['Drain', 'Drenaje'],
    does: [
      'Water no longer stands on the ground, on the liner or under it; the ground stays dark and damp.',
      'Ya no hay agua sobre el suelo, sobre la lámina ni debajo; el suelo queda oscuro y húmedo.',
    ],
  },
  sump: {
    title: ['Sump', 'Cárcamo'],
    does: [
      'Water no longer stands on the ground, on the liner or under it; the ground stays dark and damp.',
      'Ya no hay agua sobre el suelo, sobre la lámina ni debajo; el suelo queda oscuro y húmedo.',
    ],
  },
  'clear-debris': {
    title: ['Debris cleared', 'Limpieza de escombros'],
    does: [
      'Changes nothing in the balance of water; it takes away what rots and feeds mold.',
      'No cambia nada en el balance de agua; quita lo que se pudre y alimenta el moho.',
    ],
  },
  'ground-liner': {
    title: ['Ground liner', 'Lámina de suelo'],
    does: [
      'Every bare part is covered and the liner has the open share of a sealed one, 0.1 to 0.5 %; seams are taped. It is turned up the walls by 6 in, but where an edge was found loose it stays loose until the edges are sealed.',
      'Se cubre toda la tierra y la lámina tiene la parte abierta de una sellada, 0.1 a 0.5 %; los traslapes van con cinta. Sube 6 pulgadas por los muros, pero una orilla suelta sigue suelta hasta que se sellen las orillas.',
    ],
  },
  'seal-edges': {
    title: ['Liner edges sealed to the walls', 'Orillas de la lámina selladas a los muros'],
    does: [
      'No edge is loose; the liner is fixed and sealed to the walls as high as it reaches, 6 in at least.',
      'Ninguna orilla queda suelta; la lámina se fija y se sella a los muros hasta donde llega, 6 pulgadas por lo menos.',
    ],
  },
  'wrap-piers': {
    title: ['Piers wrapped', 'Pilares envueltos'],
    does: [
      'Every pier has a sealed wrap, so no ground is open round it.',
      'Cada pilar tiene una envoltura sellada, así que no queda suelo abierto alrededor.',
    ],
  },
  'close-vents': {
    title: ['Vents closed, walls air-sealed', 'Rejillas cerradas, muros sellados al aire'],
    does: [
      'Vents get fitted, sealed panels; rim, sill and wall are air-sealed and the door weatherstripped.',
      'Las rejillas llevan paneles ajustados y sellados; borde, solera y muro se sellan al aire y la puerta lleva burlete.',
    ],
  },
  'open-vents': {
    title: ['Vents opened', 'Rejillas abiertas'],
    does: [
      'Every vent stands open with its net free area.',
      'Cada rejilla queda abierta con su área libre neta.',
    ],
  },
  'air-seal-floor': {
    title: ['Floor air-sealed', 'Piso sellado al aire'],
    does: [
      'Holes through the floor are sealed to the tight end of usual floors.',
      'Los huecos del piso se sellan hasta lo más hermético de los pisos usuales.',
    ],
  },
  'remove-insulation': {
    title: ['Floor insulation removed', 'Aislante del piso retirado'],
    does: [
      'The floor has no insulation: the space is warmer in winter and cooler in summer.',
      'El piso queda sin aislante: el espacio es más caliente en invierno y más fresco en verano.',
    ],
  },
  'insulate-walls': {
    title: ['Walls insulated', 'Muros aislados'],
    does: [
      'Outside walls get R-10 (1.76 m²·K/W) unless they have more.',
      'Los muros exteriores reciben R-10 (1.76 m²·K/W), si no tienen más.',
    ],
  },
  'wood-treatment': {
    title: ['Wood treated', 'Madera tratada'],
    does: [
      'Changes nothing in the balance of water; it slows decay and mold on the wood that is treated.',
      'No cambia nada en el balance de agua; frena la pudrición y el moho en la madera tratada.',
    ],
  },
  dehumidifier: {
    title: ['Dehumidifier', 'Deshumidificador'],
    does: [
      'The chosen machine holds the target humidity as far as it can; a machine that was found is taken out.',
      'La máquina elegida mantiene la humedad deseada hasta donde puede; la que había se retira.',
    ],
  },
  'circulating-fan': {
    title: ['Circulating fan', 'Ventilador de circulación'],
    does: [
      'Air of the far corners reaches the dehumidifier better: half of what it lacked of well-mixed air is made up, an assumption; the air on the plan tells it for a fan at its place.',
      'El aire de los rincones llega mejor al deshumidificador: se repone la mitad de lo que faltaba de mezcla, una suposición; el aire en el plano lo dice para un ventilador en su lugar.',
    ],
  },
  'soil-gas-exhaust': {
    title: ['Soil-gas exhaust', 'Extracción de gas del suelo'],
    does: [
      'Draws some air of the space through leaks of the liner and blows it outdoors; its pull on the soil is not in the year.',
      'Jala algo de aire del espacio por las fugas de la lámina y lo saca; su tiro sobre el suelo no está en el año.',
    ],
  },
  'exhaust-fan': {
    title: ['Exhaust fan', 'Extractor'],
    does: [
      'Blows 1 cfm for each 50 ft² of floor outdoors, all the time; what comes in after it, the leaks decide.',
      'Saca 1 cfm por cada 50 pies² de piso, todo el tiempo; lo que entra en su lugar lo deciden las fugas.',
    ],
  },
};

/** Every kind of repair, in the order in which a space is mended. */
export const REPAIR_KEYS = Object.keys(WORDS) as readonly RepairKey[];

export function repairTitle(repair: RepairKey, language: Settings['language']): string {
  return WORDS[repair].title[language === 'en' ? 0 : 1];
}

/** What the repair is taken to change. */
export function repairDoes(repair: RepairKey, language: Settings['language']): string {
  return WORDS[repair].does[language === 'en' ? 0 : 1];
}
