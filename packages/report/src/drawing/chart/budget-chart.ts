import type { BudgetPath, BudgetResult } from '@undercroft/assessment';
import { units } from '@undercroft/engine';
import { typeset } from '../../words/quantities.ts';
import { area, type Drawing, type Item, line, type Room, type Spot, type TextItem } from '../display-list.ts';
import { hatchLines } from '../hatch.ts';
import { breakText, textWidth } from '../text-width.ts';

/** Water of one bar [kg/day] with its range; `rest` is what the paths leave unexplained. */
type Bar = Pick<BudgetPath, 'title' | 'kgPerDay' | 'low' | 'high' | 'assumed'> & { readonly rest?: boolean };

/** Paths below this are named under the chart instead of drawn [kg/day]; a bar would be thinner than its outline. */
const SMALLEST_BAR = 0.05;

/** A smaller path is drawn all the same where its range reaches this share of the largest flow. */
const LARGE_DOUBT = 0.1;

/** Pints of water in a kilogram, US. */
const PINTS = units.convert(1, 'kg/day', 'pint/day');

/** Wetting paths by size, then drying paths by size, then what stays open. */
function barsOf(budget: BudgetResult): { readonly bars: Bar[]; readonly small: string[] } {
  const largest = Math.max(0, ...budget.paths.map((p) => Math.abs(p.kgPerDay)));
  const drawn = budget.paths.filter(
    (p) =>
      Math.abs(p.kgPerDay) >= SMALLEST_BAR ||
      Math.max(Math.abs(p.low), Math.abs(p.high)) >= Math.max(SMALLEST_BAR, LARGE_DOUBT * largest),
  );
  const left = budget.unexplainedKgPerDay;
  const rest: Bar[] =
    Math.abs(left) < SMALLEST_BAR
      ? []
      : [
          {
            title: 'Not explained, or stored',
            kgPerDay: left,
            low: left,
            high: left,
            assumed: true,
            rest: true,
          },
        ];
  return {
    bars: [...[...drawn].sort((a, b) => b.kgPerDay - a.kgPerDay), ...rest],
    small: budget.paths.filter((p) => !drawn.includes(p)).map((p) => p.title),
  };
}

interface Axis {
  /** Position of a flow [kg/day]. */
  readonly at: (kgPerDay: number) => number;
  /** Marks [pint/day]. */
  readonly ticks: readonly number[];
}

function axisOf(bars: readonly Bar[], left: number, right: number): Axis {
  const pints = bars.flatMap((b) => [b.low * PINTS, b.high * PINTS, b.kgPerDay * PINTS]);
  const low = Math.min(0, ...pints);
  const high = Math.max(0.1, ...pints);
  const rough = (high - low) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((m) => m * power >= rough) ?? 10) * power;
  const first = Math.floor(low / step);
  const last = Math.ceil(high / step);
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => (first + i) * step);
  const span = ticks[ticks.length - 1] - ticks[0];
  return { at: (kg) => left + ((kg * PINTS - ticks[0]) / span) * (right - left), ticks };
}

function bar(b: Bar, axis: Axis, middle: number, unit: number): Item[] {
  const [zero, end] = [axis.at(0), axis.at(b.kgPerDay)];
  const half = 4 * unit;
  const outline: Spot[] = [
    { x: zero, y: middle - half },
    { x: end, y: middle - half },
    { x: end, y: middle + half },
    { x: zero, y: middle + half },
  ];
  const color = b.rest === true ? 'soft' : b.kgPerDay >= 0 ? 'wetting' : 'drying';
  const fill: Item[] =
    b.rest === true
      ? []
      : b.kgPerDay >= 0
        ? [area(outline, { fill: color })]
        : [
            area(outline, { fill: 'sheet' }),
            ...hatchLines(outline, 60, 2.4 * unit, { color, width: 0.8 * unit }),
          ];
  const dash = b.assumed ? { dash: [2.6 * unit, 1.6 * unit] } : {};
  const edge = area(outline, { stroke: { color: 'ink', width: 0.7 * unit, ...dash } });
  return [...fill, edge, ...(b.rest === true ? [] : whisker(b, axis, middle, unit))];
}

