import { defineConfig } from 'vitest/config';

/** `source` picks the TypeScript of each lib (package.json, `imports`); both blocks are needed, `ssr` is the one Node tests use. */
const conditions = ['source', 'module', 'node', 'development|production'];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    include: ['{apps,libs}/**/*.spec.ts', 'tests/**/*.test.ts'],
    globalSetup: 'tests/support/postgres.ts',
    setupFiles: 'tests/support/property-seed.ts',
    testTimeout: 180_000,
    hookTimeout: 120_000,
  },
});
