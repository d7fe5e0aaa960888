import type {
  ArrangementsShown,
  DistributionAssessment,
  DistributionWorkedOut,
  MachinePlacing,
  PlaceFinder,
  ReadingsFit,
} from '@undercroft/assessment';
import {
  changeWords,
  fanWords,
  machineWords,
  OUTCOME_WORDS,
  RULE_WORDS,
  stepsBetween,
} from '@undercroft/assessment';
import { noticeLines } from './notices.ts';
import { figureRange, placeWords, rangeText } from './print-air-words.ts';
import { percent, taped, tapedFrom } from './print-coverage.ts';
import { shownBoth, shownIn } from './quantities.ts';
import { heading, wrap } from './wrap.ts';

/** Changes of the dampest part that are listed. */
const CHANGES_TOLD = 8;

function foundLines({ found, day }: DistributionWorkedOut, place: PlaceFinder, columns: number): string[] {
  const { machine, fans, ranges, value } = found;
  const bays = value.bayCount === 1 ? 'The space is one bay' : `Dampest of ${value.bayCount} bays`;
  const { planCoefficient: coefficient } = ranges;
  const jet =
    machine.throwM === undefined
      ? ''
      : ` Its jet reaches ${taped(machine.throwM)}${machine.throwEndedBy === 'obstacle' || machine.throwEndedBy === 'outlet-blocked' ? ', where something is in its way' : ''}.`;
  return [
    ...heading(`As found, on the ${day.title}`),
    ...[
      `Dehumidifier: ${machineWords(machine, placeWords(place))}. Set to ${percent(machine.setRelativeHumidity)}; ${OUTCOME_WORDS[value.outcome] ?? value.outcome}.${jet}`,
      ...fans.map((fan) => `Fan: ${fanWords(fan, placeWords(place))}.`),
      `Its intake reads ${rangeText(ranges.intakeRelativeHumidity)} RH while the far end of the floor, ${tapedFrom(place.fromWalls(value.farEnd.at))}, has ${rangeText(ranges.farEndRelativeHumidity)}.`,
      `It runs ${rangeText(ranges.duty)} of the time; with mixed air it would run ${rangeText(ranges.mixedDuty)}.${value.signature ? ' Little running and a wet corner: its dry air does not get about.' : ''}`,
      `Floor above 60 % RH: ${rangeText(ranges.shareAbove60)}; above 70 %: ${rangeText(ranges.shareAbove70)}; above 80 %: ${rangeText(ranges.shareAbove80)}.`,
      `Dampest twentieth of the floor: ${rangeText(ranges.dampestRelativeHumidity)}, worst ${tapedFrom(place.fromWalls(value.dampest.at))}. ${bays}: ${percent(value.worstBay.relativeHumidity)}.`,
      `Reach: its drying fades over ${taped(ranges.reachM.low)} to ${taped(ranges.reachM.high)}; the farthest place is ${taped(value.farM)} away.`,
      coefficient === undefined
        ? 'Plan coefficient: none, since the machine removes nothing.'
        : `Plan coefficient: ${figureRange(coefficient, 2)}; 1 when the air of the whole plan reaches the humidistat. The year is run with it.`,
    ].flatMap((text) => wrap(text, columns, '  ')),
  ];
}

function excludedText({
  excluded,
  excludedByRule,
}: Pick<ArrangementsShown, 'excluded' | 'excludedByRule'>): string {
  const rules = excludedByRule.map(({ rule, count }) => `${RULE_WORDS[rule]} (${count})`);
  return rules.length === 0
    ? 'No place was left out by a rule.'
    : `Left out by rules: ${excluded.length} places or directions: ${rules.join(', ')}.`;
}

const dollars = (cents: number): string => `$${(cents / 100).toFixed(0)}`;

function searchLines(shown: DistributionWorkedOut, place: PlaceFinder, columns: number): string[] {
  const { search, found } = shown;
  if (search === undefined) return [];
  const { suggested, present, screened, changes } = search;
  const title = heading('A better arrangement');
  const rank = `As found it ranks ${present.rank} of ${screened} arrangements that were worked out.`;
  const better =
    suggested === undefined
      ? ['No change is suggested.']
      : [
          ...stepsBetween(found, suggested, placeWords(place)),
          `Then the far end has ${rangeText(suggested.ranges.farEndRelativeHumidity)} RH in place of ${rangeText(found.ranges.farEndRelativeHumidity)}, the dampest twentieth of the floor ${rangeText(suggested.ranges.dampestRelativeHumidity)}, and ${rangeText(suggested.ranges.shareAbove70)} of the floor is above 70 %.`,
          `The machine runs ${rangeText(suggested.ranges.duty)} of the time: ${OUTCOME_WORDS[suggested.value.outcome] ?? suggested.value.outcome}. Work and material: about ${dollars(suggested.costCents)} (usual prices).`,
        ];
  return [
    ...title,
    ...better.flatMap((text) => wrap(text, columns, '  ')),
    ...wrap(rank, columns, '  '),
    ...(changes.length === 0 ? [] : ['', ...wrap('What one change alone buys:', columns, '  ')]),
    ...changes
      .slice(0, CHANGES_TOLD)
      .flatMap((change) =>
        wrap(
          `${changeWords(change.kind)}: dampest part ${percent(change.dampestRelativeHumidity)} in place of ${percent(present.dampestRelativeHumidity)}, ${change.energyKWhPerDay.toFixed(1)} kWh a day in place of ${present.energyKWhPerDay.toFixed(1)}.`,
          columns,
          '  - ',
        ),
      ),
    ...wrap(excludedText(search), columns, '  '),
    ...noticeLines(search.notices, columns),
  ];
}

