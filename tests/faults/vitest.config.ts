import { mergeConfig } from 'vitest/config';
import base from '../../vitest.config.ts';

/** What takes long, much memory or root: `npm run faults`. */
const config = mergeConfig(base, { test: { fileParallelism: false } });
config.test.include = ['tests/faults/**/*.fault.ts'];

export default config;
