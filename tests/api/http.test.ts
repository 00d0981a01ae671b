import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { document } from '../support/matches-api.ts';

describe('the service', () => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp('sqlite', { ALLOWED_HOSTS: 'knitting.example' })));
  afterAll(() => api.stop());

  it('answers only to its own names', async () => {
    for (const host of ['localhost', 'localhost:4114', '127.0.0.1:1', '[::1]:4114', 'KNITTING.example']) {
      await api.http.get('/health').set('Host', host).expect(200);
    }
    for (const host of ['evil.example', 'localhost.evil.example', '127.0.0.1.evil.example', '']) {
      const response = await api.http.get('/health').set('Host', host);
      expect([400, 421], host).toContain(response.status);
    }
  });

  it('lets no other site read it', async () => {
    const response = await api.http.get('/v1/bodies').set('Origin', 'https://evil.example').expect(200);
    expect(Object.keys(response.headers).filter((name) => name.startsWith('access-control-'))).toEqual([]);
    expect((await api.http.options('/v1/bodies').set('Origin', 'https://evil.example')).headers).not.toHaveProperty(
      'access-control-allow-origin',
    );
  });

  it.each(['/v1/bodies', '/v1/nothing', '/%E0%A4%A', '/v1/bodies/not-an-id', '/v1/bodies?limit=x'])(
    'puts the headers of security on %s',
    async (path) => {
      const { headers } = await api.http.get(path);
      expect(headers['content-security-policy']).toMatch(/^default-src 'none'; script-src 'self'; style-src 'self';/);
      expect(headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'no-referrer',
        'cross-origin-resource-policy': 'same-origin',
        'cache-control': path === '/v1/bodies' ? 'private, no-cache' : 'no-store',
      });
      expect(headers).not.toHaveProperty('x-powered-by');
    },
  );

  it('answers where there is nothing with a problem document, whatever is accepted', async () => {
    for (const path of ['/nothing', '/v2/bodies', '/nothing.json', '/v1/bodies/', '/V1/bodies', '/index.html']) {
      const response = await api.http.get(path).set('Accept', 'text/html').expect(404);
      expect(response.headers['content-type'], path).toMatch(/^application\/problem\+json/);
      expect(response.body.code).toBe('not-found');
    }
    await api.http.patch('/v1/nothing').expect(404);
    await api.http.options('/v1/nothing').expect(404);
  });

  it.each(['/%E0%A4%A', '/v1/bodies/%C3%28', '/v1/bodies?cursor=%zz', '/v1/sizes/a%00b', '/100%'])(
    'says which escape of %s is no character',
    async (path) => {
      const response = await api.http.get(path).expect(400);
      expect(response.body.code).toBe('address-unreadable');
      expect(response.body.detail).toContain(`“${/%[^?]*/.exec(path)?.[0].slice(0, 3)}`);
    },
  );

  it('says which methods an address takes, where it does not take that one', async () => {
    const wrong = await api.http.patch('/v1/target-sheets/compute').send({}).expect(405);
    expect(wrong.headers['allow']).toContain('POST');
    expect(wrong.body).toMatchObject({ code: 'wrong-method', detail: expect.stringContaining('POST') });
    expect((await api.http.delete('/v1/bodies').expect(405)).headers['allow']).toBe('GET, HEAD, OPTIONS, POST');
    await api.http.patch('/v1/bodies/').expect(404);
    await api.http.post('/v1/nothing').send({}).expect(404);
  });

  it.each(Object.entries(document.paths))(
    'takes at %s what it says, and no other method',
    async (template, methods) => {
      const path = template.replaceAll(/\{[^}]+\}/g, '01900000-0000-7000-8000-000000000000');
      const wanted = Object.keys(methods).map((method) => method.toUpperCase());
      const all = [...wanted, 'OPTIONS', ...(wanted.includes('GET') ? ['HEAD'] : [])].sort().join(', ');
      expect((await api.http.options(path).expect(204)).headers['allow']).toBe(all);
      for (const method of ['get', 'head', 'post', 'put', 'patch', 'delete'] as const) {
        if (all.includes(method.toUpperCase())) continue;
        const response = await api.http[method](path).expect(405);
        expect(response.headers['allow'], method).toBe(all);
        if (method !== 'head') expect(response.body.detail).toContain(all);
      }
    },
  );

  it.each(Object.keys(document.paths).filter((path) => document.paths[path]?.['get']))(
    'answers HEAD at %s as it does GET',
    async (template) => {
      const path = template.replaceAll(/\{[^}]+\}/g, '01900000-0000-7000-8000-000000000000');
      const [get, head] = [await api.http.get(path), await api.http.head(path)];
      expect(head.status).toBe(get.status);
      expect(head.text ?? '').toBe('');
      // An export says when it was made.
      const etag = template === '/v1/export' ? [] : ['etag'];
      for (const name of [...etag, 'content-type', 'cache-control', 'vary', 'content-security-policy'])
        expect(head.headers[name], name).toBe(get.headers[name]);
    },
  );

  it.each(Object.entries(document.paths))(
    'takes no parameter at %s that it does not name',
    async (template, methods) => {
      const path = template.replaceAll(/\{[^}]+\}/g, '01900000-0000-7000-8000-000000000000');
      for (const method of Object.keys(methods) as ('get' | 'post' | 'put' | 'delete')[]) {
        const response = await api.http[method](`${path}?no-such=1&constructor=2&__proto__=3&toString=4`);
        expect(response.status, method).toBe(400);
        const refused = response.body.errors.map(({ parameter }: { parameter: string }) => parameter);
        expect(refused).toEqual(expect.arrayContaining(['no-such', 'constructor', '__proto__', 'toString']));
      }
    },
  );

  it.each(Object.entries(document.paths))('takes If-Match at %s only where it says so', async (template, methods) => {
    const path = template.replaceAll(/\{[^}]+\}/g, '01900000-0000-7000-8000-000000000000');
    for (const [method, { parameters = [] }] of Object.entries(methods)) {
      if (parameters.some(({ name }) => name === 'If-Match')) continue;
      const response = await api.http[method as 'get'](path).set('If-Match', '"1"').expect(400);
      expect(response.body, method).toMatchObject({ code: 'if-match-unexpected' });
    }
  });

  it('has the right time on every answer', async () => {
    for (const path of ['/health', '/v1/nothing', '/v1/bodies?limit=x']) {
      const date = (await api.http.get(path)).headers['date'] ?? '';
      expect(new Date(date).toUTCString()).toBe(date);
      expect(Math.abs(Date.parse(date) - Date.now())).toBeLessThan(60_000);
    }
  });

  it.each(['/', '/docs', '/openapi.json', '/docs/openapi.json', '/docs/openapi.yaml'])(
    'takes no parameter at %s',
    async (path) => {
      const { body } = await api.http.get(`${path}?no-such=1`).expect(400);
      expect(body).toMatchObject({ code: 'invalid-parameter', errors: [{ parameter: 'no-such' }] });
    },
  );

  it.each(['/docs', '/openapi.json', '/docs/openapi.json', '/docs/openapi.yaml'])(
    'sends %s again only where it has changed',
    async (path) => {
      const { headers } = await api.http.get(path).expect(200);
      expect(headers['cache-control']).toBe('private, no-cache');
      await api.http
        .get(path)
        .set('If-None-Match', headers['etag'] ?? '')
        .expect(304);
    },
  );

  it('says to who asks for all of it which methods it knows', async () => {
    const { port } = api.app.getHttpServer().address() as AddressInfo;
    const sent = request({ port, method: 'OPTIONS', path: '*', headers: { host: 'localhost' } }).end();
    const [answer] = (await once(sent, 'response')) as [IncomingMessage];
    answer.resume();
    expect(answer.statusCode).toBe(204);
    expect(answer.headers.allow).toBe('DELETE, GET, HEAD, OPTIONS, POST, PUT');
  });

  it('says how a plus is written in an address', async () => {
    const { body } = await api.http.get('/v1/bodies?since=2026-01-31T18:30:00+01:00').expect(400);
    expect(body.errors[0].detail).toContain('%2B');
    await api.http.get('/v1/bodies?since=2026-01-31T18:30:00%2B01:00').expect(200);
  });

  it('is healthy and ready', async () => {
    await api.http.get('/health').expect(200);
    await api.http.get('/ready').expect(200);
  });

  it('can be browsed, and leads there while there is no page', async () => {
    expect((await api.http.get('/').expect(302)).headers['location']).toBe('/docs');
    const docs = await api.http.get('/docs').expect(200);
    expect(docs.headers['content-security-policy']).toContain("style-src 'self' 'unsafe-inline'");
    expect(docs.text).not.toMatch(/<script(?![^>]*\bsrc=)/);
    expect((await api.http.get('/docs/openapi.json').expect(200)).body.openapi).toBe('3.1.0');
  });

  it('gives rules, published sizes and the schema of the sheet to read', async () => {
    const rules = await api.http.get('/v1/design-rules').expect(200);
    expect(rules.body.items.every(({ source }: { source: string }) => source !== '')).toBe(true);
    const sizes = await api.http.get('/v1/sizes').expect(200);
    for (const { id } of sizes.body.items) await api.http.get(`/v1/sizes/${id}`).expect(200);
    await api.http.get('/v1/sizes/nothing').expect(404);
    const schema = await api.http.get('/v1/schemas/target-sheet/1').expect(200);
    expect(JSON.parse(schema.text).$id).toBe('urn:easewright:schema:target-sheet:1');
  });
});

