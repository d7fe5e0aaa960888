import { lazy, Suspense } from 'react';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { JobsScreen } from '../screens/jobs/jobs-screen.tsx';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import { Boundary } from './boundary.tsx';
import { hrefOf, type Route, useRoute } from './route.ts';
import { shellTexts } from './shell-texts.ts';
import { Tour } from './tour.tsx';
import { activateUpdate, useUpdateReady } from './update.ts';
import './app.css';

const JobScreen = lazy(() => import('./job-screen.tsx'));
const SettingsScreen = lazy(() => import('../screens/settings/settings-screen.tsx'));
const HelpScreen = lazy(() => import('../screens/help/help-screen.tsx'));
const CalculatorsScreen = lazy(() => import('../screens/calculators/calculators-screen.tsx'));

/** The whole app: the screen that the address names. */
export function App() {
  const route = useRoute();
  const common = useTexts(commonTexts);
  return (
    <>
      <Tour />
      <Boundary key={route.screen}>
        <Suspense fallback={<p className="page">{common('loading')}</p>}>
          {route.screen === 'job' ? (
            <JobScreen id={route.id} question={route.question} place={route.place} />
          ) : (
            <>
              <Top route={route} />
              <main className="page">
                {route.screen === 'jobs' && <JobsScreen />}
                {route.screen === 'settings' && <SettingsScreen />}
                {route.screen === 'help' && <HelpScreen />}
                {route.screen === 'calculators' && <CalculatorsScreen name={route.name} />}
              </main>
            </>
          )}
        </Suspense>
      </Boundary>
    </>
  );
}

const PLACES = ['jobs', 'calculators', 'help', 'settings'] as const;

function Top({ route }: { readonly route: Route }) {
  const say = useTexts(shellTexts);
  const updateReady = useUpdateReady();
  return (
    <>
      <header className="top">
        <span className="name">Undercroft</span>
        <nav>
          <ul>
            {PLACES.map((screen) => (
              <li key={screen}>
                <a href={hrefOf({ screen })} aria-current={route.screen === screen ? 'page' : undefined}>
                  {say(screen)}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      {/* Only here: a new version never comes in between while a job is open. */}
      {updateReady && (
        <div className="update">
          <Notice kind="plain" actions={<Button onPress={activateUpdate}>{say('updateNow')}</Button>}>
            {say('updateReady')}
          </Notice>
        </div>
      )}
    </>
  );
}
