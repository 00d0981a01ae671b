// Runs the tests of the libs and of the API on every Node that is supported, or on those named: `npm run test:nodes -- 24`.
// Each runtime comes as a package of the registry (Linux), into a folder of its own under node_modules/.cache.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const VERSIONS = ['20.19', '22', '24'];
const TESTS = ['libs', 'apps/api', 'tests/api'];

const root = fileURLToPath(new URL('..', import.meta.url));

function run(command, args, cwd = root) {
  const { status } = spawnSync(command, args, { cwd, stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}

function runtime(version) {
  const folder = `${root}node_modules/.cache/node-${version}`;
  const name = `node-linux-${process.arch}`;
  const binary = `${folder}/node_modules/${name}/bin/node`;
  if (!existsSync(binary)) {
    mkdirSync(folder, { recursive: true });
    writeFileSync(`${folder}/package.json`, '{ "private": true }\n');
    run('npm', ['install', '--no-save', '--no-audit', '--no-fund', '--loglevel=error', `${name}@${version}`], folder);
  }
  return binary;
}

if (process.platform !== 'linux') {
  console.error('The runtimes are taken from packages for Linux; run this there.');
  process.exit(1);
}
const [wanted, tests] = [
  process.argv.slice(2).filter((each) => /^\d/.test(each)),
  process.argv.slice(2).filter((each) => !/^\d/.test(each)),
];
for (const version of wanted.length > 0 ? wanted : VERSIONS) {
  const node = runtime(version);
  console.log(`-- Node ${spawnSync(node, ['--version'], { encoding: 'utf8' }).stdout.trim()}`);
  run(node, ['node_modules/vitest/vitest.mjs', 'run', ...(tests.length > 0 ? tests : TESTS)]);
}
