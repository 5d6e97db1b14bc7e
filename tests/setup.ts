import { configureGlobal } from 'fast-check';

// New random input on every run, but the same in CI, so that a failure there is a change's own. FAST_CHECK_SEED=7 repeats a run.
const seed = process.env.FAST_CHECK_SEED ?? (process.env.CI === undefined ? undefined : '20261125');
if (seed !== undefined) configureGlobal({ seed: Number(seed) });
