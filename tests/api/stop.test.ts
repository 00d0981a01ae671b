import { Agent, get, request } from 'node:http';
import { connect, type Socket } from 'node:net';
import { once } from 'node:events';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ApiProcess, buildApi } from '../support/api-process.ts';
import { emptyDatabase, type EmptyDatabase } from '../support/databases.ts';
import { exampleFabric } from '../support/examples.ts';

const MARK = 'a yarn named nowhere else';
const BODY = JSON.stringify({ ...exampleFabric, title: MARK });

describe.runIf(process.platform !== 'win32')('the process', () => {
  let database: EmptyDatabase;
  let api: ApiProcess;
  const sockets: Socket[] = [];
  beforeAll(buildApi);
  beforeEach(async () => void (database = await emptyDatabase('sqlite')));
  afterEach(async () => {
    for (const socket of sockets.splice(0)) socket.destroy();
    await api.killNine();
    await database.remove();
  });
  const start = async (more: Record<string, string> = {}) =>
    void (api = await ApiProcess.start({ ...database.env, ...more }));
  const open = async (): Promise<Socket> => {
    const socket = connect(Number(new URL(api.url).port), '127.0.0.1').on('error', () => undefined);
    sockets.push(socket);
    await once(socket, 'connect');
    return socket;
  };

  it.each(['SIGTERM', 'SIGINT'] as const)(
    'ends at %s with connections kept open and a client that sends nothing',
    async (signal) => {
      await start({ STOP_SECONDS: '1' });
      const agent = new Agent({ keepAlive: true });
      await new Promise((done) => get(`${api.url}/health`, { agent }, (answer) => answer.resume().once('end', done)));
      const silent = await open();
      silent.write('POST /v1/fabrics HTTP/1.1\r\nHost: localhost\r\n');
      expect(await api.signal(signal)).toBe(0);
      agent.destroy();
    },
  );

  it('finishes what it has accepted, and says that it ends', async () => {
    await start();
    const posting = request(`${api.url}/v1/fabrics`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'content-length': BODY.length },
    });
    posting.write(BODY.slice(0, 10));
    await new Promise((done) => setTimeout(done, 200));
    const ended = api.signal('SIGTERM');
    await expect
      .poll(() =>
        fetch(`${api.url}/health`).then(
          () => 'answers',
          () => 'refused',
        ),
      )
      .toBe('refused');
    const answer = new Promise<number | undefined>((done) =>
      posting.once('response', (got) => done(got.resume().statusCode)),
    );
    posting.end(BODY.slice(10));
    expect(await answer).toBe(201);
    expect(await ended).toBe(0);
  });

  it('cuts off after the deadline what does not end', async () => {
    await start({ STOP_SECONDS: '1' });
    const slow = await open();
    slow.write(
      `POST /v1/fabrics HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 500\r\n\r\n{`,
    );
    await new Promise((done) => setTimeout(done, 200));
    expect(await api.signal('SIGTERM')).toBe(0);
  });

  it('ends at once at a second signal', async () => {
    await start({ STOP_SECONDS: '3600' });
    const slow = await open();
    slow.write(
      `POST /v1/fabrics HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 500\r\n\r\n{`,
    );
    await new Promise((done) => setTimeout(done, 200));
    void api.signal('SIGINT');
    await expect
      .poll(() =>
        fetch(`${api.url}/health`).then(
          () => 'answers',
          () => 'refused',
        ),
      )
      .toBe('refused');
    expect(await api.signal('SIGINT')).toBe(1);
  });

  it('has its database to itself until it ends, however it ends', async () => {
    await start();
    await expect(ApiProcess.start(database.env)).rejects.toThrow(
      'is in use by another Easewright. Stop that one first.',
    );
    await api.killNine();
    await start();
  });

  it('goes on at SIGUSR2', async () => {
    await start();
    void api.signal('SIGUSR2');
    await new Promise((done) => setTimeout(done, 300));
    expect((await fetch(`${api.url}/health`)).status).toBe(200);
  });

  it('logs faults and requests as JSON, with the id of the request and nothing that was entered', async () => {
    await start({ LOG_LEVEL: 'info' });
    const headers = { 'content-type': 'application/json', 'x-request-id': 'my-request' };
    await fetch(`${api.url}/v1/fabrics`, { method: 'POST', headers, body: BODY });
    await fetch(`${api.url}/v1/fabrics/chest-94?chest=94`);
    await api.signal('SIGTERM');
    const lines = api.errors
      .split('\n')
      .filter(Boolean)
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines).toContainEqual(
      expect.objectContaining({ requestId: 'my-request', method: 'POST', route: '/v1/fabrics', status: 201 }),
    );
    expect(lines.filter(({ context }) => context === 'Request')).toHaveLength(2);
    expect(api.errors).not.toMatch(new RegExp(`chest|thickness|${MARK}`));
  });
});
