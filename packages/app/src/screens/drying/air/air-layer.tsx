import type { Point } from '@undercroft/record';
import { useId } from 'react';
import { At, useProjection } from '../../../plan/projection.tsx';
import type { AirShown } from '../../../worker/api.ts';
import type { Arranged, Blower } from './arranged.ts';

type Rings = AirShown['contours']['lines'][number]['rings'];

interface AirLayerProps {
  readonly corners: readonly Point[];
  readonly air: AirShown | null;
  readonly arranged: Arranged;
  readonly chosen: number;
  readonly dampest: string;
  /** A value of the map in words. */
  readonly valueText: (value: number) => string;
}

/** Relative humidity over the plan in bands, the lines that decide, and what blows. */
export function AirLayer({ corners, air, arranged, chosen, dampest, valueText }: AirLayerProps) {
  const { at } = useProjection();
  const clip = useId();
  const path = (rings: Rings) =>
    rings
      .map(
        (ring) =>
          `M${ring
            .map(at)
            .map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`)
            .join('L')}Z`,
      )
      .join('');
  const outline = path([corners]);
  const { machine, fans } = arranged;
  return (
    <g className="air-layer">
      <clipPath id={clip}>
        <path d={outline} />
      </clipPath>
      {air !== null && (
        <g clipPath={`url(#${clip})`}>
          <g className="air-bands">
            <path d={outline} fill={air.contours.lowest} />
            {air.contours.bands.map(({ from, color, rings }) => (
              <path key={from} d={path(rings)} fill={color} fillRule="evenodd" />
            ))}
          </g>
          {air.doubtful?.map((rings, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: least and most mixing, in this order
            <path key={i} d={path(rings)} className="air-line doubt" />
          ))}
          {air.contours.lines.map(({ value, rings }) => (
            <g key={value}>
              <path d={path(rings)} className="air-halo" />
              <path d={path(rings)} className="air-line" />
            </g>
          ))}
        </g>
      )}
      {air?.contours.lines.map(({ value, rings }) => (
        <LineLabel key={value} rings={rings} text={valueText(value)} corners={corners} />
      ))}
      {air !== null && (
        <At point={air.dampestAt}>
          <text className="air-label" y="-10" textAnchor="middle">
            {dampest}
          </text>
          <path d="M-5 0H5M0 -5V5" className="air-cross" />
        </At>
      )}
      {machine.ductTo !== null && <Duct from={machine.at} to={machine.ductTo} />}
      {fans.map((fan, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: fans are known by their number
        <BlowerMark key={i} blower={fan} isChosen={chosen === i + 1} text={String(i + 1)} round />
      ))}
      <BlowerMark blower={machine} isChosen={chosen === 0} noJet={machine.ductTo !== null} />
    </g>
  );
}

function Duct({ from, to }: { readonly from: Point; readonly to: Point }) {
  const { at } = useProjection();
  const [a, b] = [at(from), at(to)];
  return (
    <>
      <path d={`M${a.x} ${a.y}L${b.x} ${b.y}`} className="air-halo" />
      <path d={`M${a.x} ${a.y}L${b.x} ${b.y}`} className="air-duct" />
      <circle cx={b.x} cy={b.y} r="6" className="air-body" />
    </>
  );
}

interface BlowerMarkProps {
  readonly blower: Blower;
  readonly isChosen: boolean;
  readonly text?: string;
  readonly round?: boolean;
  readonly noJet?: boolean;
}

/** A machine or a fan with the way it blows. */
function BlowerMark({ blower, isChosen, text, round, noJet }: BlowerMarkProps) {
  return (
    <At point={blower.at}>
      <g className={isChosen ? 'blower chosen' : 'blower'}>
        {isChosen && <circle r="24" className="air-chosen" />}
        {noJet !== true && (
          <g transform={`rotate(${blower.bearingDeg})`}>
            <path d="M0 -12V-44M-7 -36L0 -46L7 -36" className="air-halo" />
            <path d="M0 -12V-44M-7 -36L0 -46L7 -36" className="air-jet" />
          </g>
        )}
        {round === true ? (
          <circle r="11" className="air-body" />
        ) : (
          <rect x="-12" y="-12" width="24" height="24" className="air-body" />
        )}
        {text !== undefined && (
          <text y="4.5" textAnchor="middle" className="air-number">
            {text}
          </text>
        )}
      </g>
    </At>
  );
}

/** The value of a line, once, where its longest ring runs within the walls. */
function LineLabel({
  rings,
  text,
  corners,
}: {
  readonly rings: Rings;
  readonly text: string;
  readonly corners: readonly Point[];
}) {
  const [longest = []] = [...rings].sort((a, b) => b.length - a.length);
  const xs = corners.map((p) => p.xM);
  const ys = corners.map((p) => p.yM);
  const inside = longest.filter(
    (p) =>
      p.xM > Math.min(...xs) + 0.5 &&
      p.xM < Math.max(...xs) - 0.5 &&
      p.yM > Math.min(...ys) + 0.5 &&
      p.yM < Math.max(...ys) - 0.5,
  );
  const at = inside[Math.floor(inside.length / 2)];
  if (at === undefined) return null;
  return (
    <At point={at}>
      <text className="air-label" y="5" textAnchor="middle">
        {text}
      </text>
    </At>
  );
}
