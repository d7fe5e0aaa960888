import { useJobs } from '../jobs/hooks.ts';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { changeSettings, currentSettings, useSettings } from '../settings/settings.ts';
import { useTexts } from '../text/texts.ts';
import type { QuestionKey } from './question-keys.ts';
import { ANSWERED } from './questions.ts';
import { go, type Route } from './route.ts';
import { tourTexts } from './tour-texts.ts';
import './tour.css';

const DEMO = 'demo-doubted-liner';

const at = (question: QuestionKey): Route => ({ screen: 'job', id: DEMO, question });

interface Stop {
  readonly text: 'plan' | 'tools' | 'faults' | 'causes' | 'drying' | 'own';
  readonly route: Route;
}

const STOPS: readonly Stop[] = (
  [
    { text: 'plan', route: at('space') },
    { text: 'tools', route: at('space') },
    { text: 'faults', route: at('faults') },
    { text: 'causes', route: at('causes') },
    { text: 'drying', route: at('drying') },
    { text: 'own', route: { screen: 'jobs' } },
  ] as const satisfies readonly Stop[]
).filter(({ route }) => route.screen !== 'job' || ANSWERED.includes(route.question));

function goTo(step: number): void {
  changeSettings({ tour: step });
  go(STOPS[step].route);
}

/** Begins the tour of the demo job, which is brought back where it was removed. */
export function useTourStart(): () => Promise<void> {
  const { list } = useJobs();
  return async () => {
    // A full disk keeps a removed demo job away, not the tour of those that are here.
    await list.addDemos().catch(() => undefined);
    goTo(0);
  };
}

/** Offers the tour until it was taken or declined. */
export function TourOffer() {
  const say = useTexts(tourTexts);
  const start = useTourStart();
  if (useSettings().tour !== 'offer') return null;
  return (
    <Notice
      kind="plain"
      actions={
        <>
          <Button onPress={() => void start()}>{say('start')}</Button>
          <Button look="quiet" onPress={() => changeSettings({ tour: 'off' })}>
            {say('notNow')}
          </Button>
        </>
      }
    >
      {say('offer')}
    </Notice>
  );
}

/** What the tour says at its present stop, above whatever screen is shown; nothing when there is none. */
export function Tour() {
  const say = useTexts(tourTexts);
  const { tour } = useSettings();
  const stop = typeof tour === 'number' ? STOPS[tour] : undefined;
  if (typeof tour !== 'number' || stop === undefined) return null;
  const last = tour + 1 >= STOPS.length;
  return (
    <section className="tour" aria-label={say('region')}>
      <p role="status">
        <span className="soft">{say('count', { step: tour + 1, steps: STOPS.length })}</span> {say(stop.text)}
      </p>
      <div className="actions">
        {!last && (
          <Button look="main" onPress={() => goTo((currentSettings().tour as number) + 1)}>
            {say('next')}
          </Button>
        )}
        <Button onPress={() => changeSettings({ tour: 'off' })}>{say('end')}</Button>
      </div>
    </section>
  );
}
