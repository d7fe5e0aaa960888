import {
  type Assessment,
  changeWords,
  compassWord,
  type DistributionBand,
  type DistributionWorkedOut,
  fanWords,
  machineWords,
  OUTCOME_WORDS,
  type PlaceFinder,
  type PlaceWords,
  placeFinder,
  RULE_WORDS,
  stepsBetween,
} from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { airPicture, airSheet } from '../../drawing/air/air-drawing.ts';
import { plain } from '../../words/names.ts';
import { tapeText } from '../../words/quantities.ts';
import {
  type Block,
  type Cell,
  cell,
  type Figure,
  figure,
  heading,
  paragraph,
  type Section,
  soft,
  type Table,
  words,
} from '../blocks.ts';

type Range = DistributionBand['ranges']['duty'];

/** A share that is something and rounds to nothing is told as less than one percent. */
function percent(share: number): string {
  if (share > 0 && share < 0.005) return 'under 1%';
  return `${Math.round(100 * share)}%`;
}

function ranged({ low, value, high }: Range): string {
  const [from, to] = [percent(low), percent(high)];
  return from === to ? percent(value) : `${percent(value)} (${from} to ${to})`;
}

const decimals = ({ low, value, high }: Range, digits: number) =>
  `${value.toFixed(digits)} (${low.toFixed(digits)} to ${high.toFixed(digits)})`;

const placeWords = (place: PlaceFinder): PlaceWords => ({
  at: (at) =>
    place
      .fromWalls(at)
      .map((w) => `${tapeText(w.distanceM)} from the ${w.name}`)
      .join(' and '),
  toward: (bearingDeg) => {
    const deg = place.compassDeg(bearingDeg);
    return `${compassWord(deg)} (${Math.round(deg)}°)`;
  },
  percent,
});

function map(job: Job, assessment: Assessment, band: DistributionBand, id: string, title: string): Figure {
  return {
    kind: 'figure',
    id,
    caption: `${title}: relative humidity over the floor, computed. Both maps have one scale; the dashed lines show what mixing leaves open.`,
    placement: 'sheet',
    onScreen: (room) => airPicture(job, assessment, band, title, room),
    onPaper: (room) => airSheet(job, assessment, band, title, room),
  };
}

function comparison({ found, search }: DistributionWorkedOut): Table {
  const next = search?.suggested;
  const row = (name: string, of: (band: DistributionBand) => string): Cell[] => [
    cell({ text: name }),
    cell(figure(of(found))),
    ...(next === undefined ? [] : [cell(figure(of(next)))]),
  ];
  return {
    kind: 'table',
    caption: 'The air by figures, with the range that mixing leaves open',
    compact: true,
    columns: [
      { title: 'What', weight: 40 },
      { title: 'As found', weight: 30, align: 'end' },
      ...(next === undefined ? [] : [{ title: 'Suggested', weight: 30, align: 'end' } as const]),
    ],
    rows: [
      row('Humidity at the intake', (b) => ranged(b.ranges.intakeRelativeHumidity)),
      row('Humidity at the far end', (b) => ranged(b.ranges.farEndRelativeHumidity)),
      row('Dampest twentieth of the floor', (b) => ranged(b.ranges.dampestRelativeHumidity)),
      row('Floor above 60%', (b) => ranged(b.ranges.shareAbove60)),
      row('Floor above 70%', (b) => ranged(b.ranges.shareAbove70)),
      row('Floor above 80%', (b) => ranged(b.ranges.shareAbove80)),
      row('Share of the time that the machine runs', (b) => ranged(b.ranges.duty)),
      row('The same if the air were mixed', (b) => ranged(b.ranges.mixedDuty)),
      row('Plan coefficient (1: the air of the whole plan reaches the humidistat)', (b) =>
        b.ranges.planCoefficient === undefined ? 'none' : decimals(b.ranges.planCoefficient, 2),
      ),
      row('Wood comes to, on average', (b) => `${(100 * b.value.meanWoodMoisture).toFixed(1)}%`),
      row('Energy of the machine in a day', (b) => `${b.value.energyKWhPerDay.toFixed(1)} kWh`),
    ],
  };
}

