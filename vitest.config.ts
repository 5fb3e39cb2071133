import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    environment: 'node',
    env: { FORCE_COLOR: '0', CI: '' },
    testTimeout: 20_000,
  },
});
