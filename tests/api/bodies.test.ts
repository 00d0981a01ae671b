import { DataSource } from 'typeorm';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runApp, type RunningApp } from '../support/app.ts';
import { DATABASES } from '../support/databases.ts';

const measures = [
  { name: 'chest-girth', value: 94, unit: 'cm', how: 'trained', takenAt: '2026-01-31', u: 1.5 },
  { name: 'nape-to-cuff', text: '29 1/4 in' },
  { name: 'weight', value: 140, unit: 'lb' },
];
const body = { title: 'Me', figure: 'woman', age: 44.5, measures };

describe.each(DATABASES)('bodies on %s', (kind) => {
  let api: RunningApp;
  beforeAll(async () => void (api = await runApp(kind)));
  afterAll(() => api.stop());

  const create = async () => {
    const response = await api.http.post('/v1/bodies').send(body).expect(201);
    return response;
  };

  it('keeps each measure in the unit and text it was entered in, with how, when and how sure', async () => {
    const created = await create();
    const read = await api.http.get(created.headers['location'] ?? '').expect(200);
    expect(read.body).toEqual(created.body);
    expect(read.body).toMatchObject({ title: 'Me', figure: 'woman', age: 44.5, estimate: true, version: 1 });
    expect(read.body.measures).toEqual([
      { name: 'chest-girth', value: 94, unit: 'cm', text: null, u: 1.5, how: 'trained', takenAt: '2026-01-31' },
      { name: 'nape-to-cuff', value: null, unit: null, text: '29 1/4 in', u: null, how: 'home', takenAt: null },
      { name: 'weight', value: 140, unit: 'lb', text: null, u: null, how: 'home', takenAt: null },
    ]);
  });

  it('reads what was kept before there was a field as if it had been left out', async () => {
    const { body: kept } = await create();
    const old = JSON.stringify({ title: 'Me', measures: [{ name: 'chest-girth', value: 94, unit: 'cm' }] });
    await api.app.get(DataSource).query(`UPDATE body SET document = '${old}' WHERE id = '${kept.id}'`);
    const filled = { figure: 'unsaid', age: null, size: null, estimate: true };
    const measure = { name: 'chest-girth', value: 94, unit: 'cm', text: null, u: null, how: 'home', takenAt: null };
    const { id, version, createdAt, updatedAt } = kept;
    const whole = { id, version, createdAt, updatedAt, title: 'Me', ...filled, measures: [measure] };
    expect((await api.http.get(`/v1/bodies/${id}`).expect(200)).body).toEqual(whole);
    expect((await api.http.get('/v1/bodies?limit=1').expect(200)).body.items).toEqual([whole]);
    expect((await api.http.get('/v1/export').expect(200)).body.bodies.at(-1)).toEqual(whole);
  });

  it('changes only the version that was read', async () => {
    const { body: kept, headers } = await create();
    const put = (ifMatch?: string) => {
      const request = api.http.put(`/v1/bodies/${kept.id}`).send({ ...body, title: 'Me, in spring' });
      return ifMatch === undefined ? request : request.set('If-Match', ifMatch);
    };
    expect(headers['etag']).toBe('"1"');
    await put().expect(428);
    await put('1').expect(400);
    await put('W/"1"').expect(412);
    const changed = await put('"1"').expect(200);
    expect(changed.headers['etag']).toBe('"2"');
    expect(changed.body).toMatchObject({ title: 'Me, in spring', version: 2, createdAt: kept.createdAt });
    await put('"1"').expect(412);
    await put('"1", "2"').expect(200);
    await put('*').expect(200);
  });

  it('lets one of two changes made at the same moment through', async () => {
    const { body: kept } = await create();
    const put = () => api.http.put(`/v1/bodies/${kept.id}`).set('If-Match', '"1"').send(body);
    const statuses = (await Promise.all(Array.from({ length: 8 }, put))).map(({ status }) => status);
    expect(statuses.filter((status) => status === 200)).toHaveLength(1);
    expect(statuses.filter((status) => status === 412)).toHaveLength(7);
  });

  it('lets all changes of any version through that are made at the same moment, one after the other', async () => {
    const { body: kept } = await create();
    const put = () => api.http.put(`/v1/bodies/${kept.id}`).set('If-Match', '*').send(body).expect(200);
    const versions = (await Promise.all(Array.from({ length: 12 }, put))).map(({ body: { version } }) => version);
    expect(versions.sort((a, b) => a - b)).toEqual(Array.from({ length: 12 }, (_, index) => index + 2));
  });

  it('spares the transfer of what is known', async () => {
    const { body: kept } = await create();
    await api.http.get(`/v1/bodies/${kept.id}`).set('If-None-Match', '"1"').expect(304);
    await api.http.get(`/v1/bodies/${kept.id}`).set('If-None-Match', '"2"').expect(200);
  });

  it('erases', async () => {
    const { body: kept } = await create();
    const at = `/v1/bodies/${kept.id}`;
    await api.http.delete(at).set('If-Match', '"7"').expect(412);
    await api.http.delete(at).expect(204);
    await api.http.get(at).expect(404);
    await api.http.delete(at).expect(404);
    await api.http.put(at).set('If-Match', '"1"').send(body).expect(404);
  });

  it('lists in pages, newest first, undisturbed by what is added meanwhile', async () => {
    const ids = [];
    for (let count = 0; count < 5; count++) ids.unshift((await create()).body.id);
    const first = await api.http.get('/v1/bodies?limit=2').expect(200);
    await create();
    const second = await api.http.get(`/v1/bodies?limit=3&cursor=${first.body.next}`).expect(200);
    expect([...first.body.items, ...second.body.items].map(({ id }: { id: string }) => id)).toEqual(ids);
    const all = await api.http.get('/v1/bodies?limit=100').expect(200);
    expect(all.body.next).toBeNull();
    await api.http.get('/v1/bodies?limit=0').expect(400);
    await api.http.get('/v1/bodies?cursor=nonsense').expect(400);
  });
});
