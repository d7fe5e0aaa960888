import { areaOf, lengthOf } from './bill-rule.ts';
import { defectsOf } from './defect.ts';

/** Floor and wall insulation. */
export const insulation = defectsOf(
  'insulation',
  ['wet-wood', 'standing-water', 'widespread'],
  [
    {
      key: 'wet-floor-batts',
      name: {
        en: 'Floor batts damp, fallen or facing exposed',
        es: 'Aislante del piso húmedo, caído o con forro a la vista',
      },
      seen: {
        en: 'Hanging, stained, heavy, paper side down.',
        es: 'Colgando, manchado, pesado, con el papel hacia abajo.',
      },
      proof: {
        en: 'Share of bays down; weight of a wet batt; pins in the subfloor above.',
        es: 'Parte de huecos caídos; peso de un aislante mojado; agujas en el subpiso.',
      },
      remedy: {
        en: 'Strip and bag it; insulate the walls, or fit the floor again when dry.',
        es: 'Quítelo y embólselo; aísle los muros, o vuelva a poner cuando esté seco.',
      },
      criteria: ['ISR-01', 'ISR-02', 'FOM-06'],
      causes: ['wind', 'summer vapor from outdoors'],
      causedBy: ['sweating-ducts', 'standing-water'],
      consequences: ['holds water against the wood', 'beds for rodents'],
      leadsTo: ['wet-wood', 'rodents'],
      severity: 2,
      gradedBecause: 'hides and holds water',
      bill: areaOf('floorM2'),
      step: 'clear-out',
      caution: 'SAF-07',
    },
    {
      key: 'crawl-walls-not-insulated',
      name: {
        en: 'Walls of a closed space without insulation',
        es: 'Muros de un espacio cerrado sin aislante',
      },
      seen: {
        en: 'Bare block above grade, cold in winter.',
        es: 'Bloque descubierto sobre el terreno, frío en invierno.',
      },
      proof: { en: 'R-value beside that of the zone.', es: 'Valor R contra el de la zona.' },
      remedy: {
        en: 'Wall insulation of the zone with its barrier and a free termite strip.',
        es: 'Aislante de pared de la zona, con barrera y franja de termitas libre.',
      },
      quantity: 'crawlWallContinuousRsi',
      criteria: ['UNV-12', 'INS-02a', 'INS-03a', 'INS-04a', 'INS-05a', 'INS-06'],
      causes: ['left out when the space was closed'],
      consequences: ['cold floor', 'frost at the rim', 'power'],
      severity: 2,
      gradedBecause: 'cold surfaces collect water in winter',
      bill: lengthOf('perimeterM'),
      step: 'close-air',
    },
  ],
);
