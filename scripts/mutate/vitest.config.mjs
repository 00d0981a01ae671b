import { defineConfig } from 'vitest/config';

/** The unit tests of one lib alone, without the servers that other tests need. */
const conditions = ['source', 'module', 'node', 'development|production'];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: { include: [`libs/${process.env.MUTATED_LIB}/**/*.spec.ts`] },
});