function whisker(b: Bar, axis: Axis, middle: number, unit: number): Item[] {
  const [low, high] = [axis.at(b.low), axis.at(b.high)];
  const stroke = { color: 'ink', width: 0.8 * unit } as const;
  const halo = { color: 'sheet', width: 2 * unit } as const;
  const cap = (x: number) =>
    line(
      [
        { x, y: middle - 2.2 * unit },
        { x, y: middle + 2.2 * unit },
      ],
      stroke,
    );
  const rule = [
    { x: low, y: middle },
    { x: high, y: middle },
  ];
  return [line(rule, halo), line(rule, stroke), cap(low), cap(high)];
}

function flowText(kgPerDay: number): string {
  const us = units.formatQuantity(kgPerDay, 'massFlow', 'us', 1).replace('/day', '');
  const si = units.formatQuantity(kgPerDay, 'massFlow', 'si', 2).replace('/day', '');
  return typeset(`${us} (${si})`);
}

/**
 * The moisture balance as bars: what brings water to the right, what carries it off to the left, each with its range, its
 * likely value in figures, and a dashed outline where a guess went in. On a narrow room titles stand above their bars.
 */
export function budgetChart(budget: BudgetResult, title: string, room: Room): Drawing {
  const unit = room.textSize / 7.2;
  const narrow = room.width < 420 * unit;
  const { bars, small } = barsOf(budget);
  const size = room.textSize;
  const valueWidth =
    Math.max(60 * unit, ...bars.map((b) => textWidth(flowText(b.kgPerDay), size))) + 8 * unit;
  const titleWidth = narrow ? 0 : Math.min(room.width * 0.34, 190 * unit);
  const left = titleWidth + 4 * unit;
  const right = room.width - (narrow ? 6 * unit : valueWidth);
  const axis = axisOf(bars, left, right);
  const text = (at: Spot, words: string, rest: Partial<TextItem> = {}): Item => ({
    kind: 'text',
    at,
    text: words,
    size,
    color: 'ink',
    align: 'start',
    face: 'figures',
    ...rest,
  });
  const top = 14 * unit;
  const items: Item[] = [];
  let y = top;
  const rows = bars.map((b) => {
    const lines = narrow ? [b.title] : breakText(b.title, titleWidth - 4 * unit, size);
    const height = narrow ? 27 * unit : Math.max(15, lines.length * 8.4 + 6) * unit;
    const row = { b, lines, y, height };
    y += height;
    return row;
  });
  for (const tick of axis.ticks) {
    const x = axis.at(tick / PINTS);
    const color = tick === 0 ? 'ink' : 'rule';
    items.push(
      line(
        [
          { x, y: top - 2 * unit },
          { x, y },
        ],
        { color, width: (tick === 0 ? 0.9 : 0.5) * unit },
      ),
      text({ x, y: y + 9 * unit }, typeset(String(Number(tick.toPrecision(6)))), {
        align: 'middle',
        color: 'soft',
      }),
    );
  }
  for (const row of rows) {
    const { b } = row;
    if (narrow) {
      items.push(
        ...bar(b, axis, row.y + 18 * unit, unit),
        text({ x: 0, y: row.y + 9 * unit }, b.title),
        text({ x: room.width, y: row.y + 9 * unit }, flowText(b.kgPerDay), { align: 'end' }),
      );
      continue;
    }
    const middle = row.y + row.height / 2;
    const first = middle - ((row.lines.length - 1) * 8.4 * unit) / 2 + 2.6 * unit;
    items.push(
      ...bar(b, axis, middle, unit),
      ...row.lines.map((l, i) => text({ x: 0, y: first + i * 8.4 * unit }, l)),
      text({ x: room.width, y: middle + 2.6 * unit }, flowText(b.kgPerDay), { align: 'end' }),
    );
  }
  items.push(text({ x: room.width, y: top - 5 * unit }, 'per day', { align: 'end', color: 'soft' }));
  items.push(
    text({ x: (left + right) / 2, y: y + 19 * unit }, 'pint/day', { align: 'middle', color: 'soft' }),
  );
  const names =
    small.length === 0 ? [] : breakText(`Next to nothing: ${small.join('; ')}.`, room.width, size);
  names.forEach((l, i) => {
    items.push(text({ x: 0, y: y + (30 + i * 9) * unit }, l, { color: 'soft' }));
  });
  return {
    width: room.width,
    height: y + (22 + (names.length === 0 ? 0 : names.length * 9 + 6)) * unit,
    title: `Water balance, ${title}`,
    description: `Bars of water per day by path: ${bars.map((b) => `${b.title} ${flowText(b.kgPerDay)}`).join('; ')}. The table gives the same figures with their ranges.`,
    items: [{ kind: 'layer', name: 'bars', items }],
  };
}
