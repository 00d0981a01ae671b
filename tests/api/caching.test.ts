import { request } from 'node:http';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { exampleRequest } from '../support/examples.ts';
import { keepExampleRecords, keepExampleSheet } from '../support/kept-examples.ts';
import { document } from '../support/matches-api.ts';

describe('what is answered', () => {
  let api: RunningApp;
  let sheet: { readonly id: string };
  beforeAll(async () => {
    api = await runApp('sqlite');
    sheet = await keepExampleSheet(api);
  });
  afterAll(() => api.stop());

  it.each([
    ['gzip', 'gzip', gunzipSync],
    ['br', 'br', brotliDecompressSync],
    ['gzip, br', 'br', brotliDecompressSync],
  ] as const)('is compressed for who accepts %s', async (accepted, coding, decompress) => {
    const url = `${await api.app.getUrl()}/v1/target-sheets/compute`;
    const { headers, bytes } = await raw(url, accepted, JSON.stringify(exampleRequest));
    expect(headers.get('content-encoding')).toBe(coding);
    expect(headers.get('vary')).toContain('Accept-Encoding');
    const text = decompress(bytes).toString();
    expect(JSON.parse(text)).toMatchObject({ format: 'easewright/target-sheet' });
    expect(bytes.length).toBeLessThan(text.length / 3);
  });

  it('is left as it is where it is small, or where nothing else is accepted', async () => {
    const small = await api.http.get('/health').set('Accept-Encoding', 'gzip, br').expect(200);
    expect(small.headers).not.toHaveProperty('content-encoding');
    const path = '/v1/target-sheets/compute';
    const plain = await api.http.post(path).set('Accept-Encoding', 'identity').send(exampleRequest).expect(200);
    expect(plain.headers).not.toHaveProperty('content-encoding');
  });

  it.each(Object.keys(document.paths).filter((path) => document.paths[path]?.['get'] && !path.includes('{')))(
    'at %s has an ETag, and is not sent again to who knows it',
    async (path) => {
      const first = await api.http.get(path).expect(200);
      expect(first.headers['cache-control']).toBe('private, no-cache');
      if (path === '/v1/export') return; // It says when it was made.
      const etag = first.headers['etag'] ?? '';
      expect(etag).toMatch(/^"[^"]+"$/);
      expect((await api.http.get(path).expect(200)).headers['etag']).toBe(etag);
      expect((await api.http.get(path).set('If-None-Match', etag).expect(304)).text).toBe('');
      await api.http.get(path).set('If-None-Match', '"another"').expect(200);
    },
  );

  it('is not sent again to Node’s fetch either, which asks caches on the way for a new one', async () => {
    const url = `${await api.app.getUrl()}/v1/target-sheets/${sheet.id}`;
    const etag = (await fetch(url)).headers.get('etag') ?? '';
    expect((await fetch(url, { headers: { 'if-none-match': etag } })).status).toBe(304);
  });

  it('changes its ETag with what is listed', async () => {
    const before = (await api.http.get('/v1/fabrics')).headers['etag'] ?? '';
    const fabric = { craft: 'knit', thickness: { value: 4, unit: 'mm' } };
    await api.http.post('/v1/fabrics').send(fabric).expect(201);
    await api.http.get('/v1/fabrics').set('If-None-Match', before).expect(200);
  });

  it('may be kept for good where it is a kept sheet in one of its forms', async () => {
    const path = `/v1/target-sheets/${sheet.id}`;
    for (const [query, form] of [
      ['', 'application/json'],
      ['?unit=in', 'text/csv'],
    ] as const) {
      const { headers } = await api.http
        .get(path + query)
        .set('Accept', form)
        .expect(200);
      expect(headers['cache-control']).toBe('private, max-age=31536000, immutable');
      for (const name of ['Accept', 'Authorization', 'Origin']) expect(headers['vary']).toContain(name);
    }
  });

  it('says nothing in its headers either that changes while it may be kept for good', async () => {
    const request = await keepExampleRecords(api);
    const { id } = (await api.http.post('/v1/target-sheets').send(request).expect(201)).body;
    const read = async () => {
      const { headers } = await api.http.get(`/v1/target-sheets/${id}`).expect(200);
      for (const ofEveryAnswer of ['date', 'x-request-id']) delete headers[ofEveryAnswer];
      return headers;
    };
    const before = await read();
    expect(before['cache-control']).toContain('immutable');
    const changed = () => api.http.get(`/v1/target-sheets/${id}/inputs-changed`).expect(200);
    const known = (await changed()).headers;
    expect(known['cache-control']).toBe('private, no-cache');
    await api.http.delete(`/v1/fabrics/${request.fabricId}`).expect(204);
    expect(await read()).toEqual(before);
    expect((await changed()).body).toEqual({ id, inputsChanged: ['fabric'] });
    expect((await changed()).headers['etag']).not.toBe(known['etag']);
  });

  it('is kept by nobody where it is a problem', async () => {
    for (const path of ['/v1/nothing', '/v1/bodies?limit=x', `/v1/target-sheets/${sheet.id}?unit=ell`])
      expect((await api.http.get(path)).headers['cache-control']).toBe('no-store');
  });
});

/** An answer as it comes, not decompressed. */
async function raw(url: string, accepted: string, body: string) {
  return new Promise<{ headers: Headers; bytes: Buffer }>((resolve, reject) => {
    const headers = { 'content-type': 'application/json', 'accept-encoding': accepted };
    const sent = request(url, { method: 'POST', headers }, (response) => {
      const chunks: Buffer[] = [];
      response
        .on('data', (chunk: Buffer) => chunks.push(chunk))
        .on('end', () => {
          const names = Object.entries(response.headers).map(
            ([name, value]) => [name, String(value)] as [string, string],
          );
          resolve({ headers: new Headers(names), bytes: Buffer.concat(chunks) });
        });
    });
    sent.on('error', reject).end(body);
  });
}
