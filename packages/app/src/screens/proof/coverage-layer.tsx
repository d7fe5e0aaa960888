import type { CoverageAssessment, CrawlPlanShown } from '@undercroft/assessment';
import type { Point } from '@undercroft/record';
import { At, useProjection } from '../../plan/projection.tsx';
import { UnseenOnPlan } from '../pictures/picture-layer.tsx';

/** View cones reach this far on the drawing at most [px], so that many pictures do not hide the plan. */
const CONE_PX = 46;

type Picture = CoverageAssessment['pictures'][number];

/** What no picture shows, over the plan: dark and hatched, so that grey print keeps it; and where pictures were taken. */
export function CoverageLayer({ coverage }: { readonly coverage: CoverageAssessment }) {
  return (
    <g className="coverage">
      <UnseenOnPlan unseen={coverage.unseen} />
      {coverage.pictures.map((picture) => (
        <At key={picture.id} point={picture.at}>
          <Station picture={picture} />
        </At>
      ))}
    </g>
  );
}

function conePath(fieldOfViewDeg: number): string {
  if (fieldOfViewDeg >= 359) return `M0 ${-CONE_PX}A${CONE_PX} ${CONE_PX} 0 1 1 -0.1 ${-CONE_PX}Z`;
  const half = (fieldOfViewDeg / 2) * (Math.PI / 180);
  const x = CONE_PX * Math.sin(half);
  const y = -CONE_PX * Math.cos(half);
  return `M0 0L${-x} ${y}A${CONE_PX} ${CONE_PX} 0 ${fieldOfViewDeg > 180 ? 1 : 0} 1 ${x} ${y}Z`;
}

function Station({ picture }: { readonly picture: Picture }) {
  return (
    <g className="station">
      <path
        d={conePath(picture.fieldOfViewDeg)}
        transform={`rotate(${picture.bearingDeg})`}
        className="cone"
      />
      <circle r="10" />
      <text y="4.5" textAnchor="middle">
        {picture.number}
      </text>
    </g>
  );
}

/** The way of a crawl with its stops; the one where somebody is stands out. */
export function RouteLayer({ plan, current }: { readonly plan: CrawlPlanShown; readonly current: number }) {
  const { at } = useProjection();
  const line = (points: readonly Point[]) =>
    points
      .map(at)
      .map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`)
      .join(' ');
  return (
    <g className="route">
      {plan.stops.map((stop) => (
        <polyline key={stop.number} points={line(stop.path)} />
      ))}
      <polyline points={line(plan.wayBack)} className="back" />
      {plan.stops.map((stop, index) => (
        <At key={stop.number} point={stop.at}>
          <g className={index === current ? 'stop current' : 'stop'}>
            {index === current &&
              stop.shots.map((shot) => (
                <path
                  key={shot.id}
                  d={conePath(plan.view.fieldOfViewDeg)}
                  transform={`rotate(${shot.bearingDeg})`}
                  className="cone"
                />
              ))}
            <rect x="-11" y="-11" width="22" height="22" />
            <text y="5" textAnchor="middle">
              {stop.number}
            </text>
          </g>
        </At>
      ))}
    </g>
  );
}
