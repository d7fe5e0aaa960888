import fc from 'fast-check';

/**
 * Property tests draw the same cases in every run, so that a red run can be had again and a change is never blamed for
 * luck. UNDERCROFT_SEED=N draws others; the long suites of a release are worth a few.
 */
fc.configureGlobal({ seed: Number(process.env.UNDERCROFT_SEED ?? 20_261_125) });
