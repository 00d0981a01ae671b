import { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { document, expectMatchesApi } from '../support/matches-api.ts';

describe.each(DATABASES)('a pull on %s', (kind) => {
  let api: RunningApp;
  let sheet: { readonly id: string };
  let other: { readonly id: string };
  beforeAll(async () => {
    api = await runApp(kind);
    sheet = await keepExampleSheet(api);
    other = await keepExampleSheet(api);
  });
  afterAll(() => api.stop());

  const make = async (purpose: object = {}) => {
    const response = await api.http
      .post('/v1/read-keys')
      .send({ title: 'Row by row', ...purpose })
      .expect(201);
    expectMatchesApi(response);
    return response.body as { id: string; key: string; prefix: string };
  };
  const pull = (key: string, path = `/v1/target-sheets/${sheet.id}`) =>
    api.http.get(path).set('Authorization', `Bearer ${key}`);

  it('reads a sheet with its key, and does not read again what it has', async () => {
    const { key } = await make({ targetSheetId: sheet.id });
    const pulled = await pull(key).expect(200);
    expectMatchesApi(pulled);
    expect(pulled.body.id).toBe(sheet.id);
    const etag = pulled.headers['etag'] ?? '';
    expect((await pull(key).set('If-None-Match', etag).expect(304)).text).toBe('');
    await pull(key).set('If-None-Match', '"another"').expect(200);
  });

  it('reads it in another unit and form, each with its own ETag', async () => {
    const { key } = await make({ targetSheetId: sheet.id });
    const path = `/v1/target-sheets/${sheet.id}`;
    const mm = await pull(key);
    const inches = await pull(key, `${path}?unit=in`).expect(200);
    const csv = await pull(key, `${path}?unit=in`).set('Accept', 'text/csv').expect(200);
    expect(new Set([mm, inches, csv].map(({ headers }) => headers['etag'])).size).toBe(3);
    expect(inches.body.fabric.thickness).toBeCloseTo(6 / 25.4, 12);
    expect(csv.text).toContain(',in,');
    await pull(key, `${path}?unit=in`)
      .set('If-None-Match', inches.headers['etag'] ?? '')
      .expect(304);
    expectMatchesApi(await pull(key, `${path}?unit=ell`).expect(400));
  });

  it('opens what its key is for and nothing else', async () => {
    const { key: one } = await make({ targetSheetId: sheet.id });
    const { key: all } = await make();
    expectMatchesApi(await pull(one, `/v1/target-sheets/${other.id}`).expect(403));
    await pull(all, `/v1/target-sheets/${other.id}`).expect(200);
    await pull(one, `/v1/target-sheets/${sheet.id}/inputs-changed`).expect(200);
    await pull(one, `/v1/target-sheets/${other.id}/inputs-changed`).expect(403);
    expectMatchesApi(await pull(one, '/v1/target-sheets').expect(403));
    expectMatchesApi(await pull(all, '/v1/target-sheets').expect(200));
    for (const path of [
      `/v1/target-sheets/${sheet.id}/inputs`,
      '/v1/bodies',
      '/v1/read-keys',
      '/v1/export',
      '/v1/planners',
    ]) {
      const refused = await pull(all, path).expect(403);
      expect(refused.body.code, path).toBe('read-key-scope');
    }
    await api.http.delete(`/v1/target-sheets/${sheet.id}`).set('Authorization', `Bearer ${all}`).expect(403);
    await api.http.post('/v1/bodies').set('Authorization', `Bearer ${all}`).send({}).expect(403);
  });

  it.each(['Bearer nonsense', 'Bearer', 'Basic dTpw', 'Bearer easewright_' + 'A'.repeat(43)])(
    'with “%s” opens nothing',
    async (authorization) => {
      const refused = await api.http
        .get(`/v1/target-sheets/${sheet.id}`)
        .set('Authorization', authorization)
        .expect(401);
      expectMatchesApi(refused);
      expect(refused.headers['www-authenticate']).toBe('Bearer');
    },
  );

  it('ends when its key is revoked, expired or erased', async () => {
    const revoked = await make();
    expectMatchesApi(await api.http.post(`/v1/read-keys/${revoked.id}/revoke`).expect(200));
    await pull(revoked.key).expect(401);
    const expiring = await make({ expiresAt: '2999-01-01T00:00:00+02:00' });
    await pull(expiring.key).expect(200);
    await api.app
      .get(DataSource)
      .query(`UPDATE read_key SET expires_at = '2020-01-01T00:00:00.000Z' WHERE id = '${expiring.id}'`);
    await pull(expiring.key).expect(401);
    const erased = await make();
    expectMatchesApi(await api.http.delete(`/v1/read-keys/${erased.id}`).expect(204));
    await pull(erased.key).expect(401);
  });

  it('is noted on its key, which itself is shown once and kept as a hash', async () => {
    const { id, key, prefix } = await make({ expiresAt: '2999-01-01T00:00:00+02:00' });
    expect(key.startsWith(prefix)).toBe(true);
    const before = await api.http.get(`/v1/read-keys/${id}`).expect(200);
    expectMatchesApi(before);
    expect(before.body).toMatchObject({ lastUsedAt: null, expiresAt: '2998-12-31T22:00:00.000Z', revokedAt: null });
    await pull(key).expect(200);
    const list = await api.http.get('/v1/read-keys').expect(200);
    expectMatchesApi(list);
    const mine = list.body.items.find((item: { id: string }) => item.id === id);
    expect(mine.lastUsedAt).not.toBeNull();
    const rows = await api.app.get(DataSource).query('SELECT * FROM read_key');
    expect(JSON.stringify([list.body, rows])).not.toContain(key);
  });

  it('needs a key for something that is there, for a time to come', async () => {
    const wrong = (purpose: object) =>
      api.http
        .post('/v1/read-keys')
        .send({ title: 'x', ...purpose })
        .expect(422);
    for (const purpose of [
      { targetSheetId: '01900000-0000-7000-8000-00000000dead' },
      { expiresAt: '2020-01-01T00:00:00Z' },
      { expiresAt: 'tomorrow' },
      { title: '' + '\n' },
    ]) {
      expectMatchesApi(await wrong(purpose));
    }
  });

  it('by a web page is let through where its origin is allowed, at what a read key opens alone', async () => {
    const origin = 'https://planner.example';
    const allowing = await runApp(kind, { ALLOWED_ORIGINS: origin });
    const open = Object.entries(document.paths).filter(([, { get }]) => get?.security?.some((one) => 'readKey' in one));
    expect(open.map(([path]) => path).sort()).toEqual([
      '/v1/target-sheets',
      '/v1/target-sheets/{id}',
      '/v1/target-sheets/{id}/inputs-changed',
    ]);
    for (const path of Object.keys(document.paths)) {
      const address = path.replaceAll(/\{[^}]+\}/g, sheet.id);
      const asked = { Origin: origin, 'Access-Control-Request-Method': 'GET' };
      const preflight = await allowing.http.options(address).set(asked).expect(204);
      const isOpen = open.some(([one]) => one === path);
      expect(preflight.headers['access-control-allow-origin'], path).toBe(isOpen ? origin : undefined);
      const foreign = await allowing.http.options(address).set({ ...asked, Origin: 'https://evil.example' });
      expect(foreign.headers, path).not.toHaveProperty('access-control-allow-origin');
    }
    const pulled = await allowing.http.get('/v1/target-sheets').set({ Origin: origin, Authorization: 'Bearer wrong' });
    expect(pulled.headers).toMatchObject({ 'access-control-allow-origin': origin });
    const asMaker = await allowing.http.get('/v1/target-sheets').set('Origin', origin).expect(200);
    expect(asMaker.headers).not.toHaveProperty('access-control-allow-origin');
    await allowing.stop();
  });
});
