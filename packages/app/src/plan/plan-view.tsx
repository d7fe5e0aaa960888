import type { Point } from '@undercroft/record';
import {
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { JobView } from '../jobs/open-job.ts';
import { Notice } from '../parts/notice.tsx';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import type { AssessmentState } from '../worker/use-assessment.ts';
import { coveringOf, fittedBeside } from './beside-furniture.ts';
import { listen } from './gestures.ts';
import { Ghost } from './ghost.ts';
import type { Grabbed } from './grabbed.ts';
import { Furniture } from './plan-furniture.tsx';
import { planTexts } from './plan-texts.ts';
import { ProjectionContext, projectionOf } from './projection.tsx';
import { useScene } from './use-scene.ts';
import {
  keepingInView,
  type Margins,
  moved,
  type Room,
  type Span,
  type Spot,
  spanOf,
  toPlan,
  USUAL_MARGINS,
  type Viewport,
  zoomedAbout,
} from './viewport.ts';
import { wallsOf } from './walls.ts';
import './plan-view.css';

interface PlanViewProps {
  readonly view: JobView;
  readonly result: AssessmentState;
  /** Name for those who do not see it. */
  readonly label: string;
  /** The plan was tapped; within `reachM` of a thing it is meant. */
  readonly onTap?: (at: Point, reachM: number) => void;
  /** Whether a finger that comes down here and slides takes hold of something. */
  readonly grab?: (at: Point, reachM: number) => Grabbed | null;
  /** A key while the plan has the focus: true where it is used up. */
  readonly onKey?: (event: KeyboardEvent) => boolean;
  /** What is edited: stays in view when the room changes. */
  readonly focus?: Point | undefined;
  /** What to show instead of the walls. */
  readonly span?: Span | undefined;
  /** Distance of the lines of a grid [m]. */
  readonly gridM?: number | undefined;
  /** More about the keys, for those who do not see the plan. */
  readonly help?: string;
  /** True while something else is drawn over the plan that would otherwise not be told from it. */
  readonly isFaint?: boolean;
  /** `built`: only what stands in the space, without readings, findings and photos. */
  readonly layers?: 'all' | 'built';
  /** Layers over the plan: SVG in the px of `useProjection`. */
  readonly children?: ReactNode;
}

/** What is shown of a job of which nothing is drawn: the size of a small house. */
const FIRST_SPAN: Span = { leftM: 0, rightM: 12, bottomM: 0, topM: 9 };

/** How near to a thing a finger or pointer must come [px]. */
const reach = () => (matchMedia('(pointer: coarse)').matches ? 30 : 12);

/** In less than this share of the height a plan is not shown whole. */
const CRAMPED = 0.7;

/** Margins that differ by less are the same [px]. */
const SAME_MARGIN = 8;

/** Zoomed by one press, moved by one key [px]. */
const STEP = { zoom: 1.4, pan: 48 } as const;

/** Ordinary lettering [px]: larger in the hand, under a lamp. */
const textPx = () => (matchMedia('(min-width: 64rem)').matches ? 13 : 15);

/**
 * The plan of the space, to be moved, zoomed, tapped and drawn upon. It is drawn by a worker, at the scale at which it
 * is looked at; while it is moved or something on it is dragged, nothing is drawn anew.
 */
export function PlanView(props: PlanViewProps) {
  const {
    view,
    result,
    label,
    onKey,
    focus,
    span,
    gridM,
    layers = 'all',
    help = '',
    isFaint,
    children,
  } = props;
  const say = useTexts(planTexts);
  const common = useTexts(commonTexts);
  const describedBy = useId();
  const whole = useRef<HTMLDivElement>(null);
  const frame = useRef<HTMLDivElement>(null);
  const moving = useRef<HTMLDivElement>(null);
  const sheet = useRef<HTMLDivElement>(null);
  const ghostPlace = useRef<SVGGElement>(null);
  const viewport = useRef<Viewport | null>(null);
  const room = useRef<Room>({ width: 0, height: 0 });
  const untouched = useRef(true);
  const margins = useRef(USUAL_MARGINS);
  const wasDrawn = useRef(false);
  /** The room in which the whole plan was last shown. */
  const fittedIn = useRef<Room>({ width: 0, height: 0 });
  const [scale, setScale] = useState<number | null>(null);
  const walls = wallsOf(view.job);
  const readings = result.assessment?.readings ?? NO_READINGS;
  const [text] = useState(textPx);
  const { scene, failed } = useScene(view.job, readings, scale, text, layers);
  const ghost = useRef<Ghost | null>(null);

  const walled = spanOf(walls?.corners ?? []);
  const wanted = useRef({ props, span: FIRST_SPAN, walls: walled, scale });
  wanted.current = { props, span: span ?? walled ?? FIRST_SPAN, walls: walled, scale };

  const actions = useMemo(() => {
    const apply = () => {
      const now = viewport.current;
      if (now === null || moving.current === null || frame.current === null) return;
      const k = now.pxPerM / (wanted.current.scale ?? now.pxPerM);
      moving.current.style.transform = `translate(${now.x}px, ${now.y}px) scale(${k})`;
      const { gridM: grid } = wanted.current.props;
      if (grid !== undefined) {
        const step = grid * now.pxPerM;
        frame.current.style.backgroundSize = `${step}px ${step}px`;
        frame.current.style.backgroundPosition = `${now.x}px ${now.y}px`;
      }
    };
    const set = (next: Viewport) => {
      viewport.current = next;
      apply();
    };
    const rest = () => setScale(viewport.current?.pxPerM ?? null);
    const fit = () => {
      if (room.current.width === 0) return;
      untouched.current = true;
      fittedIn.current = room.current;
      const above = coveringOf(whole.current, '.plan-zoom');
      const below = coveringOf(whole.current, '.plan-foot');
      set(fittedBeside(wanted.current.span, room.current, margins.current, above, below));
      rest();
    };
    const change = (how: (now: Viewport) => Viewport) => {
      if (viewport.current === null) return;
      untouched.current = false;
      set(how(viewport.current));
    };
    const middle = (): Spot => ({ x: room.current.width / 2, y: room.current.height / 2 });
    const zoom = (factor: number) => {
      change((now) => zoomedAbout(now, middle(), factor));
      rest();
    };
    const keepInView = (point: Point | undefined) => {
      const now = viewport.current;
      if (point === undefined || now === null || room.current.width === 0) return;
      set(keepingInView(now, point, room.current));
    };
    return { apply, set, rest, fit, change, zoom, keepInView };
  }, []);

  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const resized = new ResizeObserver(() => {
      const before = room.current;
      room.current = { width: element.clientWidth, height: element.clientHeight };
      if (room.current.width === 0) return;
      // A sheet that takes much of the room for a while leaves the scale as it is.
      const isCramped = room.current.height < CRAMPED * fittedIn.current.height;
      if (viewport.current === null || (untouched.current && !isCramped)) {
        actions.fit();
      } else {
        const by = {
          x: (room.current.width - before.width) / 2,
          y: (room.current.height - before.height) / 2,
        };
        actions.set(moved(viewport.current, by));
      }
      actions.keepInView(wanted.current.props.focus);
    });
    resized.observe(element);
    const at = (spot: Spot): Point => toPlan(viewport.current ?? { pxPerM: 1, x: 0, y: 0 }, spot);
    const reachM = () => reach() / (viewport.current?.pxPerM ?? 1);
    const stop = listen(element, {
      grab(spot) {
        const grabbed = wanted.current.props.grab?.(at(spot), reachM()) ?? null;
        if (grabbed === null || sheet.current === null || ghostPlace.current === null) return false;
        ghost.current?.end();
        ghost.current = new Ghost(grabbed, sheet.current, ghostPlace.current);
        return true;
      },
      drag: (spot) => ghost.current?.moveTo(at(spot), wanted.current.scale ?? 1),
      drop: (spot) => void ghost.current?.drop(at(spot)),
      letGo: () => ghost.current?.end(),
      pan: (by) => actions.change((now) => moved(now, by)),
      zoom: (about, factor) => actions.change((now) => zoomedAbout(now, about, factor)),
      rest: () => actions.rest(),
      tap: (spot) => wanted.current.props.onTap?.(at(spot), reachM()),
    });
    return () => {
      resized.disconnect();
      stop();
    };
  }, [actions]);

  // Walls that are drawn or changed while nobody has moved the plan are shown whole.
  const shown = wanted.current.span;
  const spanKey = `${shown.leftM} ${shown.rightM} ${shown.bottomM} ${shown.topM}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the span
  useLayoutEffect(() => {
    if (untouched.current && ghost.current === null) actions.fit();
  }, [actions, spanKey]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever has been rendered is put where it belongs
  useLayoutEffect(actions.apply, [actions, scale, gridM]);

  // The drawing tells how much room it takes around the walls.
  useLayoutEffect(() => {
    const { walls: span } = wanted.current;
    if (scene === null || span === null || wanted.current.props.span !== undefined) return;
    const { originPx: zero, pxPerM } = scene;
    const now: Margins = {
      left: zero.x + span.leftM * pxPerM,
      right: scene.widthPx - zero.x - span.rightM * pxPerM,
      top: zero.y - span.topM * pxPerM,
      bottom: scene.heightPx - zero.y + span.bottomM * pxPerM,
    };
    const before = margins.current;
    const sides = ['left', 'right', 'top', 'bottom'] as const;
    const isFirst = !wasDrawn.current;
    wasDrawn.current = true;
    if (!isFirst && sides.every((side) => Math.abs(now[side] - before[side]) < SAME_MARGIN)) return;
    margins.current = now;
    if (untouched.current && room.current.height >= fittedIn.current.height) actions.fit();
  }, [actions, scene]);

  // A new drawing shows at its place what was dragged there.
  // biome-ignore lint/correctness/useExhaustiveDependencies: each drawing ends it
  useLayoutEffect(() => {
    if (ghost.current?.isDropped !== true) return;
    ghost.current.end();
    ghost.current = null;
  }, [scene]);

  const focusKey = focus === undefined ? '' : `${focus.xM} ${focus.yM}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key stands for the point
  useEffect(() => actions.keepInView(focus), [actions, focusKey]);

  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.target !== event.currentTarget || onKey?.(event) === true) {
      return;
    }
    if (event.ctrlKey || event.metaKey) return;
    const pan = PAN_KEYS[event.key];
    if (pan !== undefined) actions.change((now) => moved(now, pan));
    else if (event.key === '+' || event.key === '=') actions.zoom(STEP.zoom);
    else if (event.key === '-') actions.zoom(1 / STEP.zoom);
    else if (event.key === '0') actions.fit();
    else return;
    event.preventDefault();
  };

  const drawnAt = scene === null || scale === null ? 1 : scale / scene.pxPerM;
  const projection = useMemo(() => projectionOf(scale ?? 1), [scale]);
  return (
    <div
      ref={whole}
      className={`plan-view${gridM === undefined ? '' : ' with-grid'}${isFaint ? ' is-faint' : ''}`}
    >
      <div
        ref={frame}
        className="plan-frame"
        role="application"
        aria-label={label}
        aria-describedby={describedBy}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the plan takes keys
        tabIndex={0}
        onKeyDown={onKeyDown}
      >
        <div ref={moving} className="plan-moving">
          {scene !== null && (
            <div
              ref={sheet}
              className="drawing"
              style={{
                transform: `scale(${drawnAt}) translate(${-scene.originPx.x}px, ${-scene.originPx.y}px)`,
              }}
              // The text is drawn by our own worker, which escapes what people wrote.
              // biome-ignore lint/security/noDangerouslySetInnerHtml: SVG of our own making
              dangerouslySetInnerHTML={{ __html: scene.svg }}
            />
          )}
          <svg className="plan-over" width="1" height="1" aria-hidden="true">
            <ProjectionContext value={projection}>{children}</ProjectionContext>
            <g ref={ghostPlace} className="ghost" />
          </svg>
        </div>
      </div>
      <span id={describedBy} className="hidden-text">
        {say('keys')} {help}
      </span>
      <Furniture
        scene={scene}
        onZoom={(way) => actions.zoom(way > 0 ? STEP.zoom : 1 / STEP.zoom)}
        onFit={actions.fit}
      />
      {failed && <Notice kind="wrong">{result.reason ?? common('failedScreen')}</Notice>}
    </div>
  );
}

const NO_READINGS = [] as const;

const PAN_KEYS: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: STEP.pan, y: 0 },
  ArrowRight: { x: -STEP.pan, y: 0 },
  ArrowUp: { x: 0, y: STEP.pan },
  ArrowDown: { x: 0, y: -STEP.pan },
};
