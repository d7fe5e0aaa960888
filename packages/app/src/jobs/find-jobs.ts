import { type JobCard, NEXT_STEPS } from '../storage/storage.ts';
import { folded } from '../text/folded.ts';

/** How the list of jobs is sorted. */
export type JobOrder = 'next' | 'changed' | 'title';

const byChange = (a: JobCard, b: JobCard) => Date.parse(b.changedAt) - Date.parse(a.changedAt);

const COMPARE: Readonly<Record<JobOrder, (a: JobCard, b: JobCard) => number>> = {
  next: (a, b) => NEXT_STEPS.indexOf(a.next) - NEXT_STEPS.indexOf(b.next) || byChange(a, b),
  changed: byChange,
  title: (a, b) => a.title.localeCompare(b.title, 'es-US', { sensitivity: 'base', numeric: true }),
};

/** The jobs in which every word of the search stands, in title, client or address, sorted. */
export function findJobs(cards: readonly JobCard[], search: string, order: JobOrder): JobCard[] {
  const words = folded(search).split(/\s+/).filter(Boolean);
  return cards
    .filter((card) => {
      const text = folded([card.title, card.client, card.address].filter(Boolean).join(' '));
      return words.every((word) => text.includes(word));
    })
    .sort(COMPARE[order]);
}
