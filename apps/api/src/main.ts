import { makeApp } from './app.ts';
import { settingsFrom } from './settings/settings.ts';
import { StartError } from './settings/start-error.ts';

async function start(): Promise<void> {
  const { host, port } = settingsFrom(process.env);
  const app = await makeApp(process.env);
  app.enableShutdownHooks();
  try {
    await app.listen(port, host);
  } catch (error) {
    await app.close();
    throw cannotListen(host, port, error);
  }
  console.log(`Easewright is at ${(await app.getUrl()).replace('[::1]', 'localhost')}`);
}

function cannotListen(host: string, port: number, error: unknown): unknown {
  switch ((error as NodeJS.ErrnoException).code) {
    case 'EADDRINUSE':
      return new StartError(`Port ${port} is in use. Stop what uses it, or choose another: PORT=${port + 1} npm start`);
    case 'EACCES':
      return new StartError(`Port ${port} may not be used by this account. Choose one above 1023: PORT=4114 npm start`);
    case 'EADDRNOTAVAIL':
    case 'ENOTFOUND':
      return new StartError(`HOST is “${host}”, which is no address of this machine.`);
    default:
      return error;
  }
}

try {
  await start();
} catch (error) {
  if (!(error instanceof StartError)) throw error;
  console.error(error.message);
  process.exit(1);
}
