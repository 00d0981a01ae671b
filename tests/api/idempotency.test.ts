import { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeApp } from '../../apps/api/src/app.ts';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleBody, exampleDesign, exampleFabric, exampleGarment, exampleRequest } from '../support/examples.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { document } from '../support/matches-api.ts';
import { RealPlanner } from '../support/real-planner.ts';

type Bodies = Readonly<Record<string, object>>;

describe.each(DATABASES)('a request with an Idempotency-Key on %s', (kind) => {
  let api: RunningApp;
  let planner: RealPlanner;
  let bodies: Bodies;
  beforeAll(async () => {
    api = await runApp(kind, { HANDOFF_ALLOW: 'loopback' });
    planner = await RealPlanner.start();
    bodies = await bodiesByPath();
  });
  afterAll(async () => {
    await api.stop();
    await planner.stop();
  });

  const post = (path: string, body: object, key: string) => api.http.post(path).set('Idempotency-Key', key).send(body);
  const made = async (path: string, body: object) =>
    (await api.http.post(path).send(body).expect(201)).body.id as string;
  const rows = () => api.app.get(DataSource).query('SELECT * FROM idempotent_write');

  /** A body for every operation that takes a key, by its address. */
  async function bodiesByPath(): Promise<Bodies> {
    const address = { title: 'Row by row', address: planner.address };
    const plannerId = await made('/v1/planners', address);
    const bodyId = await made('/v1/bodies', exampleBody);
    const fabricId = await made('/v1/fabrics', exampleFabric);
    const { id: sheetId } = await keepExampleSheet(api);
    const sheet = { bodyId, fabricId, design: exampleDesign };
    const computed = (await api.http.post('/v1/target-sheets/compute').send(exampleRequest).expect(200)).body as object;
    return {
      '/v1/bodies': exampleBody,
      '/v1/garments': exampleGarment,
      '/v1/fabrics': exampleFabric,
      '/v1/target-sheets': sheet,
      '/v1/target-sheets/import': computed,
      '/v1/planners': address,
      [`/v1/planners/${plannerId}/secret`]: {},
      [`/v1/planners/${plannerId}/hand-offs`]: sheet,
      [`/v1/target-sheets/${sheetId}/hand-offs`]: { plannerId },
      '/v1/read-keys': { title: 'Row by row' },
    };
  }

  it('is possible wherever something is made', () => {
    const taking = Object.entries(document.paths)
      .filter(([path]) => path !== '/v1/import') // tried where nothing is kept: see import.test.ts
      .filter(([, { post }]) => post?.parameters?.some(({ name }) => name === 'Idempotency-Key'))
      .map(([path]) => path.replaceAll('{id}', ''));
    const tried = Object.keys(bodies).map((path) => path.replaceAll(/[0-9a-f-]{36}/g, ''));
    expect(taking.sort()).toEqual(tried.sort());
    const making = Object.entries(document.paths)
      .filter(([path, { post }]) => '201' in (post?.responses ?? {}) && path !== '/v1/import')
      .map(([path]) => path.replaceAll('{id}', ''));
    expect(taking).toEqual(expect.arrayContaining(making));
  });

  it('is answered the second time as the first, whatever has become of it, and makes one thing', async () => {
    for (const [path, body] of Object.entries(bodies)) {
      const key = `twice ${path}`.replaceAll(' ', '-');
      const first = await post(path, body, key);
      expect(first.status, `${path} ${first.text.slice(0, 200)}`).toBeLessThan(300);
      const again = await post(path, Object.fromEntries(Object.entries(body).reverse()), key);
      expect(again.status, path).toBe(first.status);
      expect(again.text, path).toBe(first.text);
      for (const name of ['etag', 'location']) expect(again.headers[name], path).toBe(first.headers[name]);
      const other = await post(path, { ...body, title: 'Another' }, key);
      expect(other.body.code, path).toBe(Object.keys(body).length > 0 ? refusalOf(other.body) : other.body.code);
    }
  });
  /** Where a title is no field of the body it is refused for that, before the key is looked at. */
  const refusalOf = ({ errors }: { errors: { pointer: string }[] }): string =>
    errors[0]?.pointer === '/title' ? 'invalid' : 'idempotency-key-reused';

  it('makes one thing of many that come at the same moment', async () => {
    const before = (await api.http.get('/v1/fabrics?limit=100')).body.items.length as number;
    const answers = await Promise.all(Array.from({ length: 8 }, () => post('/v1/fabrics', exampleFabric, 'at-once')));
    expect(new Set(answers.map(({ status, text }) => `${status} ${text}`)).size).toBe(1);
    expect((await api.http.get('/v1/fabrics?limit=100')).body.items).toHaveLength(before + 1);
  });

  it('is refused with another payload, or at another address', async () => {
    await post('/v1/fabrics', exampleFabric, 'one').expect(201);
    const other = await post('/v1/fabrics', { ...exampleFabric, craft: 'crochet' }, 'one').expect(422);
    expect(other.body.code).toBe('idempotency-key-reused');
    await post('/v1/bodies', exampleBody, 'one').expect(422);
    expect((await post('/v1/bodies', exampleBody, 'é').expect(400)).body.code).toBe('idempotency-key-unreadable');
  });

  it('that was refused may be sent again, put right', async () => {
    await post('/v1/fabrics', { craft: 'felt' }, 'put-right').expect(422);
    await post('/v1/fabrics', exampleFabric, 'put-right').expect(201);
  });

  it('is known for a day, and what it made is kept sealed', async () => {
    const first = await post('/v1/read-keys', { title: 'Sealed' }, 'a-day').expect(201);
    expect(JSON.stringify(await rows())).not.toContain(first.body.key);
    await api.app.get(DataSource).query(`UPDATE idempotent_write SET created_at = '2020-01-01T00:00:00.000Z'`);
    const later = await post('/v1/read-keys', { title: 'Sealed' }, 'a-day').expect(201);
    expect(later.body.id).not.toBe(first.body.id);
    expect(await rows()).toHaveLength(1);
  });

  it('is forgotten with what it made', async () => {
    for (const path of ['/v1/bodies', '/v1/planners', '/v1/target-sheets', '/v1/read-keys']) {
      const before = (await rows()).length as number;
      const { id } = (await post(path, bodies[path] ?? {}, `gone-${path}`).expect(201)).body as { id: string };
      await api.http.delete(`${path}/${id}`).expect(204);
      expect(await rows(), path).toHaveLength(before);
      expect((await post(path, bodies[path] ?? {}, `gone-${path}`).expect(201)).body.id).not.toBe(id);
    }
  });

  it('is known after a new start', async () => {
    const first = await post('/v1/fabrics', exampleFabric, 'survives').expect(201);
    await api.app.close();
    const next = await makeApp(api.env);
    await next.listen(0, '127.0.0.1');
    const again = await fetch(`${await next.getUrl()}/v1/fabrics`, {
      method: 'POST',
      headers: { 'content-type': 'application/json', 'idempotency-key': 'survives' },
      body: JSON.stringify(exampleFabric),
    });
    expect(again.status).toBe(201);
    expect(await again.json()).toEqual(first.body);
    await next.close();
  });
});
