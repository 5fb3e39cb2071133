import fc from 'fast-check';

/** Properties are tried with the same values in every run; `SEED=2 npm test` tries others. */
fc.configureGlobal({ seed: Number(process.env.SEED ?? 1) });
