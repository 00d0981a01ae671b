import { StartError } from './settings/start-error.ts';
import { start } from './start.ts';

try {
  const app = await start(process.env, console.log);
  app.enableShutdownHooks();
} catch (error) {
  if (!(error instanceof StartError)) throw error;
  console.error(error.message);
  process.exit(1);
}
