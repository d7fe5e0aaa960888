import { geometry } from '@undercroft/engine';
import type { Point } from '@undercroft/record';
import { useLength } from '../../../plan/length.ts';
import { At, useProjection } from '../../../plan/projection.tsx';
import { anchorOf, type Shape, shapeOf } from '../../../plan/shape.ts';
import { tapeLines } from '../../../plan/snap.ts';
import type { Thing } from '../../../plan/things.ts';
import { wallsOf } from '../../../plan/walls.ts';
import { cornersOf, type OutlineDraft } from '../outline/outline-draft.ts';
import { azimuthAfter } from '../outline/tape.ts';
import { selectedThing } from './actions.ts';
import type { DrawState, Editor } from './editor.ts';
import type { Mode } from './mode.ts';

/** What is being drawn, over the plan: the selection with its distances, points set so far, walls in the making. */
export function Overlay({ editor, state }: { readonly editor: Editor; readonly state: DrawState }) {
  const { mode, cursor, nudge, outline } = state;
  const thing = selectedThing(editor);
  const isDrawingWalls =
    mode?.is === 'walls' || mode?.is === 'corners' || mode?.is === 'rectangle' || mode?.is === 'closing';
  return (
    <g className="draw-over">
      {thing !== null && !isDrawingWalls && <Selection editor={editor} thing={thing} nudge={nudge} />}
      {(mode?.is === 'place' || mode?.is === 'row') && <Points points={mode.points} />}
      {isDrawingWalls && outline !== null && <Walls draft={outline} mode={mode} />}
      {cursor !== null && (
        <At point={cursor}>
          <path className="halo" d="M-18 0H18M0 -18V18" />
          <path className="lamp" d="M-18 0H18M0 -18V18" />
        </At>
      )}
    </g>
  );
}

/** Points of a path on the screen. */
function usePath(): (points: readonly Point[]) => string {
  const { at } = useProjection();
  return (points) => points.map(at).reduce((d, { x, y }) => `${d}${d === '' ? 'M' : 'L'}${x} ${y}`, '');
}

interface SelectionProps {
  readonly editor: Editor;
  readonly thing: Thing;
  readonly nudge: Point | null;
}

/** What is selected, and how far it stands from the walls to the left and below. */
function Selection({ editor, thing, nudge }: SelectionProps) {
  const { at } = useProjection();
  const { job } = editor.openJob.view;
  const walls = wallsOf(job);
  const shape = shapeOf(thing, walls);
  if (shape === null) return null;
  const by = nudge === null ? { x: 0, y: 0 } : at(nudge);
  const anchor = anchorOf(shape);
  const from = { xM: anchor.xM + (nudge?.xM ?? 0), yM: anchor.yM + (nudge?.yM ?? 0) };
  const measured = thing.kind === 'pier' || thing.kind === 'equipment' || thing.kind === 'height';
  return (
    <>
      {measured &&
        tapeLines(walls, from).map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two ends may lie at one place; they are told apart by their number
          <Tape key={i} from={line[0]} to={line[1]} />
        ))}
      <g transform={`translate(${by.x} ${by.y})`}>
        <Outlined shape={shape} />
      </g>
    </>
  );
}

/** So far a mark stands off from what it marks [px]. */
const OFF = 6;

function Outlined({ shape }: { readonly shape: Shape }) {
  const { at, pxPerM } = useProjection();
  const path = usePath();
  switch (shape.is) {
    case 'spot': {
      const { x, y } = at(shape.at);
      return (
        <>
          <circle className="halo" cx={x} cy={y} r={22} />
          <circle className="lamp" cx={x} cy={y} r={22} />
        </>
      );
    }
    case 'area': {
      const d = `${path(shape.outline)}Z`;
      return (
        <>
          <path className="halo" d={d} />
          <path className="lamp" d={d} />
        </>
      );
    }
    case 'line': {
      const width = 2 * (shape.halfM * pxPerM + OFF);
      const d = path(shape.path);
      return (
        <>
          <path className="band" d={d} strokeWidth={width} />
          <path className="lamp" d={d} />
          {shape.path.map((point, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two corners may lie at one place; they are told apart by their number
            <Dot key={i} point={point} />
          ))}
        </>
      );
    }
  }
}

function Dot({ point, big }: { readonly point: Point; readonly big?: boolean }) {
  return (
    <At point={point}>
      <circle className="dot" r={big ? 8 : 5} />
    </At>
  );
}

/** A distance with its length, as a tape lies. */
function Tape({ from, to }: { readonly from: Point; readonly to: Point }) {
  const path = usePath();
  const length = useLength();
  const middle = { xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 };
  const isUpright = from.xM === to.xM;
  return (
    <>
      <path className="tape" d={path([from, to])} />
      <Label
        at={middle}
        text={length(geometry.distanceM(from, to))}
        dx={isUpright ? 8 : 0}
        dy={isUpright ? 5 : -8}
        anchor={isUpright ? 'start' : 'middle'}
      />
    </>
  );
}

