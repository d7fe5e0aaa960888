import { JobLog, writeEntry } from '@undercroft/record';
import { longLog } from './long-log.ts';

const ENTRIES = longLog(100_000);

/** A log that stands folded; made when it is first asked for, so that it is not in the way of the fold from scratch. */
const standing = {
  log: null as JobLog | null,
  round: 0,
};

/** A person sets one field of one item on a device that holds the whole log. */
function applyOne(): void {
  standing.log ??= new JobLog('bench', ENTRIES);
  const { log } = standing;
  standing.round += 1;
  const author = {
    who: 'Benedikta Aalto-Ruiz',
    device: 'benchdev',
    nowMs: Date.UTC(2031, 5, 1) + standing.round,
    deviceTime: '2031-06-01T00:00:00Z',
  };
  const pier = log.fold().job?.plan.piers[0].id ?? 'none';
  const value = 0.5 + (standing.round % 100) / 1000;
  const written = writeEntry(log, author, { do: 'set', kind: 'pier', item: pier, field: 'heightM', value });
  if (!('entry' in written)) throw new Error(JSON.stringify(written.issues));
  log.add(written.entry);
  log.fold();
}

export const benches = [
  {
    id: 'record.fold100k',
    goal: 1000,
    run: () => {
      const { job } = new JobLog('bench', ENTRIES).fold();
      if (job === null) throw new Error('the log did not fold');
    },
  },
  { id: 'record.applyOne', goal: 1, rounds: 200, warm: 50, run: applyOne },
];
