import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { exampleFabric } from '../support/examples.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';

/** Requests that do not come from this machine: by the public name, or through a proxy that passes its own name on. */
const OUTSIDE: readonly Record<string, string>[] = [
  { Host: 'easewright.example' },
  { Host: 'knitting.example' },
  { 'X-Forwarded-For': '203.0.113.7' },
  { Forwarded: 'for=203.0.113.7' },
  { Host: 'localhost', Via: '1.1 proxy' },
];

describe('from another machine', () => {
  let api: RunningApp;
  let sheetId: string;
  let key: string;
  beforeAll(async () => {
    api = await runApp('sqlite', { PUBLIC_URL: 'https://easewright.example/', ALLOWED_HOSTS: 'knitting.example' });
    sheetId = (await keepExampleSheet(api)).id;
    key = (await api.http.post('/v1/read-keys').send({ title: 'Row by row' }).expect(201)).body.key;
  });
  afterAll(() => api.stop());

  it.each(OUTSIDE)('%j, nothing answers without a key but /health', async (headers) => {
    await api.http.get('/health').set(headers).expect(200);
    for (const path of [
      '/',
      '/docs',
      '/ready',
      '/v1/bodies',
      '/v1/export',
      '/v1/target-sheets',
      '/nothing',
      '/V1/bodies',
    ]) {
      const refused = await api.http.get(path).set(headers).expect(401);
      expect(refused.body.code, path).toBe('read-key-missing');
      expect(refused.headers['www-authenticate']).toBe('Bearer');
    }
    await api.http.post('/v1/fabrics').set(headers).send(exampleFabric).expect(401);
    await api.http.delete('/v1/everything?confirm=erase-everything').set(headers).expect(401);
  });

  it.each(OUTSIDE)('%j, a read key opens what read keys open, and nothing else', async (headers) => {
    const withKey = { ...headers, Authorization: `Bearer ${key}` };
    await api.http.get(`/v1/target-sheets/${sheetId}`).set(withKey).expect(200);
    await api.http.get('/v1/target-sheets').set(withKey).expect(200);
    for (const path of ['/v1/bodies', '/v1/export', '/v1/design-rules'])
      await api.http.get(path).set(withKey).expect(403);
    for (const path of ['/', '/docs', '/ready']) await api.http.get(path).set(withKey).expect(401);
    await api.http
      .get('/v1/bodies')
      .set({ ...headers, Authorization: 'Bearer wrong' })
      .expect(401);
  });

  it('on this machine everything answers', async () => {
    await api.http.get('/v1/bodies').expect(200);
    await api.http.get('/ready').expect(200);
  });
});

describe('a page of another site', () => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp('sqlite')));
  afterAll(() => api.stop());

  it.each([
    [403, { Origin: 'https://evil.example' }],
    [403, { Origin: 'null' }],
    [403, { Origin: 'http://localhost:3000', Host: 'localhost:4114' }],
    [403, { 'Sec-Fetch-Site': 'cross-site' }],
    [403, { 'Sec-Fetch-Site': 'same-site', Origin: 'http://localhost:3000' }],
    [201, { 'Sec-Fetch-Site': 'same-origin', Origin: 'http://localhost:4114', Host: 'localhost:4114' }],
    [201, { Origin: 'http://localhost:4114', Host: 'localhost:4114' }],
    [201, { 'Sec-Fetch-Site': 'none' }],
    [201, {}],
  ] as const)('is answered %i to a POST with %j', async (status, headers) => {
    const answer = await api.http
      .post('/v1/fabrics')
      .set({ ...headers })
      .send(exampleFabric);
    expect(answer.status).toBe(status);
    if (status === 403) expect(answer.body.code).toBe('cross-site');
  });

  it('changes nothing, whatever the method', async () => {
    const headers = { 'Sec-Fetch-Site': 'cross-site' };
    await api.http.delete('/v1/everything?confirm=erase-everything').set(headers).expect(403);
    await api.http.put('/v1/bodies/a').set(headers).send({}).expect(403);
    await api.http.get('/v1/bodies').set(headers).expect(200);
  });
});