interface LabelProps {
  readonly at: Point;
  readonly text: string;
  readonly dx?: number;
  readonly dy?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
}

function Label({ at: point, text, dx = 0, dy = 0, anchor = 'middle' }: LabelProps) {
  return (
    <At point={point}>
      <text className="figure" x={dx} y={dy} textAnchor={anchor}>
        {text}
      </text>
    </At>
  );
}

function Points({ points }: { readonly points: readonly Point[] }) {
  const path = usePath();
  if (points.length === 0) return null;
  return (
    <>
      <path className="halo" d={path(points)} />
      <path className="lamp" d={path(points)} />
      {points.map((point, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two corners may lie at one place; they are told apart by their number
        <Dot key={i} point={point} big={i === points.length - 1} />
      ))}
    </>
  );
}

/** Beside a wall, on the side that is outside for whoever walks around to the left. */
function WallLabel({ from, to, text }: { readonly from: Point; readonly to: Point; readonly text: string }) {
  const long = geometry.distanceM(from, to) || 1;
  const side = { x: (to.yM - from.yM) / long, y: (to.xM - from.xM) / long };
  const anchor = side.x > 0.5 ? 'start' : side.x < -0.5 ? 'end' : 'middle';
  return (
    <Label
      at={{ xM: (from.xM + to.xM) / 2, yM: (from.yM + to.yM) / 2 }}
      text={text}
      dx={side.x * 10}
      dy={side.y * 16 + 6}
      anchor={anchor}
    />
  );
}

/** A shorter wall has no room for its length beside it [px]; the list has it. */
const SHORTEST = 44;

/** Length of the arrow that shows where the next wall goes [px]. */
const AHEAD = 44;

/** Walls in the making: those that are there, the way of the next one, and the gap that is left. */
function Walls({ draft, mode }: { readonly draft: OutlineDraft; readonly mode: Mode }) {
  const path = usePath();
  const { pxPerM } = useProjection();
  const corners = cornersOf(draft);
  const length = useLength();
  const [start, end] = [corners[0], corners[corners.length - 1]];
  if (start === undefined) return null;
  const isRound = draft.by === 'grid' ? mode.is === 'closing' : geometry.distanceM(start, end) < 1e-6;
  const walls = corners.slice(1).map((to, i) => ({ from: corners[i], to, number: i + 1 }));
  const marked = mode.is === 'rectangle' ? mode.wall : mode.is === 'walls' ? mode.leg : undefined;
  const picked = mode.is === 'corners' && mode.picked !== undefined ? corners[mode.picked] : undefined;
  const turnDeg = mode.is === 'walls' && mode.step === 'length' ? mode.turnDeg : undefined;
  return (
    <>
      <path className="wall-halo" d={`${path(corners)}${isRound ? 'Z' : ''}`} />
      <path className="wall-line" d={`${path(corners)}${isRound ? 'Z' : ''}`} />
      {!isRound && corners.length > 2 && <path className="tape" d={path([end, start])} />}
      {walls.map(({ from, to, number }) => (
        <g key={`${from.xM} ${from.yM} ${number}`}>
          {marked === number - 1 && <path className="lamp wide" d={path([from, to])} />}
          {(geometry.distanceM(from, to) * pxPerM > SHORTEST || number === walls.length) && (
            <WallLabel from={from} to={to} text={`${number} · ${length(geometry.distanceM(from, to))}`} />
          )}
        </g>
      ))}
      {corners.map((corner, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two corners may lie at one place; they are told apart by their number
        <Dot key={i} point={corner} big={i === 0 || corner === picked} />
      ))}
      {!isRound && mode.is !== 'closing' && <Dot point={picked ?? end} big />}
      {draft.by === 'tape' && mode.is === 'walls' && mode.leg === undefined && (
        <Ahead
          from={end}
          azimuthDeg={draft.legs.length === 0 ? 90 : azimuthAfter(draft.legs, turnDeg ?? 0)}
          isSure={mode.step === 'length'}
        />
      )}
    </>
  );
}

/** The way one faces: dashed until the turn is said. */
function Ahead({
  from,
  azimuthDeg,
  isSure,
}: {
  readonly from: Point;
  readonly azimuthDeg: number;
  readonly isSure: boolean;
}) {
  return (
    <At point={from}>
      <g transform={`rotate(${azimuthDeg})`} className={isSure ? 'ahead' : 'ahead unsure'}>
        <path d={`M0 0V${-AHEAD}M-8 ${-AHEAD + 12}L0 ${-AHEAD}L8 ${-AHEAD + 12}`} />
      </g>
    </At>
  );
}
