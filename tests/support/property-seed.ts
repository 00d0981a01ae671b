import fc from 'fast-check';

/**
 * With `CI` set the properties draw the same cases in every run, so that a run fails for what was changed.
 * Elsewhere each run draws new ones; fast-check prints the seed of a failure.
 */
if (process.env['CI']) fc.configureGlobal({ seed: 4114 });
