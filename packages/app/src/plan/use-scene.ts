import { isSurveyed, type Job } from '@undercroft/record';
import type { PlanFacts, PlanSceneSvg } from '@undercroft/report';
import { useEffect, useId, useState } from 'react';
import { useSettings } from '../settings/settings.ts';
import { Overtaken } from '../worker/latest-wins.ts';
import { sceneQueue } from './drawer.ts';

/** A drawing of the plan, and the state of the job that it shows. */
export interface DrawnScene extends PlanSceneSvg {
  readonly job: Job;
}

/** The drawing of a plan as it stands, an older one while a new one is made; null where there are no walls. */
export function useScene(
  job: Job | null,
  readings: PlanFacts['readings'],
  pxPerM: number | null,
  textPx: number,
  layers: 'all' | 'built',
): { readonly scene: DrawnScene | null; readonly failed: boolean } {
  const { ground: set, language, units: system } = useSettings();
  const ground = set === 'sun' ? 'paper' : set;
  const prefix = `plan-${useId().replace(/\W/g, '')}`;
  const [ask] = useState(sceneQueue);
  const [drawn, setDrawn] = useState<{ readonly scene: DrawnScene | null; readonly failed: boolean }>({
    scene: null,
    failed: false,
  });
  useEffect(() => {
    if (job === null || !isSurveyed(job) || pxPerM === null) return;
    let wanted = true;
    const options = { pxPerM, textPx, ground, language, system, layers, prefix, lettering: 'free' } as const;
    ask({ job, readings, options }).then(
      (scene) => wanted && setDrawn({ scene: { ...scene, job }, failed: false }),
      (error) => wanted && !(error instanceof Overtaken) && setDrawn({ scene: null, failed: true }),
    );
    return () => {
      wanted = false;
    };
  }, [ask, job, readings, pxPerM, textPx, ground, language, system, layers, prefix]);
  return job !== null && isSurveyed(job) ? drawn : { scene: null, failed: false };
}
