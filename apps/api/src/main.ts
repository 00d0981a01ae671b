import { settingsFrom } from './settings/settings.ts';
import { StartError } from './settings/start-error.ts';
import { start } from './start.ts';
import { stop } from './stop.ts';
import { stopOnSignals } from './stop-on-signals.ts';

try {
  const { stopMs } = settingsFrom(process.env);
  const starting = start(process.env, console.log);
  stopOnSignals(async () => stop(await starting, stopMs), stopMs);
  await starting;
} catch (error) {
  if (!(error instanceof StartError)) throw error;
  console.error(error.message);
  process.exit(1);
}
