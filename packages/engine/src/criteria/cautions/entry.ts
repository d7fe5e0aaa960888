import type { Caution } from '../caution.ts';
import { always, is } from '../condition.ts';
import { cite, commonPractice } from '../sources.ts';

const OSHA = 'The employer, its competent person, and the safety authority of the place';

/** Getting in and out. */
export const entryCautions: readonly Caution[] = [
  {
    id: 'SAF-01',
    title: 'Confined space',
    steps: ['plan-entry', 'enter', 'survey'],
    showsWhen: always,
    text:
      'A crawl space can be entered, is hard to get out of, and is not made for people to stay in: that makes it a ' +
      'confined space. Classify it before anybody enters, and plan how somebody is brought out.',
    defersTo: OSHA,
    source: cite('oshaConfined', 'read', '1926.1202'),
  },
  {
    id: 'SAF-02',
    title: 'Permit space',
    steps: ['plan-entry', 'enter'],
    showsWhen: always,
    text:
      'Bad air, water or soil that can bury, a shape that traps, or another serious hazard such as bare wiring makes it ' +
      'a permit space. Write down what stops the entry, and stop when it happens.',
    defersTo: OSHA,
    source: cite('oshaConfined', 'read', '1926.1202, 1926.1203(a)'),
  },
  {
    id: 'SAF-03',
    title: 'Air',
    steps: ['plan-entry', 'enter', 'survey'],
    showsWhen: always,
    text:
      'Read oxygen, flammable gas, carbon monoxide and hydrogen sulfide with a calibrated meter at the opening, then ' +
      'carry it. Get out when it alarms. A good reading is no promise for the next minute or the next bay.',
    defersTo: OSHA,
    source: cite('nioshAir', 'memory'),
  },
  {
    id: 'SAF-04',
    title: 'Working alone',
    steps: ['plan-entry', 'enter', 'survey', 'clear-out', 'lay-liner', 'dig'],
    showsWhen: always,
    text:
      'Nobody goes in without a second person outside, agreed call times, and a rescue plan. Log in and log out. The ' +
      'person outside calls for help and does not follow in.',
    defersTo: OSHA,
    source: cite('oshaConfined', 'memory', '1926.1209, 1926.1211'),
  },
  {
    id: 'SAF-05',
    title: 'Electricity and water',
    steps: ['plan-entry', 'enter', 'survey', 'wire', 'dig', 'lay-liner'],
    showsWhen: always,
    text:
      'Treat every cord and cable in or near water as live. Have the power switched off and locked at the panel, or the ' +
      'ground-fault protection proven, before anybody kneels in water. No live splices.',
    defersTo: 'A licensed electrician and the local electrical code',
    licensedTrade: 'electrician',
    source: cite('oshaConstruction', 'memory', '1926.416, 1926.417, 1926.404(b)(1)'),
  },
  {
    id: 'SAF-06',
    title: 'Temporary light',
    steps: ['enter', 'survey', 'clear-out', 'lay-liner'],
    showsWhen: always,
    text: 'Use battery lamps, low voltage, or lamps on ground-fault protection with a guard over the bulb.',
    defersTo: OSHA,
    source: cite('oshaConstruction', 'memory', '1926.405(a)(2)(ii)'),
  },
  {
    id: 'SAF-13',
    title: 'Heat',
    steps: ['plan-entry', 'enter', 'clear-out', 'lay-liner'],
    showsWhen: always,
    text:
      'Water, rest and shade; crawling in a suit doubles the load. Check on each other, and work in the cool of the ' +
      'morning.',
    defersTo: OSHA,
    source: cite('niosh2016', 'memory'),
  },
  {
    id: 'SAF-14',
    title: 'Sharp things, low joists, bites',
    steps: ['enter', 'survey', 'clear-out', 'lay-liner'],
    showsWhen: always,
    text: 'Helmet, knee and arm guards, cut-proof gloves, suit taped at wrist and ankle. Look before you put a hand down.',
    defersTo: OSHA,
    source: cite('oshaConstruction', 'memory', '1926.95, 1926.100'),
  },
  {
    id: 'SAF-25',
    title: 'Smell of gas, flood',
    steps: ['plan-entry', 'enter', 'survey'],
    showsWhen: is('gasSmell', true),
    text: 'Leave, leave others out, touch no switch, and call the gas utility or emergency services from outside.',
    defersTo: 'The gas utility and the fire department',
    source: commonPractice,
  },
];
