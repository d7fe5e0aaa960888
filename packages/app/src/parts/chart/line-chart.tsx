import { useEffect, useRef, useState } from 'react';
import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { useSettings } from '../../settings/settings.ts';
import { LineKey, type LineLook } from './line-look.tsx';
import './chart.css';

export interface ChartLine {
  readonly label: string;
  readonly values: readonly number[];
  readonly look: LineLook;
}

/** A limit that is drawn across the chart, with its words on it. */
export interface ChartLimit {
  readonly value: number;
  readonly label: string;
}

/** A mark of the axis below, at a position counted in values. */
export interface ChartTick {
  readonly at: number;
  readonly label: string;
}

interface Drawn {
  readonly lines: readonly ChartLine[];
  readonly ticks: readonly ChartTick[];
  /** Unit at the axis on the left. */
  readonly unit: string;
  readonly limits?: readonly ChartLimit[];
  /** Lowest and highest value that the axis shows at least. */
  readonly range: readonly [low: number, high: number];
  readonly tall?: boolean | undefined;
}

/** A new array in place of one of these draws anew. */
interface LineChartProps extends Drawn {
  /** Summary for those who do not see it. */
  readonly label: string;
}

interface Paint {
  readonly ink: string;
  readonly soft: string;
  readonly line: string;
  readonly ground: string;
  readonly wetting: string;
  readonly drying: string;
  readonly fontPx: number;
  readonly family: string;
}

function paintOf(element: Element): Paint {
  const style = getComputedStyle(element);
  const token = (name: string) => style.getPropertyValue(name).trim();
  return {
    ink: token('--ink'),
    soft: token('--soft'),
    line: token('--line'),
    ground: token('--ground'),
    wetting: token('--wetting'),
    drying: token('--drying'),
    fontPx: Number.parseFloat(getComputedStyle(document.documentElement).fontSize) * 0.875,
    family: token('--figures') || 'sans-serif',
  };
}

/** Every nth tick, so that labels do not run into each other. */
function thinned(ticks: readonly ChartTick[], widthPx: number, fontPx: number): readonly ChartTick[] {
  const widest = Math.max(1, ...ticks.map((tick) => tick.label.length));
  const room = Math.max(1, Math.floor(widthPx / (fontPx * (0.62 * widest + 0.8))));
  const step = Math.ceil(ticks.length / room);
  return ticks.filter((_, i) => i % step === 0);
}

/** Limits across the chart, each with a core of ink in a halo of the ground. */
function drawLimits(chart: uPlot, limits: readonly ChartLimit[], paint: Paint): void {
  const { ctx, bbox } = chart;
  const ratio = devicePixelRatio;
  ctx.save();
  for (const { value } of limits) {
    const y = chart.valToPos(value, 'y', true);
    const rule = (color: string, width: number) => {
      ctx.strokeStyle = color;
      ctx.lineWidth = width * ratio;
      ctx.beginPath();
      ctx.moveTo(bbox.left, y);
      ctx.lineTo(bbox.left + bbox.width, y);
      ctx.stroke();
    };
    ctx.setLineDash([]);
    rule(paint.ground, 5);
    ctx.setLineDash([3 * ratio, 3 * ratio]);
    rule(paint.ink, 1.5);
  }
  ctx.restore();
}

/** The words of the limits, over the lines, at the right. */
function nameLimits(chart: uPlot, limits: readonly ChartLimit[], paint: Paint): void {
  const { ctx, bbox } = chart;
  const ratio = devicePixelRatio;
  ctx.save();
  ctx.font = `${paint.fontPx * ratio}px ${paint.family}`;
  ctx.textAlign = 'right';
  ctx.textBaseline = 'bottom';
  ctx.lineWidth = 5 * ratio;
  ctx.lineJoin = 'round';
  ctx.strokeStyle = paint.ground;
  ctx.fillStyle = paint.ink;
  for (const { value, label } of limits) {
    const at = [bbox.left + bbox.width - 2 * ratio, chart.valToPos(value, 'y', true) - 2 * ratio] as const;
    ctx.strokeText(label, ...at);
    ctx.fillText(label, ...at);
  }
  ctx.restore();
}

