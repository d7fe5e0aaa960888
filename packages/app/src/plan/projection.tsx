import type { Point } from '@undercroft/record';
import { createContext, type ReactNode, useContext } from 'react';

/** How plan coordinates become those of the drawing that lies over the plan [px]: its zero point is that of the plan. */
export interface Projection {
  readonly pxPerM: number;
  at(point: Point): { readonly x: number; readonly y: number };
}

export const projectionOf = (pxPerM: number): Projection => ({
  pxPerM,
  at: ({ xM, yM }) => ({ x: xM * pxPerM, y: -yM * pxPerM }),
});

export const ProjectionContext = createContext<Projection>(projectionOf(1));

/** For what is laid over the plan: where a point of it lies, in the px of the SVG around. */
export function useProjection(): Projection {
  return useContext(ProjectionContext);
}

/** A group whose zero point lies at a point of the plan; sizes inside are px and keep their size when it is zoomed. */
export function At({ point, children }: { readonly point: Point; readonly children: ReactNode }) {
  const { x, y } = useProjection().at(point);
  return <g transform={`translate(${x} ${y})`}>{children}</g>;
}
