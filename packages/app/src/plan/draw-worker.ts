import { drawnGeometry } from '@undercroft/assessment';
import { planSceneSvg } from '@undercroft/report';
import { expose } from 'comlink';
import type { Draw } from './drawer.ts';

const draw: Draw = {
  async scene(job, readings, options) {
    return planSceneSvg(job, { geometry: drawnGeometry(job), readings }, options);
  },
};

expose(draw);
