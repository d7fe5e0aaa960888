import type { ReadingMeaning } from '@undercroft/assessment';
import { shownTime, useTexts } from '../../text/texts.ts';
import { faultsTexts } from './faults-texts.ts';

const WORST_FIRST = ['alarm', 'watch', 'fine'] as const;

/** What each reading says, those in alarm first. */
export function ReadingList({ readings }: { readonly readings: readonly ReadingMeaning[] }) {
  const say = useTexts(faultsTexts);
  if (readings.length === 0) return <p>{say('noReadings')}</p>;
  const sorted = [...readings].sort((a, b) => WORST_FIRST.indexOf(a.state) - WORST_FIRST.indexOf(b.state));
  return (
    <ul className="reading-list">
      {sorted.map((reading) => (
        <li key={`${reading.kind} ${reading.id}`} className={reading.state}>
          <span className="figure reading">{reading.shown}</span>
          <strong>{say(reading.state)}</strong>
          <p>{reading.means}</p>
          <p className="soft">
            {reading.place} · {say('takenBy', { who: reading.who, when: shownTime(reading.when) })}
          </p>
        </li>
      ))}
    </ul>
  );
}
