import type { FallOfSpots, LevelSheet } from '@undercroft/assessment';
import type { Job } from '@undercroft/record';
import { useEffect, useState } from 'react';
import { computer } from '../../worker/computer.ts';

/** Heights of all leveled points; null until they are worked out. */
export function useLevelSheet(job: Job): LevelSheet | null {
  const { levels, levelSetups } = job.readings;
  const [sheet, setSheet] = useState<LevelSheet | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: of the job only the levels count
  useEffect(() => {
    let wanted = true;
    computer()
      .levelSheet(job)
      .then(
        (given) => wanted && setSheet(given),
        () => wanted && setSheet(null),
      );
    return () => {
      wanted = false;
    };
  }, [levels, levelSetups]);
  return sheet;
}

/** The fall between two points of a sheet; null where there is none, undefined until it is worked out. */
export function useFall(sheet: LevelSheet, fromId: string, toId: string): FallOfSpots | null | undefined {
  const [fall, setFall] = useState<FallOfSpots | null | undefined>(undefined);
  useEffect(() => {
    let wanted = true;
    setFall(undefined);
    computer()
      .fall(sheet, fromId, toId)
      .then(
        (given) => wanted && setFall(given),
        () => wanted && setFall(null),
      );
    return () => {
      wanted = false;
    };
  }, [sheet, fromId, toId]);
  return fall;
}
