import { assess, JobError } from '@undercroft/assessment';
import { EngineError } from '@undercroft/engine';
import { expose } from 'comlink';
import type { Compute } from './api.ts';

const compute: Compute = {
  async assess(job) {
    try {
      return { ok: true, assessment: assess(job) };
    } catch (error) {
      if (error instanceof JobError || error instanceof EngineError)
        return { ok: false, reason: error.message };
      throw error;
    }
  },
  async planSvg(job, assessment, options) {
    const { planSvg } = await import('./drawing.ts');
    return planSvg(job, assessment, options);
  },
  async calculatorForms() {
    const { forms } = await import('./calculate.ts');
    return forms();
  },
  async calculate(name, inputs) {
    const { runCalculator } = await import('./calculate.ts');
    return runCalculator(name, inputs);
  },
};

expose(compute);
