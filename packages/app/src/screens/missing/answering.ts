import { randomName } from '../../jobs/author.ts';
import type { JobView, OpenJob } from '../../jobs/open-job.ts';
import { takenNow, useTaking } from '../../jobs/use-taking.ts';

/** Answers questions about a job; yes and no stand in the record as true and false. */
export function useAnswering(openJob: OpenJob, view: JobView) {
  const { taking, take } = useTaking(openJob, view);
  const answer = (question: string, said: string) => {
    if (taking.is === 'saving' || taking.is === 'waiting') return;
    const value = { question, answer: said === 'yes' ? true : said === 'no' ? false : said, ...takenNow() };
    void take([{ do: 'create', kind: 'answer', item: randomName(16), value }], () => {});
  };
  return { taking, answer };
}
