// Before `npm start` and `npm test`: the right Node, and node_modules as the lock file says. Built-ins only.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

function stop(line) {
  console.error(line);
  process.exit(1);
}

function nodeIsNewEnough() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  return major > 20 || (major === 20 && minor >= 19);
}

/** True when every package the lock file requires stands in node_modules in its version. */
function installedAsLocked() {
  const installedFile = `${root}node_modules/.package-lock.json`;
  if (!existsSync(installedFile)) return false;
  const locked = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8')).packages;
  const installed = JSON.parse(readFileSync(installedFile, 'utf8')).packages;
  return Object.entries(locked).every(
    ([path, entry]) => path === '' || entry.optional || entry.peer || installed[path]?.version === entry.version,
  );
}

if (!nodeIsNewEnough()) stop(`Easewright needs Node 20.19 or newer; this is ${process.versions.node}.`);
if (!installedAsLocked()) {
  console.log('Installing what is missing (a minute or two the first time) ...');
  const npm = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (npm.status !== 0) stop('npm ci did not finish; its own message is above.');
}
try {
  createRequire(import.meta.url)('sqlite3');
} catch (error) {
  stop(
    `The database driver sqlite3 does not load (${String(error.message).split('\n')[0]}). It builds from source: python3, make and a C++ compiler must be there; then delete node_modules and try again.`,
  );
}