const SCRIPT = 'export {};\n'.repeat(200);

describe('the service with a page', () => {
  let folder: string;
  let api: RunningApp;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'easewright-page-'));
    mkdirSync(join(folder, 'assets'));
    writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Easewright</title>');
    const script = join(folder, 'assets', 'page-1a2b.js');
    writeFileSync(script, SCRIPT);
    writeFileSync(`${script}.br`, brotliCompressSync(SCRIPT));
    writeFileSync(`${script}.gz`, gzipSync(SCRIPT));
    api = await runApp('sqlite', { PAGE_DIR: folder });
  });
  afterAll(async () => {
    await api.stop();
    rmSync(folder, { recursive: true });
  });

  it('serves it at /, checked anew each time, and nowhere else', async () => {
    const response = await api.http.get('/').set('Accept', 'text/html').expect(200);
    expect(response.text).toContain('<title>Easewright</title>');
    expect(response.headers['cache-control']).toBe('no-cache');
    await api.http
      .get('/')
      .set('If-None-Match', response.headers['etag'] ?? '')
      .expect(304);
    expect((await api.http.head('/').expect(200)).headers['content-type']).toMatch(/^text\/html/);
    for (const path of ['/sheets/1', '/index.html', '/assets', '/assets/', '/assets/page-1a2b.js.br', '/nothing.json'])
      await api.http.get(path).set('Accept', 'text/html').expect(404);
    expect((await api.http.post('/').send({}).expect(405)).headers['allow']).toBe('GET, HEAD, OPTIONS');
    await api.http.put('/assets/page-1a2b.js').send({}).expect(405);
  });

  it('lets what is named by its content be kept', async () => {
    const { headers } = await api.http.get('/assets/page-1a2b.js').expect(200);
    expect(headers['content-type']).toMatch(/javascript/);
    expect(headers['cache-control']).toContain('immutable');
    await api.http.get('/assets/../../package.json').set('Accept', 'application/json').expect(404);
  });

  it.each([
    ['br, gzip', 'br'],
    ['gzip, deflate', 'gzip'],
    ['gzip;q=1, br;q=0', 'gzip'],
    ['*', 'br'],
    ['identity', undefined],
    ['', undefined],
  ])('sends it as it was compressed at build to who accepts “%s”', async (accepted, coding) => {
    const response = await api.http.get('/assets/page-1a2b.js').set('Accept-Encoding', accepted).expect(200);
    expect(response.headers['content-encoding']).toBe(coding);
    expect(response.headers['vary']).toContain('Accept-Encoding');
    if (coding !== 'br') expect(response.text).toBe(SCRIPT);
  });

  it('leaves the API its addresses', async () => {
    expect((await api.http.get('/v1/nothing').set('Accept', 'text/html').expect(404)).body.code).toBe('not-found');
    await api.http.get('/docs').expect(200);
  });
});
