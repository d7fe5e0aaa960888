import type { PictureView, Shot, ShotAdds } from '@undercroft/assessment';
import { useEffect, useState } from 'react';
import type { QuestionProps } from '../../shell/question.ts';
import { computer } from '../../worker/computer.ts';
import { latestWins } from '../../worker/latest-wins.ts';

type Props = Pick<QuestionProps, 'view' | 'result'>;

const NONE: readonly PictureView[] = [];

/** The floor that each picture of a job shows; none until it is worked out. */
export function usePictureViews({ view, result }: Props): readonly PictureView[] {
  const [views, setViews] = useState(NONE);
  const { job } = view;
  const geometry = result.assessment?.geometry;
  useEffect(() => {
    if (job === null || geometry === undefined) return;
    let wanted = true;
    // What cannot be worked out leaves the plan without views; the pictures stand beside it all the same.
    computer()
      .pictureViews(job, geometry)
      .then(
        (now) => wanted && setViews(now),
        () => wanted && setViews(NONE),
      );
    return () => {
      wanted = false;
    };
  }, [job, geometry]);
  return views;
}

interface ShotAsked {
  readonly job: NonNullable<Props['view']['job']>;
  readonly geometry: NonNullable<Props['result']['assessment']>['geometry'];
  readonly shot: Shot;
}

const ask = latestWins(({ job, geometry, shot }: ShotAsked) => computer().shotAdds(job, geometry, shot));

/** What the next picture would add from where somebody stands; null until it is known or while nothing can be said. */
export function useShotAdds({ view, result }: Props, shot: Shot | null): ShotAdds | null {
  const [adds, setAdds] = useState<ShotAdds | null>(null);
  const { job } = view;
  const geometry = result.assessment?.geometry;
  const key = shot === null ? '' : JSON.stringify(shot);
  useEffect(() => {
    if (job === null || geometry === undefined || key === '') {
      setAdds(null);
      return;
    }
    let wanted = true;
    ask({ job, geometry, shot: JSON.parse(key) }).then(
      (now) => wanted && setAdds(now),
      // Overtaken by a newer question, or not to be worked out: the newest answer stays.
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [job, geometry, key]);
  return adds;
}
