import { type JobCard, NEXT_STEPS } from '../storage/storage.ts';

/** How the list of jobs is sorted. */
export type JobOrder = 'next' | 'changed' | 'title';

/** Text for comparing: without case and accents, but ñ apart from n. */
function plain(text: string): string {
  return text
    .toLocaleLowerCase('es-US')
    .normalize('NFD')
    .replace(/n\u0303/g, 'ñ')
    .replace(/[\u0300-\u036f]/g, '');
}

const byChange = (a: JobCard, b: JobCard) => Date.parse(b.changedAt) - Date.parse(a.changedAt);

const COMPARE: Readonly<Record<JobOrder, (a: JobCard, b: JobCard) => number>> = {
  next: (a, b) => NEXT_STEPS.indexOf(a.next) - NEXT_STEPS.indexOf(b.next) || byChange(a, b),
  changed: byChange,
  title: (a, b) => a.title.localeCompare(b.title, 'es-US', { sensitivity: 'base', numeric: true }),
};

/** The jobs in which every word of the search stands, in title, client or address, sorted. */
export function findJobs(cards: readonly JobCard[], search: string, order: JobOrder): JobCard[] {
  const words = plain(search).split(/\s+/).filter(Boolean);
  return cards
    .filter((card) => {
      const text = plain([card.title, card.client, card.address].filter(Boolean).join(' '));
      return words.every((word) => text.includes(word));
    })
    .sort(COMPARE[order]);
}