/** The unit above the axis on the left, upright. */
function drawUnit({ ctx, bbox }: uPlot, unit: string, paint: Paint): void {
  const ratio = devicePixelRatio;
  ctx.save();
  ctx.font = `${paint.fontPx * ratio}px ${paint.family}`;
  ctx.textAlign = 'right';
  ctx.textBaseline = 'bottom';
  ctx.fillStyle = paint.soft;
  ctx.fillText(unit, bbox.left - 4 * ratio, bbox.top - 0.6 * paint.fontPx * ratio);
  ctx.restore();
}

function seriesOf({ look, label }: ChartLine, paint: Paint, dense: boolean): uPlot.Series {
  const color = paint[look.color];
  return {
    label,
    stroke: color,
    width: dense ? Math.min(2, look.widthPx) : look.widthPx,
    dash: [...look.dash],
    points: {
      show: !dense && look.mark !== 'none',
      size: 9,
      width: 2,
      stroke: color,
      fill: look.mark === 'filled' ? color : paint.ground,
    },
  };
}

/** Above so many values there are no marks on a line. */
const DENSE = 40;

function optionsOf(props: Drawn, paint: Paint, widthPx: number): uPlot.Options {
  const { lines, limits = [], range, ticks, unit, tall } = props;
  const count = lines[0]?.values.length ?? 0;
  const values = lines.flatMap((line) => line.values);
  const low = Math.min(range[0], ...values);
  const high = Math.max(range[1], ...values);
  const font = `${paint.fontPx}px ${paint.family}`;
  const shown = thinned(ticks, widthPx - 4 * paint.fontPx, paint.fontPx);
  const axis = { stroke: paint.soft, font, ticks: { show: false } };
  return {
    width: widthPx,
    height: Math.round(Math.min(tall ? 340 : 250, Math.max(tall ? 270 : 200, widthPx * (tall ? 0.48 : 0.4)))),
    padding: [paint.fontPx * 1.6, 4, 0, 0],
    cursor: { show: false },
    legend: { show: false },
    scales: {
      x: { time: false, range: [-0.5, Math.max(0.5, count - 0.5)] },
      y: { range: [low, high + 0.04 * (high - low)] },
    },
    axes: [
      {
        ...axis,
        size: paint.fontPx * 2,
        gap: 4,
        grid: { show: false },
        splits: () => shown.map((tick) => tick.at),
        values: () => shown.map((tick) => tick.label),
      },
      {
        ...axis,
        size: paint.fontPx * 3.1,
        gap: 4,
        space: paint.fontPx * 1.7,
        grid: { stroke: paint.line, width: 1 },
      },
    ],
    series: [{}, ...lines.map((line) => seriesOf(line, paint, count > DENSE))],
    hooks: {
      drawAxes: [
        (chart) => {
          drawLimits(chart, limits, paint);
          drawUnit(chart, unit, paint);
        },
      ],
      draw: [(chart) => nameLimits(chart, limits, paint)],
    },
  };
}

/** Lines over months, days or hours. What it shows stands as words and as a table beside it: see `ChartFigure`. */
export function LineChart(props: LineChartProps) {
  const { label, lines, ticks, unit, limits, range, tall } = props;
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  // Colors and sizes come from the page; a change of either draws anew.
  const { ground, textSize } = useSettings();
  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    const observer = new ResizeObserver(([entry]) => setWidth(Math.floor(entry.contentRect.width)));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: ground and text size change what the page gives
  useEffect(() => {
    const element = place.current;
    if (element === null || width < 120) return;
    const count = lines[0]?.values.length ?? 0;
    const data = [Array.from({ length: count }, (_, i) => i), ...lines.map((line) => [...line.values])];
    const drawn = { lines, ticks, unit, range, tall, ...(limits === undefined ? {} : { limits }) };
    const make = () =>
      new uPlot(optionsOf(drawn, paintOf(element), width), data as uPlot.AlignedData, element);
    let chart = make();
    let gone = false;
    if (document.fonts.status !== 'loaded') {
      document.fonts.ready.then(() => {
        if (gone) return;
        chart.destroy();
        chart = make();
      });
    }
    return () => {
      gone = true;
      chart.destroy();
    };
  }, [lines, ticks, unit, limits, range, tall, width, ground, textSize]);
  return (
    <>
      <LineKey lines={lines} />
      <div ref={place} className="chart-canvas" role="img" aria-label={label} />
    </>
  );
}
