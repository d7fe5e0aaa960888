import { type calculators, units } from '@undercroft/engine';
import { EXAMPLES } from './examples.ts';
import { shownBoth } from './quantities.ts';
import { columnsOf, wrap } from './wrap.ts';

const isDimension = (name: string): name is units.Dimension =>
  units.dimensionNames.includes(name as units.Dimension);

/** Limits and defaults are round numbers; four digits show them. */
function plain(value: number, dimension: units.Dimension, system: units.UnitSystem): string {
  const { canonical, units: known, [system]: shown } = units.dimensions[dimension];
  const number = Number(units.convert(value, canonical, shown.unit).toPrecision(4));
  const symbol = known.find((u) => u.name === shown.unit)?.symbol ?? shown.unit;
  return symbol === '%' || symbol === '' ? `${number}${symbol}` : `${number} ${symbol}`;
}

function plainBoth(values: readonly number[], dimension: units.Dimension): string {
  const [us, si] = (['us', 'si'] as const).map((s) => values.map((v) => plain(v, dimension, s)).join(' to '));
  return us === si ? us : `${us} (${si})`;
}

function inputMeaning(input: calculators.CalculatorInput): string {
  if (input.dimension === 'text') return input.title;
  if (input.dimension === 'choice') {
    const optional = input.default === undefined ? '' : `; ${input.default} when left out`;
    return `${input.title}: ${input.choices.join(', ')}${optional}`;
  }
  const { title, dimension, min, max } = input;
  const optional =
    input.default === undefined ? '' : `; ${plainBoth([input.default], dimension)} when left out`;
  return `${title}, ${plainBoth([min, max], dimension)}${optional}`;
}

/** What a calculator asks for and answers. */
export function calculatorLines(calculator: calculators.Calculator, columns: number): string[] {
  const example = EXAMPLES[calculator.name];
  return [
    ...wrap(calculator.answers, columns),
    '',
    `Usage: undercroft calc ${calculator.name} key=value ... [--json]`,
    ...columnsOf(
      calculator.inputs.map((i) => [`${i.key}=`, inputMeaning(i)]),
      columns,
    ),
    '',
    'It answers:',
    ...columnsOf(
      calculator.results.map((r) => [r.key, r.title]),
      columns,
    ),
    '',
    'Example:',
    ...wrap(`undercroft calc ${calculator.name} ${example}`, columns, '  '),
    '',
    'Sources:',
    ...calculator.sources.flatMap((s) => wrap(`${s.citation} (${s.provenance})`, columns, '  - ')),
  ];
}

/** What a calculator asks for and answers, as plain data; units are those of numbers without a unit. */
export function calculatorData(calculator: calculators.Calculator): unknown {
  const { name, title, answers, inputs, results, sources } = calculator;
  const unit = (dimension: string) =>
    isDimension(dimension) ? { unit: units.canonicalUnit(dimension) } : {};
  return {
    name,
    title,
    answers,
    inputs: inputs.map((i) => ({ ...i, ...unit(i.dimension) })),
    results: results.map((r) => ({ ...r, ...unit(r.dimension) })),
    sources,
  };
}

function shownResult(value: calculators.ResultValue, dimension: string, unit: string): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  if (!isDimension(dimension)) return `${Number(value.toPrecision(7))} ${unit}`.trim();
  return shownBoth(value, dimension);
}

/** An answer for people. */
export function answerLines(
  calculator: calculators.Calculator,
  answer: calculators.CalculatorAnswer,
  columns: number,
): string[] {
  const width = Math.max(...calculator.results.map((r) => r.title.length));
  const results = calculator.results.map((r) => {
    const { value, unit } = answer.results[r.key];
    return `${r.title.padEnd(width)}  ${shownResult(value, r.dimension, unit)}`;
  });
  return [...results, ...answer.notices.flatMap((n) => wrap(n.message, columns, 'Note: '))];
}
