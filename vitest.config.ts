import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    environment: 'node',
    env: { FORCE_COLOR: '0', CI: '' },
    testTimeout: 20_000,
    // Tests are pure or end their own programs, so files share one process a core and what it has loaded.
    isolate: false,
    maxWorkers: '100%',
  },
});
