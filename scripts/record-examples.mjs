// Writes the answers in docs/for-planners again, as the API gives them now; the requests in them stay: `npm run examples`.
import { spawnSync } from 'node:child_process';

const test = ['node_modules/vitest/vitest.mjs', 'run', 'tests/hand-off/recorded-examples.test.ts'];
const { status } = spawnSync(process.execPath, test, {
  stdio: 'inherit',
  env: { ...process.env, RECORD_EXAMPLES: 'yes' },
});
process.exit(status ?? 1);
