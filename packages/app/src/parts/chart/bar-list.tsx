import { type ReactNode, useId } from 'react';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import './bar-list.css';

/** One bar: a value with its range, its words, and what it rests on. */
export interface Bar {
  readonly key: string;
  readonly title: string;
  /** The value with its unit, as it is read. */
  readonly shown: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** True where a guess went in: dashed outline, dashed underline and a word. */
  readonly assumed?: boolean;
  /** `wetting` is solid, `drying` hatched, `open` an empty outline. */
  readonly look: 'wetting' | 'drying' | 'open';
  readonly why?: ReactNode;
}

interface BarListProps {
  readonly bars: readonly Bar[];
  /** Ends of the scale; without them the bars with their ranges fill the width. */
  readonly scale?: readonly [low: number, high: number];
}

function scaleOf({ bars, scale }: BarListProps): readonly [number, number] {
  if (scale !== undefined) return scale;
  const ends = bars.flatMap(({ value, low = value, high = value }) => [low, high, value]);
  const [least, most] = [Math.min(0, ...ends), Math.max(0, ...ends)];
  return most > least ? [least, most] : [0, 1];
}

interface DrawnBarProps {
  readonly bar: Bar;
  readonly scale: readonly [number, number];
  readonly hatch: string;
}

/** The bar itself. Its title and value stand in words beside it. */
function DrawnBar({ bar, scale: [least, most], hatch }: DrawnBarProps) {
  const at = (value: number) => Math.min(100, Math.max(0, (100 * (value - least)) / (most - least)));
  const percent = (value: number) => `${at(value)}%`;
  const { value, low = value, high = value, look, assumed } = bar;
  const from = Math.min(at(0), at(value));
  const fill = look === 'wetting' ? 'var(--wetting)' : look === 'drying' ? `url(#${hatch})` : 'none';
  return (
    <svg className="bar" width="100%" height="20" aria-hidden="true">
      <rect
        x={`${from}%`}
        y="3"
        width={`${Math.abs(at(value) - at(0))}%`}
        height="14"
        fill={fill}
        stroke={look === 'drying' ? 'var(--drying)' : 'var(--ink)'}
        strokeWidth="1.5"
        {...(assumed ? { strokeDasharray: '5 3' } : {})}
      />
      <line x1={percent(0)} x2={percent(0)} y1="0" y2="20" stroke="var(--edge)" strokeWidth="2" />
      {high > low && (
        <>
          <line x1={percent(low)} x2={percent(high)} y1="10" y2="10" stroke="var(--sheet)" strokeWidth="5" />
          <line x1={percent(low)} x2={percent(high)} y1="10" y2="10" stroke="var(--ink)" strokeWidth="2" />
          <line x1={percent(low)} x2={percent(low)} y1="5" y2="15" stroke="var(--ink)" strokeWidth="2" />
          <line x1={percent(high)} x2={percent(high)} y1="5" y2="15" stroke="var(--ink)" strokeWidth="2" />
        </>
      )}
    </svg>
  );
}

function BarHead({ bar }: { readonly bar: Bar }) {
  const common = useTexts(commonTexts);
  return (
    <>
      <span>{bar.title}</span>
      <span className="bar-value">
        <strong className={`figure${bar.assumed ? ' assumed' : ''}`}>{bar.shown}</strong>
        {bar.assumed && <span className="hidden-text">{common('assumed')}</span>}
        {bar.why !== undefined && <span className="bar-why">{common('why')}</span>}
      </span>
    </>
  );
}

/**
 * Values as bars, one below the other, each with its range as a thin line. A bar that can be asked why opens what it
 * rests on.
 */
export function BarList(props: BarListProps) {
  const hatch = useId();
  const scale = scaleOf(props);
  return (
    <>
      <svg width="0" height="0" className="bar-patterns" aria-hidden="true">
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M1.5 0v6" stroke="var(--drying)" strokeWidth="3" />
        </pattern>
      </svg>
      <ul className="bar-list">
        {props.bars.map((bar) => (
          <li key={bar.key}>
            {bar.why === undefined ? (
              <div className="bar-row">
                <BarHead bar={bar} />
                <DrawnBar bar={bar} scale={scale} hatch={hatch} />
              </div>
            ) : (
              <details className="why">
                <summary className="bar-row">
                  <BarHead bar={bar} />
                  <DrawnBar bar={bar} scale={scale} hatch={hatch} />
                </summary>
                <div>{bar.why}</div>
              </details>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}
