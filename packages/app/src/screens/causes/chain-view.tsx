import type { CausesAssessment } from '@undercroft/assessment';
import type { ChainSvg, ChainSvgOptions, ChainWords } from '@undercroft/report';
import { type PointerEvent, useEffect, useMemo, useRef, useState } from 'react';
import { drawChain } from '../../plan/drawer.ts';
import { type Settings, useSettings } from '../../settings/settings.ts';
import { sayIn, useTexts } from '../../text/texts.ts';
import { chainTexts } from './chain-texts.ts';
import { nodeTitles } from './chain-titles.ts';

/** Ordinary lettering [px]. On a phone three columns must stand side by side; the list below it is set larger. */
const TEXT_PX = 13;
/** How near to an arrow a finger or pointer must come [px]. */
const reach = () => (matchMedia('(pointer: coarse)').matches ? 30 : 14);

/** Nearest arrow to a spot of the drawing within reach. */
function arrowAt(arrows: ChainSvg['arrows'], x: number, y: number, within: number): number | null {
  let [best, nearest]: [number | null, number] = [null, within];
  for (const { number, points } of arrows) {
    for (let i = 1; i < points.length; i += 1) {
      const [a, b] = [points[i - 1], points[i]];
      const [dx, dy] = [b.x - a.x, b.y - a.y];
      const length = dx * dx + dy * dy;
      const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / length));
      const distance = Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
      if (distance < nearest) [best, nearest] = [number, distance];
    }
  }
  return best;
}

/** Words of the drawing in a language. */
function drawingWords(language: Settings['language']): ChainWords {
  const say = sayIn(language, chainTexts);
  return {
    title: say('title'),
    nodes: nodeTitles(language),
    cause: say('cause'),
    found: say('found'),
    follows: say('mayFollow'),
    supported: say('supported'),
    against: say('contradicted'),
    notShown: say('unshown'),
    mayFollow: say('ifNothing'),
    leadsTo: say('leadsTo'),
    ofAll: say('ofAll'),
  };
}

interface ChainViewProps {
  readonly of: CausesAssessment;
  /** One finding that is drawn; all where absent. */
  readonly about?: string | undefined;
  /** Number of the arrow that is open. */
  readonly open: number | null;
  readonly onArrow: (number: number | null) => void;
}

/** The chain as a drawing whose arrows are tapped. The list below it says the same to those who do not see it. */
export function ChainView({ of, about, open, onArrow }: ChainViewProps) {
  const say = useTexts(chainTexts);
  const { ground: set, language } = useSettings();
  const ground = set === 'sun' ? 'paper' : set;
  const frame = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState<number | null>(null);
  const [drawn, setDrawn] = useState<ChainSvg | 'failed' | null>(null);
  const words = useMemo(() => drawingWords(language), [language]);
  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => setWidth(Math.max(200, Math.floor(element.clientWidth))));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  useEffect(() => {
    if (width === null) return;
    let wanted = true;
    const room: ChainSvgOptions = { widthPx: Math.min(width, 1400), textPx: TEXT_PX, ground, words };
    drawChain(of, about === undefined ? room : { ...room, about }).then(
      (svg) => wanted && setDrawn(svg),
      () => wanted && setDrawn('failed'),
    );
    return () => {
      wanted = false;
    };
  }, [of, about, width, ground, words]);
  const chosen =
    drawn === null || drawn === 'failed' ? undefined : drawn.arrows.find((a) => a.number === open);
  const tap = (event: PointerEvent<HTMLDivElement>) => {
    if (drawn === null || drawn === 'failed') return;
    const box = event.currentTarget.getBoundingClientRect();
    onArrow(arrowAt(drawn.arrows, event.clientX - box.left, event.clientY - box.top, reach()));
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached with the keyboard
    <section ref={frame} className="chain-frame" tabIndex={0} aria-label={say('drawing')}>
      {drawn === 'failed' && <p>{say('drawingFailed')}</p>}
      {drawn !== null && drawn !== 'failed' && (
        <div
          className="chain-drawing"
          style={{ width: drawn.widthPx, height: drawn.heightPx }}
          onPointerUp={tap}
        >
          <svg aria-hidden="true" viewBox={`0 0 ${drawn.widthPx} ${drawn.heightPx}`}>
            {chosen !== undefined && (
              <polyline className="chain-open" points={chosen.points.map((p) => `${p.x},${p.y}`).join(' ')} />
            )}
          </svg>
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing, its texts escaped where it is made */}
          <div dangerouslySetInnerHTML={{ __html: drawn.svg }} />
        </div>
      )}
    </section>
  );
}
