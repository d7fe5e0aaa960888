import { type CSSProperties, useState } from 'react';
import { Button } from '../parts/button.tsx';
import { useTexts } from '../text/texts.ts';
import { planTexts } from './plan-texts.ts';
import type { DrawnScene } from './use-scene.ts';

interface FurnitureProps {
  readonly scene: DrawnScene | null;
  readonly onZoom: (way: 1 | -1) => void;
  readonly onFit: () => void;
}

/** The width for which a scale bar was drawn: at any other one it lies. */
function widthOf(svg: string): CSSProperties {
  const width = /viewBox="0 0 ([\d.]+) /.exec(svg)?.[1];
  return { '--bar-width': `${width ?? 176}px` } as CSSProperties;
}

/** What stands around a plan and does not move with it: zoom, north, scale and the key to its symbols. */
export function Furniture({ scene, onZoom, onFit }: FurnitureProps) {
  const say = useTexts(planTexts);
  const [keyOpen, setKeyOpen] = useState(false);
  return (
    <>
      <div className="plan-zoom">
        <Button label={say('zoomIn')} onPress={() => onZoom(1)}>
          +
        </Button>
        <Button label={say('zoomOut')} onPress={() => onZoom(-1)}>
          −
        </Button>
        <Button label={say('fit')} onPress={onFit}>
          ⛶
        </Button>
      </div>
      {scene !== null && (
        <div className="plan-foot">
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: SVG of our own making */}
          <div className="plan-north" dangerouslySetInnerHTML={{ __html: scene.north }} />
          <div
            className="plan-scale"
            style={widthOf(scene.scaleBar)}
            // biome-ignore lint/security/noDangerouslySetInnerHtml: SVG of our own making
            dangerouslySetInnerHTML={{ __html: scene.scaleBar }}
          />
          <Button expanded={keyOpen} onPress={() => setKeyOpen(!keyOpen)}>
            {keyOpen ? say('hideKey') : say('key')}
          </Button>
        </div>
      )}
      {scene !== null && keyOpen && (
        <ul className="plan-key" aria-label={say('key')}>
          {scene.legend.map(({ key, words, sample }) => (
            <li key={key}>
              {/* biome-ignore lint/security/noDangerouslySetInnerHtml: SVG of our own making */}
              <span dangerouslySetInnerHTML={{ __html: sample }} />
              {words}
            </li>
          ))}
          {scene.notes.map((note) => (
            <li key={note} className="soft">
              {note}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
