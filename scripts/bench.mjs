// Runs every bench in bench/ but the long ones, or those named: `npm run bench -- fit api scale`. Each is its own process, so that none warms another.
import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../bench/', import.meta.url));
const wanted = process.argv.slice(2);
const benches = readdirSync(folder)
  .filter((file) => file.endsWith('.bench.mjs'))
  .filter((file) =>
    wanted.length === 0 ? !file.includes('.long.') : wanted.some((name) => file.startsWith(`${name}.`)),
  );

for (const file of benches) {
  console.log(`-- ${file}`);
  const run = spawnSync(process.execPath, ['--expose-gc', folder + file], { stdio: 'inherit' });
  if (run.status !== 0) process.exit(run.status ?? 1);
}
