import { itemsOf, once } from './bill-rule.ts';
import { defectsOf } from './defect.ts';

/** What can hurt somebody. */
export const structureAndSafety = defectsOf(
  'structure-and-safety',
  [],
  [
    {
      key: 'gas-appliance-sealed-in',
      name: { en: 'Fuel-burning appliance closed in', es: 'Aparato de combustión encerrado' },
      seen: {
        en: 'A draft-hood furnace or water heater in a space whose vents were shut.',
        es: 'Calefacción o calentador de tiro natural en un espacio con rejillas cerradas.',
      },
      proof: {
        en: 'Volume against input; spillage with all fans on; carbon monoxide.',
        es: 'Volumen contra potencia; retorno de gases con ventiladores encendidos; monóxido de carbono.',
      },
      remedy: {
        en: 'Outdoor air duct or a direct-vent appliance, tested by a licensed person before the space is closed.',
        es: 'Ducto de aire exterior o aparato de tiro directo, probado por una persona con licencia antes de cerrar.',
      },
      quantity: 'combustionAirVolumeM3PerKw',
      criteria: ['SAF-17', 'SAF-18', 'EXS-02'],
      causes: ['nobody counted the air'],
      consequences: ['carbon monoxide upstairs'],
      severity: 4,
      gradedBecause: 'can kill people asleep',
      bill: once(),
      step: 'safety',
      caution: 'SAF-17',
      licensedTrade: 'gas-fitter',
    },
    {
      key: 'supports-unsound',
      name: { en: 'Supports unsound', es: 'Soportes inseguros' },
      seen: {
        en: 'Leaning pier, stacked shims, a wood block under a girder.',
        es: 'Pilar inclinado, calzas apiladas, un taco de madera bajo la viga.',
      },
      proof: {
        en: 'Out of plumb; floor levels; bearing area.',
        es: 'Fuera de plomo; niveles del piso; área de apoyo.',
      },
      remedy: {
        en: 'An engineer, then posts and pads to the design.',
        es: 'Un ingeniero, luego postes y bases según el diseño.',
      },
      quantity: 'sectionLossFraction',
      criteria: ['ROT-03', 'SAF-15'],
      causes: ['jacked ad hoc'],
      causedBy: ['wet-wood', 'termite-signs', 'water-conducting-rot'],
      consequences: ['the floor drops'],
      severity: 4,
      gradedBecause: 'structure',
      bill: itemsOf('piers'),
      step: 'safety',
      caution: 'SAF-15',
      licensedTrade: 'structural-engineer',
    },
    {
      key: 'no-light-wrong-power',
      name: { en: 'No light, wrong power', es: 'Sin luz o con mala instalación eléctrica' },
      seen: {
        en: 'Cords in a chain, no ground-fault protection, bare splices.',
        es: 'Extensiones en cadena, sin protección de falla a tierra, empalmes a la vista.',
      },
      proof: {
        en: 'Trip test; cords counted; light at the entry.',
        es: 'Prueba de disparo; cuente las extensiones; luz en la entrada.',
      },
      remedy: {
        en: 'A circuit with protection and a switched light, by an electrician.',
        es: 'Un circuito protegido y una luz con apagador, por un electricista.',
      },
      criteria: ['ELE-01', 'ELE-02', 'ELE-03', 'ELE-04', 'APP-07'],
      causes: ['no electrician'],
      consequences: ['shock', 'fire'],
      severity: 3,
      gradedBecause: 'shock and fire; worse in water',
      aggravatedBy: ['standing-water'],
      bill: once('lot'),
      step: 'safety',
      caution: 'SAF-05',
      licensedTrade: 'electrician',
    },
    {
      key: 'bad-air',
      name: { en: 'Bad air in the space', es: 'Aire peligroso en el espacio' },
      seen: {
        en: 'The meter alarms, headache, smell of gas.',
        es: 'Suena el medidor, dolor de cabeza, olor a gas.',
      },
      proof: {
        en: 'Oxygen, flammable gas, carbon monoxide, hydrogen sulfide by a calibrated meter.',
        es: 'Oxígeno, gas inflamable, monóxido de carbono, sulfuro de hidrógeno con medidor calibrado.',
      },
      remedy: {
        en: 'Everybody out; the gas utility or fire service; no entry until it is found.',
        es: 'Todos afuera; la compañía de gas o los bomberos; nadie entra hasta saber qué es.',
      },
      quantity: 'oxygenFraction',
      criteria: ['SAF-03'],
      causes: ['leak', 'combustion', 'decay'],
      consequences: ['people collapse, rescuers too'],
      severity: 4,
      gradedBecause: 'life',
      bill: once(),
      step: 'safety',
      caution: 'SAF-03',
    },
  ],
);
