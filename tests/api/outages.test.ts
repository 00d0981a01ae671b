import { renameSync } from 'node:fs';
import { join } from 'node:path';
import { DataSource } from 'typeorm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleBody, exampleFabric } from '../support/examples.ts';
import { otherProgram } from '../support/other-program.ts';

describe('an embedded database that fails', () => {
  let api: RunningApp;
  let file: string;
  beforeEach(async () => {
    api = await runApp('sqlite');
    file = join(api.env['DATA_DIR'] ?? '', 'easewright.sqlite');
    await keep(201);
  });
  afterEach(() => api.stop());

  const keep = (status: number) => api.http.post('/v1/fabrics').send(exampleFabric).expect(status);
  const kept = async () => (await api.http.get('/v1/fabrics').expect(200)).body.items.length as number;
  const expectOutage = async (code: string) => {
    const refused = await keep(503);
    expect(refused.body).toMatchObject({ code, detail: expect.stringContaining('Nothing was written.') });
    expect(refused.headers['retry-after']).toBe('5');
    expect((await api.http.get('/ready').expect(503)).body.code).toBe(code);
    await api.http.get('/health').expect(200);
  };

  it('because the disk is full says so, and goes on when there is room again', async () => {
    const { manager } = api.app.get(DataSource);
    const [{ page_count: pages }] = await manager.query('PRAGMA page_count');
    // SQLite's own limit of a file gives the same error as a disk with no room.
    await manager.query(`PRAGMA max_page_count = ${pages}`);
    const refusals = [];
    for (let body = 0; body < 50; body++) {
      const answer = await api.http.post('/v1/bodies').send(exampleBody);
      if (answer.status !== 201) refusals.push(answer);
    }
    expect(new Set(refusals.map(({ body }) => body.code))).toEqual(new Set(['database-full']));
    const before = await kept();
    await manager.query('PRAGMA max_page_count = 1000000');
    await keep(201);
    expect(await kept()).toBe(before + 1);
    await api.http.get('/ready').expect(200);
  });

  it('because another program has locked it says so, at once for those who wait, and goes on afterwards', async () => {
    const other = await otherProgram(file);
    await other.run('BEGIN IMMEDIATE');
    await expectOutage('database-locked');
    const waiting = await Promise.all(
      Array.from({ length: 20 }, () => api.http.post('/v1/fabrics').send(exampleFabric)),
    );
    expect(new Set(waiting.map(({ status }) => status))).toEqual(new Set([503]));
    await other.run('COMMIT');
    await other.close();
    await expect.poll(async () => (await api.http.get('/ready')).status, { timeout: 30_000 }).toBe(200);
    await keep(201);
    expect(await kept()).toBe(2);
  });

  it('because its file was moved away writes nothing into it, and goes on when it is back', async () => {
    renameSync(file, `${file}.away`);
    await expectOutage('database-moved');
    renameSync(`${file}.away`, file);
    await keep(201);
    expect(await kept()).toBe(2);
  });

  it('because it may not be written says so', async () => {
    const { manager } = api.app.get(DataSource);
    await manager.query('PRAGMA query_only = 1');
    await expectOutage('database-read-only');
    await manager.query('PRAGMA query_only = 0');
    await keep(201);
  });
});

describe.runIf(DATABASES.includes('postgres'))('a PostgreSQL that fails', () => {
  let api: RunningApp;
  beforeEach(async () => void (api = await runApp('postgres')));
  afterEach(() => api.stop());

  it('in the midst of connections is answered 503, and is reached again without a restart', async () => {
    const { manager } = api.app.get(DataSource);
    const writes = Array.from({ length: 40 }, () => api.http.post('/v1/fabrics').send(exampleFabric));
    const answers = Promise.all(writes);
    await manager
      .query('SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database()')
      .catch(() => undefined);
    const statuses = (await answers).map(({ status }) => status);
    expect(statuses.filter((status) => status !== 201 && status !== 503)).toEqual([]);
    await expect.poll(async () => (await api.http.get('/ready')).status, { timeout: 30_000 }).toBe(200);
    const { items } = (await api.http.get('/v1/fabrics?limit=100').expect(200)).body;
    expect(items.length).toBeGreaterThanOrEqual(statuses.filter((status) => status === 201).length);
  });

  it('because it takes no writes says so', async () => {
    const { manager } = api.app.get(DataSource);
    await manager.query(
      `DO $$ BEGIN EXECUTE format('ALTER DATABASE %I SET default_transaction_read_only = on', current_database()); END $$`,
    );
    await manager
      .query('SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = current_database()')
      .catch(() => undefined);
    await expect
      .poll(async () => (await api.http.get('/ready')).body.code, { timeout: 30_000 })
      .toBe('database-read-only');
    expect((await api.http.post('/v1/fabrics').send(exampleFabric).expect(503)).body.code).toBe('database-read-only');
  });

  it('because every connection is in use says so', async () => {
    const runners = Array.from({ length: 10 }, () => api.app.get(DataSource).createQueryRunner());
    await Promise.all(runners.map((runner) => runner.connect()));
    const refused = await api.http.post('/v1/fabrics').send(exampleFabric).expect(503);
    expect(refused.body).toMatchObject({ code: 'database-overloaded' });
    await api.http.get('/health').expect(200);
    for (const runner of runners) await runner.release();
    await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
  });

  it('because somebody holds a lock is not waited for without end', async () => {
    const held = api.app.get(DataSource).createQueryRunner();
    await held.startTransaction();
    await held.query('LOCK TABLE fabric IN ACCESS EXCLUSIVE MODE');
    const refused = await api.http.post('/v1/fabrics').send(exampleFabric).expect(503);
    expect(refused.body).toMatchObject({ code: 'database-locked' });
    await held.rollbackTransaction();
    await held.release();
    await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
  });
});
