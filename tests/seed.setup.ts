/** Properties try the same cases on every run, in whatever order files come. SEED=… in the environment gives other ones. */

import fc from 'fast-check';

// The library's own seed is the clock.
fc.configureGlobal({ seed: Number(process.env.SEED ?? 1907) });
