import { connect, type AddressInfo } from 'node:net';
import { brotliCompressSync, deflateSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';

interface Answered {
  readonly status: number;
  readonly headers: string;
  readonly problem: { readonly status: number; readonly code: string; readonly detail: string };
}

/** What no client library sends, written to the socket as it is. */
describe('a request that is broken before it can be read', () => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp('sqlite')));
  afterAll(() => api.stop());

  /** Sends the pieces and gives the first answer; what is missing of the request never comes. */
  async function sent(...pieces: readonly (string | Buffer)[]): Promise<Answered> {
    const { port } = api.app.getHttpServer().address() as AddressInfo;
    const socket = connect(port, '127.0.0.1');
    for (const piece of pieces) socket.write(piece);
    let text = '';
    // Leaving the loop closes the socket.
    for await (const chunk of socket) {
      text += String(chunk);
      if (/\r\n\r\n\{.*\}$/s.test(text)) break;
    }
    const [body = '', ...above] = text.split('\r\n\r\n').reverse();
    const headers = above.reverse().join('\r\n\r\n');
    return { status: Number(/^HTTP\/1\.1 (\d+)/.exec(headers)?.[1]), headers, problem: JSON.parse(body) };
  }
  const head = (line: string, ...headers: readonly string[]) =>
    [line, 'Host: localhost', ...headers, '', ''].join('\r\n');
  const post = (...headers: readonly string[]) =>
    head('POST /v1/bodies HTTP/1.1', 'Content-Type: application/json', ...headers);

  it.each<readonly [string, () => (string | Buffer)[], number, string]>([
    ['no HTTP', () => ['\x16\x03\x01\x02\x00 hello\r\n\r\n'], 400, 'unreadable'],
    ['a method there is not', () => [head('KNIT /v1/bodies HTTP/1.1')], 400, 'unreadable'],
    ['headers that do not end', () => [head('GET / HTTP/1.1', `X: ${'x'.repeat(20_000)}`)], 431, 'headers-too-long'],
    ['an address of 5 kB', () => [head(`GET /v1/bodies?x=${'x'.repeat(5000)} HTTP/1.1`)], 414, 'address-too-long'],
    ['an address of 20 kB', () => [head(`GET /v1/${'x'.repeat(20_000)} HTTP/1.1`)], 431, 'headers-too-long'],
    ['no host', () => ['GET /v1/bodies HTTP/1.1\r\n\r\n'], 421, 'wrong-host'],
    ['a length that is none', () => [post('Content-Length: many'), '{}'], 400, 'unreadable'],
    ['an announced length that is too long', () => [post('Content-Length: 100000000'), '{'], 413, 'too-large'],
    ['a body that goes on and on', () => [post('Transfer-Encoding: chunked'), ...chunks(70)], 413, 'too-large'],
    [
      'a body that a client asks about first',
      () => [post('Content-Length: 9000000', 'Expect: 100-continue')],
      413,
      'too-large',
    ],
    ['a little that unpacks to a lot', () => gzipped(gzipSync(Buffer.alloc(10_000_000, ' '))), 413, 'too-large'],
    ['gzip that is none', () => gzipped(Buffer.from('{"title":"a"}')), 400, 'encoding-broken'],
    ['half of a gzip', () => gzipped(gzipSync('{"title":"a"}').subarray(0, 18)), 400, 'encoding-broken'],
    [
      'a coding there is not',
      () => [post('Content-Encoding: morse', 'Content-Length: 2'), '{}'],
      415,
      'encoding-unknown',
    ],
  ])('%s is answered with a problem', async (_, pieces, status, code) => {
    const answered = await sent(...pieces());
    expect(answered.status).toBe(status);
    expect(answered.problem).toMatchObject({ status, code, detail: expect.stringMatching(/^\S.*\.$/) });
    expect(answered.headers).toMatch(/^Content-Type: application\/problem\+json/m);
    expect(answered.headers).toMatch(/^Date: \w{3}, \d\d \w{3} \d{4} \d\d:\d\d:\d\d GMT$/m);
  });

  function chunks(kilobytes: number): string[] {
    return Array.from({ length: kilobytes }, () => `400\r\n${' '.repeat(1024)}\r\n`);
  }
  function gzipped(bytes: Buffer): (string | Buffer)[] {
    return [post('Content-Encoding: gzip', `Content-Length: ${bytes.length}`), bytes];
  }

  it('lets a client that asks first send what may be sent', async () => {
    const answered = await sent(post('Content-Length: 4', 'Expect: 100-continue'), '"no"');
    expect(answered.headers).toMatch(/^HTTP\/1\.1 100 Continue\r\n\r\nHTTP\/1\.1 400 /);
  });

  it.each([
    ['gzip', gzipSync],
    ['deflate', deflateSync],
    ['br', brotliCompressSync],
  ] as const)('reads a body that is compressed with %s', async (coding, compress) => {
    const response = await fetch(`${await api.app.getUrl()}/v1/bodies`, {
      method: 'POST',
      headers: { 'content-encoding': coding, 'content-type': 'application/json' },
      body: compress('{"title":"small","measures":[]}'),
    });
    expect(response.status).toBe(201);
    expect(await response.json()).toMatchObject({ title: 'small' });
  });
});
