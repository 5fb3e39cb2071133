import { defineConfig } from 'vitest/config';
import { runCompiled } from './test/compiled/run-compiled.mjs';
import { LongestFirst } from './test/longest-first.mjs';

export default defineConfig({
  plugins: [runCompiled()],
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    setupFiles: ['./test/same-seed.ts'],
    environment: 'node',
    env: { FORCE_COLOR: '0', CI: '' },
    // A test that takes 2 s alone may take many times that on a busy machine.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Tests are pure or end their own programs, so files share one process a core and what it has loaded.
    isolate: false,
    maxWorkers: '100%',
    // Most of what a plan is made of is thrown away at once: room for it that fills less often is swept less often, and by
    // one thread, for the other core has a worker of its own. Most of the code runs for some seconds only: what is compiled
    // to its fastest later than a server would want it costs a fifth less in all.
    execArgv: [
      '--min-semi-space-size=64',
      '--max-semi-space-size=64',
      '--heap-growing-percent=400',
      '--single-threaded-gc',
      '--interrupt-budget=1500000',
    ],
    sequence: { sequencer: LongestFirst },
    server: { deps: { external: [/\/dist\/tests\//] } },
  },
});
