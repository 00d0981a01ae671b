import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import { afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { emptyDatabase, type EmptyDatabase } from '../support/databases.ts';
import { load } from './load.ts';

const CONNECTIONS = 1_500;

let database: EmptyDatabase;
let api: ApiProcess;
const sockets: Socket[] = [];
beforeAll(buildApi);
beforeEach(async () => {
  database = await emptyDatabase('sqlite');
  api = await ApiProcess.start(database.env);
});
afterEach(async () => {
  for (const socket of sockets.splice(0)) socket.destroy();
  await api.stop();
  await database.remove();
});

it(`answers others beside ${CONNECTIONS} connections that never finish their request`, async () => {
  const port = Number(new URL(api.url).port);
  for (let index = 0; index < CONNECTIONS; index++) {
    const socket = connect(port, '127.0.0.1').on('error', () => undefined);
    sockets.push(socket);
    await once(socket, 'connect');
    socket.write('POST /v1/fabrics HTTP/1.1\r\nHost: localhost\r\nContent-Length: 1000\r\n');
  }
  const writing = load(() => api, 4);
  await expect.poll(() => writing.result.acknowledged.size, { timeout: 60_000 }).toBeGreaterThan(100);
  await writing.stop();
  expect([...writing.result.statuses.keys()]).toEqual([201]);
});
