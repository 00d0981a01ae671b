import http from 'node:http';
import net, { type AddressInfo } from 'node:net';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { AddressPolicy } from '../addresses/address-policy.ts';
import { PlannerPost } from './post.ts';

const SHORT_MS = 300;
const local = AddressPolicy.allowing('loopback');
const server = http.createServer();
let origin: string;
let post: PlannerPost;

const answerWith = (handler: http.RequestListener): void =>
  void server.removeAllListeners('request').on('request', handler);
const send = (body = '{}', at = `${origin}/take`) => post.send(at, { 'content-type': 'application/json' }, body);

beforeEach(async () => {
  post = new PlannerPost(local, SHORT_MS);
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterEach(async () => {
  post.close();
  server.closeAllConnections();
  await new Promise((done) => server.close(done));
});

describe('PlannerPost', () => {
  it('sends the very bytes and reads the answer', async () => {
    const received: unknown[] = [];
    answerWith(async (request, response) => {
      const body = Buffer.concat(await request.toArray()).toString();
      received.push(request.method, request.headers['content-length'], body);
      response.writeHead(201, { 'retry-after': '3' }).end('taken');
    });
    expect(await send('{"title":"½"}')).toEqual({ status: 201, retryAfter: '3', answer: 'taken' });
    // ½ is two bytes in UTF-8: 13 characters, 14 bytes.
    expect(received).toEqual(['POST', '14', '{"title":"½"}']);
  });

  it('follows no redirect', async () => {
    const asked: string[] = [];
    answerWith((request, response) => {
      asked.push(request.url ?? '');
      response.writeHead(307, { location: '/elsewhere' }).end();
    });
    expect(await send()).toMatchObject({ status: 307 });
    expect(asked).toEqual(['/take']);
  });

  it('gives up on a planner that does not answer', async () => {
    answerWith(() => undefined);
    expect(await send()).toEqual({ failure: 'timed-out' });
  });

  it('takes a status for an answer though its body never ends', async () => {
    answerWith((_request, response) => void response.writeHead(200).write('begun'));
    expect(await send()).toEqual({ status: 200, retryAfter: null, answer: 'begun' });
  });

  it('keeps the first kilobyte, cuts after 64 kB and closes the connection', async () => {
    let sent = 0;
    const closed = new Promise<void>((done) =>
      answerWith((_request, response) => {
        response.once('close', done);
        const chunk = 'é'.repeat(4096);
        const more = (): void => {
          while (!response.destroyed && response.write(chunk)) sent += chunk.length;
        };
        response.on('drain', more);
        more();
      }),
    );
    const result = await send();
    await closed;
    expect(result).toMatchObject({ status: 200, answer: 'é'.repeat(512) });
    expect(sent).toBeLessThan(50_000_000);
  });

  it('cuts between characters, and keeps nothing that a database does not', async () => {
    answerWith((_request, response) => void response.end(`a${'\0'}b${'é'.repeat(1000)}`));
    // 3 bytes, then 510 whole é (1020 bytes) and one byte of the next, which is left out.
    expect(await send()).toMatchObject({ answer: `a\uFFFDb${'é'.repeat(510)}` });
  });

  it.each([
    ['a name that leads to this machine', 'http://localhost:1/take'],
    ['this machine by number', 'http://127.0.0.1:1/take'],
    ['this machine over TLS', 'https://127.0.0.1:1/take'],
    ['this machine by IPv6', 'https://[::1]:1/take'],
  ])('does not connect to %s unless it is allowed', async (_what, address) => {
    const strict = new PlannerPost(AddressPolicy.allowing(''), SHORT_MS);
    expect(await strict.send(address, {}, '')).toEqual({ failure: 'address-closed' });
  });

  it('connects by name where the name leads to an allowed address', async () => {
    answerWith((_request, response) => void response.end('here'));
    expect(await send('{}', origin.replace('127.0.0.1', 'localhost'))).toMatchObject({ status: 200 });
  });

  it('opens a new connection where the planner closed the one kept open', async () => {
    const seen = new Set<unknown>();
    answerWith((request, response) => {
      if (seen.has(request.socket)) return void request.socket.destroy();
      seen.add(request.socket);
      response.end('taken');
    });
    expect([await send(), await send()]).toMatchObject([{ answer: 'taken' }, { answer: 'taken' }]);
    expect(seen.size).toBe(2);
  });

  it('tells what went wrong', async () => {
    const babbler = net
      .createServer((socket) =>
        socket
          .on('error', () => undefined)
          .resume()
          .end('220 mail\r\n'),
      )
      .listen(0, '127.0.0.1');
    await new Promise((done) => babbler.once('listening', done));
    const { port } = babbler.address() as AddressInfo;
    expect(await send('{}', `http://127.0.0.1:${port}/`)).toEqual({ failure: 'not-http' });
    await new Promise((done) => babbler.close(done));
    expect(await send('{}', `http://127.0.0.1:${port}/`)).toEqual({ failure: 'not-reached' });
    expect(await send('{}', origin.replace('http:', 'https:'))).toEqual({ failure: 'not-secure' });
    answerWith((request) => void request.socket.destroy());
    expect(await send()).toEqual({ failure: 'broken-off' });
  });
});
