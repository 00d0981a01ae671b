import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { PLANNER } from '../../apps/api/src/hand-off/planners/planner.entity.ts';
import { READ_KEY } from '../../apps/api/src/hand-off/read-keys/read-key.entity.ts';
import { exampleBody, exampleDesign, exampleFabric, exampleGarment } from '../support/examples.ts';
import { expectMatchesApi } from '../support/matches-api.ts';

const MARK = 'a name found nowhere else';

describe.each(DATABASES)('all that is kept, on %s', (kind) => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp(kind, { HANDOFF_ALLOW: 'loopback' })));
  afterAll(() => api.stop());

  const keepSome = async () => {
    const body = await api.http
      .post('/v1/bodies')
      .send({ ...exampleBody, title: MARK })
      .expect(201);
    await api.http.post('/v1/garments').send(exampleGarment).expect(201);
    const fabric = await api.http.post('/v1/fabrics').send(exampleFabric).expect(201);
    const request = { bodyId: body.body.id, fabricId: fabric.body.id, design: exampleDesign, title: MARK };
    const sheet = await api.http.post('/v1/target-sheets').send(request).expect(201);
    return { body: body.body, sheet: sheet.body };
  };

  it('can be taken along', async () => {
    const { body, sheet } = await keepSome();
    const exported = await api.http.get('/v1/export').expect(200);
    expect(exported.headers['content-disposition']).toContain('attachment');
    expect(exported.body.bodies).toContainEqual(body);
    expect(exported.body.garments).toHaveLength(1);
    expect(exported.body.fabrics).toHaveLength(1);
    expect(exported.body.targetSheets[0].sheet).toEqual(sheet);
    expect(exported.body.targetSheets[0].request.body.title).toBe(MARK);
  });

  it('has its planners and read keys in it, and nothing that signs or opens', async () => {
    const takes = { unit: 'cm', roundingStep: 0.5, format: 'flat', names: {}, required: [] };
    const planner = await api.http
      .post('/v1/planners')
      .send({ title: 'Row by row', address: 'http://127.0.0.1:9/sheets', takes })
      .expect(201);
    const readKey = await api.http
      .post('/v1/read-keys')
      .send({ title: 'Row by row', expiresAt: '2099-01-01T00:00:00Z' })
      .expect(201);
    const { secret, ...keptPlanner } = planner.body;
    const { key, ...keptKey } = readKey.body;
    expect([secret, key]).toEqual([expect.stringMatching(/^whsec_/), expect.stringContaining(keptKey.prefix)]);

    const exported = await api.http.get('/v1/export').expect(200);
    expectMatchesApi(exported);
    expect(exported.body.planners).toEqual([keptPlanner]);
    expect(exported.body.readKeys).toEqual([keptKey]);
    const { manager } = api.app.get(DataSource);
    const [plannerRow] = await manager.find(PLANNER);
    const [keyRow] = await manager.find(READ_KEY);
    for (const hidden of [secret, key, plannerRow?.secrets[0]?.sealed, keyRow?.hash]) {
      expect(hidden).toEqual(expect.any(String));
      expect(exported.text).not.toContain(hidden);
    }
  });

  it('is erased only when that is confirmed', async () => {
    await keepSome();
    await api.http.delete('/v1/everything').expect(400);
    await api.http.delete('/v1/everything?confirm=yes').expect(400);
    expect((await api.http.get('/v1/export')).body.bodies).not.toHaveLength(0);
  });

  it('can be erased, and then no row of the maker is left in any table', async () => {
    await keepSome();
    await api.http.delete('/v1/everything?confirm=erase-everything').expect(204);
    const exported = await api.http.get('/v1/export').expect(200);
    expect(exported.body).toMatchObject({
      bodies: [],
      garments: [],
      fabrics: [],
      targetSheets: [],
      planners: [],
      readKeys: [],
    });
    const dataSource = api.app.get(DataSource);
    for (const { tableName } of dataSource.entityMetadatas.filter(({ tableName }) => tableName !== 'maker')) {
      expect(await dataSource.query(`SELECT maker_id FROM ${tableName}`), tableName).toEqual([]);
    }
  });

  it.runIf(kind === 'sqlite')('leaves no trace of an erased record in the files', async () => {
    const { body, sheet } = await keepSome();
    const holdsMark = () =>
      readdirSync(api.env['DATA_DIR'] ?? '').some((file) =>
        readFileSync(join(api.env['DATA_DIR'] ?? '', file)).includes(MARK),
      );
    expect(holdsMark()).toBe(true);
    await api.http.delete(`/v1/target-sheets/${sheet.id}`).expect(204);
    await api.http.delete(`/v1/bodies/${body.id}`).expect(204);
    expect(holdsMark()).toBe(false);
  });
});
