import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';
import { exampleBody, exampleGarment } from '../support/examples.ts';
import { keepExampleSheet } from '../support/kept-examples.ts';
import { RealPlanner } from '../support/real-planner.ts';
import { until } from '../support/until.ts';

const ERASE = '/v1/everything?confirm=erase-everything';

describe.each(DATABASES)('an export read in again on %s', (kind) => {
  let api: RunningApp;
  let planner: RealPlanner;
  beforeEach(async () => {
    api = await runApp(kind, { HANDOFF_ALLOW: 'loopback' });
    planner = await RealPlanner.start();
  });
  afterEach(async () => {
    await api.stop();
    await planner.stop();
  });

  const exported = async () => (await api.http.get('/v1/export').expect(200)).text;
  const read = (json: object | string) =>
    api.http.post('/v1/import').set('Content-Type', 'application/json').send(json);

  /** Something of every kind: changed records, a sheet that came back, hand-offs that arrived and that were given up. */
  const keepAll = async () => {
    const sheet = await keepExampleSheet(api);
    const body = (await api.http.get('/v1/bodies')).body.items[0];
    await api.http
      .put(`/v1/bodies/${body.id}`)
      .set('If-Match', '"1"')
      .send({ ...exampleBody, title: 'Changed' })
      .expect(200);
    await api.http.post('/v1/garments').send(exampleGarment).expect(201);
    const { id: _id, ...other } = (await api.http.get(`/v1/target-sheets/${sheet.id}`)).body;
    await api.http
      .post('/v1/target-sheets/import')
      .send({ id: 'aaaaaaaa-aaaa-4aaa-8aaa-aaaaaaaaaaaa', ...other })
      .expect(201);
    const plannerId = (await api.http.post('/v1/planners').send({ title: 'x', address: planner.address })).body.id;
    await api.http.post('/v1/planners').send({ title: 'by hand' }).expect(201);
    const handOn = async (key: string) =>
      (
        await api.http
          .post(`/v1/target-sheets/${sheet.id}/hand-offs`)
          .set('Idempotency-Key', key)
          .send({ plannerId })
          .expect(201)
      ).body.id as string;
    const stateOf = async (id: string) => (await api.http.get(`/v1/hand-offs/${id}`)).body.state as string;
    const arrived = await handOn('one');
    await until(async () => (await stateOf(arrived)) === 'arrived');
    planner.answersWith({ status: 410 });
    const dead = await handOn('two');
    await until(async () => (await stateOf(dead)) === 'dead');
    await api.http.post(`/v1/planners/${plannerId}/secret`);
    await api.http.post('/v1/read-keys').send({ title: 'x', targetSheetId: sheet.id }).expect(201);
    await api.http.post('/v1/read-keys').send({ title: 'y', expiresAt: '2099-01-01T00:00:00Z' }).expect(201);
    return { sheet, plannerId, arrived };
  };

  it('is answered the second time as the first where its request has a key', async () => {
    await keepExampleSheet(api);
    const json = await exported();
    await api.http.delete(ERASE).expect(204);
    const first = await read(json).set('Idempotency-Key', 'read-in').expect(201);
    const again = await read(json).set('Idempotency-Key', 'read-in').expect(201);
    expect(again.body).toEqual(first.body);
    await read(json).set('Idempotency-Key', 'another').expect(409);
    const less = { ...(JSON.parse(json) as object), targetSheets: [] };
    await read(less).set('Idempotency-Key', 'read-in').expect(422);
    expect(await exported()).toBe(json);
  });

  it('is the same to the last byte, after everything was erased', async () => {
    const { sheet, plannerId, arrived } = await keepAll();
    const before = await exported();
    for (const list of Object.values(JSON.parse(before) as object).filter(Array.isArray))
      expect(list).not.toHaveLength(0);
    await api.http.delete(ERASE).expect(204);
    const { body } = await read(before).expect(201);
    expect(body.imported).toEqual({
      bodies: 1,
      garments: 1,
      fabrics: 1,
      targetSheets: 2,
      planners: 2,
      handOffs: 2,
      attempts: 2,
      readKeys: 2,
    });
    expect(body.notes).toHaveLength(2);
    expect(await exported()).toBe(before);

    // The links hold: the sheet knows that its body has changed, the key of a request its hand-off.
    const listed = (await api.http.get('/v1/target-sheets')).body.items as { id: string; inputsChanged?: unknown }[];
    expect(listed.map(({ id }) => id)).toContain(sheet.id);
    const again = await api.http
      .post(`/v1/target-sheets/${sheet.id}/hand-offs`)
      .set('Idempotency-Key', 'one')
      .send({ plannerId });
    expect(again.body.id).toBe(arrived);
  });

  it('is refused where something is kept, and changes nothing', async () => {
    await keepExampleSheet(api);
    const before = await exported();
    expect((await read(before).expect(409)).body.code).toBe('not-empty');
    expect(await exported()).toBe(before);
  });

  it('is refused whole where a part of it cannot be used, with every place', async () => {
    await keepAll();
    const before = await exported();
    await api.http.delete(ERASE).expect(204);
    const broken = JSON.parse(before);
    broken.bodies[0].measures[0].value = -1;
    broken.garments[0].id = 'x';
    broken.targetSheets[0].sheet.version = 'x';
    broken.handOffs[0].plannerId = broken.bodies[0].id;
    broken.handOffs[1].attempts[0].at = 'yesterday';
    broken.readKeys[1].id = broken.readKeys[0].id;
    const refused = await read(broken).expect(422);
    const places = (refused.body.errors as { pointer: string }[]).map(({ pointer }) => pointer);
    for (const place of [
      '/bodies/0/measures/0/value',
      '/garments/0/id',
      '/targetSheets/0/sheet/version',
      '/handOffs/0/plannerId',
      '/handOffs/1/attempts/0/at',
      '/readKeys/1/id',
    ]) {
      expect(places).toContain(place);
    }
    expect(JSON.parse(await exported()).bodies).toEqual([]);
  });

  it.each([
    {},
    { format: 'easewright/export', version: '3.0' },
    { format: 'easewright/export', version: '2.0' },
    [1],
    { bodies: 5 },
  ])('is refused where it is none: %j', async (json) => {
    const refused = await read(json);
    expect([400, 422]).toContain(refused.status);
  });
});
