import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { makeApp } from './app.ts';
import { demoText } from './demo/demo-text.ts';
import { settingsFrom, type Environment } from './settings/settings.ts';
import { StartError } from './settings/start-error.ts';

/**
 * Starts the service: opens and migrates the database, listens, shows the demo scenario where nothing is kept yet, and says
 * the address.
 *
 * @throws StartError with the one line that says why it does not start
 */
export async function start(env: Environment, say: (text: string) => void): Promise<NestExpressApplication> {
  const { host, port } = settingsFrom(env);
  const app = await makeApp(env);
  try {
    await app.init();
    await listen(app.getHttpServer(), port, host);
  } catch (error) {
    await app.close();
    throw cannotListen(host, port, error);
  }
  const demo = await demoText(app);
  if (demo !== null) say(`Nothing is kept yet. A sheet of the demo scenario, computed and not stored:\n\n${demo}`);
  say(`Easewright is at ${addressOf(app.getHttpServer())}`);
  return app;
}

/** Nest's own `listen` would write a line of its own about what goes wrong. */
function listen(server: Server, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject).listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function addressOf(server: Server): string {
  const { address, family, port } = server.address() as AddressInfo;
  return `http://${family === 'IPv6' ? `[${address}]` : address}:${port}`;
}

function cannotListen(host: string, port: number, error: unknown): unknown {
  const { code = '' } = error as NodeJS.ErrnoException;
  switch (code) {
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
