import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    globalSetup: ['tests/temporary-folder.ts'],
    // Whole site builds and a browser share two cores.
    testTimeout: 120_000,
    // Most files load the same packages and larder; none changes what another sees.
    isolate: false,
    maxWorkers: 2,
    hookTimeout: 240_000,
    env: { ASTRO_TELEMETRY_DISABLED: '1' },
  },
});
