import type { CoverageAssessment, PictureView } from '@undercroft/assessment';
import type { Point } from '@undercroft/record';
import { useId } from 'react';
import './picture-layer.css';
import { At, type Projection, useProjection } from '../../plan/projection.tsx';

const pathOf = (ring: readonly Point[], at: Projection['at']) =>
  `M${ring
    .map(at)
    .map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`)
    .join('L')}Z`;

/** The floor that a picture shows, without what lies in the shadow of low things. */
export function ViewOnPlan({ view }: { readonly view: PictureView }) {
  const { at } = useProjection();
  return (
    <g className="picture-view">
      {view.regions
        .filter(({ polygon }) => polygon.length > 2)
        .map((region) => {
          const path = pathOf(region.polygon, at);
          return <Region key={path} path={path} shadows={region.shadows.map((ring) => pathOf(ring, at))} />;
        })}
    </g>
  );
}

/** Further than any plan reaches [px]. */
const FAR_PX = 100_000;

function Region({ path, shadows }: { readonly path: string; readonly shadows: readonly string[] }) {
  const id = useId();
  const all = { x: -FAR_PX, y: -FAR_PX, width: 2 * FAR_PX, height: 2 * FAR_PX };
  return (
    <>
      <mask id={id} maskUnits="userSpaceOnUse" {...all}>
        <path d={path} fill="white" />
        {shadows.map((shadow) => (
          <path key={shadow} d={shadow} fill="black" />
        ))}
      </mask>
      <path className="lit" d={path} mask={`url(#${id})`} />
    </>
  );
}

/** Floor that no picture shows, hatched so that grey print keeps it. */
export function UnseenOnPlan({ unseen }: Pick<CoverageAssessment, 'unseen'>) {
  const { at } = useProjection();
  const hatch = useId();
  return (
    <g className="coverage">
      <defs>
        <pattern id={hatch} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V8" className="unseen-line" />
        </pattern>
      </defs>
      {unseen.map((part) => {
        const path = part.rings.map((ring) => pathOf(ring, at)).join('');
        return (
          <g key={`${part.at.xM} ${part.at.yM}`}>
            <path d={path} className="unseen-floor" fillRule="evenodd" />
            <path d={path} fill={`url(#${hatch})`} fillRule="evenodd" />
          </g>
        );
      })}
    </g>
  );
}

type Pictures = CoverageAssessment['pictures'];

interface StationsProps {
  readonly pictures: Pictures;
  /** Ids of those that are meant; the others stand back. */
  readonly meant: ReadonlySet<string>;
}

/** Marks nearer than this would lie over each other [px]. */
const APART_PX = 20;

/** Pictures in stacks of those that were taken at one place, as far as the scale tells them apart. */
function stacksOf(pictures: Pictures, pxPerM: number): Pictures[number][][] {
  const stacks: Pictures[number][][] = [];
  for (const picture of pictures) {
    const { xM, yM } = picture.at;
    const near = stacks.find(([{ at }]) => Math.hypot(at.xM - xM, at.yM - yM) * pxPerM < APART_PX);
    if (near === undefined) stacks.push([picture]);
    else near.push(picture);
  }
  return stacks;
}

/** `4`, or `4 +2` for a stack of three. */
const labelOf = (numbers: readonly number[]) =>
  numbers.length === 1 ? `${numbers[0]}` : `${numbers[0]} +${numbers.length - 1}`;

/** Where pictures were taken, each with its number; those that are meant stand out. */
export function StationsOnPlan({ pictures, meant }: StationsProps) {
  const { pxPerM } = useProjection();
  const isMeant = (stack: Pictures) => stack.some(({ id }) => meant.has(id));
  const stacks = stacksOf(pictures, pxPerM).sort((a, b) => Number(isMeant(a)) - Number(isMeant(b)));
  return (
    <g className="stations">
      {stacks.map((stack) => {
        const own = isMeant(stack) ? stack.filter(({ id }) => meant.has(id)) : stack;
        const label = labelOf(own.map(({ number }) => number));
        const half = Math.max(10, label.length * 4.5 + 3);
        return (
          <At key={stack[0].id} point={stack[0].at}>
            <g className={isMeant(stack) ? 'station is-meant' : 'station'}>
              {own.map(({ id, bearingDeg }) => (
                <path key={id} d="M-6 -8L0 -19L6 -8Z" transform={`rotate(${bearingDeg})`} className="nose" />
              ))}
              <rect x={-half} y="-10" width={2 * half} height="20" rx="10" />
              <text y="4.5" textAnchor="middle">
                {label}
              </text>
            </g>
          </At>
        );
      })}
    </g>
  );
}
