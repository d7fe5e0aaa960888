import { drawnGeometry } from '@undercroft/assessment';
import { chainSvg, planSceneSvg } from '@undercroft/report';
import { expose } from 'comlink';
import type { Draw } from './drawer.ts';

const draw: Draw = {
  async scene(job, readings, options) {
    return planSceneSvg(job, { geometry: drawnGeometry(job), readings }, options);
  },
  async chain(causes, options) {
    return chainSvg(causes, options);
  },
};

expose(draw);
