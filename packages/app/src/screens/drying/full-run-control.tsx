import { Button } from '../../parts/button.tsx';
import { Notice } from '../../parts/notice.tsx';
import { commonTexts } from '../../text/common.ts';
import { useTexts } from '../../text/texts.ts';
import type { FullRunState } from '../../worker/use-assessment.ts';
import { dryingTexts } from './drying-texts.ts';

/** Years that the chances rest on. */
const YEARS = 500;

/** Starts the long run, shows how far it is, and stops it. */
export function FullRunControl({ full }: { readonly full: FullRunState }) {
  const say = useTexts(dryingTexts);
  const common = useTexts(commonTexts);
  const { run, isOld, start, cancel } = full;
  const running = run?.state === 'running';
  const reason = run?.outcome?.ok === false ? run.outcome.reason : run?.reason;
  return (
    <section className="full-run" aria-label={say('longTitle')}>
      <h2>{say('longTitle')}</h2>
      {running ? (
        <>
          <p role="status">
            {run.total === 0
              ? say('starting')
              : say('running', { done: String(run.done), total: String(run.total) })}
          </p>
          <progress
            aria-label={common('computing')}
            max={Math.max(1, run.total)}
            value={run.total === 0 ? 0 : run.done}
          />
          <Button onPress={cancel}>{say('cancel')}</Button>
        </>
      ) : (
        <>
          {run !== undefined && isOld && <Notice kind="plain">{say('old')}</Notice>}
          {reason !== undefined && <Notice kind="wrong">{say('failed', { reason })}</Notice>}
          {(run === undefined || isOld || reason !== undefined) && (
            <>
              <p>{say('longWhat', { years: YEARS })}</p>
              <Button look="main" isDisabled={start === undefined} onPress={() => start?.()}>
                {say(run === undefined ? 'run' : 'runAgain')}
              </Button>
            </>
          )}
        </>
      )}
    </section>
  );
}
