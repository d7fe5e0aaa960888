import { expect, it } from 'vitest';
import { findJobs } from '../../src/jobs/find-jobs.ts';
import type { JobCard } from '../../src/storage/storage.ts';

const card = (id: string, title: string, rest: Partial<JobCard> = {}): JobCard => ({
  id,
  title,
  changedAt: '2031-05-14T09:20:00-04:00',
  next: 'readings',
  entryCount: 1,
  ...rest,
});

const CARDS = [
  card('a', 'Casa Peña', { next: 'proof', client: 'Unión 12' }),
  card('b', 'Pena Street 10', { next: 'plan', changedAt: '2031-05-14T14:00:00+00:00' }),
  card('c', 'Pena Street 9', {
    next: 'plan',
    changedAt: '2031-05-14T09:30:00-05:00',
    address: '9 Pena Street',
  }),
];
const ids = (cards: readonly JobCard[]) => cards.map(({ id }) => id).join('');

it('finds every word, in any order, without regard to accents, but keeps ñ apart', () => {
  expect(ids(findJobs(CARDS, 'UNION casa', 'title'))).toBe('a');
  expect(ids(findJobs(CARDS, 'pena', 'title'))).toBe('cb');
  expect(ids(findJobs(CARDS, 'peña', 'title'))).toBe('a');
  expect(ids(findJobs(CARDS, 'street address', 'title'))).toBe('');
  expect(ids(findJobs(CARDS, '  ', 'title'))).toBe('acb');
});

it('sorts by what comes next, then by the newest change across offsets', () => {
  expect(ids(findJobs(CARDS, '', 'next'))).toBe('cba');
  expect(ids(findJobs(CARDS, '', 'changed'))).toBe('cba');
});
