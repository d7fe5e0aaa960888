import type { CausesAssessment, NextMeasurementShown } from '@undercroft/assessment';
import { causes as engine, units } from '@undercroft/engine';
import { shownIn } from './quantities.ts';
import { heading, wrap } from './wrap.ts';

const percent = (share: number) => units.formatQuantity(share, 'relativeHumidity', 'us').replace(' ', '');
const lower = (text: string) => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
const named = (key: Parameters<typeof engine.causeNode>[0]) => lower(engine.causeNode(key).title);

/** What was found, and its explanations that are likely enough to be drawn, each with what speaks against it. */
function findingLines(of: CausesAssessment, columns: number): string[] {
  return of.observations.flatMap((o) => {
    const likely = of.arrows.filter((a) => a.to === o.key && a.number !== undefined);
    const told = likely.map((a) => {
      const proof = {
        supported: '',
        disputed: ', disputed',
        contradicted: ', spoken against',
        'not-shown': ', not shown',
      };
      return `${named(a.from)} ${percent(a.weight)}${proof[a.standing]}`;
    });
    return wrap(`${o.title}: ${told.join('; ')}`, columns, '  - ');
  });
}

function outcomeWords({ unit }: NextMeasurementShown, o: NextMeasurementShown['outcomes'][number]): string {
  if (o.answer !== undefined) return o.answer ? 'yes' : 'no';
  if (o.from === undefined) return `below ${shownIn(o.below ?? 0, unit)}`;
  return o.below === undefined
    ? `from ${shownIn(o.from, unit)}`
    : `${shownIn(o.from, unit)} to ${shownIn(o.below, unit)}`;
}

/** The first measurement to take, and what each outcome would make the likeliest. */
function nextLines([first]: CausesAssessment['next'], columns: number): string[] {
  if (first === undefined) return [];
  const outcomes = first.outcomes.map(
    (o) => `${outcomeWords(first, o)}: ${lower(o.leads.title)} ${percent(o.leads.weight)}`,
  );
  return [
    ...wrap(`Measure next: ${lower(first.title)}. ${first.how}`, columns, '  > '),
    ...wrap(`${outcomes.join('; ')}.`, columns, '    '),
  ];
}

/** Why the space is as it was found, in a few lines. */
export function causesLines(of: CausesAssessment, columns: number): string[] {
  const follows = of.consequences.map((c) => lower(c.title));
  return [
    ...heading('Why it is so'),
    ...wrap(of.headline, columns),
    ...findingLines(of, columns),
    ...(follows.length === 0 ? [] : wrap(`May follow: ${follows.join('; ')}`, columns, '  - ')),
    ...nextLines(of.next, columns),
  ];
}
