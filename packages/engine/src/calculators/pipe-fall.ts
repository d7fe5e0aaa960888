import type { Notice } from '../numerics/notice.ts';
import type { Source } from '../sources/source.ts';
import type { Calculator } from './calculator.ts';

const MINIMUM_FALL: Source = {
  id: 'ipc-table-704-1',
  citation:
    'International Plumbing Code, Table 704.1, least fall of drain pipe: 1/4 in per ft to 2 1/2 in size, 1/8 in per ft ' +
    'for 3 to 6 in, 1/16 in per ft from 8 in; seen in a secondary page',
  provenance: 'quoted',
};

/** Fall per run of a drain, with what codes ask for. */
export const pipeFallCalculator: Calculator = {
  name: 'pipe-fall',
  title: 'Fall of a pipe',
  answers: 'How steep is a pipe that drops this much over this run?',
  inputs: [
    { key: 'drop', title: 'drop from inlet to outlet', dimension: 'length', min: 0, max: 30 },
    { key: 'run', title: 'run of the pipe', dimension: 'length', min: 0.01, max: 1000 },
  ],
  results: [{ key: 'slope', title: 'slope', dimension: 'slope' }],
  sources: [MINIMUM_FALL],
  run(inputs) {
    // A part in 10^12 keeps 1/8 in over 12 in from failing by rounding.
    const slope = inputs.number('drop') / inputs.number('run');
    const reached = slope * (1 + 1e-12);
    const notices: Notice[] = [];
    if (reached < 1 / 96) {
      notices.push({
        code: 'below-common-fall',
        message:
          'Less than 1/8 in per ft, the usual least fall of 3 to 6 in drain pipe; footing drains are often laid level in stone.',
      });
    } else if (reached < 1 / 48) {
      notices.push({
        code: 'below-small-pipe-fall',
        message: 'Less than 1/4 in per ft, the usual least fall of drain pipe up to 2 1/2 in.',
      });
    }
    return { results: { slope }, notices };
  },
};