function fitText(fit: ReadingsFit): string {
  if (fit.outcome === 'not-fitted') return fit.why;
  const { mixingM2PerS: mixing, sourceStrength: sources, misfitBefore, misfit, used } = fit;
  const known = (figure: typeof mixing) => (figure.determined ? '' : ', undetermined');
  return `Fitted to ${fit.residuals.length} readings: mixing ${figureRange(mixing, 4)} m²/s${known(mixing)}; ground and wall sources ${figureRange(sources, 2)} of what was entered${known(sources)}. They differ from the model by ${(100 * misfit).toFixed(1)} points, ${(100 * misfitBefore).toFixed(1)} before. ${used ? 'The maps have the fitted mixing.' : 'The maps keep the assumed mixing.'}`;
}

function groundsLines(shown: DistributionWorkedOut, columns: number): string[] {
  const { mixing, fit, inputs, limits } = shown;
  const guesses = inputs.filter((i) => i.origin.kind === 'assumption');
  return [
    ...heading('What it rests on'),
    ...wrap(`Mixing ${figureRange(mixing, 4)} m²/s: ${mixing.origin.note ?? ''}.`, columns, '  '),
    ...wrap(fitText(fit), columns, '  '),
    ...(fit.outcome === 'fitted' ? noticeLines(fit.notices, columns) : []),
    ...(guesses.length === 0 ? [] : wrap('Taken, since nobody measured it:', columns, '  ')),
    ...guesses.flatMap(({ title, value, unit, origin }) => {
      const why = origin.note === undefined ? '' : ` ${origin.note}`;
      return wrap(`${title}: ${shownIn(value, unit)}.${why}`, columns, '  - ');
    }),
    ...heading('Limits'),
    ...limits.flatMap(({ message }) => wrap(message, columns, '  - ')),
    ...noticeLines(shown.notices, columns),
  ];
}

function waterLines({ found }: DistributionWorkedOut, columns: number): string[] {
  const rows = found.value.water.filter(({ kgPerDay }) => Math.abs(kgPerDay) >= 0.05);
  const text = rows.map(({ what, kgPerDay }) => `${what} ${shownBoth(kgPerDay, 'massFlow')}`).join('; ');
  return rows.length === 0 ? [] : wrap(`Water: ${text}.`, columns, '  ');
}

/** Arrangements of a machine to be set that are listed. */
const PLACES_TOLD = 5;

/** Where a machine that is still to be set would stand best. */
function placingLines(placing: MachinePlacing, place: PlaceFinder, columns: number): string[] {
  const { suggested, ranked, screened, machine, day, limits, notices } = placing;
  const best =
    suggested === undefined
      ? ['No place meets all rules.']
      : [
          `${machine}: ${machineWords(suggested.machine, placeWords(place))}, set to ${percent(suggested.machine.setRelativeHumidity)}.`,
          ...suggested.fans.map((fan) => `Fan: ${fanWords(fan, placeWords(place))}.`),
          `Then its intake reads ${rangeText(suggested.ranges.intakeRelativeHumidity)} RH, the far end of the floor has ${rangeText(suggested.ranges.farEndRelativeHumidity)}, and ${rangeText(suggested.ranges.shareAbove70)} of the floor is above 70 %.`,
          `It runs ${rangeText(suggested.ranges.duty)} of the time: ${OUTCOME_WORDS[suggested.value.outcome] ?? suggested.value.outcome}.`,
        ];
  return [
    ...heading('Where to stand the new machine'),
    ...wrap(`In the space with all repairs done, on the ${day.title}.`, columns, '  '),
    ...best.flatMap((text) => wrap(text, columns, '  ')),
    ...wrap(`${screened} arrangements were worked out. The best of them:`, columns, '  '),
    ...ranked.slice(0, PLACES_TOLD).flatMap((one) => {
      const fans =
        one.fans.length === 0 ? '' : `, ${one.fans.length} ${one.fans.length === 1 ? 'fan' : 'fans'}`;
      return wrap(
        `${machineWords(one.machine, placeWords(place))}, set to ${percent(one.machine.setRelativeHumidity)}${fans}: dampest part ${percent(one.dampestRelativeHumidity)}, ${one.energyKWhPerDay.toFixed(1)} kWh a day.`,
        columns,
        '  - ',
      );
    }),
    ...wrap(excludedText(placing), columns, '  '),
    ...heading('Limits'),
    ...limits.flatMap(({ message }) => wrap(message, columns, '  - ')),
    ...noticeLines(notices, columns),
  ];
}

/** Where the dry air goes and how to arrange the machine better, for people at a terminal. */
export function airLines(shown: DistributionAssessment, place: PlaceFinder, columns: number): string[] {
  if (shown.outcome === 'missing') {
    const { why, placing } = shown;
    const places = placing === undefined ? [] : placingLines(placing, place, columns);
    return [...wrap(why, columns, '  '), ...places];
  }
  return [
    ...foundLines(shown, place, columns),
    ...waterLines(shown, columns),
    ...searchLines(shown, place, columns),
    ...groundsLines(shown, columns),
  ];
}
