import type { SeasonCaseResult } from '@undercroft/assessment';
import { climate } from '@undercroft/engine';
import { type Drawing, type Item, line, type Room, type Spot, type TextItem } from '../display-list.ts';

/** Lines that decide: usual upper alarm, watch, and where mold begins in time. */
const THRESHOLDS = [0.6, 0.7, 0.8] as const;
const LOWEST = 0.3;

/** How each line is drawn, told apart in gray by its dashes and its markers. */
const STYLES = [
  { color: 'wetting', filled: true },
  { color: 'drying', dash: [5, 3], filled: false },
] as const;

/** Monthly mean relative humidity of one or two cases over the year, with the thresholds drawn and named. */
export function humidityYear(cases: readonly SeasonCaseResult[], room: Room): Drawing {
  const size = room.textSize;
  const left = 3 * size;
  const right = room.width - 3.2 * size;
  const top = 1.2 * size + cases.length * 1.5 * size;
  const bottom = top + 0.36 * (right - left);
  const x = (month: number) => left + ((month + 0.5) * (right - left)) / 12;
  const y = (humidity: number) => bottom - ((humidity - LOWEST) / (1 - LOWEST)) * (bottom - top);
  const words = (
    at: Spot,
    text: string,
    align: TextItem['align'],
    color: TextItem['color'] = 'soft',
  ): TextItem => ({
    kind: 'text',
    at,
    text,
    size: 0.9 * size,
    color,
    align,
    face: 'figures',
  });
  const items: Item[] = [
    line(
      [
        { x: left, y: bottom },
        { x: right, y: bottom },
      ],
      { color: 'ink', width: 0.06 * size },
    ),
    ...[0.4, 0.5, 0.9, 1].map((h) =>
      line(
        [
          { x: left, y: y(h) },
          { x: right, y: y(h) },
        ],
        { color: 'rule', width: 0.04 * size },
      ),
    ),
    ...[0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1].map((h) =>
      words({ x: left - 0.4 * size, y: y(h) + 0.3 * size }, `${Math.round(100 * h)}`, 'end'),
    ),
    ...THRESHOLDS.flatMap((h) => [
      line(
        [
          { x: left, y: y(h) },
          { x: right, y: y(h) },
        ],
        { color: 'ink', width: 0.09 * size },
      ),
      words({ x: right + 0.3 * size, y: y(h) + 0.3 * size }, `${Math.round(100 * h)} %`, 'start', 'ink'),
    ]),
    ...climate.MONTH_NAMES.map((name, m) =>
      words({ x: x(m), y: bottom + 1.3 * size }, name.slice(0, room.width < 40 * size ? 1 : 3), 'middle'),
    ),
  ];
  cases.forEach((one, i) => {
    const style = STYLES[i % STYLES.length];
    const spots = one.months.map((month, m) => ({ x: x(m), y: y(Math.max(LOWEST, month.relativeHumidity)) }));
    const stroke = {
      color: style.color,
      width: 0.18 * size,
      ...('dash' in style ? { dash: style.dash.map((d) => (d * size) / 8) } : {}),
    };
    const marker = (at: Spot): Item => ({
      kind: 'circle',
      at,
      radius: 0.3 * size,
      fill: style.filled ? style.color : 'sheet',
      stroke: { color: style.color, width: 0.14 * size },
    });
    const key = 1.1 * size + i * 1.5 * size;
    items.push(line(spots, stroke), ...spots.map(marker));
    items.push(
      line(
        [
          { x: left, y: key - 0.3 * size },
          { x: left + 3 * size, y: key - 0.3 * size },
        ],
        stroke,
      ),
    );
    items.push(
      marker({ x: left + 1.5 * size, y: key - 0.3 * size }),
      words({ x: left + 3.6 * size, y: key }, one.name, 'start', 'ink'),
    );
  });
  return {
    width: room.width,
    height: bottom + 2 * size,
    title: 'Relative humidity through the year',
    description: cases
      .map(
        (c) =>
          `${c.name}: ${c.months.map((m, i) => `${climate.MONTH_NAMES[i]} ${Math.round(100 * m.relativeHumidity)} %`).join(', ')}.`,
      )
      .join(' '),
    items,
  };
}