function changes({ search }: DistributionWorkedOut): Block[] {
  if (search === undefined || search.changes.length === 0) return [];
  const { present } = search;
  const row = (name: string, one: typeof present | (typeof search.changes)[number]): Cell[] => [
    cell({ text: name }),
    cell(figure(percent(one.dampestRelativeHumidity))),
    cell(figure(`${one.energyKWhPerDay.toFixed(1)} kWh`)),
    cell(figure(`$${Math.round(one.costCents / 100)}`)),
  ];
  return [
    {
      kind: 'table',
      caption: 'What one change alone buys',
      compact: true,
      columns: [
        { title: 'Change', weight: 46 },
        { title: 'Dampest part', weight: 18, align: 'end' },
        { title: 'Energy a day', weight: 18, align: 'end' },
        { title: 'Usual price', weight: 18, align: 'end' },
      ],
      rows: [row('As found', present), ...search.changes.map((c) => row(changeWords(c.kind), c))],
    },
  ];
}

function suggested(shown: DistributionWorkedOut, say: PlaceWords): Block[] {
  const { search, found } = shown;
  if (search === undefined) return [];
  const { suggested: next, present, screened, excludedByRule } = search;
  const rules = excludedByRule.map(({ rule, count }) => `${RULE_WORDS[rule] ?? rule} (${count})`);
  const left =
    rules.length === 0 ? [] : [paragraph(`Places left out by rules: ${rules.join(', ')}.`, 'note')];
  const rank = paragraph(
    `As found it ranks ${present.rank} of ${screened} arrangements that were worked out.`,
  );
  if (next === undefined) return [rank, ...left];
  return [
    heading(3, 'A better arrangement', 'air-suggested'),
    { kind: 'list', items: stepsBetween(found, next, say).map((step) => words(step)) },
    paragraph(
      `Then the far end has ${ranged(next.ranges.farEndRelativeHumidity)} in place of ${ranged(found.ranges.farEndRelativeHumidity)}. The machine runs ${ranged(next.ranges.duty)} of the time: ${OUTCOME_WORDS[next.value.outcome] ?? next.value.outcome}. Work and material about $${Math.round(next.costCents / 100)} at usual prices.`,
    ),
    rank,
    ...left,
  ];
}

function limits({ limits: said, notices, fit, mixing }: DistributionWorkedOut): Block[] {
  const fitted =
    fit.outcome === 'not-fitted'
      ? fit.why
      : `Fitted to ${fit.residuals.length} readings, which differ from the model by ${(100 * fit.misfit).toFixed(1)} points; before by ${(100 * fit.misfitBefore).toFixed(1)}.`;
  return [
    heading(3, 'What these maps can say', 'air-limits'),
    {
      kind: 'list',
      items: [
        ...said.map((n) => words(plain(n.message))),
        [{ text: `Mixing ${decimals(mixing, 4)} m²/s: ` }, soft(mixing.origin.note ?? '')],
        words(plain(fitted)),
        ...notices.map((n) => words(plain(n.message))),
      ],
    },
  ];
}

/** Where the dry air goes, as found and as it could: maps on one scale, figures with their range, limits. */
export function air(job: Job, assessment: Assessment): Section | undefined {
  const { distribution } = assessment;
  if (distribution === undefined) return undefined;
  const title = heading(2, 'Where the dry air goes', 'air');
  if (distribution.outcome === 'missing') {
    return {
      id: 'air',
      title: title.text,
      from: 'distribution',
      blocks: [title, paragraph(plain(distribution.why))],
    };
  }
  const { found, search, day } = distribution;
  const say = placeWords(placeFinder(job, assessment));
  const next = search?.suggested;
  const { intakeRelativeHumidity: intake, farEndRelativeHumidity: far } = found.ranges;
  return {
    id: 'air',
    title: title.text,
    from: 'distribution',
    blocks: [
      title,
      paragraph(
        `On the ${day.title}, the intake of the dehumidifier reads ${ranged(intake)} while the far end of the floor has ${ranged(far)}.${found.value.signature ? ' It runs little and leaves a wet corner: its dry air does not get about.' : ''}`,
      ),
      paragraph(
        `Dehumidifier: ${machineWords(found.machine, say)}.${found.fans.map((f) => ` Fan: ${fanWords(f, say)}.`).join('')}`,
        'note',
      ),
      comparison(distribution),
      map(job, assessment, found, 'air-found', 'The air as found'),
      ...suggested(distribution, say),
      ...(next === undefined
        ? []
        : [map(job, assessment, next, 'air-suggested-map', 'The air as suggested')]),
      ...changes(distribution),
      ...limits(distribution),
    ],
  };
}
