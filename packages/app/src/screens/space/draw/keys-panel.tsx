import { useTexts } from '../../../text/texts.ts';
import { drawTexts, keyTexts } from './draw-texts.ts';

const KEYS = [
  ['[  ]', 'brackets'],
  ['← ↑ → ↓', 'arrows'],
  ['Shift + ←', 'shift'],
  ['Alt + ←', 'alt'],
  ['1 … 9', 'digits'],
  ['Enter', 'enter'],
  ['Backspace', 'backspace'],
  ['Delete', 'delete'],
  ['Esc', 'escape'],
  ['Ctrl + Z', 'undo'],
  ['+  −  0', 'zoom'],
  ['?', 'help'],
] as const;

/** The keys of the plan. */
export function KeysPanel() {
  const say = useTexts(drawTexts);
  const keys = useTexts(keyTexts);
  return (
    <div className="draw-panel">
      <p>{say('keysHelp')}</p>
      <dl className="figures">
        {KEYS.map(([key, name]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{keys(name)}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
