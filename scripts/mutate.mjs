// Mutation score of a lib, by its own unit tests alone: `npm run mutate -- measure`. Only what has changed since is tried again.
// The report is reports/mutation/LIB.json. Stryker comes into a folder of its own: nothing else needs it.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';

const VERSION = '9.6.1'; // the last for Node 20

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = `${root}node_modules/.cache/stryker-${VERSION}`;
const [lib] = process.argv.slice(2);

function run(command, args, cwd, env = {}) {
  const { status } = spawnSync(command, args, { cwd, stdio: 'inherit', env: { ...process.env, ...env } });
  if (status !== 0) process.exit(status ?? 1);
}

if (lib === undefined || !existsSync(`${root}libs/${lib}`)) {
  console.error('Which lib? npm run mutate -- measure');
  process.exit(1);
}
if (!existsSync(`${folder}/node_modules/@stryker-mutator/vitest-runner`)) {
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/package.json`, '{ "private": true }\n');
  // Vitest itself is the one that the project has.
  const packages = ['core', 'api', 'vitest-runner'].map((name) => `@stryker-mutator/${name}@${VERSION}`);
  run(
    'npm',
    ['install', '--legacy-peer-deps', '--no-save', '--no-audit', '--no-fund', '--loglevel=error', ...packages],
    folder,
  );
}
mkdirSync(`${root}reports/mutation`, { recursive: true });
const config = `${root}reports/mutation/${lib}.config.json`;
writeFileSync(
  config,
  JSON.stringify({
    packageManager: 'npm',
    testRunner: 'vitest',
    plugins: [`${folder}/node_modules/@stryker-mutator/vitest-runner/dist/src/index.js`],
    vitest: { configFile: 'scripts/mutate/vitest.config.mjs' },
    mutate: [`libs/${lib}/src/**/*.ts`, '!**/*.spec.ts'],
    ignorePatterns: ['apps', 'bench', 'data', 'dist', 'docs', 'reports', 'tests'],
    coverageAnalysis: 'perTest',
    timeoutMS: 30_000, // what is only slow on a busy machine is not taken for caught
    incremental: true,
    incrementalFile: `reports/mutation/${lib}.json`,
    reporters: ['clear-text', 'progress'],
    clearTextReporter: { allowColor: false, logTests: false },
    concurrency: Math.max(1, availableParallelism() - 1),
    thresholds: { high: 92, low: 85, break: null },
  }),
);
run(process.execPath, [`${folder}/node_modules/@stryker-mutator/core/bin/stryker.js`, 'run', config], root, {
  MUTATED_LIB: lib,
});
