import type { Caution } from '../caution.ts';
import { is } from '../condition.ts';
import { cite } from '../sources.ts';

/** What closing a space can do to the people upstairs. */
export const houseAndGasCautions: readonly Caution[] = [
  {
    id: 'SAF-17',
    title: 'Sealing in a gas appliance',
    steps: ['close-space', 'survey'],
    showsWhen: is('combustionAppliance', true),
    text:
      'A fuel-burning appliance that takes its air from the space starves when the vents are closed. Indoor air takes ' +
      'at least 50 ft³ per 1000 Btu/h (4.8 m³/kW), which a sealed crawl space almost never has. Direct venting or ' +
      'outdoor air comes first.',
    defersTo: 'A licensed gas fitter and the fuel gas code of the place',
    licensedTrade: 'gas-fitter',
    source: cite('ifgc', 'quoted', '304.5'),
  },
  {
    id: 'SAF-18',
    title: 'Back-draft and carbon monoxide',
    steps: ['close-space', 'fit-exhaust', 'survey'],
    showsWhen: is('combustionAppliance', true),
    text:
      'Fans and sealing can pull flue gas back into the house. Close no vent until each appliance drafts with all fans ' +
      'on and inner doors both open and shut, and carbon monoxide alarms are up.',
    defersTo: 'A licensed gas fitter and the fuel gas code of the place',
    licensedTrade: 'gas-fitter',
    source: cite('pnnlFuel', 'read'),
  },
  {
    id: 'SAF-19',
    title: 'Vents that feed a flame',
    steps: ['close-space'],
    showsWhen: is('combustionAppliance', true),
    text:
      'In older houses an appliance may draw its air through a floor grille from the vented crawl space. Find the grille ' +
      'before any vent is plugged.',
    defersTo: 'A licensed gas fitter and the building official',
    licensedTrade: 'gas-fitter',
    source: cite('chicagoArchived', 'read'),
  },
  {
    id: 'SAF-23',
    title: 'Radon and soil gas',
    steps: ['close-space', 'fit-exhaust'],
    showsWhen: is('spaceType', 'closed'),
    text:
      'Closing a space can raise radon upstairs, and a suction system blows concentrated soil gas. Test after the work. ' +
      'The outlet goes outdoors away from openings, the fan never into the crawl space or a room.',
    defersTo: 'A certified radon professional and the radon program of the state',
    licensedTrade: 'radon-professional',
    source: cite('cc1000', 'read', '9.2, 9.7.1'),
  },
];
