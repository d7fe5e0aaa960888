import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './look/tokens.css';
import './look/base.css';
import { authors, writerName } from './jobs/author.ts';
import { tabChannel } from './jobs/channel.ts';
import { demosAside } from './jobs/demos-aside.ts';
import { JobsContext } from './jobs/hooks.ts';
import { Jobs } from './jobs/jobs.ts';
import { Notice } from './parts/notice.tsx';
import { currentSettings, startSettings, surveyorName } from './settings/settings.ts';
import { App } from './shell/app.tsx';
import { shellTexts } from './shell/shell-texts.ts';
import { startOffline } from './shell/update.ts';
import { openIndexedDbStorage } from './storage/indexeddb-storage.ts';
import { StorageError } from './storage/storage.ts';
import { commonTexts } from './text/common.ts';
import { sayIn } from './text/texts.ts';

startSettings();
const root = createRoot(document.getElementById('root') as HTMLElement);

async function start(): Promise<void> {
  const storage = await openIndexedDbStorage('undercroft', () => location.reload());
  const jobs = new Jobs({
    storage,
    channel: tabChannel('undercroft'),
    authors: authors(await writerName(storage), surveyorName),
    demos: demosAside,
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void jobs.refresh();
  });
  root.render(
    <StrictMode>
      <JobsContext value={jobs}>
        <App />
      </JobsContext>
    </StrictMode>,
  );
  await untilIdle();
  // A full disk keeps the demo jobs away, not the app.
  await jobs.list.firstStart().catch(() => jobs.list.refresh());
  setTimeout(() => void jobs.list.drawDemoPictures(), PICTURES_AFTER_MS);
}

/** The first screen takes letters before anything else is done; at the latest after so long [ms]. */
const IDLE_WITHIN_MS = 1000;

function untilIdle(): Promise<void> {
  return new Promise((idle) => {
    // Not every browser tells when it is idle.
    if ('requestIdleCallback' in window) requestIdleCallback(() => idle(), { timeout: IDLE_WITHIN_MS });
    else setTimeout(idle, IDLE_WITHIN_MS / 4);
  });
}

/** The first screen comes before the pictures of the demo jobs. */
const PICTURES_AFTER_MS = 2500;

function refuse(error: unknown): void {
  const { language } = currentSettings();
  const fault = error instanceof StorageError ? error.fault : 'failed';
  root.render(
    <main className="page">
      <Notice kind="wrong" title={sayIn(language, shellTexts)('noStorage')}>
        <p>{sayIn(language, commonTexts)(`${fault}Fault`)}</p>
        <p className="soft">{(error as Error).message}</p>
      </Notice>
    </main>,
  );
}

// Keeping the app on the device takes the processor and the network: after the first screen.
start().catch(refuse).finally(startOffline);
