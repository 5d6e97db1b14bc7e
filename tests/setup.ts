import { configureGlobal } from 'fast-check';

// The same random input on every run, so that a failure is a change's own; another seed looks for new ones: FAST_CHECK_SEED=7 npm test.
configureGlobal({ seed: Number(process.env.FAST_CHECK_SEED ?? 20261125) });
