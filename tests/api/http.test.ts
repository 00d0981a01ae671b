import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';

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
        'cache-control': 'no-store',
      });
      expect(headers).not.toHaveProperty('x-powered-by');
    },
  );

  it('answers where there is nothing with a problem document', async () => {
    for (const request of [api.http.get('/nothing'), api.http.patch('/v1/nothing'), api.http.get('/%E0%A4%A')]) {
      const response = await request;
      expect(response.status).toBe(404);
      expect(response.headers['content-type']).toMatch(/^application\/problem\+json/);
    }
  });

  it('says which methods an address takes, where it does not take that one', async () => {
    const wrong = await api.http.patch('/v1/target-sheets/compute').send({}).expect(405);
    expect(wrong.headers['allow']).toContain('POST');
    expect(wrong.body).toMatchObject({ code: 'wrong-method', detail: expect.stringContaining('POST') });
    expect((await api.http.delete('/v1/bodies').expect(405)).headers['allow']).toBe('GET, POST');
    await api.http.patch('/v1/bodies/').expect(404);
    await api.http.post('/v1/nothing').send({}).expect(404);
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
    expect(JSON.parse(schema.text).$id).toBe('/v1/schemas/target-sheet/1');
  });
});

describe('the service with a page', () => {
  let folder: string;
  let api: RunningApp;
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'easewright-page-'));
    mkdirSync(join(folder, 'assets'));
    writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Easewright</title>');
    writeFileSync(join(folder, 'assets', 'page-1a2b.js'), 'export {};');
    api = await runApp('sqlite', { PAGE_DIR: folder });
  });
  afterAll(async () => {
    await api.stop();
    rmSync(folder, { recursive: true });
  });

  it('serves it at / and at every place within it, checked anew each time', async () => {
    for (const path of ['/', '/sheets/1']) {
      const response = await api.http.get(path).set('Accept', 'text/html').expect(200);
      expect(response.text).toContain('<title>Easewright</title>');
      expect(response.headers['cache-control']).toBe('no-cache');
    }
  });

  it('lets what is named by its content be kept', async () => {
    const { headers } = await api.http.get('/assets/page-1a2b.js').expect(200);
    expect(headers['content-type']).toMatch(/javascript/);
    expect(headers['cache-control']).toContain('immutable');
    await api.http.get('/assets/../../package.json').set('Accept', 'application/json').expect(404);
  });

  it('leaves the API its addresses', async () => {
    expect((await api.http.get('/v1/nothing').set('Accept', 'text/html').expect(404)).body.code).toBe('not-found');
    await api.http.get('/docs').expect(200);
  });
});
