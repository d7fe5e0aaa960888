import type { Caution } from '../caution.ts';
import { any, is } from '../condition.ts';
import { cite } from '../sources.ts';

/** Dusts, growth, droppings, chemicals. */
export const substanceCautions: readonly Caution[] = [
  {
    id: 'SAF-07',
    title: 'Asbestos',
    steps: ['survey', 'clear-out', 'disturb-old-material'],
    showsWhen: is('suspectAsbestos', true),
    text:
      'Presume that old pipe wrap, duct tape, cement board and vermiculite hold asbestos. Do not touch or sweep them: ' +
      'photograph, stop, and have a trained contractor look.',
    defersTo: 'A licensed asbestos contractor and the environmental authority of the place',
    source: cite('epaVermiculite', 'read'),
  },
  {
    id: 'SAF-08',
    title: 'Lead paint',
    steps: ['disturb-old-material', 'clear-out'],
    showsWhen: is('builtBefore1978', true),
    text:
      'In a house from before 1978 presume lead in paint on sills, doors and window wells. Disturbing it for pay takes a ' +
      'certified firm and lead-safe work.',
    defersTo: 'A certified renovation firm and the environmental authority',
    source: cite('epaLead', 'memory'),
  },
  {
    id: 'SAF-09',
    title: 'Rodent droppings',
    steps: ['survey', 'clear-out', 'lay-liner'],
    showsWhen: is('rodentSigns', true),
    text:
      'Droppings can carry hantavirus. Air the space for at least 30 minutes and stay away meanwhile. Never sweep or ' +
      'vacuum them dry: soak for 5 minutes with bleach, 1 part to 9 of water, then lift them with gloves. A heavy ' +
      'infestation needs respirators and a trained crew.',
    defersTo: 'The health department and a trained clean-up crew',
    source: cite('cdcRodents', 'read'),
  },
  {
    id: 'SAF-10',
    title: 'Bird or bat droppings',
    steps: ['survey', 'clear-out'],
    showsWhen: is('birdOrBatDroppings', true),
    text: 'Dust of droppings can carry histoplasmosis. Wet them down, use filtered vacuums and respirators, or stay out.',
    defersTo: 'The health department and a trained clean-up crew',
    source: cite('niosh2005', 'memory'),
  },
  {
    id: 'SAF-11',
    title: 'Silica dust',
    steps: ['drill-masonry'],
    showsWhen: any(is('linerPresent', true), is('hollowMasonry', true), is('drainPresent', true)),
    text:
      'Drilling block and breaking slab makes silica dust; pins and bars at the liner edge count. The action level is ' +
      '25 and the limit 50 micrograms per cubic meter over 8 hours. Use tools with water or a filtered vacuum.',
    defersTo: 'The employer and the safety authority of the place',
    source: cite('oshaSilica', 'read'),
  },
  {
    id: 'SAF-12',
    title: 'Mold dust',
    steps: ['survey', 'clear-out', 'clean-mold'],
    showsWhen: is('moldPresent', true),
    text:
      'Wear at least an N-95 respirator, gloves and eye protection near mold, and more when removing it. Contain the ' +
      'work from 10 ft² (0.93 m²) on. This tool states area and condition, never that mold is harmless or toxic.',
    defersTo: 'A qualified, where asked licensed, mold remediator; a physician for health',
    licensedTrade: 'mold-professional',
    source: cite('epaMold', 'read', 'chapter 3'),
  },
  {
    id: 'SAF-20',
    title: 'Pesticide, borate, cleaners',
    steps: ['treat-wood', 'clean-mold'],
    showsWhen: any(is('rotPresent', true), is('moldPresent', true)),
    text:
      'Use only as the label says, with the license it asks for, and keep people out for the stated time. No fogging ' +
      'while the house is occupied. Keep label and safety data sheet with the job.',
    defersTo: 'A licensed applicator and the product label',
    licensedTrade: 'pest-control-applicator',
    source: cite('fifra', 'memory'),
  },
  {
    id: 'SAF-21',
    title: 'Sprayed foam',
    steps: ['spray-foam'],
    showsWhen: is('foamPresent', true),
    text:
      'Spraying foam frees isocyanates. The crew works on supplied air, and nobody else is in the house for the time ' +
      'that the maker states.',
    defersTo: 'The foam maker and the safety authority of the place',
    source: cite('respirators', 'memory'),
  },
  {
    id: 'SAF-22',
    title: 'Solvents and adhesives in a closed space',
    steps: ['use-solvents', 'lay-liner'],
    showsWhen: is('linerPresent', true),
    text:
      'Vapors of solvents and adhesives flash and stupefy, and can turn the space into a permit space. Use low-vapor ' +
      'products, forced air, and no pilot or spark.',
    defersTo: 'The employer, its competent person, and the safety authority of the place',
    source: cite('oshaConstruction', 'memory', '1926.57, 1926.152'),
  },
  {
    id: 'SAF-24',
    title: 'Sewage',
    steps: ['plan-entry', 'enter', 'survey', 'clear-out'],
    showsWhen: is('sewagePresent', true),
    text: 'Stop. Sewage carries disease and gas. The plumber comes first, then disinfection in full protection.',
    defersTo: 'A licensed plumber and a trained clean-up crew',
    licensedTrade: 'plumber',
    source: cite('epaSewage', 'quoted'),
  },
];
