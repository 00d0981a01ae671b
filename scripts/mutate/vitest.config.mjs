import { defineConfig } from 'vitest/config';

/** The unit tests of one lib alone, without the servers that other tests need. */
const conditions = ['source', 'module', 'node', 'development|production'];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  // As long as everywhere else: a test that is only slow on a busy machine is not one that fails.
  test: { testTimeout: 180_000, include: [`libs/${process.env.MUTATED_LIB}/**/*.spec.ts`] },
});
