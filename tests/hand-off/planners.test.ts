import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeApp } from '../../apps/api/src/app.ts';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { expectMatchesApi } from '../support/matches-api.ts';
import { RealPlanner, verified } from '../support/real-planner.ts';
import { until } from '../support/until.ts';

const takes = {
  unit: 'in',
  roundingStep: 0.125,
  format: 'flat',
  names: { 'back/width': '/w', 'sleeve/sleeve-length/as-made': '/s' },
  required: ['back/width'],
};

describe.each(DATABASES)('planners on %s', (kind) => {
  let api: RunningApp;
  let planner: RealPlanner;
  beforeAll(async () => {
    api = await runApp(kind, { HANDOFF_ALLOW: 'loopback' });
    planner = await RealPlanner.start();
  });
  afterAll(async () => {
    await api.stop();
    await planner.stop();
  });
  const register = async (more: object = {}) => {
    const response = await api.http
      .post('/v1/planners')
      .send({ title: 'Row by row', takes, ...more })
      .expect(201);
    expectMatchesApi(response);
    return response;
  };

  it('are kept, read, listed, changed and erased', async () => {
    const { body: made, headers } = await register();
    expect(headers['etag']).toBe('"1"');
    expect(made).toMatchObject({ title: 'Row by row', address: null, takes, state: 'active', secret: null });
    const at = headers['location'] ?? '';
    const read = await api.http.get(at).expect(200);
    expectMatchesApi(read);
    expect(read.body).toEqual(Object.fromEntries(Object.entries(made).filter(([name]) => name !== 'secret')));
    const list = await api.http.get('/v1/planners').expect(200);
    expectMatchesApi(list);
    expect(list.body.items).toContainEqual(read.body);
    expectMatchesApi(await api.http.put(at).send({ title: 'Stitch' }).expect(428));
    expectMatchesApi(await api.http.put(at).set('If-Match', '"9"').send({ title: 'Stitch' }).expect(412));
    const changed = await api.http.put(at).set('If-Match', '"1"').send({ title: 'Stitch' }).expect(200);
    expectMatchesApi(changed);
    expect(changed.body).toMatchObject({
      title: 'Stitch',
      version: 2,
      takes: { unit: 'mm', roundingStep: null, format: 'flat', names: {}, required: [] },
    });
    expectMatchesApi(await api.http.delete(at).expect(204));
    expectMatchesApi(await api.http.get(at).expect(404));
  });

  it('are refused with every field that is wrong, and where', async () => {
    const wrong = {
      title: 'x',
      address: 'http://planner.example/',
      takes: {
        roundingStep: 0,
        names: { 'back/widht': 'w', 'front/width': '/a', 'sleeve/sleeve-length': '/a/b' },
        required: ['neck'],
      },
    };
    const refused = await api.http.post('/v1/planners').send(wrong).expect(422);
    expectMatchesApi(refused);
    const pointers = refused.body.errors.map(({ pointer }: { pointer: string }) => pointer);
    expect(new Set(pointers)).toEqual(
      new Set([
        '/address',
        '/takes/roundingStep',
        '/takes/names/back~1widht',
        '/takes/names/sleeve~1sleeve-length',
        '/takes/required/0',
      ]),
    );
  });

  it('show a secret once, when they have an address to send to', async () => {
    const { body: made } = await register();
    const at = `/v1/planners/${made.id}`;
    const change = { title: 'Row by row', address: planner.address };
    const changed = await api.http.put(at).set('If-Match', '"1"').send(change).expect(200);
    expect(changed.body.secret).toMatch(/^whsec_[A-Za-z0-9+/]{43}=$/);
    const again = await api.http.put(at).set('If-Match', '"2"').send(change).expect(200);
    expect(again.body.secret).toBeNull();
    expect((await api.http.get(at)).text).not.toContain('whsec_');
    const rows = await api.app.get(DataSource).query('SELECT secrets FROM planner');
    expect(JSON.stringify(rows)).not.toContain('whsec_');
  });

  it('are sent a signed test', async () => {
    const { body: made } = await register({ address: planner.address });
    const test = await api.http.post(`/v1/planners/${made.id}/test`).expect(200);
    expectMatchesApi(test);
    expect(test.body).toMatchObject({ arrived: true, status: 200, answer: 'taken' });
    const received = planner.received.at(-1);
    expect(received && verified(received, made.secret)).toEqual({ test: true });
    const { body: unreachable } = await register({ address: 'http://127.0.0.1:1/' });
    const failed = await api.http.post(`/v1/planners/${unreachable.id}/test`).expect(200);
    expectMatchesApi(failed);
    expect(failed.body).toMatchObject({ arrived: false, status: null, failure: 'not-reached' });
    const { body: byHand } = await register();
    expectMatchesApi(await api.http.post(`/v1/planners/${byHand.id}/test`).expect(422));
  });

  it('are signed to with the old secret and the new one while they change over', async () => {
    const { body: made } = await register({ address: planner.address });
    const test = () => api.http.post(`/v1/planners/${made.id}/test`).expect(200);
    const replaced = await api.http.post(`/v1/planners/${made.id}/secret`).expect(200);
    expectMatchesApi(replaced);
    expect(Date.parse(replaced.body.oldSecretUntil) - Date.parse(replaced.body.secretMadeAt)).toBe(24 * 3600 * 1000);
    await test();
    const received = planner.received.at(-1);
    if (!received) throw new Error('nothing came');
    expect(() => [made.secret, replaced.body.secret].map((secret) => verified(received, secret))).not.toThrow();
    // A day later the old one no longer signs.
    await api.app
      .get(DataSource)
      .query(
        `UPDATE planner SET secrets = replace(secrets, '${replaced.body.oldSecretUntil}', '2020-01-01T00:00:00.000Z') WHERE id = '${made.id}'`,
      );
    await test();
    const later = planner.received.at(-1);
    if (!later) throw new Error('nothing came');
    expect(() => verified(later, replaced.body.secret)).not.toThrow();
    expect(() => verified(later, made.secret)).toThrow();
    const { body: byHand } = await register();
    expectMatchesApi(await api.http.post(`/v1/planners/${byHand.id}/secret`).expect(422));
  });

  it('without an address are shown what to hand over by hand', async () => {
    const sheet = await keepExampleSheet(api);
    const { body: made } = await register({ takes: { format: 'sheet', unit: 'cm' } });
    const preview = await api.http.get(`/v1/planners/${made.id}/preview?targetSheet=${sheet.id}`).expect(200);
    expectMatchesApi(preview);
    expect(JSON.parse(preview.body.body)).toMatchObject({
      format: 'easewright/target-sheet',
      unit: 'cm',
      id: sheet.id,
    });
    const refused = await api.http
      .post(`/v1/target-sheets/${sheet.id}/hand-offs`)
      .send({ plannerId: made.id })
      .expect(422);
    expectMatchesApi(refused);
    expect(refused.body.code).toBe('planner-without-address');
  });
});

