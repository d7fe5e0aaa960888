import type { Study } from './study.ts';
import { princeville } from './v01-princeville.ts';
import { controlledSlides } from './v02-controlled-slides.ts';
import { batonRouge } from './v03-baton-rouge.ts';
import { flagstaff } from './v04-flagstaff.ts';
import { newJersey } from './v05-new-jersey.ts';
import { louisianaFloors } from './v06-louisiana-floors.ts';
import { britishVoid } from './v07-british-void.ts';
import { newZealand } from './v08-new-zealand.ts';
import { helsinki } from './v09-helsinki.ts';
import { finnishCold } from './v10-finnish-cold.ts';
import { floorLeakage } from './v11-floor-leakage.ts';
import { tennessee } from './v13-tennessee.ts';
import { oakRidge } from './v17-oak-ridge.ts';

/** Every study that is run, in the order of the page. */
export const STUDIES: readonly Study[] = [
  princeville,
  controlledSlides,
  batonRouge,
  flagstaff,
  newJersey,
  louisianaFloors,
  britishVoid,
  newZealand,
  helsinki,
  finnishCold,
  floorLeakage,
  tennessee,
  oakRidge,
];

/** Studies that are known and not run, and why. */
export const NOT_RUN: readonly { id: string; study: string; why: string }[] = [
  {
    id: 'V12',
    study:
      'Sealed crawl space with an exhaust fan in Ithaca, New York, tracer gas (NREL/SR-5500-64458, abstract)',
    why: 'No numbers in the part that was read.',
  },
  {
    id: 'V14',
    study: 'Mixing of air in two houses, 0.001 to 0.013 m²/s (Cheng and others 2011, abstract)',
    why: 'Bounds the mixing on the floor plan; the year by the hour has well-mixed air and no such coefficient.',
  },
  {
    id: 'V15',
    study: 'Mixing of air in hospital corridors, 0.06 m²/s in still air (Journal of Hygiene, abstract)',
    why: 'The same.',
  },
  {
    id: 'V16',
    study:
      'Review of radon repairs in crawl spaces: suction under a membrane 80 to 98 % less (EPA review, abstract)',
    why: 'Soil gas is not in these equations.',
  },
];
