import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { shellTexts } from '../../shell/shell-texts.ts';
import { useTourStart } from '../../shell/tour.tsx';
import { useTexts } from '../../text/texts.ts';
import { helpTexts } from './help-texts.ts';
import './help.css';

const STEPS = [
  ['plan', ['plan1', 'plan2', 'plan3']],
  ['measure', ['measure1', 'measure2', 'measure3']],
  ['findings', ['findings1', 'findings2']],
  ['pictures', ['pictures1', 'pictures2']],
  ['result', ['result1', 'result2']],
  ['keep', ['keep1', 'keep2', 'keep3']],
  ['screen', ['screen1']],
  ['keys', ['keys1']],
] as const;

const BEFORE = ['before1', 'before2', 'before3', 'before4', 'before5', 'before6'] as const;

/** How a visit goes, step by step, and what to heed before anybody goes in. */
export default function HelpScreen() {
  const say = useTexts(helpTexts);
  const shell = useTexts(shellTexts);
  const start = useTourStart();
  return (
    <>
      <h1>{shell('help')}</h1>
      <p>{say('lead')}</p>
      <div className="actions">
        <Button look="main" onPress={() => void start()}>
          {say('tour')}
        </Button>
      </div>
      <Notice kind="caution" title={say('before')}>
        <ul className="help-lines">
          {BEFORE.map((key) => (
            <li key={key}>{say(key)}</li>
          ))}
        </ul>
        <p>
          <strong>{say('beforeNote')}</strong>
        </p>
      </Notice>
      {STEPS.map(([head, lines]) => (
        <section key={head} className="help-step">
          <h2>{say(head)}</h2>
          <ul className="help-lines">
            {lines.map((key) => (
              <li key={key}>{say(key)}</li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