describe('the key that seals secrets', () => {
  it('is made beside the data, for its owner alone, and serves the next start', async () => {
    const api = await runApp('sqlite', { HANDOFF_ALLOW: 'loopback' });
    const planner = await RealPlanner.start();
    const folder = api.env['DATA_DIR'] ?? '';
    expect(statSync(join(folder, 'hand-off.key')).mode & 0o777).toBe(0o600);
    const { body: made } = await api.http.post('/v1/planners').send({ title: 'x', address: planner.address });
    await api.app.close();

    const next = await makeApp(api.env);
    await next.listen(0, '127.0.0.1');
    const test = await fetch(`${await next.getUrl()}/v1/planners/${made.id}/test`, { method: 'POST' });
    expect(await test.json()).toMatchObject({ arrived: true });
    await next.close();
    const inFiles = readdirSync(folder).some((file) => readFileSync(join(folder, file)).includes(made.secret.slice(6)));
    expect(inFiles).toBe(false);
    await planner.stop();
    await api.stop();
  });

  it('that is another one says so, and a new secret mends it', async () => {
    const key = (byte: number) => Buffer.alloc(32, byte).toString('base64');
    const api = await runApp('sqlite', { HANDOFF_ALLOW: 'loopback', HANDOFF_KEY: key(1) });
    const planner = await RealPlanner.start();
    const sheet = await keepExampleSheet(api);
    const { body: made } = await api.http.post('/v1/planners').send({ title: 'x', address: planner.address });
    await api.app.close();

    const next = await makeApp({ ...api.env, HANDOFF_KEY: key(2) });
    await next.listen(0, '127.0.0.1');
    const call = async (method: string, path: string, body?: object) => {
      const response = await fetch(`${await next.getUrl()}${path}`, {
        method,
        ...(body && { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }),
      });
      return (await response.json()) as Record<string, never>;
    };
    expect(await call('POST', `/v1/planners/${made.id}/test`)).toMatchObject({ failure: 'secret-unreadable' });
    const { id } = await call('POST', `/v1/target-sheets/${sheet.id}/hand-offs`, { plannerId: made.id });
    await until(async () => (await call('GET', `/v1/hand-offs/${id}`))['tries']);
    expect(await call('GET', `/v1/hand-offs/${id}`)).toMatchObject({
      state: 'waiting',
      attempts: [{ failure: 'secret-unreadable' }],
    });
    const { secret } = await call('POST', `/v1/planners/${made.id}/secret`);
    await until(async () => (await call('GET', `/v1/hand-offs/${id}`))['state'] === 'arrived');
    const received = planner.received.at(-1);
    expect(() => received && verified(received, secret ?? '')).not.toThrow();
    await next.close();
    await planner.stop();
    await api.stop();
  });
});
